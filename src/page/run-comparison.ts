import {
	armsOf,
	compareResult,
	comparisonStudy,
	drawnOf,
	mainMeasures,
	traceDay,
} from "../analysis/index.ts";
import { summaryOf } from "../analysis/summary.ts";
import type { Desk } from "./answer-orders.ts";
import { atMost, checkOrder } from "./check-order.ts";
import { gathered } from "./gathered.ts";
import type { Answer, Order } from "./orders.ts";

/** The regimens of a scenario set against each other, as `compare` does it without asking what the answer rests on. */
export async function runComparison(
	{ text, most, version, between }: Extract<Order, { kind: "compare" }>,
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
	const drawn = drawnOf(
		arms.map((arm) => arm.scenario),
		sums.arms[0].count,
	);
	return {
		kind: "compare",
		result: compareResult(scenario, arms, sums, {
			measures: mainMeasures,
			targets: [],
			restsOn: null,
			drawn,
			version,
		}),
		days: arms.map((arm) => ({
			scenario: summaryOf(arm.scenario, [], version),
			dressings: traceDay(arm.scenario, undefined, drawn.replication).dressings,
		})),
	};
}
