import { supportedDigits } from "../../physics/index.ts";
import type { Difference, VerdictKind } from "../../results/index.ts";
import { type MeanInterval, type Moments, meanInterval } from "../../statistics/index.ts";
import type { MeasureFact } from "../../vocabulary/index.ts";

/** Replications that must differ from the most frequent difference for an interval of the mean to hold. */
const fewestDeviating = 5;

export interface Judgement {
	readonly low95: number | null;
	readonly high95: number | null;
	readonly kind: VerdictKind;
	readonly verdict: string;
}

/** What one paired difference of a measure can be said to be. */
export interface Judged {
	readonly moments: Moments;
	/** Replications in which a has more, in which b has more. */
	readonly higher: number;
	readonly lower: number;
	/** Replications whose difference is another than the most frequent one. */
	readonly deviating: number;
	readonly fact: MeasureFact;
	readonly unit: string;
	/** True where what is seen is all there is: chance is off, or the two regimens are one. */
	readonly certain: boolean;
	/** False where the measure rests on rates of clogging that were left to the defaults. */
	readonly judged: boolean;
}

/** The interval of a difference and the verdict on it, in words. */
export function judge(difference: Judged): Judgement {
	const { moments, higher, lower, deviating, certain } = difference;
	const always = higher === 0 && lower === 0;
	const interval =
		certain || (deviating >= fewestDeviating && moments.count >= difference.fact.fewest) ? meanInterval(moments) : null;
	const bounds = { low95: interval?.low ?? null, high95: interval?.high ?? null };
	if (!difference.judged)
		return { ...bounds, kind: "not-judged", verdict: "not judged: it rests on assumed rates of clogging" };
	if (always) return { ...bounds, kind: "same", verdict: "the same in every replication" };
	if (interval === null) return { ...bounds, ...unsure(difference) };
	if (interval.low > 0 || interval.high < 0)
		return {
			...bounds,
			kind: "differs",
			verdict: `${moreOrLess(difference)}: ${sized(moments.mean, interval, difference)}`,
		};
	const within = Math.max(Math.abs(interval.low), Math.abs(interval.high));
	return {
		...bounds,
		kind: "none-found",
		verdict: `no difference found at ${quantity(roundedUp(within), difference.unit)}`,
	};
}

/** Where hardly a replication differs from the rest, the mean is in doubt but its direction need not be. */
function unsure(difference: Judged): Pick<Judgement, "kind" | "verdict"> {
	const { moments, higher, lower, deviating } = difference;
	const n = moments.count;
	const steady = Math.max(higher, lower) >= n - deviating && n > 2 * deviating;
	if (steady && n >= 20 * fewestDeviating)
		return {
			kind: "steady",
			verdict: `${moreOrLess(difference)}: ${quantity(Math.abs(moments.mean), difference.unit)}${deviating === 0 ? ", the same in every replication" : `, but for ${deviating} of ${n} replications`}`,
		};
	if (deviating >= fewestDeviating)
		return {
			kind: "too-rare",
			verdict: `cannot be told from ${n} replications: most minutes fall on few of them (${difference.fact.fewest} replications may tell)`,
		};
	return {
		kind: "too-rare",
		verdict: `cannot be told from ${n} replications: ${deviating} of them differ from the rest`,
	};
}

const moreOrLess = ({ moments, fact }: Judged) => (moments.mean > 0 ? "more" : fact.unit === "" ? "fewer" : "less");

/** `0.04 (0.03 to 0.05)`, without its sign: the word before says which way. */
function sized(mean: number, interval: MeanInterval, { unit }: Judged): string {
	const [low, high] = mean > 0 ? [interval.low, interval.high] : [-interval.high, -interval.low];
	const digits = supportedDigits((high - low) / 2);
	const number = (value: number) => (digits === null ? figure(value) : rounded(value, digits));
	const near = number(low);
	// The interval leaves nought out, however near it comes.
	return `${withUnit(number(Math.abs(mean)), unit)} (${near === "0" ? "just over 0" : near} to ${number(high)})`;
}

const quantity = (value: number, unit: string) => withUnit(figure(value), unit);

const withUnit = (number: string, unit: string) => (unit === "" || unit === "share" ? number : `${number} ${unit}`);

/** To so many digits after the point; to tens where there are −1. */
function rounded(value: number, digits: number): string {
	let step = 1;
	for (let tens = digits; tens < 0; tens++) step *= 10;
	return String(Number((value / step).toFixed(Math.max(0, digits))) * step);
}

/** Three figures, more where the number is whole. */
const figure = (value: number): string => String(value >= 100 ? Math.round(value) : Number(value.toPrecision(3)));

/** Up to the next of 1, 2, 5, 10, …: what is said not to be there is said no more sharply than it was looked for. */
export function roundedUp(value: number): number {
	if (value <= 0) return 0;
	// Nine figures, so that 0.1 + 0.2 is 0.3.
	const [leading, exponent] = Number(value.toPrecision(9)).toExponential().split("e");
	const step = [1, 2, 5, 10].find((one) => one >= Number(leading)) ?? 10;
	return Number(`${step}e${exponent}`);
}

/** The direction that a verdict gives a difference: none where none is given. */
export function directionOf({ kind, mean }: Pick<Difference, "kind" | "mean">): -1 | 0 | 1 {
	return kind === "differs" || kind === "steady" ? (mean > 0 ? 1 : -1) : 0;
}
