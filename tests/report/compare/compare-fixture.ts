import type {
	CompareDrawings,
	CompareResult,
	DayResult,
	Difference,
	DressingSummary,
	RestsOnRow,
	Spread,
	VerdictKind,
} from "../../../src/results/index.ts";
import {
	type MeasureName,
	mainMeasures,
	measureFact,
	measureNames,
	type TotalName,
	totalNames,
} from "../../../src/vocabulary/index.ts";
import { dayResult, type Plan } from "../../charts/fixture.ts";

/** Hand-made comparisons for tests of reports: plausible shapes, invented numbers, nothing simulated. */

type Row = readonly [meanA: number, meanB: number, halfWidth: number | null, kind?: VerdictKind];

const rows: { readonly [N in MeasureName]?: Row } = {
	fills: [11, 6, null, "steady"],
	washes: [11.02, 6.54, 0.02],
	wetMin: [64.2, 71.4, 0.7],
	meanExudateShare: [0.6243, 0.7012, 0.0041],
	underSuctionMin: [1371.2, 1363.9, 1.4],
	offSuctionMin: [4.61, 4.7, 0.35, "none-found"],
	instilledMl: [551, 327, 1.1],
	solutionWastedMl: [449, 449, null, "too-rare"],
	canisterChanges: [0.94, 0.31, 0.045],
	toCanisterMl: [704.2, 481.6, 2.4],
	breaches: [0.112, 0.151, 0.011],
	alarms: [0.41, 0.44, 0.034, "none-found"],
	"alarms.canister-at-capacity": [0.031, 0.022, 0.012, "none-found"],
	"alarms.seal-leak": [0.112, 0.151, 0.011],
	"alarms.fill-path-obstructed": [0.19, 0.11, 0.021],
	"alarms.suction-path-obstructed": [0.05, 0.04, 0.009, "not-judged"],
	nightCalls: [0.121, 0.14, 0.022, "none-found"],
	nurseMin: [16.3, 12.9, 0.41],
	cost: [42.18, 25.07, 0.61],
};

const spread = (mean: number): Spread => ({
	mean,
	halfWidth95: Math.abs(mean) * 0.01,
	p10: mean * 0.9,
	p50: mean,
	p90: mean * 1.1,
	quantiles95: [0.9, 1, 1.1].map((share) => ({
		low: mean * share * 0.99,
		high: share > 1 ? null : mean * share * 1.01,
	})),
});

const nothing: Row = [0, 0, null, "same"];

function difference(a: string, b: string, dressing: string, measure: MeasureName, alike: boolean): Difference {
	const [meanA, other, half, kind = "differs"] = rows[measure] ?? nothing;
	const meanB = alike ? meanA : other;
	const mean = meanA - meanB;
	const none = alike || kind === "same";
	const own = none ? "same" : kind;
	const paired = none ? 0 : half === null ? 0.01 : (half * 10) ** 2;
	return {
		a,
		b,
		dressing,
		measure,
		unit: "",
		meanA,
		meanB,
		mean,
		low95: none ? 0 : half === null ? null : mean - half,
		high95: none ? 0 : half === null ? null : mean + half,
		replications: 400,
		shareAHigher: none ? 0 : mean > 0 ? 0.82 : 0.11,
		shareBHigher: none ? 0 : mean > 0 ? 0.11 : 0.82,
		shareABetter: measureFact(measure).better === null ? null : none ? 0 : 0.82,
		variance: { paired, independent: paired * 8.3 + (none ? 0.4 : 0) },
		kind: own,
		verdict: verdicts[own],
	};
}

const verdicts: { readonly [K in VerdictKind]: string } = {
	differs: "more: 1 (0.9 to 1.1)",
	"none-found": "no difference found at 0.05",
	same: "the same in every replication",
	steady: "more: 5",
	"too-rare": "cannot be told from 400 replications: 3 of them differ from the rest",
	"not-judged": "not judged: it rests on assumed rates of clogging",
};

const assumed: readonly (readonly [string, string, number, string])[] = [
	["breach.dry", "breaches of the seal under suction", 0.002, "/h"],
	["breach.wet", "how many times likelier a breach is while the foam is wet", 6, ""],
	["turn.breach", "chance that a turn loosens the seal", 0.004, ""],
	["clump.rate", "clumps that close a port", 0.02, "/h"],
	["kink.fill", "kinks of the fill line", 0.004, "/h"],
];

const blocked: MeasureName = "alarms.fill-path-obstructed";

function restsOnRows(owners: readonly string[]): RestsOnRow[] {
	return assumed.map(([name, meaning, value, unit], index) => ({
		name,
		meaning,
		value,
		unit,
		provenance: "assumed",
		effects: owners.flatMap((dressing) =>
			mainMeasures.map((measure) => {
				const [a, b] = rows[measure] ?? nothing;
				const base = a - b;
				const isMoved = index < 4 && /alarms|breach|night|nurse/.test(measure) && measure !== blocked;
				return {
					dressing,
					measure,
					base,
					half: isMoved ? base * (1 - 0.12 * (4 - index)) : base,
					twice: index === 3 ? null : isMoved ? base * (1 - 0.3 * (4 - index)) : base,
					// All blocked fill lines come from the last of the causes.
					without: index < 4 ? null : measure === blocked ? 0 : base,
					hangs: index === 4 && measure === blocked,
					turns: isMoved && index === 0 && measure !== "breaches",
					appears: isMoved && index === 0 && measure !== "breaches",
				};
			}),
		),
	}));
}

