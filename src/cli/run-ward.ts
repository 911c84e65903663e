import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { runWardBlocks, type SupplyPart } from "../analysis/index.ts";
import { dayMin, type WardScenario } from "../scenario/index.ts";
import type { OrderRule } from "../therapy/index.ts";
import { Progress } from "./progress.ts";

/** Bed-days below which starting a thread costs more than it saves. */
const worthThreads = 20_000;

const script = new URL(
	import.meta.url.endsWith(".ts") ? "./ward-worker.ts" : "./ward-worker.js",
	import.meta.url,
);

type Span = readonly [first: number, last: number];

/** Runs the blocks `first` … `last` − 1 of a ward on as many threads as they are worth; parts are handed to `take` as they come. */
export async function runWard(
	ward: WardScenario,
	rules: readonly OrderRule[],
	[first, last]: Span,
	workers: number | undefined,
	quiet: boolean,
	take: (part: SupplyPart) => void,
): Promise<void> {
	const blocks = last - first;
	const runs = ward.replications * (1 + ward.policies.length);
	const beds = ward.units ?? ward.beds.length + 20;
	const days = (runs * beds * (ward.horizonMin + ward.warmUpMin)) / dayMin;
	const threads = Math.min(
		workers ?? (days < worthThreads ? 1 : availableParallelism()),
		blocks,
	);
	const progress = new Progress(ward.replications, quiet);
	let done = 0;
	const taken = (part: SupplyPart) => {
		take(part);
		done += part.replications;
		progress.update(done);
	};
	try {
		if (threads <= 1) {
			taken(
				runWardBlocks(ward, rules, first, last, (n) =>
					progress.update(done + n),
				),
			);
			return;
		}
		// Four turns a thread: few enough to keep what is sent small, enough to keep all of them busy to the end.
		const step = Math.max(1, Math.ceil(blocks / (threads * 4)));
		const spans: Span[] = [];
		for (let from = first; from < last; from += step)
			spans.push([from, Math.min(from + step, last)]);
		await Promise.all(
			Array.from({ length: threads }, () =>
				oneThread(ward, rules, spans, taken),
			),
		);
		// What threads that died have left.
		for (let span = spans.shift(); span !== undefined; span = spans.shift())
			taken(runWardBlocks(ward, rules, ...span));
	} finally {
		progress.stop();
	}
}

/** One thread that works on spans until none is left; a span that it dies over goes back. */
function oneThread(
	ward: WardScenario,
	rules: readonly OrderRule[],
	spans: Span[],
	taken: (part: SupplyPart) => void,
): Promise<void> {
	return new Promise((resolve, reject) => {
		const worker = new Worker(script, { workerData: { ward, rules } });
		let inHand: Span | undefined;
		const next = () => {
			inHand = spans.shift();
			if (inHand === undefined) void worker.terminate();
			else worker.postMessage(inHand);
		};
		worker.on("message", (part: SupplyPart) => {
			try {
				taken(part);
				next();
			} catch (error) {
				reject(error);
			}
		});
		worker.on("error", () => {}); // its end is told of next
		worker.on("exit", () => {
			if (inHand !== undefined) spans.push(inHand);
			resolve();
		});
		next();
	});
}
