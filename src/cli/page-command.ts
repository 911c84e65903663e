import { lstatSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Problem, UnusableInput } from "../scenario/index.ts";
import { type ExitStatus, reasonOf } from "./failure.ts";
import { pageDataIn, pageFile } from "./page-file.ts";
import { readPageFile } from "./page-scenarios.ts";
import { fileName, quoted } from "./quoted.ts";
import { uninterrupted } from "./uninterrupted.ts";
import { version } from "./version.ts";
import { writeFolder } from "./write-folder.ts";

/** Options of `page` as they were typed. */
export interface PageOptions {
	readonly out?: string;
	readonly force?: boolean;
	readonly quiet?: boolean;
}

const demo = (name: string) =>
	fileURLToPath(new URL(`../../scenarios/${name}`, import.meta.url));
const usualName = "workbench.html";

/**
 * Writes the workbench: one HTML file that opens with a day and a ward, those of the demo where none is named; where a
 * ward alone is named, its stores are what is looked at first. `problems` are those of the command line. Throws
 * UnusableInput with these and all others, CouldNotFinish.
 */
export async function page(
	files: readonly string[],
	typed: PageOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	const named = files.map((file) => readPageFile(file, files.length > 1));
	problems.push(...named.flatMap((one) => one.problems));
	const [days, wards] = (["day", "ward"] as const).map((kind) =>
		named.filter((one) => one.kind === kind),
	);
	for (const [kind, found] of [
		["day", days],
		["ward", wards],
	] as const)
		if (found.length > 1)
			problems.push({
				path: "page",
				expected: `one scenario file of a ${kind} at the most`,
				received: `${found.length}: ${found.map(({ file }) => fileName(file)).join(", ")}`,
			});
	const day = days[0] ?? readPageFile(demo("thigh-short-dwell.yaml"), false);
	const ward = wards[0] ?? readPageFile(demo("ward/hospital.yaml"), false);
	const opens = days.length === 0 && wards.length > 0 ? "Stores" : "Day";
	const titles = (named.length === 0 ? [day] : named).map(({ title }) => title);
	const title = titles.includes(null) ? null : titles.join("; ");
	const target = targetOf(typed.out);
	if (typed.force !== true) checkTarget(target, title, problems);
	if (title === null || problems.length > 0) throw new UnusableInput(problems);
	const [{ studyStyle }, { supplyRules }] = await Promise.all([
		import("../report/study-style.ts"),
		import("../report/supply-html.ts"),
	]);
	const text = pageFile(
		{
			format: "slackwater/workbench@1",
			version: version(),
			title,
			scenario: day.text,
			ward: ward.text,
			beside: ward.beside,
			opens,
		},
		`${studyStyle}\n${supplyRules}`,
	);
	await uninterrupted(() =>
		writeFolder(dirname(target), { [basename(target)]: text }),
	);
	if (typed.quiet !== true)
		process.stdout.write(
			`The workbench is in ${fileName(target)}: open it in a browser\n`,
		);
	return 0;
}

/** The file that is written: as it was named, or of its usual name in the folder that was named. */
function targetOf(out: string | undefined): string {
	if (out === undefined) return join("out", usualName);
	return /\.html?$/iu.test(out) && !isFolder(out) ? out : join(out, usualName);
}

const isFolder = (path: string): boolean =>
	statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** Adds to `problems` what keeps the file from being written: another scenario's workbench, a foreign file, a folder of its name. */
function checkTarget(
	target: string,
	title: string | null,
	problems: Problem[],
): void {
	const shown = fileName(target);
	const refuse = (received: string) =>
		problems.push({
			path: "--out",
			expected: "a new file, or an earlier workbench of this scenario",
			received,
		});
	try {
		const there = lstatSync(target, { throwIfNoEntry: false });
		if (there === undefined) return;
		if (isFolder(target)) {
			refuse(`${shown}, which is a folder`);
			return;
		}
		const data = pageDataIn(readFileSync(target, "utf8"));
		if (data === null)
			refuse(`${shown}, which is another file (--force overwrites it)`);
		else if (title !== null && data.title !== title)
			refuse(
				`${shown}, which is the workbench of ${quoted(data.title)} (--force overwrites it)`,
			);
	} catch (error) {
		refuse(`${shown}: ${reasonOf(error)}`);
	}
}
