import { legalText } from "../charts/index.ts";
import type { Sentence } from "./sentence.ts";

type Child = Node | string | null;

/** An HTML element with attributes and children; strings become text, never markup. */
export function htmlElement<N extends keyof HTMLElementTagNameMap>(
	document: Document,
	name: N,
	attributes: { readonly [name: string]: string } = {},
	...children: readonly Child[]
): HTMLElementTagNameMap[N] {
	const element = document.createElement(name);
	for (const [key, value] of Object.entries(attributes))
		element.setAttribute(key, legalText(value));
	for (const child of children) {
		if (child === null) continue;
		element.append(
			typeof child === "string"
				? document.createTextNode(legalText(child))
				: child,
		);
	}
	return element;
}

/** A sentence as nodes, its strong pieces in <strong>; a number and its unit stay on one line. */
export const sentenceNodes = (document: Document, sentence: Sentence): Node[] =>
	sentence.map((piece) =>
		typeof piece === "string"
			? document.createTextNode(unbroken(legalText(piece)))
			: htmlElement(document, "strong", {}, unbroken(piece.strong)),
	);

/** The text with no line break between a number and its unit. */
export const unbroken = (text: string): string =>
	text.replace(/(\d) (mL|L|min|h|d|s|%|mmHg)(?![a-z])/g, "$1\u00A0$2");

export interface Column {
	readonly heading: string;
	/** Numbers stand on the right. */
	readonly numeric?: boolean;
}

/** A table with caption and scoped headings, in a region of its own that scrolls when the page is narrow. */
export function htmlTable(
	document: Document,
	table: {
		readonly id: string;
		readonly caption: string;
		readonly columns: readonly Column[];
		readonly rows: readonly (readonly Child[])[];
		/** Id of the heading that the table stands under, where other tables of the page have the same caption. */
		readonly under?: string;
		/** True where a narrow page stacks the cells of a row; roles then say what the layout no longer does. */
		readonly stacks?: boolean;
	},
): HTMLElement {
	const element = (
		name: keyof HTMLElementTagNameMap,
		attributes: { [name: string]: string },
		...children: Child[]
	) => htmlElement(document, name, attributes, ...children);
	const numeric = (index: number): { [name: string]: string } =>
		table.columns[index]?.numeric === true ? { class: "number" } : {};
	const role = (name: string): { [name: string]: string } =>
		table.stacks === true ? { role: name } : {};
	const head = table.columns.map((column, index) =>
		element(
			"th",
			{ scope: "col", ...role("columnheader"), ...numeric(index) },
			column.heading,
		),
	);
	const body = table.rows.map((row) =>
		element(
			"tr",
			role("row"),
			...row.map((cell, index) =>
				index === 0
					? element("th", { scope: "row", ...role("rowheader") }, cell)
					: element("td", { ...role("cell"), ...numeric(index) }, cell),
			),
		),
	);
	const captionId = `${table.id}-caption`;
	return element(
		"div",
		{
			class: "scroll",
			role: "region",
			tabindex: "0",
			"aria-labelledby":
				table.under === undefined ? captionId : `${captionId} ${table.under}`,
		},
		element(
			"table",
			role("table"),
			element("caption", { id: captionId }, table.caption),
			element("thead", role("rowgroup"), element("tr", role("row"), ...head)),
			element("tbody", role("rowgroup"), ...body),
		),
	);
}
