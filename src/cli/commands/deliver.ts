import { join } from "node:path";
import type { Spoken } from "../../report/spoken.ts";
import type { CompareDrawings } from "../../results/index.ts";
import { writeFolder } from "../files/write-folder.ts";
import type { Typed } from "../options/options.ts";
import type { ExitStatus } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { terminalOf } from "../terminal/terminal.ts";
import type { ReportOrder } from "../threads/report-files.ts";
import { prepareReport } from "../threads/report-thread.ts";

type OrderOf<K extends ReportOrder["kind"]> = Extract<ReportOrder, { readonly kind: K }>;

/** What a command has found out; what only a report shows is worked out where there is one. */
type Told =
	| OrderOf<"day" | "sweep" | "supply">
	| (Omit<OrderOf<"compare">, "drawings"> & { readonly drawings: () => CompareDrawings });

/**
 * Begins to load what a report in `folder` is drawn with, in a thread of its own where the command has one to spare. Returns
 * the function that writes the files, where they are wanted; then tells a terminal the answers, and says where the report is,
 * or prints the result as JSON.
 */
export function delivery(folder: string | null, { json, quiet }: Typed, inThread = true) {
	const draw = prepareReport(inThread && folder !== null);
	return async (told: Told): Promise<ExitStatus> => {
		if (folder !== null)
			await writeFolder(folder, await draw(told.kind === "compare" ? { ...told, drawings: told.drawings() } : told));
		if (json === true) process.stdout.write(await jsonOf(told));
		else if (quiet !== true && folder !== null) {
			const terminal = terminalOf(process.stdout);
			if (terminal !== null) {
				const { spokenWords } = await import("./spoken-words.ts");
				process.stdout.write(spokenWords(await spokenOf(told), terminal));
			}
			process.stdout.write(`The report is in ${fileName(join(folder, "report.html"))}\n`);
		}
		return 0;
	};
}

/** The text of a result: its format is loaded only where it is asked for. */
async function jsonOf({ kind, result }: Told): Promise<string> {
	switch (kind) {
		case "day":
			return (await import("../../results/day.ts")).dayJson(result);
		case "compare":
			return (await import("../../results/compare.ts")).compareJson(result);
		case "sweep":
			return (await import("../../results/sweep.ts")).sweepJson(result);
		case "supply":
			return (await import("../../results/supply.ts")).supplyJson(result);
	}
}

/** The answers in sentences; only a terminal is told them. */
async function spokenOf({ kind, result }: Told): Promise<Spoken> {
	const spoken = await import("../../report/spoken.ts");
	switch (kind) {
		case "day":
			return spoken.spokenDay(result);
		case "compare":
			return spoken.spokenComparison(result);
		case "sweep":
			return spoken.spokenSweep(result);
		case "supply":
			return spoken.spokenSupply(result);
	}
}
