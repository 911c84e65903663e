import type {
	AlarmProjection,
	Assumption,
	DayCurve,
	DayResult,
	DrawnDressing,
	DressingDay,
	DressingProjection,
	DressingSummary,
	ScenarioSummary,
	Schedule,
	Spread,
	Totals,
} from "../../src/results/index.ts";
import type { Condition, TotalName } from "../../src/vocabulary/index.ts";

/** Hand-made days for tests of charts and reports: plausible shapes, invented numbers, nothing simulated. */
export interface Plan {
	readonly id?: string;
	readonly horizonMin?: number;
	readonly fillMl?: number;
	readonly dwellMin?: number;
	readonly suctionMin?: number;
	readonly depthMmHg?: number;
	readonly exudateMlPerDay?: number;
	readonly canisterMl?: number;
	readonly sourceMl?: number;
	/** Minutes at which the canister is emptied. */
	readonly canisterChangesMin?: readonly number[];
	readonly alarms?: DressingDay["alarms"];
	/** The dressing is off in these spans. */
	readonly offs?: readonly { readonly startMin: number; readonly endMin: number }[];
	readonly dressingChanges?: DressingDay["dressingChanges"];
	readonly likely?: readonly {
		readonly condition: Condition;
		readonly peak: number;
		readonly atMin: number;
		readonly widthMin: number;
	}[];
}

type Planned = Required<Plan>;

const planned = (plan: Plan): Planned => ({
	id: "thigh",
	horizonMin: 1440,
	fillMl: 50,
	dwellMin: 5,
	suctionMin: 120,
	depthMmHg: 125,
	exudateMlPerDay: 162,
	canisterMl: 1000,
	sourceMl: 1000,
	canisterChangesMin: [],
	alarms: [],
	offs: [],
	dressingChanges: [],
	likely: [],
	...plan,
});

type Phases = DressingDay["phases"][number][];

/** Suction, fill, dwell, drain, round and round until the horizon. */
function phasesOf(plan: Planned): Phases {
	const phases: Phases = [];
	const add = (phase: Phases[number]["phase"], startMin: number, endMin: number): void => {
		if (startMin < plan.horizonMin && endMin > startMin)
			phases.push({ phase, startMin, endMin: Math.min(endMin, plan.horizonMin) });
	};
	if (plan.fillMl === 0) {
		add("suction", 0, plan.horizonMin);
		return phases;
	}
	let at = 0;
	let drainMin = 0;
	while (at < plan.horizonMin) {
		add("suction", at + drainMin, at + plan.suctionMin);
		const fill = at + plan.suctionMin;
		add("fill", fill, fill + plan.fillMl / 60);
		add("dwell", fill + plan.fillMl / 60, fill + plan.fillMl / 60 + plan.dwellMin);
		at = fill + plan.fillMl / 60 + plan.dwellMin;
		drainMin = 0.51;
		add("drain", at, at + drainMin);
	}
	return phases;
}

