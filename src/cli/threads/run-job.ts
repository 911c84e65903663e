import { availableParallelism } from "node:os";
import { type BlockTask, type Job, type JobKinds, workOn } from "../../studies/index.ts";
import { threadScript } from "../files/own.ts";
import { progressBar } from "../terminal/progress.ts";
import { deal } from "./deal.ts";

/** Dressing-days below which starting a thread costs more than it saves. */
const worthThreads = 20_000;

const blockWorker = threadScript("block-worker");

/** The blocks `first` … `last` − 1 as tasks of `step` blocks each. */
export const spans = (first: number, last: number, step: number): BlockTask[] =>
	Array.from({ length: Math.ceil((last - first) / step) }, (_, i) => ({
		first: first + i * step,
		last: Math.min(first + (i + 1) * step, last),
	}));

/** How a run is done; what it comes to is the same. */
export interface Effort {
	/** Threads; undefined: as many as the work is worth. */
	readonly workers?: number | undefined;
	/** Whether how far it has come is kept to itself. */
	readonly quiet: boolean;
}

/**
 * Does every task of a job, here or in threads, as many as `workers` says or as its `days` are worth. Parts are handed to
 * `take` as they are done. How many of the `total` replications are done, `done` of them before it began, is shown.
 */
export async function runJob<K extends keyof JobKinds>(
	job: Extract<Job, { readonly kind: K }>,
	tasks: readonly JobKinds[K]["task"][],
	how: Effort & {
		readonly days: number;
		readonly total: number;
		readonly done?: number;
		/** What is counted, where that is not plain replications. */
		readonly counted?: string;
		/** Replications of a part. */
		readonly size: (part: JobKinds[K]["part"]) => number;
		readonly take: (part: JobKinds[K]["part"]) => void;
	},
): Promise<void> {
	const progress = progressBar(how.total, how.quiet, how.counted);
	let done = how.done ?? 0;
	const take = (part: JobKinds[K]["part"]) => {
		how.take(part);
		done += how.size(part);
		progress.update(done);
	};
	const threads = Math.min(how.workers ?? (how.days < worthThreads ? 1 : availableParallelism()), tasks.length);
	try {
		if (threads > 1) {
			await deal<K>(job, tasks, threads, take, blockWorker);
			return;
		}
		const work = workOn<K>(job);
		// A task of a study tells of one arm, and its size is of all: it counts as it ends.
		const within = job.kind === "study" ? () => {} : (replications: number) => progress.update(done + replications);
		for (const task of tasks) {
			take(work(task, within));
			await new Promise((resume) => setImmediate(resume)); // lets an interrupt be heard
		}
	} finally {
		progress.stop();
	}
}
