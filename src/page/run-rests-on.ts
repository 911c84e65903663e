import { armsOf, restsOn, restsOnStudy } from "../analysis/index.ts";
import type { Desk } from "./answer-orders.ts";
import { checkOrder } from "./check-order.ts";
import { gathered } from "./gathered.ts";
import type { Answer, Order } from "./orders.ts";

/** What the differences of two regimens rest on, as `compare --rests-on on` works it out. */
export async function runRestsOn(
	{ text, between }: Extract<Order, { kind: "rests-on" }>,
	desk: Desk,
): Promise<Answer | null> {
	const checked = checkOrder(text, desk);
	if (checked === null) return { kind: "nothing" };
	const arms = armsOf(checked, between);
	if (arms.length < 2) return { kind: "nothing" };
	const study = restsOnStudy(arms);
	const of = study.study.groups.length;
	const groups = await gathered(study.study, desk, (done) =>
		desk.say({ kind: "progress", done, of }),
	);
	return groups === null
		? null
		: { kind: "rests-on", restsOn: restsOn(arms, study, groups) };
}
