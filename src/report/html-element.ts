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

/** A sentence as nodes, its strong pieces in <strong>. */
export const sentenceNodes = (document: Document, sentence: Sentence): Node[] =>
	sentence.map((piece) =>
		typeof piece === "string"
			? document.createTextNode(legalText(piece))
			: htmlElement(document, "strong", {}, piece.strong),
	);

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
	},
): HTMLElement {
	const element = (
		name: keyof HTMLElementTagNameMap,
		attributes: { [name: string]: string },
		...children: Child[]
	) => htmlElement(document, name, attributes, ...children);
	const numeric = (index: number): { [name: string]: string } =>
		table.columns[index]?.numeric === true ? { class: "number" } : {};
	const head = table.columns.map((column, index) =>
		element("th", { scope: "col", ...numeric(index) }, column.heading),
	);
	const body = table.rows.map((row) =>
		element(
			"tr",
			{},
			...row.map((cell, index) =>
				index === 0
					? element("th", { scope: "row" }, cell)
					: element("td", numeric(index), cell),
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
			"aria-labelledby": captionId,
		},
		element(
			"table",
			{},
			element("caption", { id: captionId }, table.caption),
			element("thead", {}, element("tr", {}, ...head)),
			element("tbody", {}, ...body),
		),
	);
}
