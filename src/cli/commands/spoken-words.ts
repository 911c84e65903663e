import { unbroken } from "../../report/kit/html-element.ts";
import type { Spoken, SpokenPart } from "../../report/spoken.ts";
import { type Sentence, strong } from "../../words/index.ts";
import { printable } from "../terminal/quoted.ts";
import { type Terminal, type Word, wrappedWords } from "../terminal/terminal.ts";

const [bold, plain] = ["\u001B[1m", "\u001B[22m"];

/** What a report answers, for a terminal: title, sentences, cautions, broken into lines as wide as it is. */
export function spokenWords({ title, parts, cautions }: Spoken, terminal: Terminal): string {
	return [
		lines([strong(title)], terminal),
		...parts.map((part) => partWords(part, terminal)),
		"\n",
		...cautions.map((caution) => lines([caution], terminal)),
		"\n",
	].join("");
}

const partWords = (part: SpokenPart, terminal: Terminal): string =>
	[
		"\n",
		part.heading === null ? "" : lines([strong(part.heading)], terminal),
		...part.sentences.map((sentence) => lines(sentence, terminal, { lead: "- ", hang: "  " })),
		...part.cautions.map((caution) => lines([caution], terminal, { lead: "! ", hang: "  " })),
	].join("");

function lines(
	sentence: Sentence,
	{ columns, bold: mayBold }: Terminal,
	leads: { readonly lead: string; readonly hang?: string } = { lead: "" },
): string {
	return (
		wrappedWords(words(sentence, mayBold), { ...leads, columns })
			// What is strong over several words of a line is set so once.
			.replaceAll(`${plain} ${bold}`, " ")
			.replaceAll("\u00A0", " ")
	);
}

/** The words of a sentence, a number and its unit in one; a word may be strong in part. */
function words(sentence: Sentence, mayBold: boolean): Word[] {
	const all: Word[] = [];
	let [text, columns] = ["", 0];
	const end = () => {
		if (text !== "") all.push({ text, columns });
		[text, columns] = ["", 0];
	};
	for (const piece of sentence) {
		const isStrong = typeof piece !== "string";
		const said = unbroken(printable(isStrong ? piece.strong : piece));
		for (const [index, part] of said.split(" ").entries()) {
			if (index > 0) end();
			if (part === "") continue;
			text += isStrong && mayBold ? `${bold}${part}${plain}` : part;
			columns += [...part].length;
		}
	}
	end();
	return all;
}
