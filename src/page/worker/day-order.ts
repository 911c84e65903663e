import { blockCount, dayResult, ProjectionGathering, runBlocks } from "../../studies/index.ts";
import { atMost, checkOrder, type Desk, tracedDay } from "./desk.ts";
import type { Answer, OrderOf } from "./orders.ts";

/** After this long the drawn day is shown without its projection, ms. */
const patienceMs = 90;

/** The day of a scenario with its projection, block by block, so that a newer order can stop it. */
export async function runDay({ text, most, version }: OrderOf<"day">, desk: Desk): Promise<Answer | null> {
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
			desk.say({ kind: "traced", day: tracedDay(scenario, gathering.typical(), version) });
		}
	}
	return { kind: "day", result: dayResult(scenario, gathering, version) };
}
