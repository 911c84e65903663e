import { createInterface } from "node:readline/promises";
import type { Answer, Rehearsal, ScriptStep } from "../../rehearsal/index.ts";
import { readStep, stepText, takeStep, viewWords } from "../../rehearsal/index.ts";
import { manual } from "../../rehearsal/places/takings.ts";
import type { Debrief } from "../../results/index.ts";
import { sentence } from "../../scenario/index.ts";
import { cautionSentences } from "../../vocabulary/index.ts";
import { columnsOf, wrapped } from "../terminal/terminal.ts";

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

function answerWords({ meanwhile, words, view }: Answer, columns: number): string {
	return [
		...meanwhile.map(({ clock, words }) => `  ${clock}  ${words}\n`),
		words === "Time passes." ? "" : wrapped(words, "  ", columns),
		wrapped(viewWords(view), "", columns),
	].join("");
}

/** Asks at the terminal what to do next, until the end; a line that is not understood is asked again. */
export async function playTyped(rehearsal: Rehearsal, talk: NodeJS.WriteStream): Promise<void> {
	const terminal = createInterface({ input: process.stdin, output: talk });
	talk.write(`\n${manual}\n`);
	try {
		// A closed terminal ends the loop, and with it the rehearsal.
		terminal.setPrompt("> ");
		terminal.prompt();
		for await (const line of terminal) {
			const step = line.trim() === "help" ? "help" : readStep(line);
			if (step === "help") talk.write(`${manual}\n`);
			else if (step !== null && "problem" in step) talk.write(`${sentence({ path: "that", ...step.problem })}\n`);
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

/** The debrief for a terminal, in lines of `columns`: the day in sentences, what was not needed, the orderly search, the cautions. */
export function debriefWords(debrief: Debrief, columns?: number): string {
	const needless = debrief.log
		.filter((entry) => entry.needless !== "")
		.map(({ span, kind, what, needless }) => `${span}  ${kind} ${what}: ${needless}.`);
	const believed = debrief.log
		.filter((entry) => entry.believed !== "")
		.map(({ span, what, believed }) => `${span}  ${what}: ${believed}.`);
	const parts: [string, readonly string[]][] = [
		["DEBRIEF", debrief.facts],
		["Not needed, or out of order", needless],
		["What could be believed after each look", believed],
		["An orderly search, cheapest and likeliest first", debrief.search.sentences],
		["What is said of likelihood", [debrief.search.note]],
		["", cautionSentences],
	];
	return parts
		.filter(([, sentences]) => sentences.length > 0)
		.map(
			([heading, sentences]) =>
				`\n${heading === "" ? "" : `${heading}\n`}${sentences.map((sentence) => wrapped(sentence, "  ", columns)).join("")}`,
		)
		.join("");
}
