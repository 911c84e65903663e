/** Texts of files that lie beside another because it names them, by the name that stands in it. */
export type Beside = { readonly [name: string]: string };

/** A scenario as it lies on the bench: its text, and the files that it cannot be read without. */
export interface Sheet {
	readonly text: string;
	readonly beside: Beside;
}

/** A sheet that needs no other file. */
export const sheetOf = (text: string): Sheet => ({ text, beside: {} });

export const sameSheet = (a: Sheet, b: Sheet): boolean =>
	a.text === b.text && contains(a.beside, b.beside) && contains(b.beside, a.beside);

const contains = (a: Beside, b: Beside) =>
	Object.entries(b).every(([name, text]) => Object.hasOwn(a, name) && a[name] === text);

/** Characters in it. */
export const lengthOf = ({ text, beside }: Sheet): number =>
	Object.values(beside).reduce((sum, other) => sum + other.length, text.length);
