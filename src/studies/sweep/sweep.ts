import type {
	DressingProjection,
	SweepClock,
	SweepMark,
	SweepPoint,
	SweepResult,
	SweepValue,
	SweepValues,
} from "../../results/index.ts";
import { type Scenario, settingsText } from "../../scenario/index.ts";
import { halfWidth, type VectorMoments } from "../../statistics/index.ts";
import { type AxisName, callsNurse, measureNames } from "../../vocabulary/index.ts";
import { shown } from "../compare/comparison.ts";
import type { GroupSums } from "../compare/gathering.ts";
import { ownersOf } from "../compare/measure-reader.ts";
import { regimenSummary, summaryOf } from "../day/summary.ts";
import { assumptionsOf } from "../kit/assumptions.ts";
import { picked } from "../kit/named.ts";
import { sweepCautions } from "./cautions.ts";
import { isVaried, outsideReasons, type SweepPlan } from "./grid.ts";
import { paretoSet } from "./pareto-set.ts";

/** What a regimen must keep. */
export type Constraint = Omit<SweepResult["constraints"][number], "kept">;

export interface SweepAsked extends Pick<SweepResult, "measures"> {
	readonly constraints: readonly Constraint[];
	readonly efficient: NonNullable<SweepResult["efficient"]>["measures"];
	/** Axis of the response curve; null for none. */
	readonly curve: AxisName | null;
	readonly version: string;
}

/** Puts the sweep together from its study. `clocks` holds what is likely when, for the points of `clockPoints`. */
export function sweepResult(
	plan: SweepPlan,
	groups: readonly GroupSums[],
	clocks: ReadonlyMap<number, SweepClock>,
	asked: SweepAsked,
): SweepResult {
	const { scenario } = plan;
	const owners = ownersOf(scenario);
	const owner = plan.dressing === null ? owners.length - 1 : owners.indexOf(plan.dressing);
	// Group i pairs the scenario's own regimen with arm i + 1: the usual one first where there is one, then the points.
	const firstPoint = plan.usual === null ? 0 : 1;
	const valuesIn = ({ arms: [, arm], pairs: [{ moments }] }: GroupSums) => valuesOf(arm, moments, owner, scenario);
	const settings = (one: Scenario) => settingsText([one.dressings, one.start]);
	const points = plan.points.map((point, i): SweepPoint => {
		const values = valuesIn(groups[i + firstPoint]);
		return {
			at: point.at,
			current: settings(point.scenario) === settings(scenario),
			usual: plan.usual !== null && settings(point.scenario) === settings(plan.usual),
			outside: outsideReasons(point.scenario, plan.dressing),
			kept: asked.constraints.every((constraint) => keeps(constraint, values.measures[constraint.measure]?.mean)),
			clock: clocks.get(i) ?? null,
			...values,
		};
	});
	const goals = asked.efficient.map(({ measure, better }) => ({
		better,
		values: points.map((point) => point.measures[measure]?.mean ?? Number.NaN),
	}));
	const kept = points.flatMap((point, i) => (point.kept ? [i] : []));
	return {
		format: "slackwater/sweep@1",
		scenario: summaryOf(scenario, [], asked.version),
		replications: scenario.replications,
		currency: scenario.prices?.currency ?? null,
		dressing: owners[owner],
		axes: plan.axes,
		measures: asked.measures.filter((measure) => shown(measure, scenario)),
		points,
		marks: [
			mark("current", scenario, plan, points, valuesOf(groups[0].arms[0], null, owner, scenario)),
			...(plan.usual === null ? [] : [mark("usual", plan.usual, plan, points, valuesIn(groups[0]))]),
		],
		constraints: asked.constraints.map((constraint) => ({
			...constraint,
			kept: points.filter((point) => keeps(constraint, point.measures[constraint.measure]?.mean)).length,
		})),
		efficient: asked.efficient.length === 0 ? null : { measures: asked.efficient, points: paretoSet(goals, kept) },
		curve: asked.curve === null ? null : { axis: asked.curve, points: along(plan, asked.curve) },
		avoid: scenario.care.avoid,
		cautions: sweepCautions(plan, points, asked.constraints.length > 0),
		assumptions: assumptionsOf(scenario),
	};
}

/** What an arm gives, and how it differs from the scenario's own regimen: `pair` is own − arm, null for that regimen itself. */
function valuesOf(arm: VectorMoments, pair: VectorMoments | null, owner: number, scenario: Scenario): SweepValues {
	const valueAt = (at: number): SweepValue => ({
		mean: arm.mean[at],
		halfWidth95: halfWidth(arm.at(at)),
		// 0 − x keeps a difference of nought from becoming −0.
		difference: 0 - (pair?.mean[at] ?? 0),
		differenceHalfWidth95: pair !== null ? halfWidth(pair.at(at)) : arm.count < 2 ? null : 0,
	});
	const measures = measureNames.flatMap((measure, place) =>
		shown(measure, scenario) ? [[measure, valueAt(owner * measureNames.length + place)]] : [],
	);
	return { measures: Object.fromEntries(measures) };
}

const tests = {
	"<": (mean, limit) => mean < limit,
	"<=": (mean, limit) => mean <= limit,
	">": (mean, limit) => mean > limit,
	">=": (mean, limit) => mean >= limit,
} satisfies { [T in Constraint["test"]]: (mean: number, limit: number) => boolean };

const keeps = ({ test, limit }: Constraint, mean: number | undefined): boolean =>
	mean !== undefined && tests[test](mean, limit);

function mark(
	which: SweepMark["mark"],
	scenario: Scenario,
	plan: SweepPlan,
	points: readonly SweepPoint[],
	values: SweepValues,
): SweepMark {
	const settings = scenario.dressings.filter(isVaried(plan.dressing)).map((dressing) => {
		const summary = regimenSummary(dressing.regimens[0], dressing, scenario.constants);
		return { id: dressing.id, ...picked(summary, "depthMmHg", "fillMl", "dwellMin", "suctionMin") };
	});
	const [{ id: _, ...regimen }] = settings;
	const isShared = settings.every(({ id: _own, ...own }) => JSON.stringify(own) === JSON.stringify(regimen));
	const point = points.findIndex((one) => one[which]);
	return { mark: which, regimen, dressings: isShared ? [] : settings, point: point < 0 ? null : point, ...values };
}

/** The points along one axis, the others at the value nearest to the scenario's own. */
export function along(plan: SweepPlan, axis: AxisName): number[] {
	const fixed = plan.axes.map(({ name, values, current }) =>
		name === axis
			? null
			: values.reduce((best, value) => (Math.abs(value - current) < Math.abs(best - current) ? value : best)),
	);
	return plan.points.flatMap((point, i) =>
		point.at.every((value, a) => fixed[a] === null || fixed[a] === value) ? [i] : [],
	);
}

/** What a chart of beginnings needs of the projection of one point. */
export function clockOfPoint(projections: readonly DressingProjection[], dressing: string | null): SweepClock {
	const meant = projections.filter(isVaried(dressing));
	const [first] = meant;
	return {
		canisterChanges: first.canisterChanges.map(({ ordinal: _, ...change }) => change),
		// The chance of at least one, as if conditions and dressings were independent of each other.
		alarmBins: (first.alarms[0]?.bins ?? []).map(
			(_, bin) =>
				1 -
				meant
					.flatMap((one) => one.alarms)
					.filter(({ condition }) => callsNurse(condition))
					.reduce((none, { bins }) => none * (1 - (bins[bin]?.probability ?? 0)), 1),
		),
	};
}
