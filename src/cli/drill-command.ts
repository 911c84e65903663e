import { join } from "node:path";
import {
	caseLink,
	type Debrief,
	drawCase,
	isCaseLink,
	Rehearsal,
	readCaseLink,
	readScript,
	type ScriptStep,
} from "../rehearsal/index.ts";
import {
	checkScenario,
	type Problem,
	type Scenario,
	UnusableInput,
} from "../scenario/index.ts";
import { placedIn } from "./check-file.ts";
import { debriefWords } from "./debrief-words.ts";
import { opening, play, playTyped } from "./drill-talk.ts";
import type { ExitStatus } from "./failure.ts";
import { oneFile } from "./one-file.ts";
import { readOptions } from "./options.ts";
import { fileName } from "./quoted.ts";
import { readScenarioFile } from "./read-file.ts";
import { checkFolder } from "./report-folder.ts";
import { uninterrupted } from "./uninterrupted.ts";
import { columnsOf } from "./wrapped.ts";
import { writeFolder } from "./write-folder.ts";

/** Options of `drill` as they were typed. */
export interface DrillOptions {
	readonly script?: string;
	readonly seed?: string;
	readonly generate?: boolean;
	readonly link?: boolean;
	readonly out?: string;
	readonly force?: boolean;
	readonly json?: boolean;
	readonly quiet?: boolean;
}

/**
 * Rehearses a shift in the terminal: asks at a terminal, reads a pipe, or plays a script; then the debrief, in words, as
 * JSON, as a report folder. `problems` are those of the command line. Throws UnusableInput with these and all others.
 */
export async function drill(
	files: readonly string[],
	typed: DrillOptions,
	problems: Problem[],
): Promise<ExitStatus> {
	const { seed } = readOptions({ seed: typed.seed }, problems);
	const file = oneFile(
		"drill",
		files,
		"one scenario file, or the #case= part of a link",
		problems,
	);
	const given = file === undefined ? null : readCase(file, problems);
	const handed =
		given === null
			? null
			: {
					...given,
					seed: seed ?? given.seed,
					drawn: given.drawn || typed.generate === true,
				};
	const scenario = handed === null ? null : caseOf(handed, file, problems);
	const playedSeed = handed?.seed ?? scenario?.seed ?? "";
	if (typed.script === "-" && file === "-")
		problems.push({
			path: "--script",
			expected: "another file than the scenario",
			received: "standard input for both",
		});
	const asks = typed.script === undefined && process.stdin.isTTY === true;
	const steps =
		asks ||
		typed.link === true ||
		// What is wrong already is said at once, not after all of a pipe.
		(problems.length > 0 && (typed.script ?? "-") === "-")
			? []
			: readSteps(typed.script ?? "-", problems);
	if (typed.out !== undefined)
		await uninterrupted(() =>
			checkFolder(
				typed.out ?? "",
				"drill",
				scenario?.title ?? null,
				typed.force === true,
				problems,
			),
		);
	if (scenario === null || handed === null || problems.length > 0)
		throw new UnusableInput(problems);
	if (typed.link === true) {
		process.stdout.write(`${caseLink({ ...handed, seed: playedSeed })}\n`);
		return 0;
	}

	const say = (text: string) => {
		if (typed.json !== true && typed.quiet !== true) process.stdout.write(text);
	};
	const columns = columnsOf(process.stdout);
	const rehearsal = new Rehearsal(scenario, playedSeed);
	if (asks) {
		// With --json standard output is for the debrief alone.
		const talk = typed.json === true ? process.stderr : process.stdout;
		talk.write(opening(rehearsal, columnsOf(talk)));
		await playTyped(rehearsal, talk);
	} else {
		say(opening(rehearsal, columns));
		play(rehearsal, steps, say, columns);
	}
	const debrief = rehearsal.debrief();
	say(debriefWords(debrief, columns));
	if (typed.json === true) {
		const { debriefJson } = await import("../report/debrief-json.ts");
		process.stdout.write(debriefJson(debrief));
	}
	if (typed.out !== undefined) await write(debrief, typed.out, say);
	return 0;
}

interface Given {
	readonly text: string;
	readonly seed: string | undefined;
	readonly drawn: boolean;
}

/** The text of a case, from a file or out of a link. */
function readCase(file: string, problems: Problem[]): Given | null {
	if (isCaseLink(file)) {
		const handed = readCaseLink(file);
		if (handed === null)
			problems.push({
				path: "the link",
				expected: "all of a link that drill --link has made",
				received: "one that was cut or altered",
			});
		return handed;
	}
	const read = readScenarioFile(file);
	if ("text" in read) return { text: read.text, seed: undefined, drawn: false };
	problems.push({ ...read.problem, path: fileName(file) });
	return null;
}

/** The case that is played; the seed is the file's own where none is given. Adds to `problems`. */
function caseOf(
	handed: Given,
	file: string | undefined,
	problems: Problem[],
): Scenario | null {
	const checked = checkScenario(handed.text);
	const name = isCaseLink(file ?? "") ? "the link" : fileName(file ?? "");
	problems.push(...placedIn(name, checked.problems));
	const { scenario } = checked;
	if (scenario === null) return null;
	if (handed.drawn && scenario.horizonMin > 1440) {
		problems.push({
			path: "--generate",
			expected: "a shift of at most 24 h",
			received: `${scenario.horizonMin / 60} h`,
		});
		return null;
	}
	if (handed.drawn) return drawCase(scenario, handed.seed ?? scenario.seed);
	if (scenario.rehearsal !== undefined) return scenario;
	problems.push({
		path: name,
		expected: "a scenario with a rehearsal: part, or --generate beside it",
		received: "one without",
	});
	return null;
}

function readSteps(script: string, problems: Problem[]): readonly ScriptStep[] {
	const read = readScenarioFile(script);
	const name = script === "-" ? "the acts" : fileName(script);
	if ("problem" in read) {
		problems.push({
			...read.problem,
			path: name,
			expected: "a list of acts that can be read",
		});
		return [];
	}
	const { steps, problems: wrong } = readScript(read.text);
	problems.push(...wrong.map((problem) => ({ ...problem, path: name })));
	return steps;
}

async function write(
	debrief: Debrief,
	folder: string,
	say: (text: string) => void,
): Promise<void> {
	const { debriefFiles } = await import("./debrief-files.ts");
	const report = debriefFiles(debrief);
	await uninterrupted(() => writeFolder(folder, report));
	say(`\nThe report is in ${fileName(join(folder, "report.html"))}\n`);
}
