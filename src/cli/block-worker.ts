import { parentPort, workerData } from "node:worker_threads";
import { runBlocks } from "../analysis/index.ts";
import type { Scenario } from "../scenario/index.ts";

/** A thread of `run-scenario`: is sent a span of blocks, sends back what they come to. */
const scenario = workerData as Scenario; // run-scenario sends nothing else
parentPort?.on("message", ([first, last]: [number, number]) => {
	parentPort?.postMessage(runBlocks(scenario, first, last));
});
