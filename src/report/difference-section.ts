import type { CompareResult, Difference } from "../analysis/compare-result.ts";
import { counted, percentWords } from "../charts/index.ts";
import { askedFor, compareScale, type Pair, rowOf } from "./compare-parts.ts";
import { differenceHtml } from "./difference-html.ts";
import { htmlElement, htmlTable } from "./html-element.ts";
import {
	type MeasureScale,
	mostDecimals,
	unitWords,
} from "./measure-number.ts";
import { measureWords } from "./measure-words.ts";
import { section } from "./section.ts";
import { aligned } from "./totals-table.ts";
import { differenceDecimals } from "./verdict-words.ts";

/** Every measure asked for, a pair of regimens after the other; all pairs but the first are folded away. */
export const differenceSections = (
	result: CompareResult,
	pairs: readonly Pair[],
	document: Document,
): HTMLElement[] =>
	pairs.map((pair) => {
		const id = `pair-${pair.index + 1}`;
		const heading = `${pair.a} against ${pair.b}`;
		const content = pair.owners.map((owner, index) =>
			ofOwner(result, pair, owner, `${id}-${index + 1}`, document),
		);
		if (pair.index === 0)
			return section(document, `${id}-rows`, heading, null, ...content);
		return htmlElement(
			document,
			"details",
			{ id },
			htmlElement(document, "summary", {}, heading),
			...content,
		);
	});

function ofOwner(
	result: CompareResult,
	pair: Pair,
	owner: string,
	id: string,
	document: Document,
): HTMLElement {
	const differences = askedFor(result, pair, owner);
	const scale = compareScale(result);
	const whose =
		pair.owners.length === 1
			? ""
			: owner === "all"
				? "All dressings together. "
				: `Dressing ${owner}. `;
	const figure = differenceHtml(
		document,
		id,
		{
			title: `${whose}${pair.a} against ${pair.b}`,
			a: pair.a,
			b: pair.b,
			rows: differences.map((one) => rowOf(one, scale)),
		},
		whose.trim(),
	);
	return htmlElement(
		document,
		"div",
		{ class: "owner" },
		differences.length === 0 ? null : figure,
		table(differences, pair, whose, id, scale, document),
	);
}

function table(
	differences: readonly Difference[],
	pair: Pair,
	whose: string,
	id: string,
	scale: MeasureScale,
	document: Document,
): HTMLElement {
	const many = counted(differences[0]?.replications ?? 0, "replication");
	const rows = differences.map((one) => {
		const decimals = differenceDecimals(one);
		const number = (value: number | null): Node | string =>
			value === null
				? "none given"
				: aligned(document, value, decimals, mostDecimals);
		return [
			measureWords[one.measure].label,
			unitWords(one.measure, scale),
			number(one.meanA),
			number(one.meanB),
			number(one.mean),
			number(one.low95),
			number(one.high95),
			percentWords(one.shareAHigher),
			percentWords(one.shareBHigher),
			one.shareABetter === null ? "" : percentWords(one.shareABetter),
		];
	});
	return htmlTable(document, {
		id: `${id}-table`,
		caption: `${whose}Means of ${many}, the difference ${pair.a} less ${pair.b} with its 95 % interval, and the share of replications in which either has more and in which ${pair.a} does better (empty where more is neither better nor worse).`,
		columns: [
			{ heading: "Measure" },
			{ heading: "Unit" },
			{ heading: pair.a, numeric: true },
			{ heading: pair.b, numeric: true },
			{ heading: "Difference", numeric: true },
			{ heading: "95 % from", numeric: true },
			{ heading: "to", numeric: true },
			{ heading: `${pair.a} more`, numeric: true },
			{ heading: `${pair.b} more`, numeric: true },
			{ heading: `${pair.a} better`, numeric: true },
		],
		rows,
	});
}
