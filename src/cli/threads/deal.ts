import { Worker } from "node:worker_threads";
import { type Job, type JobKinds, workOn } from "../../studies/index.ts";

type JobOf<K extends keyof JobKinds> = Extract<Job, { readonly kind: K }>;

/**
 * Deals the tasks of a job out to threads that run `script`, and hands every part to `take`. What a thread that died had in
 * hand is worked out here, and so is all that is left once the last has died.
 */
export async function deal<K extends keyof JobKinds>(
	job: JobOf<K>,
	tasks: readonly JobKinds[K]["task"][],
	threads: number,
	take: (part: JobKinds[K]["part"]) => void,
	script: URL,
): Promise<void> {
	let next = 0;
	let living = threads;
	const nextTask = () => tasks[next++] ?? null;
	const workHere = async (task: JobKinds[K]["task"]) => {
		take(workOn<K>(job)(task));
		await new Promise((resume) => setImmediate(resume)); // lets the other threads speak
	};
	const thread = () =>
		new Promise<void>((resolve, reject) => {
			const worker = new Worker(script, { workerData: job });
			let inHand: JobKinds[K]["task"] | null = null;
			const ask = () => {
				inHand = nextTask();
				if (inHand === null) void worker.terminate();
				else worker.postMessage(inHand);
			};
			const end = async () => {
				living--;
				if (inHand !== null) await workHere(inHand);
				if (living > 0) return;
				for (let task = nextTask(); task !== null; task = nextTask()) await workHere(task);
			};
			worker.on("message", (part: JobKinds[K]["part"]) => {
				try {
					take(part);
					ask();
				} catch (error) {
					reject(error);
				}
			});
			worker.on("error", () => {}); // its end is told of next
			worker.on("exit", () => end().then(resolve, reject));
			ask();
		});
	await Promise.all(Array.from({ length: threads }, thread));
}
