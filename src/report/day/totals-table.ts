import type { Spread } from "../../results/index.ts";
import { type TotalName, totalFacts, totalsAsRead } from "../../vocabulary/index.ts";
import { counted, totalDecimals, totalWords } from "../../words/index.ts";
import type { HtmlMaker } from "../kit/html-element.ts";
import { aligned, type Column, htmlTable } from "../kit/table.ts";
import type { DressingParts } from "./dressing/dressing-parts.ts";

interface TotalRow extends Spread {
	readonly dressing: string;
	readonly total: TotalName;
	/** Of the drawn day. */
	readonly traced: number;
}

type NumberName = "mean" | "halfWidth95" | "p10" | "p50" | "p90" | "traced";

/** A mean or its half-width is written with the digits that the half-width supports. */
const supported = ({ total, halfWidth95 }: TotalRow): number => totalDecimals(total, halfWidth95);
/** A value of single days is written with those of the total. */
const ofDays = ({ total }: TotalRow): number => totalWords[total].decimals;

const number = (key: NumberName, head: string, decimals: (row: TotalRow) => number) => ({
	head,
	numeric: true,
	key,
	value: (row: TotalRow) => row[key],
	written: (row: TotalRow, html: HtmlMaker) => aligned(html, row[key], decimals(row)),
});

const traced = number("traced", "Drawn day", ofDays);

/** In a report the drawn day stands last, in a file first. */
export const totalColumns: readonly Column<TotalRow>[] = [
	{ key: "dressing", value: ({ dressing }) => dressing },
	{ head: "Total", key: "total", value: ({ total }) => total, written: ({ total }) => totalWords[total].name },
	{ key: traced.key, value: traced.value },
	number("mean", "Mean", supported),
	number("halfWidth95", "±", supported),
	number("p10", "P10", ofDays),
	number("p50", "P50", ofDays),
	number("p90", "P90", ofDays),
	// A share is a bare number.
	{ head: "Unit", written: ({ total }) => totalFacts[total].unit.replace("share", "") },
	{ head: traced.head, numeric: true, written: traced.written },
];

export const totalRows = ({ dressing, day, projection }: DressingParts): TotalRow[] =>
	totalsAsRead.map((total) => ({
		...projection.totals[total],
		dressing: dressing.id,
		total,
		traced: day.totals[total],
	}));

/** Totals as a table: mean with its half-width, the middle 8 in 10, and the drawn day. */
export function totalsTable(html: HtmlMaker, parts: DressingParts, under = parts.headingId): HTMLElement {
	const caption = `Totals of the time shown over ${counted(parts.replications, "replication")}: mean with its 95 % half-width (±), the values that one day in ten (P10), half (P50) and nine in ten (P90) stay at or below, and the one day that is drawn.`;
	return htmlTable(html, { id: `${parts.id}-totals`, under, caption }, totalColumns, totalRows(parts));
}
