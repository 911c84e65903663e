import { Worker } from "node:worker_threads";
import { threadScript } from "../files/own.ts";
import type { ReportFiles, ReportOrder } from "./report-files.ts";

const script = threadScript("report-worker");

/**
 * Begins to load what a report is drawn with (most of a second) in a thread of its own, while the days are simulated.
 * Returns the function that draws; where the thread has died it draws here instead.
 */
export function prepareReport(wanted: boolean, worker = script): (order: ReportOrder) => Promise<ReportFiles> {
	const thread = wanted ? new Worker(worker) : null;
	let dead = thread === null;
	thread?.unref();
	thread?.on("error", () => {}); // its end is told of next
	thread?.on("exit", () => {
		dead = true;
	});
	const here = async (order: ReportOrder) => (await import("./report-files.ts")).reportFiles(order);
	return (order) => {
		if (thread === null || dead) return here(order);
		return new Promise((resolve, reject) => {
			const draw = () => void here(order).then(resolve, reject);
			thread.ref();
			thread.once("exit", draw);
			thread.once("message", (files: ReportFiles) => {
				thread.off("exit", draw);
				void thread.terminate().then(() => resolve(files));
			});
			thread.postMessage(order);
		});
	};
}
