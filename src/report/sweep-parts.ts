import type { MeasureName } from "../analysis/measures.ts";
import type {
	SweepAxisName,
	SweepPoint,
	SweepResult,
	SweepValue,
} from "../analysis/sweep-result.ts";
import { plainNumber } from "../charts/index.ts";
import { joinedWords } from "./joined-words.ts";
import { decimalsFor, type MeasureScale, measured } from "./measure-number.ts";
import { inSentence, measureNames } from "./measure-words.ts";

export const sweepScale = (result: SweepResult): MeasureScale => ({
	horizonMin: result.scenario.horizonMin,
	currency: result.currency,
});

/** 'night calls under 0.5 a day and canisters changed at most 1 a day'; empty where nothing was asked. */
export function constraintWords(result: SweepResult): string {
	const scale = sweepScale(result);
	const tests = {
		"<": "under",
		"<=": "at most",
		">": "over",
		">=": "at least",
	} as const;
	return joinedWords(
		result.constraints.map(
			({ measure, test, limit }) =>
				`${inSentence(measure)} ${tests[test]} ${measured(limit, measure, scale, 4)}`,
		),
	);
}

/** Places of the points in the efficient set. */
export const efficientPlaces = (result: SweepResult): ReadonlySet<number> =>
	new Set(result.efficient?.points ?? []);

/** Every measure that the points carry. */
export const carriedMeasures = (result: SweepResult): MeasureName[] =>
	measureNames.filter((measure) =>
		[...result.points, ...result.marks].some(
			(one) => one.measures[measure] !== undefined,
		),
	);

/** What is asked of a grid on which the beginning is varied, beside what the reader asked for. */
const ofTheClock: { readonly [N in SweepAxisName]?: readonly MeasureName[] } = {
	start: ["callsIn.handOver", "callsIn.meals", "callsIn.smallHours"],
	apart: ["callsTogether"],
};

export interface ShownMeasures {
	readonly varying: readonly MeasureName[];
	/** Those that are the same at every point, going by their interval. */
	readonly alike: readonly MeasureName[];
}

/** The measures of a grid's charts and sentences: what its clock axes ask for, then what the reader asked for. */
export function shownMeasures(result: SweepResult): ShownMeasures {
	const carried = carriedMeasures(result);
	const shown = [
		...new Set([
			...result.axes.flatMap(({ name }) => ofTheClock[name] ?? []),
			...result.measures,
		]),
	].filter((measure) => carried.includes(measure));
	const alike = shown.filter((measure) => isAlike(result, measure));
	return {
		varying: shown.filter((measure) => !alike.includes(measure)),
		alike,
	};
}

/** Whether all points are written alike in a measure. */
function isAlike({ points }: SweepResult, measure: MeasureName): boolean {
	const written = points.flatMap((point) => {
		const value = point.measures[measure];
		return value === undefined
			? []
			: [plainNumber(value.mean, decimalsFor(measure, value.halfWidth95))];
	});
	return new Set(written).size < 2;
}

/** Points along one axis, every other axis at the value nearest to the scenario's own. */
export function pointsAlong(
	result: SweepResult,
	axis: SweepAxisName,
): SweepPoint[] {
	const nearest = result.axes.map(({ values, current }) =>
		values.reduce((best, value) =>
			Math.abs(value - current) < Math.abs(best - current) ? value : best,
		),
	);
	return result.points.filter(({ at }) =>
		result.axes.every(
			({ name }, index) => name === axis || at[index] === nearest[index],
		),
	);
}

/** '11.4 ± 0.1'. */
export function valueWords(measure: MeasureName, value: SweepValue): string {
	const decimals = decimalsFor(measure, value.halfWidth95);
	const mean = plainNumber(value.mean, decimals);
	return value.halfWidth95 === null || value.halfWidth95 === 0
		? mean
		: `${mean} ± ${plainNumber(value.halfWidth95, decimals)}`;
}

/** '+1.2 (1.1 to 1.3)': how far from the current regimen. */
export function differenceWords(
	measure: MeasureName,
	value: SweepValue,
): string {
	const { difference, differenceHalfWidth95: half } = value;
	const decimals = decimalsFor(measure, half);
	const number = (one: number): string => plainNumber(one, decimals);
	const text = number(difference);
	const signed = difference > 0 && text !== "0" ? `+${text}` : text;
	if (half === null || half === 0) return signed;
	return `${signed} (${number(difference - half)} to ${number(difference + half)})`;
}
