import type {
	ScenarioSummary,
	SweepAxis,
	SweepMark,
	SweepPoint,
	SweepResult,
	SweepValue,
} from "../../src/results/index.ts";
import type { AxisName, MeasureName } from "../../src/vocabulary/index.ts";
import { dayResult, type Plan } from "../charts/fixture.ts";

/** Hand-made grids for tests of reports: plausible shapes, invented numbers, nothing simulated. */

const current: { readonly [N in AxisName]: number } = {
	dwell: 5,
	suction: 120,
	fill: 50,
	depth: 125,
	start: 420,
	apart: 0,
};
const usual = { ...current, dwell: 10, suction: 210 };
const units: { readonly [N in AxisName]: string } = {
	dwell: "min",
	suction: "min",
	fill: "mL",
	depth: "mmHg",
	start: "clock",
	apart: "min",
};

type Setting = { readonly [N in AxisName]: number };

/** What a setting comes to, by rules of thumb. */
function means({ dwell, suction, fill, depth, start, apart }: Setting): {
	[N in MeasureName]?: number;
} {
	const washes = 1440 / (dwell + suction + 1.5);
	const wetMin = washes * (dwell + fill / 60);
	const breaches = 0.05 + wetMin * 0.0009 + (depth - 100) * 0.0002;
	const night = breaches * 0.6 + 0.02 * Math.sin(start / 200);
	return {
		washes,
		wetMin,
		meanExudateShare: Math.exp(-washes * fill * 0.0009),
		instilledMl: washes * fill,
		canisterChanges: (washes * fill + 160) / 800,
		breaches,
		nightCalls: night,
		"callsIn.handOver": 0.02 + Math.abs(Math.sin(start / 120)) * 0.05,
		"callsIn.meals": 0.03 + Math.abs(Math.cos(start / 150)) * 0.04,
		"callsIn.smallHours": night * 0.4,
		callsTogether: 0.09 * Math.exp(-apart / 40),
	};
}

function valuesOf(setting: Setting, measures: readonly MeasureName[]): { [N in MeasureName]?: SweepValue } {
	const [own, now] = [means(setting), means(current)];
	return Object.fromEntries(
		measures.map((measure) => {
			const [mean, base] = [own[measure] ?? 0, now[measure] ?? 0];
			const same = mean === base;
			return [
				measure,
				{
					mean,
					halfWidth95: mean * 0.012,
					difference: mean - base,
					differenceHalfWidth95: same ? 0 : mean * 0.004 + 0.001,
				},
			];
		}),
	);
}

export interface SweepPlan {
	readonly axes?: { readonly [N in AxisName]?: readonly number[] };
	readonly measures?: readonly MeasureName[];
	readonly dressings?: readonly Plan[];
	readonly scenario?: Partial<ScenarioSummary>;
	readonly plain?: boolean;
	/** What is said of a point outside common practice. */
	readonly reason?: string;
}

const mapMeasures: readonly MeasureName[] = ["washes", "meanExudateShare", "breaches", "nightCalls"];
const ofTheClock: readonly MeasureName[] = ["callsIn.handOver", "callsIn.meals", "callsIn.smallHours", "callsTogether"];

export function sweep(plan: SweepPlan = {}): SweepResult {
	const given = plan.axes ?? { dwell: [1, 5, 10, 20, 40], suction: [60, 120, 210, 360] };
	const axes: SweepAxis[] = (Object.keys(units) as AxisName[]).flatMap(
		// the keys of the record above
		(name) => {
			const values = given[name];
			return values === undefined ? [] : [{ name, unit: units[name], values, current: current[name] }];
		},
	);
	const shown = plan.measures ?? mapMeasures;
	const measures = [...new Set([...shown, ...mapMeasures, ...ofTheClock])];
	const base = dayResult(plan.dressings ?? [{}], { title: "Where on the map is the thigh wound?", ...plan.scenario });
	const grid = axes.reduce<number[][]>(
		(rows, { values }) => rows.flatMap((row) => values.map((value) => [...row, value])),
		[[]],
	);
	const isTimed = given.start !== undefined;
	const points = grid.map((at): SweepPoint => {
		const setting = settingOf(axes, at);
		const is = (other: Setting): boolean => JSON.stringify(other) === JSON.stringify(setting);
		const mean = means(setting);
		return {
			at,
			measures: valuesOf(setting, measures),
			current: is(current),
			usual: is(usual),
			outside:
				setting.dwell > 30
					? [plan.reason ?? "A dwell of 40 min is outside the 1 to 30 min that the defaults were set for."]
					: [],
			kept: plan.plain === true || (mean.nightCalls ?? 0) < 0.08,
			clock: isTimed
				? {
						canisterChanges: [{ p10Min: 700, p50Min: 780, p90Min: 850, probabilityWithinHorizon: 0.93 }],
						alarmBins: Array.from({ length: 48 }, (_, bin) => 0.002 + 0.05 * Math.exp(-(((bin - 26) / 2) ** 2))),
					}
				: null,
		};
	});
	const efficient = points.flatMap((point, place) =>
		point.kept && !points.some((other) => other.kept && betters(other, point)) ? [place] : [],
	);
	const mark = (name: SweepMark["mark"], setting: Setting): SweepMark => {
		const place = points.findIndex((point) => point[name]);
		return {
			mark: name,
			regimen: { depthMmHg: setting.depth, fillMl: setting.fill, dwellMin: setting.dwell, suctionMin: setting.suction },
			dressings: [],
			point: place === -1 ? null : place,
			measures: valuesOf(setting, measures),
		};
	};
	const first = axes.find(({ name }) => name === "start") ?? axes[0];
	return {
		format: "slackwater/sweep@1",
		scenario: base.scenario,
		replications: 400,
		currency: null,
		dressing: "all",
		axes,
		measures: shown,
		points,
		marks: [mark("current", current), mark("usual", usual)],
		constraints:
			plan.plain === true
				? []
				: [{ measure: "nightCalls", test: "<", limit: 0.08, kept: points.filter(({ kept }) => kept).length }],
		efficient:
			plan.plain === true
				? null
				: {
						measures: [
							{ measure: "washes", better: "higher" },
							{ measure: "breaches", better: "lower" },
						],
						points: efficient,
					},
		curve:
			first === undefined
				? null
				: {
						axis: first.name,
						points: points.flatMap(({ at }, place) =>
							axes.every(({ name, current: own }, index) => name === first.name || at[index] === own) ? [place] : [],
						),
					},
		avoid: {
			handOver: [
				{ fromMin: 390, toMin: 450 },
				{ fromMin: 1110, toMin: 1170 },
			],
			meals: [{ fromMin: 720, toMin: 780 }],
			smallHours: [{ fromMin: 60, toMin: 300 }],
		},
		cautions: base.cautions,
		assumptions: base.assumptions,
	};
}

const settingOf = (axes: readonly SweepAxis[], at: readonly number[]): Setting => ({
	...current,
	...Object.fromEntries(axes.map(({ name }, index) => [name, at[index]])),
});

/** Whether one point is as good in both measures of the set and better in one. */
function betters(one: SweepPoint, other: SweepPoint): boolean {
	const gain = (point: SweepPoint): number[] => [
		point.measures.washes?.mean ?? 0,
		-(point.measures.breaches?.mean ?? 0),
	];
	const [a, b] = [gain(one), gain(other)];
	const all = a.every((value, index) => value >= (b[index] ?? 0));
	return all && a.some((value, index) => value > (b[index] ?? 0));
}
