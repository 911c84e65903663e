import type { MeasureName } from "../../src/vocabulary/index.ts";
import { conditionName } from "./vocabulary.ts";

/** What a measure is called on a paper, what it is in, and which words compare it. */
export interface Measure {
	readonly label: string;
	/** Inside of a sentence. */
	readonly inside: string;
	readonly unit: "mL" | "min" | "" | "currency";
	/** Digits after the point where no interval says how many. */
	readonly decimals: number;
	readonly less: string;
	readonly more: string;
	readonly matter: string;
	/** Whether each day has one, so that it is not 'a day'. */
	readonly ofTheWhole: boolean;
	readonly better: "lower" | "higher" | null;
}

type Unit = Measure["unit"];

const measure = (
	label: string,
	unit: Unit,
	decimals: number,
	words: readonly [less: string, more: string],
	matter: string,
	better: Measure["better"],
	rest: Partial<Measure> = {},
): Measure => ({
	label,
	inside: `${label.slice(0, 1).toLowerCase()}${label.slice(1)}`,
	unit,
	decimals,
	less: words[0],
	more: words[1],
	matter,
	better,
	ofTheWhole: false,
	...rest,
});

const few = ["fewer", "more"] as const;
const little = ["less", "more"] as const;
const short = ["shorter", "longer"] as const;

const alarm = (condition: string, matter: string): Measure =>
	measure(`Alarms: ${conditionName(condition)}`, "", 2, few, matter, "lower", {
		inside: `alarms for ${conditionName(condition)}`,
	});

const known: { readonly [name: string]: Measure } = {
	fills: measure("Fills started", "", 2, few, "washing", null),
	washes: measure("Washes", "", 2, few, "washing", null),
	wetMin: measure("Wet time (fill and dwell)", "min", 1, short, "washing", null),
	meanExudateShare: measure("Undiluted exudate at the bed, mean share", "", 3, ["lower", "higher"], "dilution", null, {
		ofTheWhole: true,
	}),
	underSuctionMin: measure("Time under suction", "min", 1, short, "suction", "higher"),
	offSuctionMin: measure("Time off suction", "min", 1, short, "suction", "lower"),
	instilledMl: measure("Solution instilled", "mL", 0, little, "solution", null),
	solutionWastedMl: measure("Solution wasted", "mL", 0, little, "solution", "lower"),
	notReturnedMl: measure("Solution that did not come back", "mL", 0, little, "solution", "lower"),
	sourceChanges: measure("Solution bags renewed", "", 2, few, "solution", "lower"),
	exudateMl: measure("Exudate", "mL", 0, little, "dilution", null),
	woundOutputMl: measure("Wound output in the canister", "mL", 0, little, "dilution", null),
	inDressingMl: measure("In the dressing at the end", "mL", 0, little, "supplies", null, { ofTheWhole: true }),
	discardedMl: measure("Discarded with dressings", "mL", 0, little, "supplies", null),
	dressingChanges: measure("Dressings changed", "", 2, few, "supplies", "lower"),
	toCanisterMl: measure("Drained to the canister", "mL", 0, little, "canisters", null),
	canisterChanges: measure("Canisters changed", "", 2, few, "canisters", "lower"),
	firstCanisterChangeMin: measure(
		"First canister change, after the start",
		"min",
		0,
		["earlier", "later"],
		"canisters",
		"higher",
		{ ofTheWhole: true },
	),
	canisterLastsShift: measure(
		"Canister lasts the first shift, share of days",
		"",
		3,
		["less often", "more often"],
		"canisters",
		"higher",
		{ ofTheWhole: true },
	),
	"alarms.canister-at-capacity": alarm("canister-at-capacity", "canisters"),
	weptMl: measure("Wept at the edge", "mL", 0, little, "leaks", "lower"),
	breaches: measure("Breaches of the seal", "", 2, few, "leaks", "lower"),
	"alarms.seal-leak": alarm("seal-leak", "leaks"),
	"alarms.depth-not-held": alarm("depth-not-held", "leaks"),
	portsReplaced: measure("Ports replaced", "", 2, few, "blockages", "lower"),
	"alarms.suction-path-obstructed": alarm("suction-path-obstructed", "blockages"),
	"alarms.fill-path-obstructed": alarm("fill-path-obstructed", "blockages"),
	alarms: measure("Alarms of all conditions", "", 2, few, "alarms", "lower"),
	"alarms.source-empty": alarm("source-empty", "alarms"),
	"alarms.suction-absent": alarm("suction-absent", "alarms"),
	"alarms.large-output": alarm("large-output", "alarms"),
	alarmsByDay: measure("Alarms by day (07:00 to 19:00)", "", 2, few, "alarms", "lower"),
	alarmsByNight: measure("Alarms by night (19:00 to 07:00)", "", 2, few, "alarms", "lower"),
	nightCalls: measure("Calls at night (19:00 to 07:00)", "", 2, few, "nurses' work", "lower"),
	"callsIn.handOver": measure("Calls at hand-over", "", 2, few, "nurses' work", "lower"),
	"callsIn.meals": measure("Calls at meals", "", 2, few, "nurses' work", "lower"),
	"callsIn.smallHours": measure("Calls in the small hours", "", 2, few, "nurses' work", "lower"),
	callsTogether: measure("Calls for two dressings at once", "", 2, few, "nurses' work", "lower"),
	nurseMin: measure("Hands-on time of nurses", "min", 1, short, "nurses' work", "lower"),
	cost: measure("Cost", "currency", 2, ["lower", "higher"], "cost", "lower"),
};

