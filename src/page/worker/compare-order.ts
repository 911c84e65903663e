import type { CompareResult, TracedDayResult } from "../../results/index.ts";
import { summaryOf } from "../../studies/day/summary.ts";
import { armsOf, compareResult, comparisonStudy, drawnOf, traceDay } from "../../studies/index.ts";
import { mainMeasures } from "../../vocabulary/index.ts";
import { atMost, type Checked, checkOrder } from "./check-order.ts";
import type { Desk, Nothing } from "./desk.ts";
import { gathered } from "./gathered.ts";

export interface CompareOrder {
	readonly kind: "compare";
	readonly text: string;
	readonly most: number | null;
	readonly version: string;
	/** Only these two regimens; null: all of the scenario. */
	readonly between: readonly [string, string] | null;
}

export type CompareAnswer =
	| Checked
	| Nothing
	| { readonly kind: "compare"; readonly result: CompareResult; readonly days: readonly TracedDayResult[] };

/** The regimens of a scenario set against each other, as `compare` does it without asking what the answer rests on. */
export async function runComparison(
	{ text, most, version, between }: CompareOrder,
	desk: Desk<CompareAnswer>,
): Promise<CompareAnswer | null> {
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
		result: compareResult(scenario, arms, sums, { measures: mainMeasures, targets: [], restsOn: null, drawn, version }),
		days: arms.map((arm) => ({
			scenario: summaryOf(arm.scenario, [], version),
			dressings: traceDay(arm.scenario, undefined, drawn.replication).dressings,
		})),
	};
}
