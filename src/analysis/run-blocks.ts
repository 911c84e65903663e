import type { Scenario } from "../scenario/index.ts";
import { TherapyDay } from "../therapy/index.ts";
import { Collector, type RunPart } from "./collector.ts";

/** Runs the replications of the blocks `first` … `last` − 1. `progress` is told, after each block, how many replications are done. */
export function runBlocks(
	scenario: Scenario,
	first: number,
	last: number,
	progress?: (replications: number) => void,
): RunPart {
	const collector = new Collector(scenario);
	return collector.runBlocks(
		new TherapyDay(scenario, collector),
		first,
		last,
		progress,
	);
}
