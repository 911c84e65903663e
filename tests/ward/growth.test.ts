import { expect, test } from "vitest";
import { readWard, type WardScenario } from "../../src/scenario/index.ts";
import { runWardBlocks } from "../../src/studies/index.ts";
import { WardRun } from "../../src/ward/index.ts";
import { dressingsOf, wardWith } from "./sample.ts";
import { smallWard } from "./small-ward.ts";

/** Events and microseconds of one thread for one day of one dressing, in a ward of so many beds that are always full. */
function perDressingDay(beds: number, days: number) {
	const ward = wardWith((raw) => {
		raw.chance = "on";
		raw.horizon = `${days} d`;
		raw.ward.units = beds;
		raw.ward.census = { thigh: beds };
		raw.ward.arrivals = { rate: `${beds / 4} /d` };
		raw.ward.length = { mean: "6 d" };
		raw.ward.beds = [];
	});
	const run = new WardRun(ward, dressingsOf(ward), null, {});
	run.run(0);
	const before = process.cpuUsage().user;
	const events = run.run(1);
	const micros = process.cpuUsage().user - before;
	const therapyDays = run.totals().therapyMin / 1440;
	return { events: events / therapyDays, micros: micros / therapyDays };
}

test("a day of a dressing takes as many events in a ward of 100 beds as alone", () => {
	const [alone, many] = [perDressingDay(1, 182), perDressingDay(100, 3)];
	expect(Math.abs(many.events / alone.events - 1)).toBeLessThan(0.06);
});

test.runIf(process.env.LONG !== undefined)("and about as long in one of 1,000 beds", () => {
	perDressingDay(1, 364); // warms the machine up
	const [alone, many] = [perDressingDay(1, 364), perDressingDay(1000, 7)];
	console.log("µs a dressing-day", alone.micros, many.micros);
	expect(many.micros / alone.micros).toBeLessThan(2);
});

test("what is kept does not grow with replications but for the sums of their blocks", () => {
	const base = readWard(smallWard());
	const kept = (replications: number) => {
		const ward: WardScenario = { ...base, replications, policies: [] };
		const rules = ward.stores.map(() => ({ reorder: 2, upTo: 6 }));
		const part = runWardBlocks(ward, rules, 0, replications / 5);
		return {
			counts: part.tallies.flat().length,
			bins: part.measures.reduce((sum, { bins }) => sum + bins.length, 0),
			sums: part.sums.length,
		};
	};
	const [few, many] = [kept(50), kept(400)];
	// Eight times the replications: the counts only fill in values that had not come before.
	expect(many.counts).toBeLessThan(1.6 * few.counts);
	expect(many.bins).toBeLessThan(5 * few.bins);
	expect(many.sums).toBe(8 * few.sums);
});
