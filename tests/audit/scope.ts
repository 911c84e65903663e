import type {
	Assumption,
	Caution,
	DayResult,
	DrawnDressing,
	DressingProjection,
	DressingSummary,
} from "../../src/results/index.ts";
import type { Dressing, Scenario } from "../../src/scenario/index.ts";

/** What every paper is held against: the result as it was printed, and the scenario as it was read. */
export interface Whole {
	readonly scenario: Pick<Scenario, "title" | "seed">;
	readonly result: {
		readonly format: string;
		readonly cautions: readonly Caution[];
		readonly assumptions: readonly Assumption[];
	};
}

export interface DayScope extends Whole {
	readonly scenario: Scenario;
	readonly result: DayResult;
}

/** One dressing of a day. */
export interface DressingScope extends DayScope {
	readonly index: number;
	readonly dressing: Dressing;
	readonly summary: DressingSummary;
	readonly day: DrawnDressing;
	readonly projection: DressingProjection;
}

/** The element at a place that is there by the format. */
export function placed<T>(list: readonly T[], place: number): T {
	const one = list[place];
	if (one === undefined) throw new RangeError(`nothing at ${place}`);
	return one;
}

/** Each dressing of a day, matched by its id. */
export const dressingScopes = (scope: DayScope): DressingScope[] =>
	scope.scenario.dressings.map((dressing, index) => {
		const of = <T extends { readonly id: string }>(list: readonly T[]): T =>
			placed(
				list.filter(({ id }) => id === dressing.id),
				0,
			);
		return {
			...scope,
			index,
			dressing,
			summary: of(scope.result.scenario.dressings),
			day: of(scope.result.dressings),
			projection: of(scope.result.projection.dressings),
		};
	});
