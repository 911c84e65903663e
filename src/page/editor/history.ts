import { lengthOf, type Sheet, sameSheet, sheetOf } from "./sheet.ts";

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
