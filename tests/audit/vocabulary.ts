/** What the names of a result are called on a paper; written down here once more, from what they mean. */

export const conditionName = (condition: string): string => condition.replaceAll("-", " ");

export const tissueName = (tissue: string): string =>
	({
		"soft-tissue": "soft tissue",
		"necrotic-soft-tissue": "necrotic soft tissue",
		"open-abdomen": "open abdomen",
		"exposed-organ": "exposed organ",
	})[tissue] ?? tissue;

/** With a capital at its start. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** A total of a day: what its row is called, its unit, how many digits after the point its kind deserves. */
export const totals: readonly (readonly [name: string, row: string, unit: string, decimals: number])[] = [
	["fills", "Fills started", "", 1],
	["washes", "Washes (drains finished)", "", 1],
	["instilledMl", "Solution instilled", "mL", 0],
	["exudateMl", "Exudate", "mL", 0],
	["toCanisterMl", "To the canister", "mL", 0],
	["woundOutputMl", "of it wound output", "mL", 0],
	["notReturnedMl", "Solution that did not come back", "mL", 1],
	["weptMl", "Wept at the edge", "mL", 1],
	["discardedMl", "Discarded with dressings", "mL", 1],
	["inDressingMl", "In the dressing at the end", "mL", 1],
	["solutionWastedMl", "Solution wasted", "mL", 0],
	["underSuctionMin", "Under suction", "min", 0],
	["wetMin", "Wet (fill and dwell)", "min", 1],
	["offSuctionMin", "Off suction", "min", 1],
	["meanExudateShare", "Mean exudate share at the bed", "", 3],
	["breaches", "Breaches of the seal", "", 2],
	["alarms", "Alarms", "", 2],
	["nightCalls", "Calls at night (19:00 to 07:00)", "", 2],
	["nurseMin", "Hands-on time of nurses", "min", 1],
	["canisterChanges", "Canisters changed", "", 2],
	["sourceChanges", "Solution renewed", "", 2],
	["dressingChanges", "Dressings changed", "", 2],
	["portsReplaced", "Ports replaced", "", 2],
];
