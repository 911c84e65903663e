import type { MeasureName } from "../analysis/measures.ts";
import { durationWords, plainNumber } from "../charts/index.ts";
import { measureWords } from "./measure-words.ts";

/** What a measure's numbers are written with: how long the result spans, and what `cost` is in. */
export interface MeasureScale {
	readonly horizonMin: number;
	readonly currency: string | null;
}

/** 'a day', 'in 2 d': means are per horizon. */
export const perHorizon = (horizonMin: number): string =>
	horizonMin === 1440 ? "a day" : `in ${durationWords(horizonMin)}`;

/** Measures of which each day has one, so that 'a day' would be wrong after them. */
const ofTheWhole: ReadonlySet<MeasureName> = new Set([
	"meanExudateShare",
	"firstCanisterChangeMin",
	"canisterLastsShift",
	"inDressingMl",
]);

/** The unit after a number: 'mL a day', 'a day', '' for a share. */
export function unitWords(name: MeasureName, scale: MeasureScale): string {
	const { unit } = measureWords[name];
	const own =
		unit === "share" ? "" : unit === "currency" ? (scale.currency ?? "") : unit;
	const per = ofTheWhole.has(name) ? "" : perHorizon(scale.horizonMin);
	return [own, per].filter((word) => word !== "").join(" ");
}

/** No number of a measure has more digits after the point. */
export const mostDecimals = 4;

/**
 * Digits after the point for a measure of one regimen or two: its own, or more where the half-width of the interval shows
 * that smaller steps are known (two figures of it).
 */
export function decimalsFor(
	name: MeasureName,
	halfWidth: number | null,
): number {
	const { decimals } = measureWords[name];
	if (halfWidth === null || halfWidth <= 0) return decimals;
	let digits = 0;
	while (digits < mostDecimals && halfWidth * 10 ** digits < 2) digits++;
	return Math.max(Math.min(decimals, 1), digits);
}

/** '11.4', '550' with the unit: '550 mL a day'. */
export function measured(
	value: number,
	name: MeasureName,
	scale: MeasureScale,
	decimals = measureWords[name].decimals,
): string {
	const unit = unitWords(name, scale);
	const number = plainNumber(value, decimals);
	return unit === "" ? number : `${number} ${unit}`;
}
