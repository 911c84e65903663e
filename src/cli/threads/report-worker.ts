import { parentPort } from "node:worker_threads";
import { type ReportOrder, reportFiles } from "./report-files.ts";

/** The thread of `report-thread`: is sent a result, sends back the files of its report. */
parentPort?.on("message", (order: ReportOrder) => {
	parentPort?.postMessage(reportFiles(order));
});