export function measureOf(name: MeasureName): Measure {
	const one = known[name];
	if (one === undefined) throw new Error(`no measure is called ${name}`);
	return one;
}

/** The unit after a number: its own, and the time that it is over. */
export function unitOf(name: MeasureName, horizonMin: number, currency: string | null): string {
	const { unit, ofTheWhole } = measureOf(name);
	return [
		unit === "currency" ? (currency ?? "") : unit,
		ofTheWhole ? "" : horizonMin === 1440 ? "a day" : overWords(horizonMin),
	]
		.filter((word) => word !== "")
		.join(" ");
}

/** 'in 2 d', 'in 3 h 30 min'. */
function overWords(horizonMin: number): string {
	const whole = Math.round(horizonMin);
	const [large, small, one, two] =
		whole < 48 * 60
			? [Math.floor(whole / 60), whole % 60, "h", "min"]
			: [Math.floor(Math.round(whole / 60) / 24), Math.round(whole / 60) % 24, "d", "h"];
	return `in ${large} ${one}${small === 0 ? "" : ` ${small} ${two}`}`;
}

/**
 * Digits after the point that the half-width of an interval supports: two figures of it, or one where they are 20 or more;
 * tens from 100 on. Null where there is no doubt.
 */
export function supported(halfWidth: number | null): number | null {
	if (halfWidth === null || !(halfWidth > 1e-6)) return null;
	if (halfWidth < 2) return Math.ceil(Math.log10(2 / halfWidth) - 1e-12);
	return halfWidth < 100 ? 0 : 1 - Math.floor(Math.log10(halfWidth) + 1e-12);
}

/** Digits that an interval supports; the measure's own where there is none. */
export const deserved = (name: MeasureName, halfWidth: number | null): number =>
	supported(halfWidth) ?? measureOf(name).decimals;

/** Those of the mean of one regimen: no more than the measure's own where all but few days have one value. */
export function ofMean(
	name: MeasureName,
	spread: { readonly halfWidth95: number | null; readonly p10: number; readonly p90: number } | undefined,
): number {
	const digits = deserved(name, spread?.halfWidth95 ?? null);
	return spread !== undefined && spread.p10 === spread.p90 ? Math.min(measureOf(name).decimals, digits) : digits;
}
