import type { ConstantName, Constants } from "../../physics/index.ts";
import type {
	CompareResult,
	Difference,
	Drawn,
	PrecisionReached,
	RegimenResult,
	RestsOn,
	Spread,
} from "../../results/index.ts";
import type { Dressing, Regimen, Scenario } from "../../scenario/index.ts";
import type { Histogram, VectorMoments } from "../../statistics/index.ts";
import type { MeasureFact, MeasureName, TotalName } from "../../vocabulary/index.ts";
import { measureFact, measureNames, totalNames } from "../../vocabulary/index.ts";
import { regimenSummary, summaryOf } from "../day/summary.ts";
import { assumptionsOf } from "../kit/assumptions.ts";
import { targetCautions } from "../kit/precision.ts";
import { spread } from "../kit/spread.ts";
import type { Arm } from "./arms.ts";
import { comparisonCautions } from "./cautions.ts";
import type { GroupSums, PairSums } from "./gathering.ts";
import { ownersOf } from "./measure-reader.ts";
import type { Study } from "./study.ts";
import { judge } from "./verdict.ts";

/** A measure whose paired difference is to be known to within a half-width. */
export interface MeasureTarget {
	readonly measure: MeasureName;
	readonly halfWidth: number;
}

/** All regimens in one group: every pair of them is compared. */
export function comparisonStudy(arms: readonly Arm[]): Study {
	return { arms: arms.map((arm) => arm.scenario), groups: [arms.map((_, place) => place)], detailed: true };
}

/** Puts the comparison together from what the study came to. `measures` are those the reader asked for, in order. */
export function compareResult(
	scenario: Scenario,
	arms: readonly Arm[],
	sums: GroupSums,
	asked: {
		readonly measures: readonly MeasureName[];
		readonly targets: readonly MeasureTarget[];
		readonly restsOn: RestsOn | null;
		readonly drawn: Drawn;
		readonly version: string;
	},
): CompareResult {
	const replications = sums.arms[0].count;
	const run = { ...scenario, replications };
	const differences = differencesOf(run, arms, sums);
	const precision = precisionOf(differences, asked.targets);
	const regimens = arms.map((arm, place) => regimenResult(arm, scenario, sums.arms[place], sums.armCounts[place]));
	return {
		format: "slackwater/compare@1",
		scenario: summaryOf(run, [], asked.version),
		replications,
		trace: asked.drawn,
		currency: scenario.prices?.currency ?? null,
		measures: asked.measures.filter((measure) => measure !== "cost" || scenario.prices !== null),
		regimens,
		differences,
		restsOn: asked.restsOn,
		precision,
		cautions: [
			...comparisonCautions(run, arms, regimens, differences, asked.drawn.replication),
			...targetCautions(precision, replications),
		],
		assumptions: assumptionsOf({ ...run, dressings: [...run.dressings, ...arms.flatMap((a) => a.scenario.dressings)] }),
	};
}

function regimenResult(
	{ name, scenario: arm }: Arm,
	base: Scenario,
	moments: VectorMoments,
	counts: readonly Histogram[],
): RegimenResult {
	const owners = ownersOf(arm);
	const spreadAt = (owner: number, place: number): Spread => {
		const at = owner * measureNames.length + place;
		return spread(counts[at], moments.at(at));
	};
	const changed = arm.dressings.findIndex(
		(dressing, i) => JSON.stringify(dressing) !== JSON.stringify(base.dressings[i]),
	);
	const first = arm.dressings[Math.max(0, changed)];
	return {
		name,
		regimen: regimenSummary(first.regimens[0], first, arm.constants),
		regimenOf: arm.dressings
			.filter(({ regimens }) => JSON.stringify(regimens[0]) === JSON.stringify(first.regimens[0]))
			.map(({ id }) => id),
		dressings: owners.map((id, owner) => {
			const dressing: Dressing | undefined = arm.dressings[owner];
			const spreads = measureNames.map((_, place) => spreadAt(owner, place));
			return {
				id,
				...settingsOf(dressing === undefined ? arm.dressings : [dressing], arm.constants),
				totals: Object.fromEntries(totalNames.map((total, place) => [total, spreads[place]])) as {
					[N in TotalName]: Spread;
				}, // fromEntries forgets the names that totalNames lists
				measures: Object.fromEntries(
					measureNames.flatMap((measure, place) => (shown(measure, arm) ? [[measure, spreads[place]]] : [])),
				),
			};
		}),
	};
}

/** What some dressings are set to where they are set alike; nothing is said of what they are not set alike in. */
function settingsOf(
	dressings: readonly Dressing[],
	constants: Constants,
): Pick<
	RegimenResult["dressings"][number],
	"regimen" | "canisterMl" | "sourceMl" | "canisterHoldsMl" | "sourceLeftMl" | "regimens"
