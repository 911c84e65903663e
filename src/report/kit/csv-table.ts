import Papa from "papaparse";
import { legalText } from "../../words/index.ts";
import type { Cell, Column } from "./table.ts";

/** Fields of a row that may stand in a file as they are; one that is not there leaves its cell empty. */
type OwnField<Row> = { [K in keyof Row & string]: Row[K] extends Cell | undefined ? K : never }[keyof Row & string];

/**
 * Text that a spreadsheet might run as a formula: first sign = + - @ or their wide forms, after blanks or not, or a tab,
 * carriage return or line feed in front. Such a cell gets an apostrophe; numbers are numbers and keep their minus.
 */
const formula = /^(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/u;

/** One table, RFC 4180 with CRLF, numbers at full precision. A name alone is the column of the row's own field of that name. */
export function csvTable<Row>(columns: readonly (Column<Row> | OwnField<Row>)[], rows: readonly Row[]): string {
	const fields = columns.flatMap((column): { key: string; value: (row: Row, place: number) => unknown }[] => {
		if (typeof column === "object") return column.key === undefined ? [] : [column];
		return [{ key: column, value: (row) => row[column] }];
	});
	const legal = (cell: unknown) => (typeof cell === "string" ? legalText(cell) : cell);
	const data = rows.map((row, place) => fields.map(({ value }) => legal(value(row, place))));
	const names = fields.map(({ key }) => key);
	return `${Papa.unparse([names, ...data], { newline: "\r\n", escapeFormulae: formula })}\r\n`;
}
