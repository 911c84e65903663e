import { createInterface } from "node:readline/promises";
import {
	type Answer,
	manual,
	type Rehearsal,
	readStep,
	type ScriptStep,
	stepText,
	takeStep,
	viewWords,
} from "../rehearsal/index.ts";
import { cautionSentences } from "../report/caution.ts";
import { sentence } from "../scenario/index.ts";
import { columnsOf, wrapped } from "./wrapped.ts";

/** What is said at the start of a rehearsal. */
export const opening = (rehearsal: Rehearsal, columns: number): string =>
	[
		`${rehearsal.title}\n\n`,
		wrapped(rehearsal.brief, "", columns),
		"\n",
		...cautionSentences.map((text) => wrapped(text, "", columns)),
		"\n",
		wrapped(viewWords(rehearsal.view()), "", columns),
	].join("");

/** Plays steps one after the other; stops where the rehearsal is over. */
export function play(
	rehearsal: Rehearsal,
	steps: readonly ScriptStep[],
	say: (text: string) => void,
	columns: number,
): void {
	for (const step of steps) {
		if (rehearsal.over) return;
		const answer = takeStep(rehearsal, step);
		if (answer === null) return;
		say(`> ${stepText(step)}\n${answerWords(answer, columns)}`);
	}
}

function answerWords(
	{ meanwhile, words, view }: Answer,
	columns: number,
): string {
	return [
		...meanwhile.map(({ clock, words }) => `  ${clock}  ${words}\n`),
		words === "Time passes." ? "" : wrapped(words, "  ", columns),
		wrapped(viewWords(view), "", columns),
	].join("");
}

/** Asks at the terminal what to do next, until the end; a line that is not understood is asked again. */
export async function playTyped(
	rehearsal: Rehearsal,
	talk: NodeJS.WriteStream,
): Promise<void> {
	const terminal = createInterface({
		input: process.stdin,
		output: talk,
	});
	talk.write(`\n${manual}\n`);
	try {
		// A closed terminal ends the loop, and with it the rehearsal.
		terminal.setPrompt("> ");
		terminal.prompt();
		for await (const line of terminal) {
			const step = line.trim() === "help" ? "help" : readStep(line);
			if (step === "help") talk.write(`${manual}\n`);
			else if (step !== null && "problem" in step)
				talk.write(`${sentence({ path: "that", ...step.problem })}\n`);
			else if (step !== null) {
				const answer = takeStep(rehearsal, step);
				if (answer === null) return;
				talk.write(answerWords(answer, columnsOf(talk)));
			}
			if (rehearsal.over) return;
			terminal.prompt();
		}
	} finally {
		terminal.close();
	}
}
