import type { RestsOn } from "../../results/index.ts";
import { armsOf, sensitivityOf, sensitivityStudy } from "../../studies/index.ts";
import { type Checked, checkOrder } from "./check-order.ts";
import type { Desk, Nothing, Progress } from "./desk.ts";
import { gathered } from "./gathered.ts";

export interface RestsOnOrder {
	readonly kind: "rests-on";
	readonly text: string;
	readonly between: readonly [string, string];
}

export type RestsOnAnswer = Checked | Nothing | Progress | { readonly kind: "rests-on"; readonly restsOn: RestsOn };

/** What the differences of two regimens rest on, as `compare --rests-on on` works it out. */
export async function runRestsOn(
	{ text, between }: RestsOnOrder,
	desk: Desk<RestsOnAnswer>,
): Promise<RestsOnAnswer | null> {
	const checked = checkOrder(text, desk);
	if (checked === null) return { kind: "nothing" };
	const arms = armsOf(checked, between);
	if (arms.length < 2) return { kind: "nothing" };
	const study = sensitivityStudy(arms);
	const of = study.study.groups.length;
	const groups = await gathered(study.study, desk, (done) => desk.say({ kind: "progress", done, of }));
	return groups === null ? null : { kind: "rests-on", restsOn: sensitivityOf(arms, study, groups) };
}