> {
	const [first] = dressings;
	const shared = <T>(of: (dressing: Dressing) => T): T | null =>
		dressings.every((one) => JSON.stringify(of(one)) === JSON.stringify(of(first))) ? of(first) : null;
	// Alike in settings; the seconds of a drawdown are those of the first.
	const summary = (regimen: Regimen) => regimenSummary(regimen, first, constants);
	const regimen = shared(({ regimens }) => regimens[0]);
	return {
		regimen: regimen === null ? null : summary(regimen),
		canisterMl: shared(({ canisterMl }) => canisterMl),
		sourceMl: shared(({ sourceMl }) => sourceMl),
		canisterHoldsMl: shared(({ canisterHoldsMl }) => canisterHoldsMl),
		sourceLeftMl: shared(({ sourceLeftMl, sourceMl }) => sourceLeftMl ?? sourceMl),
		regimens: (shared(({ regimens }) => regimens) ?? []).map(summary),
	};
}

/** Whether a measure says anything of a scenario: a cost needs prices, calls together need two dressings. */
export function shown(measure: MeasureName, scenario: Scenario): boolean {
	if (measure === "cost") return scenario.prices !== null;
	return measure !== "callsTogether" || scenario.dressings.length > 1;
}

function differencesOf(scenario: Scenario, arms: readonly Arm[], sums: GroupSums): Difference[] {
	const owners = ownersOf(scenario);
	return sums.pairs.flatMap((pair) =>
		owners.flatMap((dressing, owner) =>
			measureNames.flatMap((measure, place) =>
				shown(measure, scenario)
					? [difference(scenario, arms, sums, pair, { dressing, measure }, owner * measureNames.length + place)]
					: [],
			),
		),
	);
}

function difference(
	scenario: Scenario,
	arms: readonly Arm[],
	sums: GroupSums,
	pair: PairSums,
	of: { readonly dressing: string; readonly measure: MeasureName },
	at: number,
): Difference {
	const [a, b] = pair.places;
	const [left, right] = [sums.arms[a], sums.arms[b]];
	const fact = measureFact(of.measure);
	const { count } = pair.moments;
	const unit = unitOf(fact, scenario);
	const moments = pair.moments.at(at);
	const judgement = judge({
		moments,
		higher: pair.higher[at],
		lower: pair.lower[at],
		deviating: count - pair.counts[at].mostFrequent,
		fact,
		unit,
		certain:
			!scenario.chance || JSON.stringify(arms[a].scenario.dressings) === JSON.stringify(arms[b].scenario.dressings),
		judged: !fact.ofClogging || !scenario.chance || cloggingGiven(scenario),
	});
	const freedom = Math.max(1, count - 1);
	return {
		a: arms[a].name,
		b: arms[b].name,
		...of,
		unit,
		meanA: left.mean[at],
		meanB: right.mean[at],
		mean: moments.mean,
		low95: judgement.low95,
		high95: judgement.high95,
		replications: count,
		shareAHigher: pair.higher[at] / count,
		shareBHigher: pair.lower[at] / count,
		shareABetter: fact.better === null ? null : (fact.better === "higher" ? pair.higher[at] : pair.lower[at]) / count,
		variance: { paired: moments.squares / freedom, independent: (left.squares[at] + right.squares[at]) / freedom },
		kind: judgement.kind,
		verdict: judgement.verdict,
	};
}

const unitOf = (fact: MeasureFact, scenario: Scenario) =>
	fact.unit === "currency" ? (scenario.prices?.currency ?? "") : fact.unit;

const cloggingRates: readonly ConstantName[] = ["debris.perDrain", "debris.perDay", "clump.chance", "clump.mean"];

/** Whether a site has put figures of its own in the place of every default rate of clogging. */
function cloggingGiven(scenario: Scenario): boolean {
	return cloggingRates.every((name) => scenario.overridden.includes(name));
}

/** How precise every targeted difference is so far. */
export function comparisonPrecision(
	scenario: Scenario,
	arms: readonly Arm[],
	sums: GroupSums,
	targets: readonly MeasureTarget[],
): PrecisionReached[] {
	return precisionOf(differencesOf(scenario, arms, sums), targets);
}

function precisionOf(differences: readonly Difference[], targets: readonly MeasureTarget[]): PrecisionReached[] {
	return differences.flatMap((one) =>
		targets
			.filter(({ measure }) => measure === one.measure)
			.map(({ halfWidth: target }) => {
				const half = one.low95 === null || one.high95 === null ? null : (one.high95 - one.low95) / 2;
				return {
					a: one.a,
					b: one.b,
					dressing: one.dressing,
					measure: one.measure,
					target,
					halfWidth: half,
					reached: half !== null && half <= target,
				};
			}),
	);
}
