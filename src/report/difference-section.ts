import type { CompareResult, Difference } from "../analysis/compare-result.ts";
import { counted, percentWords, plainNumber } from "../charts/index.ts";
import {
	askedFor,
	compareScale,
	decimalsOfMeans,
	type Pair,
	rowOf,
	togetherWords,
} from "./compare-parts.ts";
import { differenceHtml } from "./difference-html.ts";
import { fragileSentence, isFragile } from "./fragile.ts";
import { htmlElement, htmlTable } from "./html-element.ts";
import { unitWords } from "./measure-number.ts";
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
			rows: differences.map((one) => rowOf(one, result)),
		},
		`${whose}${differences.some((one) => isFragile(one, result.restsOn)) ? fragileSentence : ""}`.trim(),
	);
	return htmlElement(
		document,
		"div",
		{ class: "owner" },
		differences.length === 0 ? null : figure,
		table(
			differences,
			pair,
			pair.owners.length > 1 && owner === "all" ? togetherWords : whose,
			id,
			result,
			document,
		),
	);
}

function table(
	differences: readonly Difference[],
	pair: Pair,
	whose: string,
	id: string,
	result: CompareResult,
	document: Document,
): HTMLElement {
	const scale = compareScale(result);
	const many = counted(differences[0]?.replications ?? 0, "replication");
	const decimals = differences.map(
		(one) =>
			[...decimalsOfMeans(one, result), differenceDecimals(one)] as const,
	);
	const [mostA, mostB, most] = [0, 1, 2].map((place) =>
		Math.max(0, ...decimals.map((each) => each[place] ?? 0)),
	);
	const rows = differences.map((one, index) => {
		const [ofA = 0, ofB = 0, own = 0] = decimals[index] ?? [];
		const number = (value: number | null): Node | string =>
			value === null ? "none given" : aligned(document, value, own, most);
		/** An end of an interval that leaves nought out does not read as nought. */
		const end = (value: number | null): Node | string =>
			value !== null &&
			value !== 0 &&
			one.kind === "differs" &&
			plainNumber(value, own) === "0"
				? `just ${value > 0 ? "over" : "under"} 0`
				: number(value);
		return [
			measureWords[one.measure].label,
			unitWords(one.measure, scale),
			aligned(document, one.meanA, ofA, mostA),
			aligned(document, one.meanB, ofB, mostB),
			number(one.mean),
			end(one.low95),
			end(one.high95),
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
