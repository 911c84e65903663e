/** A sentence in pieces; what the reader looks for is strong. */
export type Piece = string | { readonly strong: string };

export type Sentence = readonly Piece[];

export const strong = (text: string): Piece => ({ strong: text });

/** The sentence as plain text. */
export const sentenceText = (sentence: Sentence): string =>
	sentence
		.map((piece) => (typeof piece === "string" ? piece : piece.strong))
		.join("");
