import {
	armsOf,
	compareResult,
	comparisonStudy,
	drawnOf,
	sensitivityOf,
	sensitivityStudy,
} from "../../studies/index.ts";
import { mainMeasures } from "../../vocabulary/index.ts";
import { atMost, checkOrder, type Desk, gathered, tracedDay } from "./desk.ts";
import type { Answer, OrderOf } from "./orders.ts";

/** The regimens of a scenario set against each other, as `compare` does it without asking what the answer rests on. */
export async function runComparison(
	{ text, most, version, between }: OrderOf<"compare">,
	desk: Desk,
): Promise<Answer | null> {
	const checked = checkOrder(text, desk);
	if (checked === null) return { kind: "nothing" };
	const scenario = atMost(checked, most);
	const arms = armsOf(scenario, between);
	if (arms.length < 2) return { kind: "nothing" };
	const groups = await gathered(comparisonStudy(arms), desk);
	if (groups === null) return null;
	const [sums] = groups;
	const scenarios = arms.map((arm) => arm.scenario);
	const drawn = drawnOf(scenarios, sums.arms[0].count);
	return {
		kind: "compare",
		result: compareResult(scenario, arms, sums, { measures: mainMeasures, targets: [], restsOn: null, drawn, version }),
		days: scenarios.map((arm) => tracedDay(arm, drawn.replication, version)),
	};
}

/** What the differences of two regimens rest on, as `compare --rests-on on` works it out. */
export async function runRestsOn({ text, between }: OrderOf<"rests-on">, desk: Desk): Promise<Answer | null> {
	const checked = checkOrder(text, desk);
	if (checked === null) return { kind: "nothing" };
	const arms = armsOf(checked, between);
	if (arms.length < 2) return { kind: "nothing" };
	const study = sensitivityStudy(arms);
	const of = study.study.groups.length;
	const groups = await gathered(study.study, desk, (done) => desk.say({ kind: "progress", done, of }));
	return groups === null ? null : { kind: "rests-on", restsOn: sensitivityOf(arms, study, groups) };
}
