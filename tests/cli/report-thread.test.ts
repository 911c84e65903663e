import { expect, test } from "vitest";
import { reportFiles } from "../../src/cli/threads/report-files.ts";
import { prepareReport } from "../../src/cli/threads/report-thread.ts";
import { troubledDay } from "../charts/fixture.ts";

const result = troubledDay();
const files = reportFiles({ kind: "day", result });

test.each([
	["dies at its start", "process.exit(3)"],
	[
		"dies with the report in hand",
		"import('node:worker_threads').then(({ parentPort }) => parentPort.once('message', () => process.exit(3)))",
	],
	["throws", "throw new Error('no')"],
])("a thread that %s leaves the report to be drawn here", async (_, code) => {
	const script = new URL(`data:text/javascript,${encodeURIComponent(code)}`);
	expect(await prepareReport(true, script)({ kind: "day", result })).toEqual(files);
});

test("where no report was wanted no thread is started, and one is drawn all the same", async () => {
	expect(await prepareReport(false)({ kind: "day", result })).toEqual(files);
});
