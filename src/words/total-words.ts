import { supportedDigits } from "../physics/index.ts";
import type { TotalName } from "../vocabulary/index.ts";

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
