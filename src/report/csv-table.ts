import Papa from "papaparse";
import type { Assumption } from "../analysis/day-result.ts";
import { legalText } from "../charts/index.ts";

export type Cell = string | number | boolean | null;

/**
 * Text that a spreadsheet might run as a formula: first sign = + - @ or their wide forms, after blanks or not, or a tab,
 * carriage return or line feed in front. Such a cell gets an apostrophe; numbers are numbers and keep their minus.
 */
const formula = /^(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/u;

/** One table, RFC 4180 with CRLF. Numbers at full precision. */
export function csvTable(
	fields: readonly string[],
	rows: readonly (readonly Cell[])[],
): string {
	const data = rows.map((row) =>
		row.map((cell) => (typeof cell === "string" ? legalText(cell) : cell)),
	);
	return `${Papa.unparse([[...fields], ...data], { newline: "\r\n", escapeFormulae: formula })}\r\n`;
}

/** `assumptions.csv` of any result. */
export const assumptionsTable = (assumptions: readonly Assumption[]): string =>
	csvTable(
		["name", "value", "unit", "provenance", "defaulted", "meaning", "source"],
		assumptions.map((assumption) => [
			assumption.name,
			assumption.value,
			assumption.unit,
			assumption.provenance,
			assumption.defaulted,
			assumption.meaning,
			assumption.source,
		]),
	);
