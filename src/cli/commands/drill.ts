import { join } from "node:path";
import type { ScriptStep } from "../../rehearsal/index.ts";
import { caseLink, drawCase, isCaseLink, Rehearsal, readCaseLink, readScript } from "../../rehearsal/index.ts";
import { checkScenario, type Problem, type Scenario, UnusableInput } from "../../scenario/index.ts";
import { readScenarioFile } from "../files/read-file.ts";
import { folderFor } from "../files/report-folder.ts";
import { oneFile, placedIn } from "../files/scenario-files.ts";
import { writeFolder } from "../files/write-folder.ts";
import { reader, type Typed } from "../options/options.ts";
import { type ExitStatus, refuse } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { columnsOf } from "../terminal/terminal.ts";
import { debriefWords, opening, play, playTyped } from "./drill-talk.ts";

/**
 * Rehearses a shift in the terminal: asks at a terminal, reads a pipe, or plays a script; then the debrief, in words, as
 * JSON, as a report folder. `problems` are those of the command line. Throws UnusableInput with these and all others.
 */
export async function drill(files: readonly string[], typed: Typed, problems: Problem[]): Promise<ExitStatus> {
	const seed = reader(typed, problems)("seed");
	const file = oneFile("drill", files, "one scenario file, or the #case= part of a link", problems);
	const given = file === undefined ? null : readCase(file, problems);
	const handed =
		given === null ? null : { ...given, seed: seed ?? given.seed, drawn: given.drawn || typed.generate === true };
	const scenario = handed === null ? null : caseOf(handed, file, problems);
	const playedSeed = handed?.seed ?? scenario?.seed ?? "";
	if (typed.script === "-" && file === "-")
		refuse(problems, "--script", "another file than the scenario", "standard input for both");
	const asks = typed.script === undefined && process.stdin.isTTY === true;
	const steps =
		asks ||
		typed.link === true ||
		// What is wrong already is said at once, not after all of a pipe.
		(problems.length > 0 && (typed.script ?? "-") === "-")
			? []
			: readSteps(typed.script ?? "-", problems);
	const folder = await folderFor("drill", typed, null, scenario?.title ?? null, problems);
	if (scenario === null || handed === null || problems.length > 0) throw new UnusableInput(problems);
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
		const { debriefJson } = await import("../../results/debrief.ts");
		process.stdout.write(debriefJson(debrief));
	}
	if (folder !== null) {
		const { reportFiles } = await import("../threads/report-files.ts");
		await writeFolder(folder, reportFiles({ kind: "drill", result: debrief }));
		say(`\nThe report is in ${fileName(join(folder, "report.html"))}\n`);
	}
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
			refuse(problems, "the link", "all of a link that drill --link has made", "one that was cut or altered");
		return handed;
	}
	const read = readScenarioFile(file);
	if ("text" in read) return { text: read.text, seed: undefined, drawn: false };
	problems.push({ ...read.problem, path: fileName(file) });
	return null;
}

/** The case that is played; the seed is the file's own where none is given. Adds to `problems`. */
function caseOf(handed: Given, file: string | undefined, problems: Problem[]): Scenario | null {
	const checked = checkScenario(handed.text);
	const name = isCaseLink(file ?? "") ? "the link" : fileName(file ?? "");
	problems.push(...placedIn(name, checked.problems));
	const { scenario } = checked;
	if (scenario === null) return null;
	if (handed.drawn && scenario.horizonMin > 1440) {
		refuse(problems, "--generate", "a shift of at most 24 h", `${scenario.horizonMin / 60} h`);
		return null;
	}
	if (handed.drawn) return drawCase(scenario, handed.seed ?? scenario.seed);
	if (scenario.rehearsal !== undefined) return scenario;
	refuse(problems, name, "a scenario with a rehearsal: part, or --generate beside it", "one without");
	return null;
}

function readSteps(script: string, problems: Problem[]): readonly ScriptStep[] {
	const read = readScenarioFile(script);
	const name = script === "-" ? "the acts" : fileName(script);
	if ("problem" in read) {
		problems.push({ ...read.problem, path: name, expected: "a list of acts that can be read" });
		return [];
	}
	const { steps, problems: wrong } = readScript(read.text);
	problems.push(...wrong.map((problem) => ({ ...problem, path: name })));
	return steps;
}
