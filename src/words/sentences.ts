/** A sentence in pieces; what the reader looks for is strong. */
export type Piece = string | { readonly strong: string };

export type Sentence = readonly Piece[];

export const strong = (text: string): Piece => ({ strong: text });

export const sentenceText = (sentence: Sentence): string =>
	sentence.map((piece) => (typeof piece === "string" ? piece : piece.strong)).join("");

/** The text with a capital at its start. */
export const sentenceStart = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The text without a capital at its start. */
export const sentenceInner = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** The text with a full stop, unless it has an end of its own. */
export const sentenceEnd = (text: string): string => (/[.?!…]$/u.test(text) ? text : `${text}.`);

/** 'a, b and c', or with another word before the last. */
export const joinedWords = (parts: readonly string[], before = "and"): string =>
	parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} ${before} ${parts.at(-1)}`;

/** Characters that XML 1.0 forbids even when escaped (production [2] Char of the W3C recommendation). */
const illegal = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

/** The text with a replacement sign for each character that no XML file may hold, lone surrogates included. */
export const legalText = (text: string): string => text.replace(illegal, "\uFFFD");
