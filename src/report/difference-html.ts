import {
	type DifferenceRowsData,
	differenceMark,
	differenceWords,
	meansOf,
} from "../charts/index.ts";
import { htmlElement } from "./html-element.ts";

/**
 * The differences of two regimens as a table, a row a measure: both means, the difference as a dot with its bar, the verdict.
 * Words are laid out by whoever shows the page; where it is narrow each row stands as a block of its own.
 */
export function differenceHtml(
	document: Document,
	id: string,
	data: DifferenceRowsData,
	caption: string,
): HTMLElement {
	const element = htmlElement.bind(null, document);
	const head = (
		attributes: { readonly [name: string]: string },
		...children: (Node | string)[]
	) =>
		element(
			"th",
			{ scope: "col", role: "columnheader", ...attributes },
			...children,
		);
	const cell = (
		attributes: { readonly [name: string]: string },
		...children: (Node | string)[]
	) => element("td", { role: "cell", ...attributes }, ...children);
	const rows = data.rows.map((row, index) => {
		const [meanA, meanB] = meansOf(row);
		const mark = differenceMark(row, document, {
			idPrefix: `${id}-mark-${index + 1}`,
			styled: false,
		});
		return element(
			"tr",
			{ role: "row", class: row.tone },
			element("th", { scope: "row", role: "rowheader" }, row.label),
			cell({ class: "mean", "data-of": data.a }, meanA),
			cell({ class: "mean", "data-of": data.b }, meanB),
			cell({ class: "bar" }, mark),
			cell({ class: "verdict" }, row.verdict),
		);
	});
	const sides = element(
		"span",
		{ class: "sides-of-nought" },
		element("span", {}, `more with ${data.b}`),
		" ",
		element("span", {}, `more with ${data.a}`),
	);
	const captionId = `${id}-rows-caption`;
	return element(
		"div",
		{ class: "difference-rows" },
		element(
			"table",
			{ role: "table", "aria-labelledby": captionId },
			element(
				"caption",
				{ id: captionId },
				[caption, differenceWords(data).legend]
					.filter((words) => words !== "")
					.join(" "),
			),
			element(
				"thead",
				{ role: "rowgroup" },
				element(
					"tr",
					{ role: "row" },
					head({}, "measure"),
					head({ class: "mean" }, data.a),
					head({ class: "mean" }, data.b),
					head({ class: "bar" }, sides),
					head({}, "verdict"),
				),
			),
			element("tbody", { role: "rowgroup" }, ...rows),
		),
	);
}
