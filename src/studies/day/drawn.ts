import type { Drawn } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { blockCount, runBlocks } from "./collector.ts";
import { mostLookedAt, nearestToMedian } from "./typical-day.ts";

/**
 * What is drawn of several regimens: one replication for all of them, so that they meet the same patient. `draw` asks
 * for one by its number; else it is the one nearest the median over all regimens jointly, of the first replications.
 */
export function drawnOf(arms: readonly Scenario[], replications: number, draw?: number): Drawn {
	if (draw !== undefined) return { replication: draw, typicalOf: null };
	const lookedAt = Math.min(mostLookedAt, replications);
	const runs = arms.map((arm) => {
		const scenario = { ...arm, replications: lookedAt };
		return runBlocks(scenario, 0, blockCount(scenario)).courses;
	});
	const days = Array.from({ length: lookedAt }, (_, i) => runs.flatMap((courses) => courses[i].dressings));
	return { replication: nearestToMedian(days), typicalOf: lookedAt };
}
