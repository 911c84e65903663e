import { shorten } from "../../scenario/reading/problem.ts";

const longestShown = 80;

/** A word of the command line or a name from a disk, fit to stand in a sentence on a terminal: what does not print is written as its code. */
export function quoted(text: string): string {
	return `"${printable(shorten(text, longestShown)).replaceAll('"', '\\"')}"`;
}

/** The name of a file as it was typed, unless it holds what does not print. */
export function fileName(path: string): string {
	const name = printable(path);
	return name === path ? path : `"${name}"`;
}

/** The text with what does not print written as its code. */
export const printable = (text: string): string =>
	text.replaceAll(/[\p{C}\p{Zl}\p{Zp}]/gu, (sign) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`);
