import type { CompareResult, Difference, RegimenResult, Spread } from "../../results/index.ts";
import type { MeasureName } from "../../vocabulary/index.ts";
import {
	counted,
	durationWords,
	type MeasureScale,
	meanDecimals,
	measureWords,
	plainNumber,
	scaleOf,
	unitWords,
} from "../../words/index.ts";
import { chapter, type HtmlMaker } from "../kit/html-element.ts";
import { type Column, htmlTable, shownNumber } from "../kit/table.ts";
import { askedFor, type Pair } from "./pairs/pairs.ts";

/** What a day comes to under each regimen: mean, and where 8 days in 10 lie. */
export function quantitiesSection(html: HtmlMaker, result: CompareResult): HTMLElement {
	const { regimens, scenario, replications } = result;
	const { horizonMin, dressings } = scenario;
	const tables = dressings.map(({ id }, index) => {
		const measuresOf = ({ dressings: own }: RegimenResult) => own.find((one) => one.id === id)?.measures;
		const columns: readonly Column<MeasureName>[] = [
			{ head: "Measure", written: (measure) => measureWords[measure].label },
			{ head: "Unit", written: (measure) => unitWords(measure, scaleOf(result)) },
			...regimens.map((regimen) =>
				shownNumber(regimen.name, (measure: MeasureName) => spreadWords(measuresOf(regimen)?.[measure], measure)),
			),
		];
		const caption = `${dressings.length > 1 ? `Dressing ${id}: m` : "M"}eans of ${replications} replications, and in brackets where 8 in 10 of them lie (P10 to P90), or what all of these come to; a few others can draw the mean beyond it.`;
		const isKnown = (measure: MeasureName) => regimens.some((regimen) => measuresOf(regimen)?.[measure] !== undefined);
		return htmlTable(html, { id: `quantities-${index + 1}`, caption }, columns, result.measures.filter(isKnown));
	});
	const whole = horizonMin === 1440 ? "a day comes" : `${durationWords(horizonMin)} come`;
	return chapter(html, "quantities", `What ${whole} to under each`, ...tables);
}

/** '11.4 (11 to 12)'; '64.5 (mostly 64.2)' where all of the middle is one value; '12' where nothing varies. */
function spreadWords(spread: Spread | undefined, measure: MeasureName): string {
	if (spread === undefined) return "";
	const number = (value: number): string => plainNumber(value, meanDecimals(measure, spread));
	const [mean, low, high] = [spread.mean, spread.p10, spread.p90].map(number);
	if (low !== high) return `${mean} (${low} to ${high})`;
	return mean === low ? `${mean}` : `${mean} (mostly ${low})`;
}

/** Replications, what pairing saved, and whether the precision that was asked for was reached. */
export function howPreciseSection(html: HtmlMaker, pair: Pair): HTMLElement {
	const { result, scale } = pair;
	const differences = askedFor(pair);
	const intervals = differences.filter(({ low95 }) => low95 !== null).length;
	const saved = `${pair.a} against ${pair.b}${pair.whole === "all" ? ", all dressings together" : ""}: how many times smaller the variance of the difference is than it would be had each regimen met other patients. So many times more replications would be needed without pairing.`;
	const reached = "The precision that was asked for, as half the width of the interval, and what was reached.";
	const words = `${counted(result.replications, "replication")}; in each, every regimen meets the same patient, exudate, thresholds of failure, turns and nurses, so that a difference is the regimen's. An interval of 95 % misses the true difference of the model about once in twenty; among ${intervals} of them, ${missed(intervals)} may.`;
	const tables = [htmlTable(html, { id: "pairing", caption: saved }, savedColumns(scale), differences)];
	if (result.precision.length > 0)
		tables.push(htmlTable(html, { id: "reached", caption: reached }, reachedColumns(scale), result.precision));
	return chapter(html, "how-precise", "How precise this is", words, ...tables);
}

const missed = (intervals: number): string => {
	const expected = Math.round(intervals / 20);
	return expected <= 1 ? "one" : `about ${expected}`;
};

const savedColumns = (scale: MeasureScale): readonly Column<Difference>[] => [
	{ head: "Measure", written: ({ measure }) => measureWords[measure].label },
	shownNumber("Half-width", ({ low95, high95 }) =>
		halfWidthWords(low95 === null || high95 === null ? null : (high95 - low95) / 2),
	),
	{ head: "Unit", written: ({ measure }) => unitWords(measure, scale) },
	{ head: "Pairing saved", numeric: true, written: savedWords },
];

const reachedColumns = (scale: MeasureScale): readonly Column<CompareResult["precision"][number]>[] => [
	{ head: "Pair", written: ({ a, b }) => `${a} against ${b}` },
	{ head: "Dressing", written: ({ dressing }) => dressing },
	{ head: "Measure", written: ({ measure }) => measureWords[measure].label },
	{ head: "Asked", numeric: true, written: ({ target }) => String(target) },
	{ head: "Got", numeric: true, written: ({ halfWidth }) => halfWidthWords(halfWidth) },
	{ head: "Unit", written: ({ measure }) => unitWords(measure, scale) },
	{ head: "Reached", written: ({ reached }) => (reached ? "yes" : "no") },
];

/** Two figures of a half-width. */
function halfWidthWords(value: number | null): string {
	if (value === null) return "none given";
	if (value === 0) return "0";
	const digits = [0, 1, 2, 3, 4].find((one) => value * 10 ** one >= 10) ?? 5;
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