/** Straight lines from phase to phase; a jump is two rows at one time. */
function curveOf(plan: Planned, phases: Phases): DayCurve {
	const curve = {
		atMin: [] as number[],
		depthMmHg: [] as number[],
		liquidMl: [] as number[],
		canisterMl: [] as number[],
		sourceMl: [] as number[],
	};
	const retained = 6.5;
	const exudatePerMin = plan.exudateMlPerDay / 1440;
	let [depth, liquid, canister, source] = [0, 0, 0, plan.sourceMl];
	/** A canister that is due in a fill or a dwell is emptied after the drain. */
	let wetFrom = Number.POSITIVE_INFINITY;
	const row = (atMin: number): void => {
		curve.atMin.push(atMin);
		curve.depthMmHg.push(depth);
		curve.liquidMl.push(liquid);
		curve.canisterMl.push(canister);
		curve.sourceMl.push(source);
	};
	const isOff = (atMin: number): boolean => plan.offs.some((off) => atMin >= off.startMin && atMin < off.endMin);
	for (const phase of phases) {
		const minutes = phase.endMin - phase.startMin;
		if (phase.phase === "fill") {
			wetFrom = phase.startMin;
			depth = 0;
			row(phase.startMin);
			if (source < plan.fillMl) source = plan.sourceMl;
			liquid += minutes * 60;
			source -= minutes * 60;
			row(phase.endMin);
		} else if (phase.phase === "dwell") {
			liquid += minutes * exudatePerMin;
			row(phase.endMin);
		} else if (phase.phase === "drain") {
			row(phase.startMin);
			canister += liquid - retained;
			liquid = retained;
			depth = plan.depthMmHg;
			row(phase.endMin);
		} else {
			const stops = [...plan.canisterChangesMin, ...plan.offs.flatMap((off) => [off.startMin, off.endMin])]
				.filter((at) => at > phase.startMin && at < phase.endMin)
				.sort((a, b) => a - b);
			if (plan.canisterChangesMin.some((at) => at >= wetFrom && at <= phase.startMin)) {
				row(phase.startMin);
				canister = 0;
			}
			row(phase.startMin);
			if (depth === 0 && !isOff(phase.startMin)) {
				depth = plan.depthMmHg;
				row(phase.startMin + 0.6);
			}
			let last = phase.startMin;
			for (const stop of [...stops, phase.endMin]) {
				canister += isOff(last) ? 0 : Math.max(0, (stop - last) * exudatePerMin - Math.max(0, retained - liquid));
				liquid = isOff(last)
					? liquid + (stop - last) * exudatePerMin
					: Math.max(liquid, Math.min(retained, liquid + (stop - last) * exudatePerMin));
				row(stop);
				if (plan.canisterChangesMin.includes(stop)) canister = 0;
				if (isOff(stop) !== isOff(last)) {
					depth = isOff(stop) ? 0 : plan.depthMmHg;
					if (!isOff(stop)) liquid = retained;
				}
				if (stop !== phase.endMin) row(stop);
				last = stop;
			}
		}
	}
	return curve;
}

function totalsOf(plan: Planned, phases: Phases, curve: DayCurve): Totals {
	const fills = phases.filter((phase) => phase.phase === "fill").length;
	const wetMin = phases
		.filter((phase) => phase.phase === "fill" || phase.phase === "dwell")
		.reduce((sum, phase) => sum + phase.endMin - phase.startMin, 0);
	const offSuctionMin = plan.offs.reduce((sum, off) => sum + off.endMin - off.startMin, 0);
	const instilledMl = fills * plan.fillMl;
	const exudateMl = (plan.exudateMlPerDay * plan.horizonMin) / 1440;
	const inDressingMl = curve.liquidMl.at(-1) ?? 0;
	return {
		fills,
		washes: phases.filter((phase) => phase.phase === "drain").length,
		instilledMl,
		exudateMl,
		toCanisterMl: instilledMl + exudateMl - inDressingMl,
		weptMl: 0,
		discardedMl: 0,
		inDressingMl,
		solutionWastedMl: 0,
		woundOutputMl: exudateMl - 4,
		notReturnedMl: fills === 0 ? 0 : 2.5,
		offSuctionMin,
		underSuctionMin: plan.horizonMin - wetMin - offSuctionMin,
		wetMin,
		breaches: 0,
		meanExudateShare: fills === 0 ? 1 : 0.6248,
		canisterChanges: plan.canisterChangesMin.length,
		sourceChanges: 0,
		dressingChanges: plan.dressingChanges.length,
		portsReplaced: 0,
		alarms: plan.alarms.length,
		nightCalls: 0,
		nurseMin: plan.alarms.length * 4.5,
	};
}

/** A spread around a total: a tenth to either side, whole numbers for counts. */
export function spreadAround(mean: number, count = false): Spread {
	const round = (value: number): number => (count ? Math.round(value) : value);
	return {
		mean,
		halfWidth95: mean * 0.01,
		p10: round(mean * 0.9),
		p50: round(mean),
		p90: round(mean * 1.1),
		quantiles95: [0.9, 1, 1.1].map((share) => ({ low: round(mean * share * 0.98), high: round(mean * share * 1.02) })),
	};
}

const counts: readonly TotalName[] = [
	"fills",
	"washes",
	"breaches",
	"canisterChanges",
	"sourceChanges",
	"dressingChanges",
	"portsReplaced",
	"alarms",
	"nightCalls",
];

