import {
	armsOf,
	blockCount,
	restsOn,
	restsOnStudy,
	StudyGathering,
	StudyRunner,
} from "../analysis/index.ts";
import type { Desk } from "./answer-orders.ts";
import { checkOrder } from "./check-order.ts";
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
	const [base] = study.study.arms;
	const blocks = blockCount(base);
	const runner = new StudyRunner(study.study);
	const gathering = new StudyGathering(study.study);
	const groups = study.study.groups.length;
	for (let group = 0; group < groups; group++) {
		for (let block = 0; block < blocks; block++) {
			gathering.add(runner.run({ group, first: block, last: block + 1 }));
			if (!(await desk.goOn())) return null;
		}
		desk.say({ kind: "progress", done: group + 1, of: groups });
	}
	return {
		kind: "rests-on",
		restsOn: restsOn(arms, study, gathering.groups(blocks)),
	};
}
