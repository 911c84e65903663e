import { lstatSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { checkScenario, checkWard, isWard, type Load, type Problem, UnusableInput } from "../../scenario/index.ts";
import { ownFile, version } from "../files/own.ts";
import { pageDataIn, pageFile } from "../files/page-file.ts";
import { readScenarioFile } from "../files/read-file.ts";
import { throwIfDiskFails, tryPlace } from "../files/report-folder.ts";
import { beside, placedIn } from "../files/scenario-files.ts";
import { writeFolder } from "../files/write-folder.ts";
import type { Typed } from "../options/options.ts";
import { type ExitStatus, reasonOf, refuse } from "../terminal/failure.ts";
import { fileName, quoted } from "../terminal/quoted.ts";

const demo = (name: string) => fileURLToPath(ownFile(`scenarios/${name}`));
const usualName = "workbench.html";

/**
 * Writes the workbench: one HTML file that opens with a day and a ward, those of the demo where none is named; where a
 * ward alone is named, its stores are what is looked at first. `problems` are those of the command line. Throws
 * UnusableInput with these and all others, CouldNotFinish.
 */
export async function page(files: readonly string[], typed: Typed, problems: Problem[]): Promise<ExitStatus> {
	const named = files.map((file) => readPageFile(file, files.length > 1));
	problems.push(...named.flatMap((one) => one.problems));
	const [days, wards] = (["day", "ward"] as const).map((kind) => {
		const found = named.filter((one) => one.kind === kind);
		const received = `${found.length}: ${found.map(({ file }) => fileName(file)).join(", ")}`;
		if (found.length > 1) refuse(problems, "page", `one scenario file of a ${kind} at the most`, received);
		return found;
	});
	const day = days[0] ?? readPageFile(demo("thigh-short-dwell.yaml"), false);
	const ward = wards[0] ?? readPageFile(demo("ward/hospital.yaml"), false);
	const opens = days.length === 0 && wards.length > 0 ? "Stores" : "Day";
	const titles = (named.length === 0 ? [day] : named).map(({ title }) => title);
	const title = titles.includes(null) ? null : titles.join("; ");
	const target = targetOf(typed.out);
	checkTarget(target, title, typed.force === true, problems);
	if (title === null || problems.length > 0) throw new UnusableInput(problems);
	const [{ studyStyle }, { supplyRules }] = await Promise.all([
		import("../../report/kit/report-style.ts"),
		import("../../report/supply/supply-html.ts"),
	]);
	const carried = { scenario: day.text, ward: ward.text, beside: ward.beside, opens } as const;
	const data = { format: "slackwater/workbench@1", version: version(), title, ...carried } as const;
	const text = pageFile(data, `${studyStyle}\n${supplyRules}`);
	await writeFolder(dirname(target), { [basename(target)]: text });
	if (typed.quiet !== true) process.stdout.write(`The workbench is in ${fileName(target)}: open it in a browser\n`);
	return 0;
}

/**
 * Reads and checks a day's or a ward's file that the workbench is to open with; the title is null where there are problems.
 * `beside`: texts of the files that a ward takes its dressings from, by the name that stands in it. `several`: problems say
 * which of several files they are of.
 */
function readPageFile(file: string, several: boolean) {
	const read = readScenarioFile(file);
	const text = "problem" in read ? "" : read.text;
	const named = new Map<string, string>();
	const load: Load = (name) => {
		const other = beside(file)(name);
		if ("text" in other) named.set(name, other.text);
		return other;
	};
	const { title, problems } = "problem" in read ? { title: null, problems: [read.problem] } : titled(text, load);
	return {
		file,
		kind: isWard(text) ? "ward" : "day",
		title,
		text,
		beside: Object.fromEntries(named),
		problems: placedIn(fileName(file), problems, several),
	};
}

function titled(text: string, load: Load) {
	if (!isWard(text)) {
		const { scenario, problems } = checkScenario(text);
		return { title: scenario?.title ?? null, problems };
	}
	const { ward, problems } = checkWard(text, load);
	return { title: ward?.title ?? null, problems };
}

/** The file that is written: as it was named, or of its usual name in the folder that was named. */
function targetOf(out: string | undefined): string {
	if (out === undefined) return join("out", usualName);
	return /\.html?$/iu.test(out) && !isFolder(out) ? out : join(out, usualName);
}

const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/**
 * Adds to `problems` what keeps the file from being written: another scenario's workbench, a foreign file (neither matters
 * where it is forced), a folder of its name, a place where nothing can be made. Throws CouldNotFinish where the disk is full.
 */
function checkTarget(target: string, title: string | null, force: boolean, problems: Problem[]): void {
	const shown = fileName(target);
	const taken = (received: string) =>
		refuse(problems, "--out", "a new file, or an earlier workbench of this scenario", received);
	try {
		const there = lstatSync(target, { throwIfNoEntry: false });
		if (there !== undefined && isFolder(target)) taken(`${shown}, which is a folder`);
		else if (there !== undefined && !force) {
			const data = pageDataIn(readFileSync(target, "utf8"));
			if (data === null) taken(`${shown}, which is another file (--force overwrites it)`);
			else if (title !== null && data.title !== title)
				taken(`${shown}, which is the workbench of ${quoted(data.title)} (--force overwrites it)`);
		}
		if (problems.length === 0) tryPlace(dirname(target));
	} catch (error) {
		throwIfDiskFails(error, dirname(target));
		taken(`${shown}: ${reasonOf(error)}`);
	}
}