function projectionOf(plan: Planned, totals: Totals, curve: DayCurve): DressingProjection {
	const spreads = Object.fromEntries(
		Object.entries(totals).map(([name, value]) => [name, spreadAround(value, counts.includes(name as TotalName))]),
	) as { [N in TotalName]: Spread }; // the same keys, by construction
	const stepMin = plan.horizonMin / 96;
	const at = (atMin: number): number => {
		const index = curve.atMin.findLastIndex((time) => time <= atMin);
		return curve.canisterMl[Math.max(0, index)] ?? 0;
	};
	const steps = Array.from({ length: 97 }, (_, index) => at(index * stepMin));
	const changeMin = plan.canisterChangesMin[0] ?? null;
	const conditions: Condition[] = [
		"canister-at-capacity",
		"suction-path-obstructed",
		"fill-path-obstructed",
		"seal-leak",
		"depth-not-held",
		"source-empty",
		"suction-absent",
		"large-output",
	];
	return {
		id: plan.id,
		totals: spreads,
		canisterChanges: plan.canisterChangesMin.map((atMin, index) => ({
			ordinal: index + 1,
			p10Min: atMin * 0.93,
			p50Min: atMin,
			p90Min: Math.min(plan.horizonMin, atMin * 1.06),
			probabilityWithinHorizon: atMin === changeMin ? 0.97 : 0.6,
		})),
		canisterNeeds: plan.canisterChangesMin.map((atMin, index) => {
			const first = atMin === changeMin;
			return {
				ordinal: index + 1,
				p10Min: atMin * 0.93,
				p50Min: atMin,
				p90Min: Math.min(plan.horizonMin, atMin * 1.06),
				probabilityWithinHorizon: first ? 0.97 : 0.6,
				windows: [
					{ startMin: atMin * 0.95, endMin: atMin * 0.96, probability: first ? 0.4 : 0.2 },
					{ startMin: atMin, endMin: atMin, probability: first ? 0.3 : 0.15 },
				],
			};
		}),
		fills: phasesOf(plan)
			.filter(({ phase }) => phase === "fill")
			.map(({ startMin }, index) => ({
				ordinal: index + 1,
				p10Min: startMin,
				p50Min: startMin,
				p90Min: startMin + index,
				probabilityWithinHorizon: 1,
			})),
		rounds: [240, 480, 720, 960, 1200]
			.filter((atMin) => atMin < plan.horizonMin)
			.map((atMin) => ({
				atMin,
				p10Ml: at(atMin) * 0.8,
				p50Ml: at(atMin),
				p90Ml: Math.min(plan.canisterMl, at(atMin) * 1.2),
			})),
		sourceChanges: [],
		alarms: conditions.map((condition) => alarmsOf(plan, condition)),
		canisterAtEnd: { p10Ml: totals.toCanisterMl * 0.9, p50Ml: totals.toCanisterMl, p90Ml: totals.toCanisterMl * 1.1 },
		canisterLevel: {
			stepMin,
			p10Ml: steps.map((level) => level * 0.8),
			p50Ml: steps,
			p90Ml: steps.map((level) => Math.min(plan.canisterMl, level * 1.2)),
		},
	};
}

function alarmsOf(plan: Planned, condition: Condition): AlarmProjection {
	const humps = plan.likely.filter((likely) => likely.condition === condition);
	const bins = Array.from({ length: Math.ceil(plan.horizonMin / 30) }, (_, index) => {
		const middle = index * 30 + 15;
		const probability = humps.reduce(
			(sum, hump) => sum + hump.peak * Math.exp(-(((middle - hump.atMin) / hump.widthMin) ** 2)),
			0,
		);
		const kept = probability < 0.001 ? 0 : probability;
		return {
			startMin: index * 30,
			endMin: Math.min(plan.horizonMin, index * 30 + 30),
			probability: kept,
			low: kept * 0.7,
			high: Math.min(1, kept * 1.3 + 0.008),
			chance: kept,
		};
	});
	const windows: { startMin: number; endMin: number; peakProbability: number }[] = [];
	for (const bin of bins) {
		const last = windows.at(-1);
		if (bin.probability <= 0.05) continue;
		if (last !== undefined && last.endMin === bin.startMin)
			windows[windows.length - 1] = {
				startMin: last.startMin,
				endMin: bin.endMin,
				peakProbability: Math.max(last.peakProbability, bin.probability),
			};
		else windows.push({ startMin: bin.startMin, endMin: bin.endMin, peakProbability: bin.probability });
	}
	const mean = bins.reduce((sum, bin) => sum + bin.probability, 0) / (plan.horizonMin / 1440);
	return {
		condition,
		meanPerDay: mean,
		halfWidth95: mean === 0 ? 0 : mean * 0.15 + 0.01,
		byChance: { meanPerDay: mean, halfWidth95: mean === 0 ? 0 : mean * 0.15 + 0.01 },
		bins,
		windows,
	};
}

