import type { CompareDrawings, CompareResult, Difference } from "../../../src/results/index.ts";
import type { Scenario } from "../../../src/scenario/index.ts";
import { deserved, measureOf, supported, unitOf } from "../measures.ts";
import { placed } from "../scope.ts";

export interface CompareScope {
	readonly scenario: Scenario;
	readonly result: CompareResult;
	readonly drawings: CompareDrawings;
}

export interface Pair {
	readonly a: string;
	readonly b: string;
}

export const pairsOf = (scope: CompareScope): Pair[] => {
	const names = scope.scenario.compare.map(({ name }) => name);
	return names.flatMap((a, at) => names.slice(at + 1).map((b) => ({ a, b })));
};

/** `all` first, where there are several dressings. */
export const ownersOf = ({ scenario }: CompareScope): string[] => {
	const ids = scenario.dressings.map(({ id }) => id);
	return ids.length > 1 ? ["all", ...ids] : ids;
};

export const isFound = ({ kind }: Difference): boolean => kind === "differs" || kind === "steady";

/** The differences of a pair on one owner, in the order that was asked for. */
export function asked(scope: CompareScope, { a, b }: Pair, owner: string): Difference[] {
	const of = scope.result.differences.filter((one) => one.a === a && one.b === b && one.dressing === owner);
	return scope.result.measures.flatMap((measure) => of.find((one) => one.measure === measure) ?? []);
}

export const unit = (scope: CompareScope, { measure }: Pick<Difference, "measure">) =>
	unitOf(measure, scope.scenario.horizonMin, scope.result.currency);

/** Digits that the interval of a difference supports; without one the measure's own, or enough that it shows. */
export function digits({ measure, low95, high95, mean }: Difference): number {
	if (low95 !== null && high95 !== null && high95 > low95) return deserved(measure, (high95 - low95) / 2);
	return Math.max(deserved(measure, null), supported(Math.abs(mean)) ?? 0);
}

/** Those of the first page, and why these. */
export function mainOnes(scope: CompareScope) {
	const pair = placed(pairsOf(scope), 0);
	const all = asked(scope, pair, placed(ownersOf(scope), 0));
	if (all.length <= 5) return { rows: all, largest: null, found: 0, many: all.length };
	const share = ({ mean, meanA, meanB }: Difference): number =>
		Math.abs(mean) / Math.max(Math.abs(meanA), Math.abs(meanB));
	const ofEach = (some: readonly Difference[]): Difference[] => {
		const matters = some.map(({ measure }) => measureOf(measure).matter);
		return some.filter((_, i) => matters.indexOf(placed(matters, i)) === i);
	};
	const found = all.filter(isFound).toSorted((x, y) => share(y) - share(x));
	const largest = ofEach(found).slice(0, 5);
	const rest = ofEach([...largest, ...all]).filter((one) => !largest.includes(one));
	return { rows: [...largest, ...rest].slice(0, 5), largest: largest.length, found: found.length, many: all.length };
}
