import type { Scenario } from "../scenario/index.ts";
import { blockCount } from "./projection.ts";
import { runBlocks } from "./run-blocks.ts";
import { mostLookedAt, nearestToMedian } from "./typical-day.ts";

/** Which replication is drawn. */
export interface Drawn {
	/** Its number, counted from 0. */
	readonly replication: number;
	/** It is the one nearest the median of the first so many; null where it was asked for by its number. */
	readonly typicalOf: number | null;
}

/**
 * What is drawn of several regimens: one replication for all of them, so that they meet the same patient. `draw` asks
 * for one by its number; else it is the one nearest the median over all regimens jointly, of the first replications.
 */
export function drawnOf(
	arms: readonly Scenario[],
	replications: number,
	draw?: number,
): Drawn {
	if (draw !== undefined) return { replication: draw, typicalOf: null };
	const lookedAt = Math.min(mostLookedAt, replications);
	const runs = arms.map((arm) => {
		const scenario = { ...arm, replications: lookedAt };
		return runBlocks(scenario, 0, blockCount(scenario)).courses;
	});
	const days = Array.from({ length: lookedAt }, (_, i) =>
		runs.flatMap((courses) => courses[i].dressings),
	);
	return { replication: nearestToMedian(days), typicalOf: lookedAt };
}
