import fc from "fast-check";
import { vi } from "vitest";
import { type EventId, Simulation, TraceLog } from "../../src/engine/index.ts";
import { constantsWith } from "../../src/physics/index.ts";
import type { Happening, Scenario } from "../../src/scenario/index.ts";
import { traceDay } from "../../src/studies/index.ts";
import { eventPriority } from "../../src/therapy/index.ts";
import { reference, shortDwell, thigh } from "../therapy/example.ts";

export type Kind = keyof typeof eventPriority;
const kinds = (Object.keys(eventPriority) as Kind[]).sort((a, b) => eventPriority[a] - eventPriority[b]); // keys forgets the names it lists

/** Kinds of one priority go by the order of scheduling: they count as one, under the name of the first. */
const kindOf = new Map<number, Kind>();
for (const kind of kinds) if (!kindOf.has(eventPriority[kind])) kindOf.set(eventPriority[kind], kind);

/** Two kinds, the one that goes first and the other. */
export type Pair = `${Kind} < ${Kind}`;
export const pairOf = (a: Kind, b: Kind): Pair => (eventPriority[a] < eventPriority[b] ? `${a} < ${b}` : `${b} < ${a}`);

const grid = (most: number) => fc.integer({ min: 0, max: most }).map((n) => 5 * n);
const at = { atMin: grid(144), dressing: fc.constant("thigh") };
const happening: fc.Arbitrary<Happening> = fc.oneof(
	fc.record({
		...at,
		what: fc.constantFrom(
			...(["kink-fill", "kink-suction", "canister-change"] as const),
			...(["source-change", "dressing-change", "transfer"] as const),
		),
	}),
	fc.record({ ...at, what: fc.constant("breach" as const), size: fc.constantFrom(0.005, 0.025, 0.1) }),
	fc.record({ ...at, what: fc.constant("clog" as const), share: fc.constantFrom(0.6, 1) }),
	fc.record({ ...at, what: fc.constant("off" as const), forMin: fc.constantFrom(5, 20, 30) }),
	fc.record({
		...at,
		what: fc.constant("bleed" as const),
		volumeMl: fc.constantFrom(50, 300),
		forMin: fc.constantFrom(5, 30),
	}),
);

/** Times of alarms and of hands that fall on the grid, too. */
const onGrid = {
	"leak.delay": 5,
	"depth.delay": 5,
	"path.closedLimit": 5,
	"fill.stallLimit": 5,
	"absent.limit": 10,
	"hands.canister": 5,
	"hands.source": 5,
	"hands.kink": 5,
	"hands.port": 10,
	"hands.patch": 5,
	"port.pumpOff": 5,
	"drain.limit": 5,
	"drain.factor": 1,
	"turn.held": 1,
	"turn.between": 0,
	"turn.wet": 1,
	"breach.sizeMedian": 0.025,
	"breach.sizeSigma": 0.01,
	// Off the grid, so that what is counted by the hour stands between nothing.
	"exudate.block": 3.97,
};

const everyTwoHours = [420, 540, 660, 780, 900, 1020, 1140];

/** What is chosen of a day on the grid. */
export interface GridDay {
	readonly happenings: readonly Happening[];
	readonly chance: boolean;
	readonly seed: string;
	readonly regimen: {
		readonly fillMl: number;
		readonly dwellMin: number;
		readonly suctionMin: number;
		readonly begin: "suction" | "fill";
	};
	readonly sourceMl: number;
	readonly outflow: { readonly totalMlPerDay: number; readonly burstsPerDay: number } | null;
	/** Alarms and hands take their time by the grid, and a turn breaks the seal where it is held or wet. */
	readonly alarms: boolean;
	readonly nurses: number | null;
	/** Rounds every two hours, or none. */
	readonly rounds: boolean;
}

