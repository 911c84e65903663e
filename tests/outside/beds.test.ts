import { describe, expect, test } from "vitest";
import type { WardScenario } from "../../src/scenario/index.ts";
import { WardRun } from "../../src/ward/index.ts";
import { dressingsOf, wardWith } from "../ward/sample.ts";

/** A ward of `units` with `load` erlangs of patients whose therapy lasts 2.4 h on average. */
function ward(units: number, load: number, full: "wait" | "away"): WardScenario {
	return wardWith((raw) => {
		raw.chance = "on";
		raw.horizon = "364 d";
		raw.care = { rounds: [], turning: "none", dressingChange: "none" };
		raw.ward.units = units;
		raw.ward.full = full;
		raw.ward.beds = [];
		raw.ward.arrivals = { rate: `${load * 10} /d` };
		raw.ward.length = { mean: "2.4 h" };
		raw.ward.kinds[0].regimen = { depth: "-125 mmHg", fill: "none" };
	});
}

interface Seen {
	arrived: number;
	away: number;
	waited: number;
	waitMin: number;
	meanWaiting: number;
	meanInBed: number;
	therapyMin: number;
}

function watch(scenario: WardScenario, replications: number): Seen {
	const seen = { arrived: 0, away: 0, waited: 0, waitMin: 0, meanWaiting: 0, meanInBed: 0, therapyMin: 0 };
	const run = new WardRun(scenario, dressingsOf(scenario), null, {
		begins: (waitMin) => {
			if (waitMin > 0) seen.waited++;
			seen.waitMin += waitMin;
		},
	});
	for (let r = 0; r < replications; r++) {
		run.run(r);
		const totals = run.totals();
		seen.arrived += totals.arrived;
		seen.away += totals.turnedAway;
		seen.therapyMin += totals.therapyMin;
		seen.meanWaiting += run.units.meanWaiting() / replications;
		seen.meanInBed += run.units.meanBusy() / replications;
	}
	return seen;
}

describe("patients who find no unit free and are treated elsewhere", () => {
	test.each([
		// "Published Erlang B table values" in quoted copies
		[1, 1, 0.5],
		[5, 2, 0.0367],
		[10, 5, 0.0184],
	])("%i units under %i erlangs turn away the share of Erlang B, %f", (units, load, share) => {
		const { arrived, away } = watch(ward(units, load, "away"), 4);
		expect(arrived).toBeGreaterThan(12_000);
		// Losses come in clusters: four standard errors of independent ones.
		const error = Math.sqrt((share * (1 - share)) / arrived);
		expect(Math.abs(away / arrived - share)).toBeLessThan(4 * error);
	});
});

describe("patients who wait for a unit", () => {
	const units = 14;
	const load = 10;
	const scenario = ward(units, load, "wait");
	const seen = watch(scenario, 4);

	test("as many wait as Erlang C says: 14 servers, 10 erlangs, 0.17413", () => {
		// 0.1741319335950498: pyworkforce 0.1.0, README (read)
		expect(Math.abs(seen.waited / seen.arrived - 0.17413)).toBeLessThan(0.012);
		// And so long: C·mean/(c − a), from the same.
		const meanMin = (0.1741319 * 144) / (units - load);
		expect(Math.abs(seen.waitMin / seen.arrived / meanMin - 1)).toBeLessThan(0.12);
	});

	test("Little's law: as many wait as come in the time that one waits, and as many lie in bed as come in the time of a therapy", () => {
		// L = λ·W, Little 1961 (from memory); over a year the ends count for nothing.
		const perMin = seen.arrived / (4 * scenario.horizonMin);
		const wait = seen.waitMin / seen.arrived;
		const stay = seen.therapyMin / seen.arrived;
		expect(Math.abs(seen.meanWaiting / (perMin * wait) - 1)).toBeLessThan(1e-3);
		expect(Math.abs(seen.meanInBed / (perMin * stay) - 1)).toBeLessThan(1e-3);
	});
});
