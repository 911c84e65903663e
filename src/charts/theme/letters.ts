export const textPx = 13;
export const smallPx = 11.5;

/** How large letters are taken to be, and from line to line, px: no letters of one touch those of the next, whatever the typeface. */
export interface Letters {
	readonly sizePx: number;
	readonly linePx: number;
}

/** A title is bold: its letters are wider than their size says. */
export const titleLetters: Letters = { sizePx: 17, linePx: 23 };
export const textLetters: Letters = { sizePx: textPx, linePx: 19 };
export const smallLetters: Letters = { sizePx: smallPx, linePx: 17 };
