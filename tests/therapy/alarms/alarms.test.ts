import { describe, expect, test } from "vitest";
import { lognormal } from "../../../src/engine/index.ts";
import { conditions } from "../../../src/vocabulary/index.ts";
import { Bench, responseStream } from "../bench.ts";

/** Lines of the log that name one of these. */
const about = (bench: Bench, ...words: string[]) =>
	bench.noted().filter((line) => words.some((word) => line.includes(word)));

describe("an alarm", () => {
	test("stands from when it is raised until it is ended, and is told once", () => {
		const bench = new Bench();
		const { alarms, sim } = bench;
		sim.run(100);
		expect(alarms.stands("large-output")).toBe(false);
		alarms.raise("large-output");
		sim.run(110);
		alarms.raise("large-output");
		expect(alarms.stands("large-output")).toBe(true);
		alarms.end("large-output", "by-itself");
		alarms.end("large-output", "by-itself");
		expect(alarms.stands("large-output")).toBe(false);
		expect(alarms.raised).toBe(1);
		expect(about(bench, "large-output")).toEqual([
			"100: dressing 2 large-output from 100",
			"110: dressing 2 large-output 100 to 110 by by-itself",
		]);
	});

	test("may stand from the first minute of a day", () => {
		const { alarms, sim } = new Bench();
		alarms.raise("large-output");
		sim.run(10);
		alarms.raise("large-output");
		expect(alarms.stands("large-output")).toBe(true);
		expect(alarms.raised).toBe(1);
		alarms.end("large-output", "by-itself");
		expect(alarms.stands("large-output")).toBe(false);
	});

	test("withholds a fill while it stands, but for the one of a spell off suction", () => {
		const { alarms } = new Bench();
		for (const condition of conditions) alarms.raise(condition);
		expect([alarms.raised, alarms.withholding]).toEqual([8, 7]);
		alarms.end("suction-absent", "by-itself");
		expect(alarms.withholding).toBe(7);
		for (const condition of conditions) alarms.end(condition, "round");
		expect(alarms.withholding).toBe(0);
	});

	test("has the start of a fill looked at again when it begins and when it ends", () => {
		const bench = new Bench();
		bench.alarms.raise("seal-leak");
		expect(about(bench, "fill reviewed")).toHaveLength(1);
		bench.alarms.end("seal-leak", "round");
		expect(about(bench, "fill reviewed")).toHaveLength(1);
		bench.alarms.end("seal-leak", "round");
		expect(about(bench, "fill reviewed")).toHaveLength(0);
	});

	test("that stands at the end of the day is told with that end", () => {
		const bench = new Bench();
		bench.alarms.raise("suction-absent");
		bench.sim.run(30);
		bench.noted();
		bench.alarms.close();
		expect(bench.noted()).toEqual(["30: dressing 2 suction-absent 0 to 30 by horizon"]);
	});

	test("of the day before is forgotten", () => {
		const bench = new Bench({ startClockMin: 0 });
		const { alarms, sim } = bench;
		alarms.raise("seal-leak");
		sim.run(60);
		expect([alarms.raised, alarms.nightCalls, alarms.nurseMin]).toEqual([1, 1, 10]);
		alarms.raise("seal-leak");
		sim.reset();
		alarms.reset();
		for (const condition of conditions) expect(alarms.stands(condition)).toBe(false);
		const { raised, nightCalls, nurseMin, withholding } = alarms;
		expect([raised, nightCalls, nurseMin, withholding]).toEqual([0, 0, 0, 0]);
	});
});

test.each([
	["leak", "seal-leak"],
	["depth", "depth-not-held"],
	["closed", "suction-path-obstructed"],
	["drain", "suction-path-obstructed"],
	["stall", "fill-path-obstructed"],
	["absent", "suction-absent"],
] as const)("the timer of %s raises %s, whose end sets it back", (timer, condition) => {
	const bench = new Bench();
	bench.alarms[timer].watch(true, 5);
	bench.sim.run(4);
	bench.alarms.end(condition, "round");
	bench.sim.run(10);
	expect(about(bench, "from")).toEqual([]);
	bench.alarms[timer].watch(true, 5);
	bench.sim.run(15.5);
	expect(about(bench, "from")).toEqual([`15: dressing 2 ${condition} from 15`]);
});

