/** A terminal that words are written to. */
export interface Terminal {
	readonly columns: number;
	/** Whether what the reader looks for may be set in bold. */
	readonly bold: boolean;
}

/** The terminal behind a stream; null where it is a pipe or a file. One that does not say how wide it is counts as 80 columns wide. */
export const terminalOf = (
	stream: Pick<NodeJS.WriteStream, "isTTY" | "columns">,
	env: Readonly<Record<string, string | undefined>> = process.env,
): Terminal | null =>
	stream.isTTY === true
		? { columns: stream.columns > 0 ? stream.columns : 80, bold: (env.NO_COLOR ?? "") === "" && env.TERM !== "dumb" }
		: null;

/** Columns of what goes to no terminal: a pipe has no width. */
const width = 100;

/** Columns to wrap to on a stream: as many as its terminal has. */
export const columnsOf = (stream: NodeJS.WriteStream): number => terminalOf(stream)?.columns ?? width;

/** A sentence broken into lines of at most `columns`, each after `lead`, with a line end. */
export const wrapped = (text: string, lead = "", columns = width): string =>
	wrappedWords(
		text.split(" ").map((word) => ({ text: word, columns: word.length })),
		{ lead, columns },
	);

/** A word as it is written, and the columns that it takes. */
export interface Word {
	readonly text: string;
	readonly columns: number;
}

/** Words broken into lines, the first after `lead`, the others after `hang` (`lead`, where it is not given), with a line end. */
export function wrappedWords(
	words: readonly Word[],
	{ lead, hang = lead, columns }: { readonly lead: string; readonly hang?: string; readonly columns: number },
): string {
	let lines = "";
	let line = lead;
	let used = lead.length;
	let isBlank = true;
	for (const word of words) {
		const gap = isBlank ? "" : " ";
		if (!isBlank && used + gap.length + word.columns > columns) {
			lines += `${line}\n`;
			line = `${hang}${word.text}`;
			used = hang.length + word.columns;
		} else {
			line += gap + word.text;
			used += gap.length + word.columns;
		}
		isBlank = false;
	}
	return `${lines}${line}\n`;
}
