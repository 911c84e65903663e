import { supportedDigits } from "../physics/index.ts";
import type { Condition, MeasureName, TotalName } from "../vocabulary/index.ts";
import { conditionWords } from "./code-words.ts";
import { sentenceInner } from "./sentences.ts";

/** How a total is called, and digits after the point that it deserves. */
export const totalWords: { readonly [N in TotalName]: { readonly name: string; readonly decimals: number } } = {
	fills: { name: "Fills started", decimals: 1 },
	washes: { name: "Washes (drains finished)", decimals: 1 },
	instilledMl: { name: "Solution instilled", decimals: 0 },
	exudateMl: { name: "Exudate", decimals: 0 },
	toCanisterMl: { name: "To the canister", decimals: 0 },
	woundOutputMl: { name: "of it wound output", decimals: 0 },
	notReturnedMl: { name: "Solution that did not come back", decimals: 1 },
	weptMl: { name: "Wept at the edge", decimals: 1 },
	discardedMl: { name: "Discarded with dressings", decimals: 1 },
	inDressingMl: { name: "In the dressing at the end", decimals: 1 },
	solutionWastedMl: { name: "Solution wasted", decimals: 0 },
	underSuctionMin: { name: "Under suction", decimals: 0 },
	wetMin: { name: "Wet (fill and dwell)", decimals: 1 },
	offSuctionMin: { name: "Off suction", decimals: 1 },
	meanExudateShare: { name: "Mean exudate share at the bed", decimals: 3 },
	breaches: { name: "Breaches of the seal", decimals: 2 },
	alarms: { name: "Alarms", decimals: 2 },
	nightCalls: { name: "Calls at night (19:00 to 07:00)", decimals: 2 },
	nurseMin: { name: "Hands-on time of nurses", decimals: 1 },
	canisterChanges: { name: "Canisters changed", decimals: 2 },
	sourceChanges: { name: "Solution renewed", decimals: 2 },
	dressingChanges: { name: "Dressings changed", decimals: 2 },
	portsReplaced: { name: "Ports replaced", decimals: 2 },
};

/** Digits after the point of a mean: those that its interval supports; without one the total's own. */
export const totalDecimals = (name: TotalName, halfWidth: number | null): number =>
	supportedDigits(halfWidth) ?? totalWords[name].decimals;

/** How a measure is called, written and compared. */
export interface MeasureWords {
	/** 'Washes', at the head of a row. */
	readonly label: string;
	/** Inside a sentence, where that is not the label itself. */
	readonly sentence?: string;
	/** Digits after the point that its mean deserves. */
	readonly decimals: number;
	/** 'fewer' and 'more', 'less' and 'more', 'shorter' and 'longer', … */
	readonly less: string;
	readonly more: string;
	/** What it is a matter of: a first page shows one of each. */
	readonly matter: Matter;
}

type Matter =
	| "washing"
	| "dilution"
	| "suction"
	| "solution"
	| "canisters"
	| "leaks"
	| "blockages"
	| "alarms"
	| "nurses' work"
	| "supplies"
	| "cost";

const words =
	(decimals: number, less: string, more: string) =>
	(label: string, matter: Matter): MeasureWords => ({ label, decimals, less, more, matter });

const count = words(2, "fewer", "more");
const volume = words(0, "less", "more");
const time = words(1, "shorter", "longer");
const often = words(3, "less often", "more often");

const total = (name: TotalName): string => totalWords[name].name;

export const measureWords: { readonly [N in MeasureName]: MeasureWords } = {
	fills: count(total("fills"), "washing"),
	washes: count("Washes", "washing"),
	wetMin: time("Wet time (fill and dwell)", "washing"),
	meanExudateShare: words(3, "lower", "higher")("Undiluted exudate at the bed, mean share", "dilution"),
	underSuctionMin: time("Time under suction", "suction"),
	offSuctionMin: time("Time off suction", "suction"),
	instilledMl: volume(total("instilledMl"), "solution"),
	solutionWastedMl: volume(total("solutionWastedMl"), "solution"),
	notReturnedMl: volume(total("notReturnedMl"), "solution"),
	sourceChanges: count("Solution bags renewed", "solution"),
	exudateMl: volume(total("exudateMl"), "dilution"),
	woundOutputMl: volume("Wound output in the canister", "dilution"),
	inDressingMl: volume(total("inDressingMl"), "supplies"),
	discardedMl: volume(total("discardedMl"), "supplies"),
	dressingChanges: count(total("dressingChanges"), "supplies"),
	toCanisterMl: volume("Drained to the canister", "canisters"),
	canisterChanges: count(total("canisterChanges"), "canisters"),
	firstCanisterChangeMin: words(0, "earlier", "later")("First canister change, after the start", "canisters"),
	canisterLastsShift: often("Canister lasts the first shift, share of days", "canisters"),
	"alarms.canister-at-capacity": alarm("canister-at-capacity", "canisters"),
	weptMl: volume(total("weptMl"), "leaks"),
	breaches: count(total("breaches"), "leaks"),
	"alarms.seal-leak": alarm("seal-leak", "leaks"),
	"alarms.depth-not-held": alarm("depth-not-held", "leaks"),
	portsReplaced: count(total("portsReplaced"), "blockages"),
	"alarms.suction-path-obstructed": alarm("suction-path-obstructed", "blockages"),
	"alarms.fill-path-obstructed": alarm("fill-path-obstructed", "blockages"),
	alarms: count("Alarms of all conditions", "alarms"),
	"alarms.source-empty": alarm("source-empty", "alarms"),
	"alarms.suction-absent": alarm("suction-absent", "alarms"),
	"alarms.large-output": alarm("large-output", "alarms"),
	alarmsByDay: count("Alarms by day (07:00 to 19:00)", "alarms"),
	alarmsByNight: count("Alarms by night (19:00 to 07:00)", "alarms"),
	nightCalls: count(total("nightCalls"), "nurses' work"),
	"callsIn.handOver": count("Calls at hand-over", "nurses' work"),
	"callsIn.meals": count("Calls at meals", "nurses' work"),
	"callsIn.smallHours": count("Calls in the small hours", "nurses' work"),
	callsTogether: count("Calls for two dressings at once", "nurses' work"),
	nurseMin: time(total("nurseMin"), "nurses' work"),
	cost: words(2, "lower", "higher")("Cost", "cost"),
};

function alarm(condition: Condition, matter: Matter): MeasureWords {
	const words = conditionWords[condition];
	return { ...count(`Alarms: ${words}`, matter), sentence: `alarms for ${words}` };
}

/** Inside a sentence. */
export const inSentence = (name: MeasureName): string => {
	const { label, sentence } = measureWords[name];
	return sentence ?? sentenceInner(label);
};
