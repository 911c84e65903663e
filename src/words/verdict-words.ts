import { supportedDigits } from "../physics/index.ts";
import type { Difference } from "../results/index.ts";
import { decimalsFor, type MeasureScale, unitWords } from "./measure-number.ts";
import { measureWords } from "./measure-words.ts";
import { plainNumber } from "./numbers.ts";

/** Digits after the point that a difference deserves: those that its interval supports; without one the measure's own, or enough that it shows. */
export function differenceDecimals({ measure, mean, low95, high95 }: Difference): number {
	if (low95 !== null && high95 !== null && high95 > low95) return decimalsFor(measure, (high95 - low95) / 2);
	return Math.max(decimalsFor(measure, null), supportedDigits(Math.abs(mean)) ?? 0);
}

/** Whether a verdict says that the regimens differ. */
export const isFound = ({ kind }: Pick<Difference, "kind">): boolean => kind === "differs" || kind === "steady";

/**
 * The verdict in words of the measure, as a says it of b: 'fewer: 0.04 a day (0.03 to 0.05)'. Where nothing was found the
 * words are those of the result.
 */
export function verdictWords(difference: Difference, scale: MeasureScale): string {
	const { measure, mean, low95, high95, verdict } = difference;
	if (!isFound(difference)) return verdict;
	const decimals = differenceDecimals(difference);
	const number = (value: number): string => plainNumber(Math.abs(value), decimals);
	const { less, more } = measureWords[measure];
	const unit = unitWords(measure, scale);
	const size = `${mean < 0 ? less : more}: ${number(mean)}${unit === "" ? "" : ` ${unit}`}`;
	if (low95 === null || high95 === null)
		return `${size}, the same in ${difference.variance.paired === 0 ? "every" : "nearly every"} replication`;
	const [near, far] = mean < 0 ? [high95, low95] : [low95, high95];
	// The interval leaves nought out, however near it comes.
	const nearest = number(near) === "0" ? "just over 0" : number(near);
	return `${size} (${nearest} to ${number(far)})`;
}
