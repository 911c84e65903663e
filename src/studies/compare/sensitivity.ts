import type { RestsOn, RestsOnRow } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { meanInterval } from "../../statistics/index.ts";
import { measureNames } from "../../vocabulary/index.ts";
import type { Arm } from "./arms.ts";
import { shown } from "./comparison.ts";
import type { GroupSums } from "./gathering.ts";
import { ownersOf } from "./measure-reader.ts";
import type { Study } from "./study.ts";
import { type Variation, variationsOf } from "./variations.ts";

/** Half, twice, and without it: the last for what goes wrong by chance alone. */
const factors = [0.5, 2, 0] as const;
/** Replications of each variation at the most: its difference need not be finer than what it is held against. */
const mostReplications = 400;

/**
 * One-way sensitivity: the first two regimens as they are, and again with every assumption at half and at twice its value, all on the same random
 * numbers; an assumed cause is left out altogether, too. At half and at twice a rate a difference may stay what it is though
 * all of it comes from that one cause, which nobody has measured.
 */
export interface SensitivityStudy {
	readonly study: Study;
	readonly rows: readonly {
		readonly variation: Variation;
		/** Groups at half, at twice and without it; null where that setting cannot be run or is not asked for. */
		readonly groups: readonly (number | null)[];
	}[];
}

export function sensitivityStudy(arms: readonly Arm[]): SensitivityStudy {
	const replications = Math.min(arms[0].scenario.replications, mostReplications);
	const pair = arms.slice(0, 2).map(({ scenario }): Scenario => ({ ...scenario, replications }));
	const scenarios: Scenario[] = [...pair];
	const groups: number[][] = [[0, 1]];
	const rows = variationsOf(pair).map((variation) => ({
		variation,
		groups: factors.map((factor) => {
			const varied = pair.map((scenario) =>
				variation.value === 0 || (factor === 0 && !variation.isAssumedCause)
					? null
					: variation.with(scenario, variation.value * factor),
			);
			if (varied.some((scenario) => scenario === null)) return null;
			scenarios.push(...varied.filter((scenario) => scenario !== null));
			groups.push([scenarios.length - 2, scenarios.length - 1]);
			return groups.length - 1;
		}),
	}));
	return { study: { arms: scenarios, groups, detailed: false }, rows };
}

/** What becomes of every difference between the two regimens when one assumption is halved, doubled or, where it is a cause, left out. */
export function sensitivityOf(
	arms: readonly Arm[],
	{ study, rows }: SensitivityStudy,
	groups: readonly GroupSums[],
): RestsOn {
	const [scenario] = study.arms;
	const owners = ownersOf(scenario);
	const places = owners.flatMap((dressing, owner) =>
		measureNames.flatMap((measure, place) =>
			shown(measure, scenario) ? [{ dressing, measure, at: owner * measureNames.length + place }] : [],
		),
	);
	const run = rows.filter((row) => row.groups.some((group) => group !== null));
	return {
		a: arms[0].name,
		b: arms[1].name,
		replications: scenario.replications,
		rows: run.map(
			({ variation, groups: at }): RestsOnRow => ({
				name: variation.name,
				meaning: variation.meaning,
				value: variation.value,
				unit: variation.unit,
				provenance: variation.provenance,
				effects: places.map(({ dressing, measure, at: place }) => {
					const base = differenceOf(groups[0], place);
					const [half, twice, without] = at.map((group) =>
						group === null ? null : differenceOf(groups[group], place),
					);
					return {
						dressing,
						measure,
						base: base.mean,
						half: half?.mean ?? null,
						twice: twice?.mean ?? null,
						without: without?.mean ?? null,
						turns: [half, twice].some((one) => one !== null && one.direction !== base.direction),
						appears: base.direction === 0 && [half, twice].some((one) => one !== null && one.direction !== 0),
						hangs: without !== null && hangsOn(base, without),
					};
				}),
			}),
		),
		leftOut: rows
			.filter((row) => !run.includes(row))
			.map(({ variation }) => ({
				name: variation.name,
				why:
					variation.value === 0
						? "it is 0, and half and twice of that are 0"
						: "the scenario cannot run on half or on twice its value",
			})),
	};
}

/** Whether a difference that was found is not without a cause, and that cause makes at least half of it: near the edge of what can be told any little change loses one. */
const hangsOn = (base: Found, without: Found): boolean =>
	base.direction !== 0 &&
	without.direction !== base.direction &&
	without.mean * base.direction <= Math.abs(base.mean) / 2;

interface Found {
	readonly mean: number;
	/** Sign of the mean where its interval leaves nought out, else 0. */
	readonly direction: number;
}

/** The mean difference, and its sign where the interval of the mean leaves nought out. */
function differenceOf({ pairs: [pair] }: GroupSums, at: number): Found {
	const { moments } = pair;
	const mean = moments.mean[at];
	const interval = meanInterval(moments.at(at));
	const found = interval !== null && (interval.low > 0 || interval.high < 0);
	return { mean, direction: found ? Math.sign(mean) : 0 };
}