describe("the nurse who is called", () => {
	test.each([
		["canister-at-capacity", 2],
		["source-empty", 4],
		["fill-path-obstructed", 1],
		["suction-path-obstructed", 15],
		["seal-leak", 10],
		["depth-not-held", 10],
	] as const)("for %s comes after 4 min and mends it in %d", (condition, hands) => {
		const bench = new Bench({ constants: { "hands.canister": 2, "hands.source": 4 } });
		bench.sim.run(100);
		bench.alarms.raise(condition);
		bench.sim.run(103.9);
		expect(bench.nurses.busy).toBe(0);
		bench.sim.run(104.1);
		expect(bench.nurses.busy).toBe(1);
		bench.sim.run(200);
		expect(about(bench, "mends")).toEqual([`${104 + hands}: nurse mends ${condition}`]);
		expect(bench.nurses.busy).toBe(0);
		expect(bench.alarms.nurseMin).toBe(hands);
		expect(bench.alarms.nightCalls).toBe(0);
	});

	test("is not called off suction, nor for a large output: their causes call", () => {
		const bench = new Bench();
		bench.alarms.raise("suction-absent");
		bench.alarms.raise("large-output");
		bench.sim.run(200);
		expect(bench.nurses.started).toBe(0);
		expect(bench.alarms.nurseMin).toBe(0);
	});

	test("comes later by night, which is counted from the clock at the start", () => {
		// From 18:00 on: day until 60, night from then.
		const bench = new Bench({ startClockMin: 18 * 60 });
		bench.sim.run(59);
		bench.alarms.raise("source-empty");
		bench.sim.run(60);
		bench.alarms.raise("canister-at-capacity");
		bench.sim.run(200);
		expect(about(bench, "mends")).toEqual(["66: nurse mends source-empty", "70: nurse mends canister-at-capacity"]);
		expect(bench.alarms.nightCalls).toBe(1);
	});

	test("comes after a lognormal time where that is left to chance, drawn for each condition from a stream of its own", () => {
		const response = { dayMin: 9, nightMin: 30, spread: 0.4 };
		const bench = new Bench({ chance: true, response });
		const [leak, empty] = (["seal-leak", "source-empty"] as const).map(responseStream);
		for (let n = 0; n < 3; n++) {
			const begins = 200 * n;
			bench.sim.run(begins);
			bench.alarms.raise("seal-leak");
			bench.alarms.raise("source-empty");
			bench.sim.run(begins + 199);
			const mended = about(bench, "mends").map((line) => Number.parseFloat(line));
			const due = [begins + lognormal(leak, 9, 0.4) + 10, begins + lognormal(empty, 9, 0.4) + 3].sort((a, b) => a - b);
			for (const [i, at] of mended.entries()) expect(at).toBeCloseTo(due[i], 9);
			expect(mended).toHaveLength(2);
		}
	});

	test("frees in a minute a kink that was known when the alarm was raised", () => {
		const bench = new Bench();
		bench.lineKinked = true;
		bench.alarms.raise("suction-path-obstructed");
		bench.lineKinked = false;
		bench.sim.run(100);
		expect(about(bench, "mends", "port work begins")).toEqual(["5: nurse mends suction-path-obstructed, a kink"]);
		expect(bench.alarms.nurseMin).toBe(1);
		// The next one is none.
		bench.alarms.raise("suction-path-obstructed");
		bench.sim.run(200);
		expect(about(bench, "mends")).toEqual(["119: nurse mends suction-path-obstructed"]);
	});

	test.each([
		// last minutes with the pump off, when they begin
		[5, 14],
		[60, 4],
	])("stops the pump for the last %d min of a new port, or all of them", (pumpOff, begins) => {
		const bench = new Bench({ constants: { "port.pumpOff": pumpOff } });
		bench.alarms.raise("suction-path-obstructed");
		bench.sim.run(100);
		expect(about(bench, "port work")).toEqual([`${begins}: port work begins`, "19: port work is over"]);
	});

	test("does no work at the port for another cause", () => {
		const bench = new Bench();
		bench.alarms.raise("seal-leak");
		bench.sim.run(100);
		expect(about(bench, "port work")).toEqual([]);
	});

	test("goes home where the alarm ends before: on the way, waiting or at work, the pump not stopped again", () => {
		for (const ends of [3, 8]) {
			const bench = new Bench();
			bench.alarms.raise("suction-path-obstructed");
			bench.sim.run(ends);
			bench.alarms.end("suction-path-obstructed", "dressing-change");
			expect(bench.nurses.busy).toBe(0);
			bench.sim.run(100);
			expect(about(bench, "mends", "port work begins")).toEqual([]);
			expect(bench.alarms.nurseMin).toBe(0);
		}
	});

	test("goes on to who waits, and leaves an alarm standing for which there is nothing to mend it with", () => {
		const bench = new Bench({ nurses: 1 });
		bench.mends = false;
		bench.alarms.raise("seal-leak");
		bench.alarms.raise("canister-at-capacity");
		bench.sim.run(100);
		expect(about(bench, "mends")).toEqual(["14: nurse mends seal-leak", "17: nurse mends canister-at-capacity"]);
		expect(bench.alarms.stands("seal-leak")).toBe(true);
		expect(bench.nurses.busy).toBe(0);
		expect(bench.alarms.nurseMin).toBe(13);
	});

	test.each([
		// end of the day; nurses who have come, work that is done
		[4, 0, 0],
		[4.5, 1, 0],
		[14, 1, 0],
		[14.5, 1, 1],
	])("does nothing at the end of the day or later: %d min", (horizon, come, done) => {
		const bench = new Bench({ horizon });
		bench.alarms.raise("seal-leak");
		bench.sim.run(100);
		expect(bench.nurses.started).toBe(come);
		expect(about(bench, "mends")).toHaveLength(done);
	});

	test("does not stop the pump at the end of the day", () => {
		for (const [horizon, times] of [
			[14, 0],
			[14.5, 1],
		]) {
			const bench = new Bench({ horizon });
			bench.alarms.raise("suction-path-obstructed");
			bench.sim.run(100);
			expect(about(bench, "port work begins")).toHaveLength(times);
		}
	});
});

describe("alarms of a therapy that is over", () => {
	test("are raised no more, and nobody comes, works or stops the pump for them", () => {
		// Before the nurse comes, at work, in the last minutes of it.
		for (const minute of [2, 8]) {
			const bench = new Bench();
			const { alarms, sim } = bench;
			alarms.raise("suction-path-obstructed");
			alarms.leak.watch(true, 50);
			sim.run(minute);
			alarms.stop();
			expect(bench.nurses.busy).toBe(0);
			for (const condition of conditions) expect(alarms.stands(condition)).toBe(false);
			bench.noted();
			sim.run(200);
			expect(bench.noted()).toEqual([]);
			expect(alarms.nurseMin).toBe(0);
		}
	});
});

test("what the scenario listed has had its alarm once that has ended: the next one is put down to chance", () => {
	const { alarms } = new Bench();
	alarms.listed.add("seal-leak");
	alarms.listed.add("depth-not-held");
	alarms.raise("seal-leak");
	alarms.end("seal-leak", "call");
	expect([...alarms.listed]).toEqual(["depth-not-held"]);
});
