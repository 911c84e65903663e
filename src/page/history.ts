/** Most texts and characters that are kept to go back to. */
const mostTexts = 200;
const mostCharacters = 1_500_000;

/** The texts that the scenario has been, and which of them it is now. Data in, data out. */
export interface History {
	readonly texts: readonly string[];
	readonly at: number;
}

export const historyOf = (text: string): History => ({ texts: [text], at: 0 });

export const present = ({ texts, at }: History): string => texts[at] ?? "";

/** With another text after the present one; what had been undone is forgotten, and so are the oldest where there are too many. */
export function changed(history: History, text: string): History {
	if (text === present(history)) return history;
	const texts = [...history.texts.slice(0, history.at + 1), text];
	const long = () => texts.reduce((sum, one) => sum + one.length, 0);
	while (
		texts.length > 1 &&
		(texts.length > mostTexts || long() > mostCharacters)
	)
		texts.shift();
	return { texts, at: texts.length - 1 };
}

export const canUndo = ({ at }: History): boolean => at > 0;
export const canRedo = ({ texts, at }: History): boolean =>
	at < texts.length - 1;

export const undone = (history: History): History =>
	canUndo(history) ? { ...history, at: history.at - 1 } : history;
export const redone = (history: History): History =>
	canRedo(history) ? { ...history, at: history.at + 1 } : history;
