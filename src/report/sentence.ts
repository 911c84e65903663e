/** A sentence in pieces; what the reader looks for is strong. */
export type Piece = string | { readonly strong: string };

export type Sentence = readonly Piece[];

export const strong = (text: string): Piece => ({ strong: text });

/** The sentence as plain text. */
export const sentenceText = (sentence: Sentence): string =>
	sentence
		.map((piece) => (typeof piece === "string" ? piece : piece.strong))
		.join("");

/** The text with a capital at its start. */
export const sentenceStart = (text: string): string =>
	`${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The text with a full stop, unless it has an end of its own. */
export const sentenceEnd = (text: string): string =>
	/[.?!…]$/u.test(text) ? text : `${text}.`;
