import type { DayResult, TracedDayResult } from "../../results/index.ts";
import { summaryOf } from "../../studies/day/summary.ts";
import { blockCount, dayResult, ProjectionGathering, runBlocks, traceDay } from "../../studies/index.ts";
import { atMost, type Checked, checkOrder } from "./check-order.ts";
import type { Desk, Nothing } from "./desk.ts";

export interface DayOrder {
	readonly kind: "day";
	/** Text of a scenario. */
	readonly text: string;
	/** Replications at the most, while something is being dragged; null: those of the scenario. */
	readonly most: number | null;
	/** Version of the program, for the result. */
	readonly version: string;
}

export type DayAnswer =
	| Checked
	| Nothing
	/** The drawn day alone, where the projection takes its time. */
	| { readonly kind: "traced"; readonly day: TracedDayResult }
	| { readonly kind: "day"; readonly result: DayResult };

/** After this long the drawn day is shown without its projection, ms. */
const patienceMs = 90;

/** The day of a scenario with its projection, block by block, so that a newer order can stop it. */
export async function runDay({ text, most, version }: DayOrder, desk: Desk<DayAnswer>): Promise<DayAnswer | null> {
	const began = performance.now();
	const checked = checkOrder(text, desk);
	if (checked === null) return { kind: "nothing" };
	const scenario = atMost(checked, most);
	const gathering = new ProjectionGathering(scenario);
	const blocks = blockCount(scenario);
	let shown = false;
	for (let block = 0; block < blocks; block++) {
		gathering.add(runBlocks(scenario, block, block + 1));
		if (!(await desk.goOn())) return null;
		if (!shown && performance.now() - began > patienceMs) {
			shown = true;
			desk.say({
				kind: "traced",
				day: {
					scenario: summaryOf(scenario, [], version),
					dressings: traceDay(scenario, undefined, gathering.typical()).dressings,
				},
			});
		}
	}
	return { kind: "day", result: dayResult(scenario, gathering, version) };
}
