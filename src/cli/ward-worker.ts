import { parentPort, workerData } from "node:worker_threads";
import { runWardBlocks } from "../analysis/index.ts";
import type { WardScenario } from "../scenario/index.ts";
import type { OrderRule } from "../therapy/index.ts";

/** A thread of `run-ward`: is sent a span of blocks, sends back what they come to. */
const { ward, rules } = workerData as {
	ward: WardScenario;
	rules: OrderRule[];
}; // run-ward sends nothing else
parentPort?.on("message", ([first, last]: [number, number]) => {
	parentPort?.postMessage(runWardBlocks(ward, rules, first, last));
});
