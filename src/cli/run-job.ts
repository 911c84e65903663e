import { availableParallelism } from "node:os";
import { type Job, type JobKinds, workOn } from "../analysis/index.ts";
import { deal } from "./deal.ts";

/** Dressing-days below which starting a thread costs more than it saves. */
const worthThreads = 20_000;

const blockWorker = new URL(
	import.meta.url.endsWith(".ts") ? "./block-worker.ts" : "./block-worker.js",
	import.meta.url,
);

/**
 * Does every task of a job, here or in threads, as many as `workers` says or as its `days` are worth. Parts are handed to
 * `take` as they are done; `progress` is told of the replications that a task has behind it, where it runs here.
 */
export async function runJob<K extends keyof JobKinds>(
	job: Extract<Job, { readonly kind: K }>,
	tasks: readonly JobKinds[K]["task"][],
	how: {
		readonly workers: number | undefined;
		readonly days: number;
		readonly take: (part: JobKinds[K]["part"]) => void;
		readonly progress: (replications: number) => void;
	},
): Promise<void> {
	const threads = Math.min(
		how.workers ?? (how.days < worthThreads ? 1 : availableParallelism()),
		tasks.length,
	);
	if (threads > 1) {
		await deal<K>(job, tasks, threads, how.take, blockWorker);
		return;
	}
	const work = workOn<K>(job);
	for (const task of tasks) {
		how.take(work(task, how.progress));
		await new Promise((resume) => setImmediate(resume)); // lets an interrupt be heard
	}
}
