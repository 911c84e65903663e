import { plainNumber } from "../../words/index.ts";
import type { Attributes, Child, HtmlMaker } from "./html-element.ts";

export type Cell = string | number | boolean | null;

interface Heading {
	readonly head: string;
	readonly numeric?: boolean;
}

type Written<Row> = (row: Row, html: HtmlMaker) => Child;

interface Field<Row> {
	readonly key: string;
	/** `place` counts the rows of the table from 0. */
	readonly value: (row: Row, place: number) => Cell;
}

/**
 * A column of a table, which is declared once for reports, pages and files. One with a `head` stands in reports, one with a
 * `key` in files, as the field of that name; one with both is written in a report as its value is, unless `written` says
 * otherwise. The first column of a report heads its rows.
 */
export type Column<Row> =
	| (Heading & { readonly written: Written<Row>; readonly key?: undefined; readonly value?: undefined })
	| (Field<Row> & { readonly head?: undefined })
	| (Field<Row> & Heading & { readonly written?: Written<Row> });

/** A column of numbers: `words` writes one in a report, `filed` in a file, as it is by itself; where there is none its cell is empty. */
export const numberColumn = <Row>(
	head: string,
	key: string,
	value: (row: Row) => number | null,
	words: (number: number) => string,
	filed: (number: number) => number = (number) => number,
): Column<Row> => ({
	head,
	numeric: true,
	key,
	value: (row) => mapped(value(row), filed),
	written: (row) => mapped(value(row), words),
});

export const shownNumber = <Row>(head: string, written: Written<Row>): Column<Row> => {
	return { head, numeric: true, written };
};

const mapped = <T>(number: number | null, by: (number: number) => T): T | null => (number === null ? null : by(number));

interface TableOf {
	readonly id: string;
	readonly caption: string;
	/** Id of the heading that the table stands under, where other tables of the page have the same caption. */
	readonly under?: string;
	/** True where a narrow page stacks the cells of a row; roles then say what the layout no longer does. */
	readonly stacks?: boolean;
}

/** A table with caption and scoped headings, in a region of its own that scrolls when the page is narrow. */
export function htmlTable<Row>(
	html: HtmlMaker,
	{ id, caption, under, stacks = false }: TableOf,
	columns: readonly Column<Row>[],
	rows: readonly Row[],
): HTMLElement {
	const shown = columns.filter((column) => column.head !== undefined);
	const role = (name: string): Attributes => (stacks ? { role: name } : {});
	const side = ({ numeric }: { readonly numeric?: boolean }): Attributes =>
		numeric === true ? { class: "number" } : {};
	const heads = shown.map((one) => html("th", { scope: "col", ...role("columnheader"), ...side(one) }, one.head));
	const body = rows.map((row, place) => {
		const cells = shown.map((column, index) => {
			const cell =
				column.written === undefined ? valueText(column.value?.(row, place) ?? null) : column.written(row, html);
			return index === 0
				? html("th", { scope: "row", ...role("rowheader") }, cell)
				: html("td", { ...role("cell"), ...side(column) }, cell);
		});
		return html("tr", role("row"), ...cells);
	});
	const captionId = `${id}-caption`;
	const names = under === undefined ? captionId : `${captionId} ${under}`;
	const parts = [
		html("caption", { id: captionId }, caption),
		html("thead", role("rowgroup"), html("tr", role("row"), ...heads)),
		html("tbody", role("rowgroup"), ...body),
	];
	const region = { class: "scroll", role: "region", tabindex: "0", "aria-labelledby": names };
	return html("div", region, html("table", role("table"), ...parts));
}

const valueText = (value: Cell): string => (value === null ? "" : String(value));

/** A number with unseen zeros after it, so that the points of a column of at most `mostDecimals` stand under each other; '' for none. */
export function aligned(html: HtmlMaker, value: number | null, decimals: number, mostDecimals = 3): Child {
	if (value === null) return "";
	const text = plainNumber(value, decimals);
	const [, fraction = ""] = text.split(".");
	const unseen = `${fraction === "" ? "." : ""}${"0".repeat(Math.max(0, mostDecimals - fraction.length))}`;
	const pad = html("span", { class: "pad", "aria-hidden": "true" }, unseen);
	return html("span", {}, text, unseen === "" ? null : pad);
}
