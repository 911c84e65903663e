import type { DifferenceRowsData } from "../../charts/index.ts";
import { differenceMark, differenceRows, differenceWords, meansOf, svgElement } from "../../charts/index.ts";
import type { CompareResult, Difference } from "../../results/index.ts";
import { counted, differenceDecimals, measureWords, percentWords, plainNumber, unitWords } from "../../words/index.ts";
import { svgFile } from "../kit/chart-figure.ts";
import { type Attributes, type Child, type HtmlMaker, section } from "../kit/html-element.ts";
import { aligned, type Column, htmlTable } from "../kit/table.ts";
import { decimalsOfMeans, fragileWords, rowsData } from "./pairs/difference-rows.ts";
import { askedFor, type Pair, pairsOf, togetherWords } from "./pairs/pairs.ts";

/** Every measure asked for, a pair of regimens after the other; all pairs but the first are folded away. */
export const differenceSections = (html: HtmlMaker, pairs: readonly Pair[]): HTMLElement[] =>
	pairs.map((pair) => {
		const id = `pair-${pair.index + 1}`;
		const heading = `${pair.a} against ${pair.b}`;
		const content = pair.owners.map((owner, index) => ofOwner(html, pair, owner, `${id}-${index + 1}`));
		if (pair.index === 0) return section(html, `${id}-rows`, heading, null, ...content);
		return html("details", { id }, html("summary", {}, heading), ...content);
	});

function ofOwner(html: HtmlMaker, pair: Pair, owner: string, id: string): HTMLElement {
	const differences = askedFor(pair, owner);
	const isAll = pair.owners.length > 1 && owner === "all";
	const whose = pair.owners.length === 1 ? "" : isAll ? "All dressings together. " : `Dressing ${owner}. `;
	const data = rowsData(pair, `${whose}${pair.a} against ${pair.b}`, differences);
	const many = counted(differences[0]?.replications ?? 0, "replication");
	const caption = `${isAll ? togetherWords : whose}Means of ${many}, the difference ${pair.a} less ${pair.b} with its 95 % interval, and the share of replications in which either has more and in which ${pair.a} does better (empty where more is neither better nor worse).`;
	const rows = withDigits(differences, pair.result);
	const numbers = htmlTable(html, { id: `${id}-table`, caption }, differenceColumns(pair), rows);
	if (differences.length === 0) return html("div", { class: "owner" }, numbers);
	const marked = differenceTable(html, id, data, `${whose}${fragileWords(differences, pair)}`.trim());
	return html("div", { class: "owner" }, marked, numbers);
}

/** `differences.svg`: the first pair in every measure asked for, as a file of its own. */
export function compareSvg(result: CompareResult, document: Document): string {
	const [pair] = pairsOf(result);
	const asked = pair === undefined ? [] : askedFor(pair);
	if (pair === undefined || asked.length === 0)
		return svgFile(svgElement(document, "svg", { class: "sw-chart" }), document);
	const title = `${result.scenario.title}: ${pair.a} against ${pair.b}`;
	return svgFile(differenceRows(rowsData(pair, title, asked), document, { idPrefix: "differences" }), document);
}