export interface ComparePlan {
	readonly dressings?: readonly Plan[];
	readonly names?: readonly string[];
	readonly scenario?: Partial<DayResult["scenario"]>;
	readonly measures?: readonly MeasureName[];
	readonly restsOn?: boolean;
	readonly firstHours?: boolean;
}

const settings: readonly Partial<Plan>[] = [
	{ dwellMin: 5, suctionMin: 120 },
	{ dwellMin: 10, suctionMin: 210 },
	{ fillMl: 0 },
	{ dwellMin: 5, suctionMin: 120 },
];

/** A comparison and what is drawn beside it. */
export function comparison(plan: ComparePlan = {}): {
	readonly result: CompareResult;
	readonly drawings: CompareDrawings;
} {
	const dressings = plan.dressings ?? [{}];
	const names = plan.names ?? ["short", "long", "suction-alone", "again"];
	const title = "Short dwell against long dwell on the thigh wound";
	const days = names.map((_, index) =>
		dayResult(
			dressings.map((dressing) => ({ ...dressing, ...settings[index] })),
			{ title, ...plan.scenario },
		),
	);
	const base = days[0] ?? dayResult(dressings);
	const ids = base.scenario.dressings.map(({ id }) => id);
	const owners = ids.length > 1 ? [...ids, "all"] : ids;
	const result: CompareResult = {
		format: "slackwater/compare@1",
		scenario: base.scenario,
		replications: 400,
		trace: { replication: 17, typicalOf: 400 },
		currency: "EUR",
		measures: plan.measures ?? mainMeasures,
		regimens: names.map((name, index) => {
			const { scenario } = days[index] ?? base;
			const [first] = scenario.dressings;
			const regimen = first?.regimens[0];
			if (regimen === undefined) throw new Error("a dressing without regimen");
			const mean = (measure: MeasureName): number => (rows[measure] ?? nothing)[index === 1 ? 1 : 0];
			const alike = <T>(of: (dressing: DressingSummary) => T): T | null =>
				new Set(scenario.dressings.map((one) => JSON.stringify(of(one)))).size === 1 && first !== undefined
					? of(first)
					: null;
			const together = {
				id: "all",
				regimen: alike(({ regimens }) => regimens[0] ?? null),
				canisterMl: alike(({ canisterMl }) => canisterMl),
				sourceMl: alike(({ sourceMl }) => sourceMl),
				canisterHoldsMl: alike(({ canisterHoldsMl }) => canisterHoldsMl),
				sourceLeftMl: alike(({ sourceLeftMl }) => sourceLeftMl),
				regimens: alike(({ regimens }) => regimens) ?? [],
			};
			const settings = scenario.dressings.map((dressing) => ({
				id: dressing.id,
				regimen: dressing.regimens[0] ?? null,
				canisterMl: dressing.canisterMl,
				sourceMl: dressing.sourceMl,
				canisterHoldsMl: dressing.canisterHoldsMl,
				sourceLeftMl: dressing.sourceLeftMl,
				regimens: dressing.regimens,
			}));
			return {
				name,
				regimen,
				regimenOf: settings
					.filter((own) => JSON.stringify(own.regimen) === JSON.stringify(regimen))
					.map(({ id }) => id),
				dressings: [...settings, ...(settings.length > 1 ? [together] : [])].map((own) => ({
					...own,
					totals: Object.fromEntries(totalNames.map((total) => [total, spread(mean(total))])) as {
						[N in TotalName]: Spread;
					}, // a spread for each name, by construction
					measures: Object.fromEntries(measureNames.map((measure) => [measure, spread(mean(measure))])),
				})),
			};
		}),
		differences: names.flatMap((a, at) =>
			names
				.slice(at + 1)
				.flatMap((b) =>
					owners.flatMap((owner) => measureNames.map((measure) => difference(a, b, owner, measure, b === "again"))),
				),
		),
		restsOn:
			plan.restsOn === false
				? null
				: {
						a: names[0] ?? "",
						b: names[1] ?? "",
						replications: 400,
						rows: restsOnRows(owners),
						leftOut: [
							{ name: "air.ambient", why: "published: not in doubt" },
							{ name: "pump.drawdown", why: "every regimen gives its own" },
						],
					},
		precision: [
			{
				a: names[0] ?? "",
				b: names[1] ?? "",
				dressing: owners.at(-1) ?? "",
				measure: "nightCalls",
				target: 0.02,
				halfWidth: 0.022,
				reached: false,
			},
		],
		cautions: base.cautions,
		assumptions: base.assumptions,
	};
	return {
		result,
		drawings: {
			days: days.map(({ scenario, dressings: drawn }) => ({ scenario, dressings: drawn })),
			firstHours: plan.firstHours === true ? firstHours(dressings, title) : null,
		},
	};
}

/** Beginning in suction against beginning in fill after a move, with a leak in the second. */
function firstHours(dressings: readonly Plan[], title: string): CompareDrawings["firstHours"] {
	const leak = { condition: "seal-leak", priority: "medium", startMin: 11, endMin: 19, endedBy: "call" } as const;
	return {
		replication: 16,
		regimens: [0, 1],
		spanMin: 120,
		days: [[], [leak]].map((alarms, index) => {
			const day = dayResult(
				dressings.map((dressing) => ({ ...dressing, suctionMin: index === 0 ? 55 : 5, alarms })),
				{ title },
			);
			return { scenario: day.scenario, dressings: day.dressings };
		}),
		leakShare: [0.021, 0.063],
	};
}
