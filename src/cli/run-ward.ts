import type { BlockTask, SupplyPart } from "../analysis/index.ts";
import { dayMin, type WardScenario } from "../scenario/index.ts";
import type { OrderRule } from "../therapy/index.ts";
import { Progress } from "./progress.ts";
import { runJob } from "./run-job.ts";

/** Parts that a run is dealt out in: few enough to keep what is sent small, enough to keep several threads busy to the end. */
const tasksOfRun = 8;

/** Runs the blocks `first` … `last` − 1 of a ward on as many threads as they are worth; parts are handed to `take` as they come. */
export async function runWard(
	ward: WardScenario,
	rules: readonly OrderRule[],
	[first, last]: readonly [first: number, last: number],
	workers: number | undefined,
	quiet: boolean,
	take: (part: SupplyPart) => void,
): Promise<void> {
	const step = Math.max(1, Math.ceil((last - first) / tasksOfRun));
	const tasks: BlockTask[] = [];
	for (let from = first; from < last; from += step)
		tasks.push({ first: from, last: Math.min(from + step, last) });
	const runs = ward.replications * (1 + ward.policies.length);
	const beds = ward.units ?? ward.beds.length + 20;
	const progress = new Progress(ward.replications, quiet);
	let done = 0;
	try {
		await runJob<"ward">({ kind: "ward", ward, rules }, tasks, {
			workers,
			days: (runs * beds * (ward.horizonMin + ward.warmUpMin)) / dayMin,
			take: (part) => {
				take(part);
				done += part.replications;
				progress.update(done);
			},
			progress: (replications) => progress.update(done + replications),
		});
	} finally {
		progress.stop();
	}
}
