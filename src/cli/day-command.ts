import { basename, join } from "node:path";
import { type DayResult, dayResult } from "../analysis/index.ts";
import {
	checkScenario,
	type Problem,
	UnusableInput,
} from "../scenario/index.ts";
import type { ExitStatus } from "./failure.ts";
import { override, readOptions, type TypedOptions } from "./options.ts";
import { readScenarioFile } from "./read-file.ts";
import { checkFolder, writeFolder } from "./report-folder.ts";
import { runScenario } from "./run-scenario.ts";
import { version } from "./version.ts";

/** Simulates the day and its replications, and writes the report folder; with `--json` prints the result instead. Throws UnusableInput, CouldNotFinish. */
export async function day(
	file: string,
	typed: TypedOptions,
): Promise<ExitStatus> {
	const problems: Problem[] = [];
	const overrides = readOptions(typed, problems);
	const read = readScenarioFile(file);
	if ("problem" in read) throw new UnusableInput([...problems, read.problem]);
	const checked = checkScenario(read.text);
	problems.push(...checked.problems);
	const folder =
		typed.out ??
		(typed.json === true
			? null
			: join("out", basename(file).replace(/\.(ya?ml|json)$/i, "")));
	const scenario =
		checked.scenario === null
			? null
			: override(checked.scenario, overrides, problems);
	if (folder !== null && scenario !== null)
		checkFolder(folder, scenario.title, typed.force === true, problems);
	if (scenario === null || problems.length > 0)
		throw new UnusableInput(problems);

	const quiet = typed.quiet === true;
	const result = dayResult(
		scenario,
		await runScenario(scenario, overrides.workers, quiet),
		version(),
	);
	const { dayJson } = await import("../report/json.ts");
	if (folder !== null) writeFolder(folder, await reportFiles(result));
	if (typed.json === true) process.stdout.write(dayJson(result));
	else if (!quiet && folder !== null)
		process.stdout.write(`The report is in ${join(folder, "report.html")}\n`);
	return 0;
}

/** Every file of a report, by name. */
async function reportFiles(result: DayResult): Promise<Record<string, string>> {
	const [{ JSDOM }, report] = await Promise.all([
		import("jsdom"),
		import("../report/index.ts"),
	]);
	const { document } = new JSDOM(
		"<!doctype html><html lang='en'><head></head><body></body></html>",
	).window;
	return {
		"report.html": report.reportHtml(result, document),
		"day.svg": report.daySvg(result, document),
		"day.json": report.dayJson(result),
		...report.dayTables(result),
	};
}