/** The differences of two regimens as a table, a row a measure, each a block of its own where the page is narrow. */
export function differenceTable(html: HtmlMaker, id: string, data: DifferenceRowsData, caption: string): HTMLElement {
	const { a, b } = data;
	const head = (child: Child, attributes = {}) =>
		html("th", { scope: "col", role: "columnheader", ...attributes }, child);
	const cell = (child: Child, attributes: Attributes) => html("td", { role: "cell", ...attributes }, child);
	const rows = data.rows.map((row, index) => {
		const [meanA, meanB] = meansOf(row);
		const mark = differenceMark(row, html.document, { idPrefix: `${id}-mark-${index + 1}`, styled: false });
		return html(
			"tr",
			{ role: "row", class: row.tone },
			html("th", { scope: "row", role: "rowheader" }, row.label),
			cell(meanA, { class: "mean", "data-of": a }),
			cell(meanB, { class: "mean", "data-of": b }),
			cell(mark, { class: "bar" }),
			cell(row.verdict, { class: "verdict" }),
		);
	});
	const sides = [html("span", {}, `more with ${b}`), " ", html("span", {}, `more with ${a}`)];
	const means = [a, b].map((name) => head(name, { class: "mean" }));
	const bar = head(html("span", { class: "sides-of-nought" }, ...sides), { class: "bar" });
	const heads = [head("measure"), ...means, bar, head("verdict")];
	const captionId = `${id}-rows-caption`;
	return html(
		"div",
		{ class: "difference-rows" },
		html(
			"table",
			{ role: "table", "aria-labelledby": captionId },
			html("caption", { id: captionId }, `${caption} ${differenceWords(data).legend}`.trim()),
			html("thead", { role: "rowgroup" }, html("tr", { role: "row" }, ...heads)),
			html("tbody", { role: "rowgroup" }, ...rows),
		),
	);
}

/** A difference with the digits of its numbers, and the most of any of the table's rows. */
interface Row extends Difference {
	readonly digits: { readonly a: number; readonly b: number; readonly own: number };
	readonly most: Row["digits"];
}

export function withDigits(differences: readonly Difference[], result: CompareResult): Row[] {
	const digits = differences.map((one) => {
		const [a, b] = decimalsOfMeans(one, result);
		return { a, b, own: differenceDecimals(one) };
	});
	const mostOf = (which: keyof Row["digits"]): number => digits.reduce((most, each) => Math.max(most, each[which]), 0);
	const most = { a: mostOf("a"), b: mostOf("b"), own: mostOf("own") };
	return differences.map((one, index) => ({ ...one, digits: digits[index], most }));
}

const filed = (key: "a" | "b" | "dressing" | "measure" | "unit" | "replications" | "kind" | "verdict") => ({
	key,
	value: (row: Row) => row[key],
});

type NumberName = "meanA" | "meanB" | "mean" | "low95" | "high95" | "shareAHigher" | "shareBHigher" | "shareABetter";

const number = (
	key: NumberName,
	head: string,
	written: (value: number, row: Row, html: HtmlMaker) => Child,
	none = "",
): Column<Row> => ({
	head,
	numeric: true,
	key,
	value: (row) => row[key],
	written: (row, html) => (row[key] === null ? none : written(row[key], row, html)),
});

/** What is known of each difference, for a file; of it what a report shows of a pair, with digits that the intervals support. */
export const differenceColumns = ({ a, b, scale }: Pick<Pair, "a" | "b" | "scale">): readonly Column<Row>[] => [
	filed("a"),
	filed("b"),
	filed("dressing"),
	{ ...filed("measure"), head: "Measure", written: ({ measure }) => measureWords[measure].label },
	{ ...filed("unit"), head: "Unit", written: ({ measure }) => unitWords(measure, scale) },
	number("meanA", a, (mean, { digits, most }, html) => aligned(html, mean, digits.a, most.a)),
	number("meanB", b, (mean, { digits, most }, html) => aligned(html, mean, digits.b, most.b)),
	number("mean", "Difference", own),
	number("low95", "95 % from", end, "none given"),
	number("high95", "to", end, "none given"),
	filed("replications"),
	number("shareAHigher", `${a} more`, percentWords),
	number("shareBHigher", `${b} more`, percentWords),
	number("shareABetter", `${a} better`, percentWords),
	{ key: "variancePaired", value: ({ variance }) => variance.paired },
	{ key: "varianceIndependent", value: ({ variance }) => variance.independent },
	filed("kind"),
	filed("verdict"),
];

function own(value: number, { digits, most }: Row, html: HtmlMaker): Child {
	return aligned(html, value, digits.own, most.own);
}

/** An end of an interval that leaves nought out does not read as nought. */
function end(value: number, row: Row, html: HtmlMaker): Child {
	return value !== 0 && row.kind === "differs" && plainNumber(value, row.digits.own) === "0"
		? `just ${value > 0 ? "over" : "under"} 0`
		: own(value, row, html);
}
