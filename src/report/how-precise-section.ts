import type { CompareResult, Difference } from "../analysis/compare-result.ts";
import { counted, plainNumber } from "../charts/index.ts";
import { chapter } from "./chapter.ts";
import { askedFor, compareScale, type Pair } from "./compare-parts.ts";
import { htmlTable } from "./html-element.ts";
import { unitWords } from "./measure-number.ts";
import { measureWords } from "./measure-words.ts";
import { paragraph } from "./paragraph.ts";

/** Replications, what pairing saved, and whether the precision that was asked for was reached. */
export function howPreciseSection(
	result: CompareResult,
	pair: Pair,
	document: Document,
): HTMLElement {
	const [owner = "all"] = pair.owners;
	const differences = askedFor(result, pair, owner);
	const scale = compareScale(result);
	const intervals = differences.filter(({ low95 }) => low95 !== null).length;
	const saved = htmlTable(document, {
		id: "pairing",
		caption: `${pair.a} against ${pair.b}${owner === "all" ? ", all dressings together" : ""}: how many times smaller the variance of the difference is than it would be had each regimen met other patients. So many times more replications would be needed without pairing.`,
		columns: [
			{ heading: "Measure" },
			{ heading: "Half-width", numeric: true },
			{ heading: "Unit" },
			{ heading: "Pairing saved", numeric: true },
		],
		rows: differences.map((one) => [
			measureWords[one.measure].label,
			halfWidthWords(one),
			unitWords(one.measure, scale),
			savedWords(one),
		]),
	});
	return chapter(
		document,
		"how-precise",
		"How precise this is",
		paragraph(
			document,
			`${counted(result.replications, "replication")}; in each, every regimen meets the same patient, exudate, thresholds of failure, turns and nurses, so that a difference is the regimen's. An interval of 95 % misses the true difference of the model about once in twenty; among ${intervals} of them, ${missed(intervals)} may.`,
		),
		saved,
		reachedTable(result, document),
	);
}

const missed = (intervals: number): string => {
	const expected = Math.round(intervals / 20);
	return expected <= 1 ? "one" : `about ${expected}`;
};

/** Two figures of a half-width. */
function halfWidthWords({ low95, high95 }: Difference): string {
	if (low95 === null || high95 === null) return "none given";
	return significant((high95 - low95) / 2);
}

function significant(value: number): string {
	if (value === 0) return "0";
	let digits = 0;
	while (digits < 5 && value * 10 ** digits < 10) digits++;
	return plainNumber(value, digits);
}

const rounding = 1e-18;

function savedWords({ variance }: Difference): string {
	const { paired, independent } = variance;
	// Variances of rounding, some 1e-18 of a unit squared and below, are none.
	if (independent < rounding) return "nothing varies";
	if (paired < rounding) return "all of it";
	const factor = independent / paired;
	return `${plainNumber(factor, factor < 10 ? 1 : 0)} ×`;
}

function reachedTable(
	result: CompareResult,
	document: Document,
): HTMLElement | null {
	if (result.precision.length === 0) return null;
	const scale = compareScale(result);
	return htmlTable(document, {
		id: "reached",
		caption:
			"The precision that was asked for, as half the width of the interval, and what was reached.",
		columns: [
			{ heading: "Pair" },
			{ heading: "Dressing" },
			{ heading: "Measure" },
			{ heading: "Asked", numeric: true },
			{ heading: "Got", numeric: true },
			{ heading: "Unit" },
			{ heading: "Reached" },
		],
		rows: result.precision.map((one) => [
			`${one.a} against ${one.b}`,
			one.dressing,
			measureWords[one.measure].label,
			String(one.target),
			one.halfWidth === null ? "none given" : significant(one.halfWidth),
			unitWords(one.measure, scale),
			one.reached ? "yes" : "no",
		]),
	});
}
