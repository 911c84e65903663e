import { type Condition, conditions } from "./conditions.ts";
import { type TotalName, totalFacts, totalNames, type Unit } from "./totals.ts";

/** Times of day that a ward keeps clear where it can; the clock times are the scenario's. */
export const avoidedTimes = ["handOver", "meals", "smallHours"] as const;
export type AvoidedTime = (typeof avoidedTimes)[number];

/** What regimens are compared by: every total, alarms by condition and by half of the day, and what a ward asks of them. */
export type MeasureName =
	| TotalName
	| `alarms.${Condition}`
	| "alarmsByDay"
	| "alarmsByNight"
	| `callsIn.${AvoidedTime}`
	| "callsTogether"
	| "firstCanisterChangeMin"
	| "canisterLastsShift"
	| "cost";

export interface MeasureFact {
	/** `` for a count. */
	readonly unit: Unit;
	/** Which is better for patient and ward; null where it is a matter of the regimen. */
	readonly better: "lower" | "higher" | null;
	/** Width of the bins of its histogram. */
	readonly bin: number;
	/** Whether the values of several dressings add up. */
	readonly adds: boolean;
	/** Replications below which Student's interval of a difference is too short: its tail is long (tests/statistics/coverage.test.ts). */
	readonly fewest: number;
	/** True where it rests on how debris closes a port, which nobody has measured. */
	readonly ofClogging: boolean;
}

const usual: MeasureFact = { unit: "", better: "lower", bin: 1, adds: true, fewest: 2, ofClogging: false };

/** Some totals, with what is not as usual in them. */
const totals = <N extends TotalName>(names: readonly N[], but: Partial<MeasureFact> = {}) =>
	Object.fromEntries(names.map((name) => [name, { ...usual, ...totalFacts[name], ...but }])) as {
		[M in N]: MeasureFact;
	}; // fromEntries forgets the names that it is given

const alarms = <C extends Condition>(...of: readonly C[]) =>
	Object.fromEntries(
		of.map((condition) => [`alarms.${condition}`, { ...usual, ofClogging: condition === "suction-path-obstructed" }]),
	) as { [M in C as `alarms.${M}`]: MeasureFact }; // fromEntries forgets the names that it is given

/** Every measure in the order in which it is read: by what it is a matter of. */
const facts: { readonly [N in MeasureName]: MeasureFact } = {
	...totals(["fills", "washes", "wetMin"]),
	...totals(["meanExudateShare"], { adds: false }),
	// Minutes off suction are hardly any on most days, many on a few.
	...totals(["underSuctionMin", "offSuctionMin"], { fewest: 200 }),
	...totals(["instilledMl", "solutionWastedMl", "notReturnedMl", "sourceChanges", "exudateMl", "woundOutputMl"]),
	...totals(["inDressingMl", "discardedMl", "dressingChanges", "toCanisterMl", "canisterChanges"]),
	firstCanisterChangeMin: { ...usual, unit: "min", better: "higher", bin: 0.1, adds: false },
	canisterLastsShift: { ...usual, unit: "share", better: "higher", adds: false },
	...alarms("canister-at-capacity"),
	...totals(["weptMl", "breaches"]),
	...alarms("seal-leak", "depth-not-held"),
	...totals(["portsReplaced"], { ofClogging: true }),
	...alarms("suction-path-obstructed", "fill-path-obstructed"),
	...totals(["alarms"]),
	...alarms(...conditions), // those that have no place above
	alarmsByDay: usual,
	alarmsByNight: usual,
	...totals(["nightCalls"]),
	"callsIn.handOver": usual,
	"callsIn.meals": usual,
	"callsIn.smallHours": usual,
	callsTogether: usual,
	...totals(["nurseMin"]),
	cost: { ...usual, unit: "currency", bin: 0.01 },
};

export const measuresAsRead = Object.keys(facts) as readonly MeasureName[]; // keys forgets the names it lists

/** Every measure, in the order in which their values are kept. */
export const measureNames: readonly MeasureName[] = [
	...totalNames,
	...conditions.map((condition) => `alarms.${condition}` as const),
	"alarmsByDay",
	"alarmsByNight",
	...avoidedTimes.map((time) => `callsIn.${time}` as const),
	"callsTogether",
	"firstCanisterChangeMin",
	"canisterLastsShift",
	"cost",
];

export const isMeasureName = (name: string): name is MeasureName => Object.hasOwn(facts, name);

export const measureFact = (name: MeasureName): MeasureFact => facts[name];

/** Place of a measure among the values. */
export const placeOf = (name: MeasureName): number => measureNames.indexOf(name);

/** The rows of a comparison where the reader asked for none. */
export const mainMeasures: readonly MeasureName[] = [
	"washes",
	"wetMin",
	"meanExudateShare",
	"underSuctionMin",
	"offSuctionMin",
	"instilledMl",
	"solutionWastedMl",
	"canisterChanges",
	"toCanisterMl",
	"breaches",
	"alarms",
	"alarms.canister-at-capacity",
	"alarms.seal-leak",
	"alarms.fill-path-obstructed",
	"alarms.suction-path-obstructed",
	"nightCalls",
	"nurseMin",
	"cost",
];
