import type { Spread, TotalName, Totals } from "../analysis/day-result.ts";
import { plainNumber } from "../charts/index.ts";
import { supportedDigits } from "../physics/index.ts";
import { htmlElement, htmlTable } from "./html-element.ts";

/** How a total is called and written. */
interface TotalWords {
	readonly name: string;
	readonly unit: string;
	readonly decimals: number;
}

/** Every total in the order of a report: liquid, washing, suction, what failed, what care did. */
export const totalWords: { readonly [N in TotalName]: TotalWords } = {
	fills: { name: "Fills started", unit: "", decimals: 1 },
	washes: { name: "Washes (drains finished)", unit: "", decimals: 1 },
	instilledMl: { name: "Solution instilled", unit: "mL", decimals: 0 },
	exudateMl: { name: "Exudate", unit: "mL", decimals: 0 },
	toCanisterMl: { name: "To the canister", unit: "mL", decimals: 0 },
	woundOutputMl: { name: "of it wound output", unit: "mL", decimals: 0 },
	notReturnedMl: {
		name: "Solution that did not come back",
		unit: "mL",
		decimals: 1,
	},
	weptMl: { name: "Wept at the edge", unit: "mL", decimals: 1 },
	discardedMl: { name: "Discarded with dressings", unit: "mL", decimals: 1 },
	inDressingMl: { name: "In the dressing at the end", unit: "mL", decimals: 1 },
	solutionWastedMl: { name: "Solution wasted", unit: "mL", decimals: 0 },
	underSuctionMin: { name: "Under suction", unit: "min", decimals: 0 },
	wetMin: { name: "Wet (fill and dwell)", unit: "min", decimals: 1 },
	offSuctionMin: { name: "Off suction", unit: "min", decimals: 1 },
	meanExudateShare: {
		name: "Mean exudate share at the bed",
		unit: "",
		decimals: 3,
	},
	breaches: { name: "Breaches of the seal", unit: "", decimals: 2 },
	alarms: { name: "Alarms", unit: "", decimals: 2 },
	nightCalls: {
		name: "Calls at night (19:00 to 07:00)",
		unit: "",
		decimals: 2,
	},
	nurseMin: { name: "Hands-on time of nurses", unit: "min", decimals: 1 },
	canisterChanges: { name: "Canisters changed", unit: "", decimals: 2 },
	sourceChanges: { name: "Solution renewed", unit: "", decimals: 2 },
	dressingChanges: { name: "Dressings changed", unit: "", decimals: 2 },
	portsReplaced: { name: "Ports replaced", unit: "", decimals: 2 },
};

export const totalNames = Object.keys(totalWords) as TotalName[]; // the keys of the record above

/** Totals of the traced day beside what the replications say: mean with its half-width, and the middle 8 in 10. */
export function totalsTable(
	document: Document,
	ids: { readonly id: string; readonly under: string },
	traced: Totals,
	projected: { readonly [N in TotalName]: Spread },
	replications: number,
): HTMLElement {
	const rows = totalNames.map((name) => {
		const { unit, decimals } = totalWords[name];
		const spread = projected[name];
		const number = (value: number): Node => aligned(document, value, decimals);
		const supported = supportedDigits(spread.halfWidth95) ?? decimals;
		return [
			totalWords[name].name,
			aligned(document, spread.mean, supported),
			spread.halfWidth95 === null
				? ""
				: aligned(document, spread.halfWidth95, supported),
			number(spread.p10),
			number(spread.p50),
			number(spread.p90),
			unit,
			number(traced[name]),
		];
	});
	const columns = ["Mean", "±", "P10", "P50", "P90"].map((heading) => ({
		heading,
		numeric: true,
	}));
	return htmlTable(document, {
		...ids,
		caption: `Totals of the time shown over ${replications} ${replications === 1 ? "replication" : "replications"}: mean with its 95 % half-width (±), the values that one day in ten (P10), half (P50) and nine in ten (P90) stay at or below, and the one day that is drawn.`,
		columns: [
			{ heading: "Total" },
			...columns,
			{ heading: "Unit" },
			{ heading: "Drawn day", numeric: true },
		],
		rows,
	});
}

/** A number with unseen zeros after it, so that the points of a column of at most `mostDecimals` stand under each other. */
export function aligned(
	document: Document,
	value: number,
	decimals: number,
	mostDecimals = 3,
): Node {
	const text = plainNumber(value, decimals);
	const [, fraction = ""] = text.split(".");
	const unseen = `${fraction === "" ? "." : ""}${"0".repeat(Math.max(0, mostDecimals - fraction.length))}`;
	const pad = htmlElement(
		document,
		"span",
		{ class: "pad", "aria-hidden": "true" },
		unseen,
	);
	return htmlElement(document, "span", {}, text, unseen === "" ? null : pad);
}
