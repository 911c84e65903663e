import {
	type BlockTask,
	type Found,
	RuleSearch,
	type SupplyPart,
	wardBlock,
	wardBlocks,
} from "../analysis/index.ts";
import { dayMin, type WardScenario } from "../scenario/index.ts";
import type { OrderRule } from "../therapy/index.ts";
import { Progress } from "./progress.ts";
import { runJob } from "./run-job.ts";

/** Parts that a run is dealt out in: few enough to keep what is sent small, enough to keep several threads busy to the end. */
const tasksOfRun = 8;

/** Parts of a span of blocks, one a task. */
function tasksFor(first: number, last: number, tasks: number): BlockTask[] {
	const step = Math.max(1, Math.ceil((last - first) / tasks));
	const dealt: BlockTask[] = [];
	for (let from = first; from < last; from += step)
		dealt.push({ first: from, last: Math.min(from + step, last) });
	return dealt;
}

/** Dressing-days of a ward's replications, about. */
const daysOf = (ward: WardScenario, replications: number): number =>
	(replications *
		(ward.units ?? ward.beds.length + 20) *
		(ward.horizonMin + ward.warmUpMin)) /
	dayMin;

/** Looks for the order rules of a ward over all of its replications, on as many threads as they are worth. */
export async function searchRules(
	ward: WardScenario,
	workers: number | undefined,
	quiet: boolean,
): Promise<Found> {
	const search = new RuleSearch(ward);
	const blocks = wardBlocks(ward);
	let done = Math.min(search.firstBlock * wardBlock, ward.replications);
	const progress = new Progress(
		ward.replications,
		quiet,
		"order rules, replications",
	);
	const { plan } = search;
	try {
		await runJob<"search">(
			{ kind: "search", ward, plan },
			tasksFor(search.firstBlock, blocks, tasksOfRun),
			{
				workers,
				days: daysOf(ward, ward.replications - done),
				take: (part) => {
					search.add(part);
					done += part.replications;
					progress.update(done);
				},
				progress: (replications) => progress.update(done + replications),
			},
		);
	} finally {
		progress.stop();
	}
	return search.found();
}

/** Runs the blocks `first` … `last` − 1 of a ward on as many threads as they are worth; parts are handed to `take` as they come. */
export async function runWard(
	ward: WardScenario,
	rules: readonly OrderRule[],
	[first, last]: readonly [first: number, last: number],
	workers: number | undefined,
	quiet: boolean,
	take: (part: SupplyPart) => void,
): Promise<void> {
	const tasks = tasksFor(first, last, tasksOfRun);
	const mine = Math.min((last - first) * wardBlock, ward.replications);
	const runs = mine * (2 + ward.policies.length);
	const progress = new Progress(mine, quiet);
	let done = 0;
	try {
		await runJob<"ward">({ kind: "ward", ward, rules }, tasks, {
			workers,
			days: daysOf(ward, runs),
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
