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
