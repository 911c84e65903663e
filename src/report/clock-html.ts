import type { Clock } from "../charts/index.ts";
import { type ClockRow, rowTimes } from "./clock-table.ts";
import { htmlTable } from "./html-element.ts";

/** Rows of the clock as a table. */
export function clockTable(
	document: Document,
	ids: { readonly id: string; readonly under: string },
	caption: string,
	rows: readonly ClockRow[],
	clock: Clock,
): HTMLElement {
	const times = rowTimes(rows, clock);
	return htmlTable(document, {
		...ids,
		caption,
		stacks: true,
		columns: [
			{ heading: "Time" },
			{ heading: "What" },
			{ heading: "Volume", numeric: true },
			{ heading: "Look at" },
		],
		rows: rows.map((row, index) => [
			// A long date breaks after its day, so that it takes no room from the words beside it.
			(times[index] ?? "").replace(" ", "\u00A0"),
			row.what,
			row.volume,
			row.look,
		]),
	});
}