function summaryOf(plan: Planned): DressingSummary {
	return {
		id: plan.id,
		patient: plan.id,
		tissue: "necrotic-soft-tissue",
		foamVolumeMl: 240,
		capacityMl: 81.6,
		exudateMlPerDay: plan.exudateMlPerDay,
		slough: "ordinary",
		difficulty: "ordinary",
		canisterMl: plan.canisterMl,
		sourceMl: plan.sourceMl,
		canisterHoldsMl: 0,
		sourceLeftMl: plan.sourceMl,
		regimens: [
			{
				fromMin: 0,
				begin: "suction",
				depthMmHg: plan.depthMmHg,
				fillMl: plan.fillMl,
				dwellMin: plan.fillMl === 0 ? null : plan.dwellMin,
				suctionMin: plan.fillMl === 0 ? null : plan.suctionMin,
				drawdown: 0.15,
				drawdownSec: 43,
			},
		],
	};
}

const assumptions: readonly Assumption[] = [
	{
		name: "air.ambient",
		value: 760,
		unit: "mmHg",
		provenance: "published",
		source: "standard atmosphere, 101325 Pa = 760 torr",
		meaning: "pressure of the room",
		defaulted: true,
	},
	{
		name: "breach.dry",
		value: 0.002,
		unit: "/h",
		provenance: "assumed",
		source: "the scenario",
		meaning: "breaches of the seal under suction",
		defaulted: false,
	},
	{
		name: "round.canisterAbove",
		value: 0.8,
		unit: "",
		provenance: "assumed",
		source: "placeholder until a site calibrates it",
		meaning: "share of its size at which a round changes a canister",
		defaulted: true,
	},
	{
		name: "source.hang",
		value: 24,
		unit: "h",
		provenance: "common practice",
		source: "common practice, no source",
		meaning: "time that an opened source of solution hangs",
		defaulted: true,
	},
	{
		name: "dressings[0].unit.canister",
		value: "1000 mL",
		unit: "",
		provenance: "assumed",
		source: "default of the scenario schema",
		meaning: "size of the canister",
		defaulted: true,
	},
];

/** A whole result from plans of its dressings. */
export function dayResult(plans: readonly Plan[], scenario: Partial<ScenarioSummary> = {}): DayResult {
	const full = plans.map(planned);
	const horizonMin = scenario.horizonMin ?? full[0]?.horizonMin ?? 1440;
	const replications = scenario.replications ?? 400;
	const days = full.map((plan) => {
		const phases = phasesOf(plan);
		const curve = curveOf(plan, phases);
		const totals = totalsOf(plan, phases, curve);
		const schedule: Schedule = {
			phases,
			pauses: plan.offs.map((off) => ({ reason: "off", ...off })),
			alarms: [],
			canisterChanges: [],
			sourceChanges: [],
			dressingChanges: plan.dressingChanges,
			takeovers: [],
		};
		const day: DrawnDressing = {
			schedule,
			takeovers: [],
			id: plan.id,
			phases,
			pauses: plan.offs.map((off) => ({ reason: "off", ...off })),
			notices: [],
			alarms: plan.alarms,
			canisterChanges: plan.canisterChangesMin.map((atMin) => ({ atMin, reason: "round" })),
			sourceChanges: [],
			dressingChanges: plan.dressingChanges,
			totals,
			curve,
		};
		return { day, projection: projectionOf(plan, totals, curve) };
	});
	return {
		format: "slackwater/day@1",
		scenario: {
			title: "Thigh wound after debridement, second day",
			seed: "tidemark-7",
			version: "0.1.0",
			start: "2026-03-02T07:00",
			startClockMin: 420,
			horizonMin,
			replications,
			chance: "on",
			solution: "saline",
			dressings: full.map(summaryOf),
			happenings: [],
			roundsClockMin: [180, 420, 660, 900, 1140, 1380],
			supplies: [
				{ item: "canister 1000 mL", p50: 1, p90: 2, packSize: 5, packs: 1 },
				{ item: "solution 1000 mL", p50: 1, p90: 1, packSize: null, packs: null },
				{ item: "dressing kit", p50: 0, p90: 1, packSize: null, packs: null },
			],
			...scenario,
		},
		trace: { replication: 17, typicalOf: replications, events: 812, hash: "5f0c1d2e9a7b4c68" },
		dressings: days.map(({ day }) => day),
		home: null,
		projection: { replications, dressings: days.map(({ projection }) => projection) },
		cautions: [
			{ code: "planning-only", text: "For planning and teaching, not for setting a device or treating a patient." },
			{
				code: "assumed-defaults",
				text: "No verdict on clogging may rest on the default numbers of debris: they are assumed.",
			},
		],
		assumptions,
	};
}

