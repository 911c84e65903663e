import { textWidth } from "./text-width.ts";

/** A name on one line where there is room for it, else on two, broken at the space nearest its middle. */
export function twoLines(text: string, roomPx: number): [string, string] {
	const words = text.split(" ");
	if (words.length < 2 || textWidth(text, 13) <= roomPx) return [text, ""];
	const half = words.length === 2 ? 1 : Math.ceil(words.length / 2);
	return [words.slice(0, half).join(" "), words.slice(half).join(" ")];
}
