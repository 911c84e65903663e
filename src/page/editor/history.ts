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
const lengthOf = ({ text, beside }: Sheet): number =>
	Object.values(beside).reduce((sum, other) => sum + other.length, text.length);

/** Most sheets and characters that are kept to go back to. */
const mostSheets = 200;
const mostCharacters = 1_500_000;

/** What the scenario has been, and which of it is now. Data in, data out. */
export interface History {
	readonly sheets: readonly Sheet[];
	readonly at: number;
}

export const historyOf = (sheet: Sheet): History => ({ sheets: [sheet], at: 0 });

export const present = ({ sheets, at }: History): Sheet => sheets[at] ?? sheetOf("");

/** With another sheet after the present one; what had been undone is forgotten, and so are the oldest where there are too many. */
export function changed(history: History, sheet: Sheet): History {
	if (sameSheet(sheet, present(history))) return history;
	const sheets = [...history.sheets.slice(0, history.at + 1), sheet];
	const long = () => sheets.reduce((sum, one) => sum + lengthOf(one), 0);
	while (sheets.length > 1 && (sheets.length > mostSheets || long() > mostCharacters)) sheets.shift();
	return { sheets, at: sheets.length - 1 };
}

export const canUndo = ({ at }: History): boolean => at > 0;
export const canRedo = ({ sheets, at }: History): boolean => at < sheets.length - 1;

export const undone = (history: History): History => (canUndo(history) ? { ...history, at: history.at - 1 } : history);
export const redone = (history: History): History => (canRedo(history) ? { ...history, at: history.at + 1 } : history);
