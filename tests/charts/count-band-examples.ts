import { type CountBandData, countBand } from "../../src/charts/index.ts";
import { examplesOf } from "./example.ts";

/** A shelf that falls by about three a day and is filled up every week. */
export function shelf(): CountBandData {
	const p50 = Array.from({ length: 28 }, (_, day) => 24 - 3 * (day % 7));
	return {
		title: "Stock: canister 1000 mL",
		clock: { start: "2026-03-02T07:00", startClockMin: 420, horizonMin: 28 * 1440 },
		unit: "pieces on the shelf",
		firstDay: 0,
		series: {
			mean: p50,
			p10: p50.map((value, day) => Math.max(0, value - 2 - (day % 7))),
			p50,
			p90: p50.map((value) => value + 3),
		},
		levels: [{ value: 9, name: "reorder at" }],
		marks: [7, 14, 21].map((day) => ({ atMin: day * 1440, name: `delivery on day ${day}` })),
		reading: "Out at least once in 4 % of the replications.",
	};
}

/** Beds that fill up in two weeks of warm-up. */
function beds(): CountBandData {
	const p50 = Array.from({ length: 35 }, (_, day) => Math.min(11, Math.round(day * 1.1)));
	return {
		...shelf(),
		title: "Patients with a therapy unit",
		unit: "patients",
		firstDay: -14,
		series: { mean: p50, p10: p50.map((n) => Math.max(0, n - 2)), p50, p90: p50.map((n) => Math.min(14, n + 2)) },
		levels: [{ value: 14, name: "units" }],
		marks: [],
		divide: { atMin: 0, name: "the count begins" },
		reading: "Left of the line is the warm-up.",
	};
}

export const countBandExamples = examplesOf(countBand, { "count-band-stock": shelf(), "count-band-beds": beds() });
