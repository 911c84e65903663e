import { supportedDigits } from "../physics/index.ts";
import type { Spread } from "../results/index.ts";
import { type MeasureName, measureFact } from "../vocabulary/index.ts";
import { durationWords } from "./duration.ts";
import { measureWords } from "./measure-words.ts";
import { plainNumber } from "./numbers.ts";

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
	const { unit } = measureFact(name);
	const own = unit === "share" ? "" : unit === "currency" ? (scale.currency ?? "") : unit;
	const per = ofTheWhole.has(name) ? "" : perHorizon(scale.horizonMin);
	return [own, per].filter((word) => word !== "").join(" ");
}

/** Digits after the point for a measure of one regimen or two: those that its interval supports; without an interval the measure's own. */
export const decimalsFor = (name: MeasureName, halfWidth: number | null): number =>
	supportedDigits(halfWidth) ?? measureWords[name].decimals;

/**
 * The same for the mean of one regimen. Where all but few replications have one value (P10 is P90) an interval of the mean
 * does not hold, and shows no more digits than the measure has without.
 */
export function meanDecimals(
	name: MeasureName,
	spread: Pick<Spread, "halfWidth95" | "p10" | "p90"> | undefined,
): number {
	const { decimals } = measureWords[name];
	const supported = decimalsFor(name, spread?.halfWidth95 ?? null);
	return spread !== undefined && spread.p10 === spread.p90 ? Math.min(decimals, supported) : supported;
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
