import { supportedDigits } from "../physics/index.ts";
import type { CompareResult, Difference, Spread, SweepResult } from "../results/index.ts";
import { type MeasureName, measureFact } from "../vocabulary/index.ts";
import { measureWords } from "./measure-words.ts";
import { durationWords, figureWords, plainNumber } from "./numbers.ts";

/** What a measure's numbers are written with: how long the result spans, and what `cost` is in. */
export interface MeasureScale {
	readonly horizonMin: number;
	readonly currency: string | null;
}

/** That of a comparison or a grid. */
export const scaleOf = ({ scenario, currency }: CompareResult | SweepResult): MeasureScale => ({
	horizonMin: scenario.horizonMin,
	currency,
});

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

/** Digits after the point for a measure of one regimen or two: those that its interval supports; without it its own. */
export const decimalsFor = (name: MeasureName, halfWidth: number | null): number =>
	supportedDigits(halfWidth) ?? measureWords[name].decimals;

/**
 * The same for the mean of one regimen. Where all but few replications have one value (P10 is P90) an interval of the mean
 * does not hold, and shows no more digits than the measure has without.
 */
export function meanDecimals(name: MeasureName, spread?: Pick<Spread, "halfWidth95" | "p10" | "p90">): number {
	const { decimals } = measureWords[name];
	const supported = decimalsFor(name, spread?.halfWidth95 ?? null);
	return spread !== undefined && spread.p10 === spread.p90 ? Math.min(decimals, supported) : supported;
}

/** '11.4', '550' with the unit: '550 mL a day'. */
export const measured = (value: number, name: MeasureName, scale: MeasureScale, decimals?: number): string =>
	figureWords(value, decimals ?? measureWords[name].decimals, unitWords(name, scale));

/** Digits of a difference: those that its interval supports; without one the measure's own, or enough that it shows. */
export function differenceDecimals({ measure, mean, low95, high95 }: Difference): number {
	if (low95 !== null && high95 !== null && high95 > low95) return decimalsFor(measure, (high95 - low95) / 2);
	return Math.max(decimalsFor(measure, null), supportedDigits(Math.abs(mean)) ?? 0);
}

/** Whether a verdict says that the regimens differ. */
export const isFound = ({ kind }: Pick<Difference, "kind">): boolean => kind === "differs" || kind === "steady";

/** 'fewer: 0.04 a day (0.03 to 0.05)', as a says it of b; the words of the result where nothing was found. */
export function verdictWords(difference: Difference, scale: MeasureScale): string {
	const { measure, mean, low95, high95, verdict } = difference;
	if (!isFound(difference)) return verdict;
	const decimals = differenceDecimals(difference);
	const number = (value: number): string => plainNumber(Math.abs(value), decimals);
	const { less, more } = measureWords[measure];
	const size = `${mean < 0 ? less : more}: ${figureWords(Math.abs(mean), decimals, unitWords(measure, scale))}`;
	if (low95 === null || high95 === null)
		return `${size}, the same in ${difference.variance.paired === 0 ? "every" : "nearly every"} replication`;
	const [near, far] = mean < 0 ? [high95, low95] : [low95, high95];
	// The interval leaves nought out, however near it comes.
	const nearest = number(near) === "0" ? "just over 0" : number(near);
	return `${size} (${nearest} to ${number(far)})`;
}
