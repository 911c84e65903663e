import { type Clock, clockTime, dayWords, timeOfDay } from "../../../words/index.ts";
import type { HtmlMaker } from "../../kit/html-element.ts";
import { type Column, htmlTable } from "../../kit/table.ts";
import type { ClockRow } from "./clock-rows.ts";

const columns: readonly Column<ClockRow & { readonly time: string }>[] = [
	// A long date breaks after its day, so that it takes no room from the words beside it.
	{ head: "Time", written: ({ time }) => time.replace(" ", "\u00A0") },
	{ head: "What", written: ({ what }) => what },
	{ head: "Volume", numeric: true, written: ({ volume = "" }) => volume },
	{ head: "Look at", written: ({ look }) => look },
];

/** Rows of the clock as a table. */
export const clockTable = (
	html: HtmlMaker,
	ids: { readonly id: string; readonly under: string },
	caption: string,
	rows: readonly ClockRow[],
	clock: Clock,
): HTMLElement => htmlTable(html, { ...ids, caption, stacks: true }, columns, timed(rows, clock));

/** Rows with their times as a table writes them: the day with the first row of each day, then the time alone. */
export function timed(rows: readonly ClockRow[], clock: Clock): (ClockRow & { readonly time: string })[] {
	let day = dayWords(0, clock);
	return rows.map((row) => {
		const words = dayWords(row.atMin, clock);
		const time = words === day ? timeOfDay(row.atMin, clock) : clockTime(row.atMin, clock);
		day = words;
		return { ...row, time };
	});
}
