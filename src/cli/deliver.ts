import { join } from "node:path";
import type { Spoken } from "../report/spoken.ts";
import { fileName } from "./quoted.ts";
import type { ReportFiles } from "./report-files.ts";
import { terminalOf } from "./terminal.ts";
import { uninterrupted } from "./uninterrupted.ts";
import { writeFolder } from "./write-folder.ts";

/** What a command has found out, in the three ways that it can be told. */
export interface Delivery {
	readonly files: () => Promise<ReportFiles>;
	readonly json: () => string;
	/** The answers in sentences; only a terminal is told them. */
	readonly spoken: () => Promise<Spoken>;
}

/** Writes the files of a report, where one is wanted; then tells a terminal the answers, and says where the report is, or prints the result as JSON. */
export async function deliver(
	folder: string | null,
	{ files, json, spoken }: Delivery,
	typed: { readonly json?: boolean; readonly quiet?: boolean },
): Promise<void> {
	if (folder !== null) {
		const report = await files();
		await uninterrupted(() => writeFolder(folder, report));
	}
	if (typed.json === true) process.stdout.write(json());
	else if (typed.quiet !== true && folder !== null) {
		const terminal = terminalOf(process.stdout);
		if (terminal !== null) {
			const { spokenWords } = await import("./spoken-words.ts");
			process.stdout.write(spokenWords(await spoken(), terminal));
		}
		process.stdout.write(
			`The report is in ${fileName(join(folder, "report.html"))}\n`,
		);
	}
}
