import type { Condition } from "../therapy/index.ts";
import { conditions } from "../therapy/index.ts";
import type { TotalName } from "./day-result.ts";
import { totalBins, totalNames } from "./totals.ts";

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
	/** `mL`, `min`, `` for a count, `share`, `currency`. */
	readonly unit: "mL" | "min" | "" | "share" | "currency";
	/** Which is better for patient and ward; null where it is a matter of the regimen. */
	readonly better: "lower" | "higher" | null;
	/** Width of the bins of its histogram. */
	readonly bin: number;
	/** Whether the values of several dressings add up. */
	readonly adds: boolean;
	/** Replications below which Student's interval of a difference is too short: its tail is long (tests/analysis/coverage.test.ts). */
	readonly fewest: number;
	/** True where it rests on how debris closes a port, which nobody has measured. */
	readonly ofClogging: boolean;
}

/** What a wash and what dilution are worth is for the clinician: neither way is called better. */
const better: { readonly [N in TotalName]: MeasureFact["better"] } = {
	fills: null,
	washes: null,
	instilledMl: null,
	exudateMl: null,
	toCanisterMl: null,
	weptMl: "lower",
	discardedMl: null,
	inDressingMl: null,
	solutionWastedMl: "lower",
	woundOutputMl: null,
	notReturnedMl: "lower",
	offSuctionMin: "lower",
	underSuctionMin: "higher",
	wetMin: null,
	breaches: "lower",
	meanExudateShare: null,
	canisterChanges: "lower",
	sourceChanges: "lower",
	dressingChanges: "lower",
	portsReplaced: "lower",
	alarms: "lower",
	nightCalls: "lower",
	nurseMin: "lower",
};

function unitOf(name: string): MeasureFact["unit"] {
	if (name.endsWith("Ml")) return "mL";
	if (name.endsWith("Min")) return "min";
	return name.endsWith("Share") ? "share" : "";
}

const fact = (
	unit: MeasureFact["unit"],
	good: MeasureFact["better"],
	bin: number,
	adds = true,
	ofClogging = false,
	fewest = 2,
): MeasureFact => ({ unit, better: good, bin, adds, fewest, ofClogging });

/** Minutes off suction: hardly any on most days, many on a few. */
const longTailed: readonly MeasureName[] = ["offSuctionMin", "underSuctionMin"];

const entries: readonly (readonly [MeasureName, MeasureFact])[] = [
	...totalNames.map(
		(name) =>
			[
				name,
				fact(
					unitOf(name),
					better[name],
					totalBins[name],
					name !== "meanExudateShare",
					name === "portsReplaced",
					longTailed.includes(name) ? 200 : 2,
				),
			] as const,
	),
	...conditions.map(
		(condition) =>
			[
				`alarms.${condition}`,
				fact("", "lower", 1, true, condition === "suction-path-obstructed"),
			] as const,
	),
	["alarmsByDay", fact("", "lower", 1)],
	["alarmsByNight", fact("", "lower", 1)],
	...avoidedTimes.map(
		(time) => [`callsIn.${time}`, fact("", "lower", 1)] as const,
	),
	["callsTogether", fact("", "lower", 1)],
	["firstCanisterChangeMin", fact("min", "higher", 0.1, false)],
	["canisterLastsShift", fact("share", "higher", 1, false)],
	["cost", fact("currency", "lower", 0.01)],
];

const facts = new Map(entries);

/** Every measure, in the order in which their values are kept. */
export const measureNames: readonly MeasureName[] = entries.map(
	([name]) => name,
);

export const measureFacts: readonly MeasureFact[] = entries.map(
	([, known]) => known,
);

export function isMeasureName(name: string): name is MeasureName {
	return facts.has(name as MeasureName); // a Map of names answers for any text
}

export function measureFact(name: MeasureName): MeasureFact {
	return measureFacts[placeOf(name)];
}

/** Place of a measure among the values. */
export function placeOf(name: MeasureName): number {
	return measureNames.indexOf(name);
}

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