/** Half a day on a grid of five minutes, so that much falls on one instant. */
export const dayOnGrid = (of: GridDay): Scenario => ({
	...reference,
	seed: of.seed,
	chance: of.chance,
	horizonMin: 725,
	happenings: of.happenings,
	dressings: [
		{
			...thigh,
			sourceMl: of.sourceMl,
			outflow: of.outflow,
			canisterMl: 500,
			regimens: [{ ...shortDwell, ...of.regimen }],
		},
	],
	constants: constantsWith({ "turn.jitter": 0, "source.hang": 4, ...(of.alarms ? onGrid : {}) }),
	care: {
		...reference.care,
		response: { dayMin: 5, nightMin: 5, spread: 0 },
		roundsClockMin: of.rounds ? everyTwoHours : [],
		nurses: of.nurses,
		turningMin: 60,
		dressingChange: { everyMin: 360 },
	},
});

export const gridDay: fc.Arbitrary<GridDay> = fc.record({
	happenings: fc.array(happening, { minLength: 1, maxLength: 7 }),
	chance: fc.boolean(),
	seed: fc.constantFrom("a", "b", "c", "d"),
	regimen: fc.record({
		fillMl: fc.constantFrom(50, 150, 300),
		dwellMin: fc.constantFrom(5, 10),
		suctionMin: fc.constantFrom(25, 45, 50, 55, 120),
		begin: fc.constantFrom<"suction" | "fill">("suction", "fill"),
	}),
	sourceMl: fc.constantFrom(300, 1000),
	outflow: fc.constantFrom(null, { totalMlPerDay: 1200, burstsPerDay: 12 }, { totalMlPerDay: 5400, burstsPerDay: 12 }),
	alarms: fc.boolean(),
	nurses: fc.constantFrom(null, 1),
	rounds: fc.boolean(),
});

export interface Outcome {
	/** Everything that a report would tell of the day. */
	readonly told: string;
	readonly log: TraceLog;
	/** Kind of each event, by its name. */
	readonly kinds: ReadonlyMap<string, Kind>;
}

/** The day with the kinds in another order: `ranks` gives the place of each, equal kinds by scheduling. */
export function dayInOrder(scenario: Scenario, ranks: readonly Kind[]): Outcome {
	const names = new Map<string, Kind>();
	const made = Simulation.prototype.event;
	const spy = vi.spyOn(Simulation.prototype, "event").mockImplementation(function (
		this: Simulation,
		name: string,
		priority: number,
		action: (event: EventId) => void,
	) {
		const kind = kindOf.get(priority);
		if (kind === undefined) throw new Error(`no kind has the priority ${priority}`);
		names.set(name, kind);
		return made.call(this, name, ranks.indexOf(kind), action);
	});
	try {
		const log = new TraceLog();
		const { dressings } = traceDay(scenario, log);
		const [{ curve: _, ...day }] = dressings as [(typeof dressings)[number] & { curve?: unknown }]; // one dressing; its curve is drawn from the same spans
		// The last digits of sums depend on where a span was cut, which nobody reads.
		const told = JSON.stringify(day, (_key, value) =>
			typeof value === "number" ? Number(value.toPrecision(9)) : value,
		);
		return { told, log, kinds: names };
	} finally {
		spy.mockRestore();
	}
}

/** Kinds in the order in which they go. */
export const usual = [...new Set(kindOf.values())];

/** Pairs of different kinds that happen at one instant of a day. */
export function coinciding({ log, kinds: byName }: Outcome): Set<Pair> {
	const found = new Set<Pair>();
	for (let i = 0; i < log.times.length; i++)
		for (let j = i + 1; log.times[j] === log.times[i]; j++) {
			const [a, b] = [byName.get(log.names[i]), byName.get(log.names[j])];
			if (a !== undefined && b !== undefined && a !== b) found.add(pairOf(a, b));
		}
	return found;
}

/** The usual order, but `late` goes just before `early`. */
export function exchanged(early: Kind, late: Kind): Kind[] {
	const ranks = usual.filter((kind) => kind !== late);
	ranks.splice(ranks.indexOf(early), 0, late);
	return ranks;
}

/** Pairs that met on a day and can be exchanged without another kind that met the later one standing between. */
export function exchangeable(pairs: ReadonlySet<Pair>): [Kind, Kind][] {
	return usual.flatMap((early, i) =>
		usual.slice(i + 1).flatMap((late): [Kind, Kind][] => {
			const between = usual.slice(i + 1, usual.indexOf(late));
			const met = (kind: Kind) => pairs.has(pairOf(kind, late));
			return met(early) && !between.some(met) ? [[early, late]] : [];
		}),
	);
}
