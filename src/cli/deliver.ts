import { join } from "node:path";
import { fileName } from "./quoted.ts";
import type { ReportFiles } from "./report-files.ts";
import { uninterrupted } from "./uninterrupted.ts";
import { writeFolder } from "./write-folder.ts";

/** Writes the files of a report, where one is wanted, and says where it is or prints the result as JSON. */
export async function deliver(
	folder: string | null,
	files: () => Promise<ReportFiles>,
	json: () => string,
	typed: { readonly json?: boolean; readonly quiet?: boolean },
): Promise<void> {
	if (folder !== null) {
		const report = await files();
		await uninterrupted(() => writeFolder(folder, report));
	}
	if (typed.json === true) process.stdout.write(json());
	else if (typed.quiet !== true && folder !== null)
		process.stdout.write(
			`The report is in ${fileName(join(folder, "report.html"))}\n`,
		);
}
