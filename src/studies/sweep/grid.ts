import { deepestHeld } from "../../physics/index.ts";
import type { SweepAxis } from "../../results/index.ts";
import type { Dressing, Regimen, Scenario, SweepGrid } from "../../scenario/index.ts";
import { usualDepth, usualDwellMin, usualSuctionMin } from "../../scenario/index.ts";
import { type AxisName, axisNames, axisUnits } from "../../vocabulary/index.ts";
import type { Study } from "../compare/study.ts";

/** Whether a dressing is among those that are varied; null: every one is. */
export const isVaried =
	(only: string | null) =>
	({ id }: Pick<Dressing, "id">): boolean =>
		only === null || id === only;

export type SweepPlan = Readonly<ReturnType<typeof sweepPlan>>;

/**
 * A grid of regimens, laid out: the scenario's own regimen, the site's usual one where it names one, and every point, the
 * last axis running fastest; axes of one value are laid over all of them. `dressing` null: every dressing.
 */
export function sweepPlan(scenario: Scenario, grid: SweepGrid) {
	const [varied] = scenario.dressings.filter(isVaried(grid.dressing));
	const all = axisNames.flatMap((name) => {
		const values = grid.axes[name];
		return values === undefined ? [] : [{ name, values }];
	});
	const combinations = all.reduce<readonly (readonly number[])[]>(
		(points, { values }) => points.flatMap((point) => values.map((value) => [...point, value])),
		[[]],
	);
	const axes = all.filter(({ values }) => values.length > 1);
	const own = ownValues(varied.regimens[0], scenario);
	return {
		scenario,
		dressing: grid.dressing,
		axes: axes.map(({ name, values }): SweepAxis => ({ name, unit: axisUnits[name], values, current: own[name] })),
		usual: scenario.usual === null ? null : withUsual(scenario, scenario.usual, grid.dressing),
		points: combinations.map((values) => ({
			at: values.filter((_, i) => all[i].values.length > 1),
			scenario: laidOver(scenario, grid.dressing, Object.fromEntries(all.map(({ name }, i) => [name, values[i]]))),
		})),
	};
}

/** Every point is paired with the scenario's own regimen, which is arm 0. */
export function sweepStudy(plan: SweepPlan): Study {
	const arms = [
		plan.scenario,
		...(plan.usual === null ? [] : [plan.usual]),
		...plan.points.map((point) => point.scenario),
	];
	return { arms, groups: arms.slice(1).map((_, i) => [0, i + 1]), detailed: false };
}

/** The site's usual regimen on the dressings that are varied. */
const withUsual = (scenario: Scenario, usual: NonNullable<Scenario["usual"]>, only: string | null): Scenario => ({
	...scenario,
	dressings: scenario.dressings.map((dressing) =>
		isVaried(only)(dressing) ? { ...dressing, regimens: usual[dressing.id] ?? dressing.regimens } : dressing,
	),
});

/** What a regimen and its scenario have themselves on every axis. */
const ownValues = (regimen: Regimen, scenario: Scenario): Required<Settings> => ({
	dwell: regimen.dwellMin,
	suction: Number.isFinite(regimen.suctionMin) ? regimen.suctionMin : 0,
	fill: regimen.fillMl,
	depth: regimen.depthMmHg,
	start: scenario.startClockMin,
	apart: 0,
});

type Settings = { readonly [A in AxisName]?: number };

/** A scenario with other settings in the first regimen of the dressings that are varied. */
function laidOver(scenario: Scenario, only: string | null, settings: Settings): Scenario {
	const { start = scenario.startClockMin, apart = 0 } = settings;
	return {
		...scenario,
		start: `${scenario.start.slice(0, 11)}${clockText(start)}`,
		startClockMin: start,
		dressings: scenario.dressings.map((dressing, index) => {
			const [first, ...later] = dressing.regimens;
			const regimens = [isVaried(only)(dressing) ? withSettings(first, settings) : first, ...later];
			return { ...dressing, regimens: staggered(regimens, apart * index, scenario.constants["fill.flow"]) };
		}),
	};
}

function withSettings(regimen: Regimen, settings: Settings): Regimen {
	return {
		...regimen,
		dwellMin: settings.dwell ?? regimen.dwellMin,
		suctionMin: settings.suction ?? regimen.suctionMin,
		fillMl: settings.fill ?? regimen.fillMl,
		fillSuggested: settings.fill === undefined && regimen.fillSuggested,
		depthMmHg: settings.depth ?? regimen.depthMmHg,
	};
}

/**
 * The same regimens with every cycle later by so many minutes: the first suction period is longer, and the regimen proper
 * takes over at the next start of one.
 */
function staggered(regimens: readonly Regimen[], byMin: number, fillFlow: number): readonly Regimen[] {
	const [first, ...rest] = regimens;
	if (byMin === 0 || first.fillMl === 0) return regimens;
	// A day that begins in fill starts its first suction period after that fill and dwell.
	const afterMin = first.begin === "fill" ? first.fillMl / fillFlow + first.dwellMin + 1 : 1;
	return [{ ...first, suctionMin: first.suctionMin + byMin }, { ...first, fromMin: afterMin }, ...rest];
}

const clockText = (clockMin: number) =>
	[Math.floor(clockMin / 60), clockMin % 60].map((part) => String(part).padStart(2, "0")).join(":");

/** Why the settings of a scenario lie outside common practice, or are more than foam or pump take; empty where they do not. */
export function outsideReasons(scenario: Scenario, only: string | null): string[] {
	const reasons = scenario.dressings.filter(isVaried(only)).flatMap((dressing) => ofDressing(dressing, scenario));
	return [...new Set(reasons)];
}

function ofDressing(dressing: Dressing, scenario: Scenario): string[] {
	const { depthMmHg, dwellMin, suctionMin, fillMl } = dressing.regimens[dressing.regimens.length > 1 ? 1 : 0];
	const depth = usualDepth[dressing.tissue];
	const capacityMl = scenario.constants["foam.capacity"] * dressing.foamVolumeMl;
	const strays = (value: number, { least, most }: typeof depth) => value < least || value > most;
	const tests: readonly (readonly [boolean, string])[] = [
		[strays(depthMmHg, depth), `depth outside −${depth.least} to −${depth.most} mmHg`],
		[depthMmHg >= deepestHeld(scenario.constants), "deeper than the pump holds"],
		[strays(dwellMin, usualDwellMin), `dwell outside ${usualDwellMin.least} to ${usualDwellMin.most} min`],
		[
			strays(suctionMin, usualSuctionMin),
			`suction period outside ${usualSuctionMin.least} to ${usualSuctionMin.most} min`,
		],
		[fillMl > capacityMl, "fill above what the foam takes"],
	];
	return tests.flatMap(([outside, reason]) => (outside ? [reason] : []));
}
