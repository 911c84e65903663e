import { type Attributes, svgElement } from "./svg-element.ts";
import { fittedText, textWidth } from "./text-width.ts";

/** From line to line in px: no letters of one touch those of the next, whatever the typeface. */
export const titleLinePx = 23;
export const textLinePx = 19;
export const smallLinePx = 17;

/** The text in lines that fit a room, broken at spaces but not between a number and its unit; a word that is too long goes on in the next line, the last line ends in an ellipsis where more would follow. */
export function wrappedText(
	text: string,
	fontSizePx: number,
	roomPx: number,
	mostLines = Number.POSITIVE_INFINITY,
): string[] {
	const words = text
		.replace(/(\d) (?=\S)/g, "$1\u00A0")
		.split(/[ \t\n\r]+/)
		.filter((word) => word !== "")
		.flatMap((word) => pieces(word, fontSizePx, roomPx));
	const lines: string[] = [];
	let line = "";
	for (const word of words) {
		const longer = line === "" ? word : `${line} ${word}`;
		if (line !== "" && textWidth(longer, fontSizePx) > roomPx) {
			lines.push(line);
			line = word;
		} else line = longer;
	}
	if (line !== "") lines.push(line);
	const kept = lines.slice(0, mostLines);
	const last = kept.at(-1);
	// Room is asked for a little more than the line, so that the ellipsis shows.
	if (last !== undefined && lines.length > kept.length)
		kept[kept.length - 1] =
			`${fittedText(last, fontSizePx, roomPx - fontSizePx)}…`.replace(
				"……",
				"…",
			);
	return kept.map((one) =>
		fittedText(one.replaceAll("\u00A0", " "), fontSizePx, roomPx),
	);
}

/** A word, in as many pieces as it needs to fit a room. */
function pieces(word: string, fontSizePx: number, roomPx: number): string[] {
	if (textWidth(word, fontSizePx) <= roomPx) return [word];
	const found: string[] = [];
	let piece = "";
	for (const character of word) {
		if (piece !== "" && textWidth(piece + character, fontSizePx) > roomPx) {
			found.push(piece);
			piece = "";
		}
		piece += character;
	}
	return [...found, piece];
}

/** Lines under each other, the first on the base line `y`. */
export const textLines = (
	document: Document,
	attributes: Attributes & { readonly x: number; readonly y: number },
	lines: readonly string[],
	linePx: number,
): SVGTextElement[] =>
	lines.map((line, index) =>
		svgElement(
			document,
			"text",
			{ ...attributes, y: attributes.y + index * linePx },
			line,
		),
	);