/** The day of the design's example, without anything going wrong. */
export const quietDay = (): DayResult =>
	dayResult([
		{ likely: [{ condition: "seal-leak", peak: 0.012, atMin: 720, widthMin: 600 }], canisterChangesMin: [1200] },
	]);

/** A day on which much fails out of sight. */
export const troubledDay = (): DayResult =>
	dayResult([
		{
			canisterChangesMin: [720],
			exudateMlPerDay: 620,
			offs: [{ startMin: 540, endMin: 570 }],
			alarms: [
				{ condition: "fill-path-obstructed", priority: "medium", startMin: 371.2, endMin: 376.4, endedBy: "call" },
				{ condition: "seal-leak", priority: "medium", startMin: 385, endMin: 402, endedBy: "call" },
				{ condition: "suction-absent", priority: "medium", startMin: 560, endMin: 570, endedBy: "by-itself" },
				{ condition: "canister-at-capacity", priority: "medium", startMin: 1301, endMin: 1313, endedBy: "round" },
				{ condition: "large-output", priority: "high", startMin: 1402, endMin: 1440, endedBy: "horizon" },
			],
			likely: [
				{ condition: "canister-at-capacity", peak: 0.18, atMin: 795, widthMin: 60 },
				{ condition: "seal-leak", peak: 0.35, atMin: 380, widthMin: 30 },
				{ condition: "fill-path-obstructed", peak: 0.03, atMin: 900, widthMin: 600 },
			],
		},
	]);

/** Two dressings of one patient. */
export const pairedDay = (): DayResult =>
	dayResult(
		[
			{ id: "thigh", canisterChangesMin: [1200] },
			{
				id: "abdomen",
				fillMl: 100,
				dwellMin: 10,
				suctionMin: 210,
				depthMmHg: 75,
				exudateMlPerDay: 500,
				canisterChangesMin: [720],
			},
		],
		{ title: "Two dressings, one bed" },
	);

/** Four weeks, continuous suction, as after a step-down. */
export const stepDown = (): DayResult =>
	dayResult(
		[
			{
				horizonMin: 28 * 1440,
				fillMl: 0,
				exudateMlPerDay: 90,
				canisterMl: 500,
				canisterChangesMin: [5, 10, 15, 20, 25].map((day) => day * 1440 + 720),
				dressingChanges: Array.from({ length: 13 }, (_, index) => ({
					startMin: (index + 1) * 2880,
					endMin: (index + 1) * 2880 + 30,
				})),
				likely: [{ condition: "seal-leak", peak: 0.01, atMin: 20000, widthMin: 20000 }],
			},
		],
		{ title: "At home after the step-down, four weeks" },
	);

/** Four weeks with fills: hundreds of cycles and dozens of alarms. */
export const longWash = (): DayResult =>
	dayResult(
		[
			{
				horizonMin: 28 * 1440,
				canisterChangesMin: Array.from({ length: 27 }, (_, index) => (index + 1) * 1440),
				alarms: Array.from({ length: 40 }, (_, index) => ({
					condition: index % 3 === 0 ? ("canister-at-capacity" as const) : ("seal-leak" as const),
					priority: "medium" as const,
					startMin: 300 + index * 1000,
					endMin: 312 + index * 1000,
					endedBy: "call" as const,
				})),
				likely: [{ condition: "seal-leak", peak: 0.02, atMin: 20000, widthMin: 20000 }],
			},
		],
		{ title: "Four weeks of short dwells" },
	);
