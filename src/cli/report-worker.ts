import { parentPort } from "node:worker_threads";
import type { DayResult } from "../analysis/index.ts";
import { reportFiles } from "./report-files.ts";

/** The thread of `report-thread`: is sent the result of a day, sends back the files of its report. */
parentPort?.on("message", (result: DayResult) => {
	parentPort?.postMessage(reportFiles(result));
});
