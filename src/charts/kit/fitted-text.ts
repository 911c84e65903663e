import { type Letters, textPx } from "../theme/letters.ts";
import { type Attributes, type Shape, text } from "./shape.ts";

/**
 * Advance widths of ASCII from the space on, in hundredths of the font size: those of DejaVu Sans, the widest of the typefaces
 * that a system without others falls back to (measured in a browser).
 */
const widths = [
	32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84,
	84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79, 60, 79, 69, 63, 61, 73, 68, 99, 69, 61,
	69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63, 63, 28, 28, 58, 28, 97, 63, 61, 63, 63, 41, 52, 39, 63, 59,
	82, 59, 59, 52, 64, 34, 64, 84,
];
const firstCode = 32;
/** A typeface may be wider still. */
const spare = 1.06;

/** Room in px that a text takes at the most, whatever its typeface, since a chart is drawn without a screen. */
export function textWidth(text: string, fontSizePx: number): number {
	let hundredths = 0;
	for (const character of text) hundredths += characterWidth(character);
	return (hundredths / 100) * fontSizePx * spare;
}

/** Room that the widest of some texts takes. */
export const widestText = (texts: readonly string[], fontSizePx: number): number =>
	Math.max(0, ...texts.map((one) => textWidth(one, fontSizePx)));

function characterWidth(character: string): number {
	const code = character.codePointAt(0) ?? 0;
	const width = widths[code - firstCode];
	if (width !== undefined) return width;
	if (code >= 0x2e80) return 105;
	return "½×≥≤±−→…".includes(character) ? 90 : 64;
}

/** The text, or as much of it as fits, with an ellipsis. */
export function fittedText(text: string, fontSizePx: number, roomPx: number): string {
	if (textWidth(text, fontSizePx) <= roomPx) return text;
	const characters = [...text];
	while (characters.length > 1 && textWidth(`${characters.join("")}…`, fontSizePx) > roomPx) characters.pop();
	return `${characters.join("").trimEnd()}…`;
}

/**
 * The text in lines that fit a room, broken at spaces but not between a number and its unit; a word that is too long goes on
 * in the next line, the last line ends in an ellipsis where more would follow.
 */
export function wrappedText(text: string, fontSizePx: number, roomPx: number, mostLines?: number): string[] {
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
		kept[kept.length - 1] = `${fittedText(last, fontSizePx, roomPx - fontSizePx)}…`.replace("……", "…");
	return kept.map((one) => fittedText(one.replaceAll("\u00A0", " "), fontSizePx, roomPx));
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

/** A name on one line where there is room for it, else on two, broken at the space nearest its middle. */
export function twoLines(text: string, roomPx: number): [string, string] {
	const words = text.split(" ");
	if (words.length < 2 || textWidth(text, textPx) <= roomPx) return [text, ""];
	const half = words.length === 2 ? 1 : Math.ceil(words.length / 2);
	return [words.slice(0, half).join(" "), words.slice(half).join(" ")];
}

/** A text in lines under each other. */
export type TextBlock = ReturnType<typeof textBlock>;

/** A text in as many lines as it needs to fit a room, `mostLines` at the most. */
export function textBlock(words: string, letters: Letters, roomPx: number, mostLines?: number) {
	const lines = wrappedText(words, letters.sizePx, roomPx, mostLines);
	return {
		lines,
		heightPx: lines.length * letters.linePx,
		/** The lines as shapes, the first on the base line `y`. */
		at: (attributes: Attributes & { readonly y: number }): Shape[] =>
			lines.map((line, i) => text({ ...attributes, y: attributes.y + i * letters.linePx }, line)),
	};
}
