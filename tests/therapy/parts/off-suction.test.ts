import { describe, expect, test } from "vitest";
import { OffSuction } from "../../../src/therapy/parts/off-suction.ts";
import type { Phase } from "../../../src/vocabulary/index.ts";
import { Bench } from "../bench.ts";

function made() {
	const bench = new Bench();
	const off = new OffSuction(bench);
	off.reset();
	/** Off suction or on it from a minute on, in a phase. */
	const set = (from: number, isOff: boolean, phase: Phase = "suction") => {
		bench.sim.run(from);
		bench.phase = phase;
		off.set(isOff);
	};
	const of = (event: string) => bench.noted().filter((line) => line.includes(event));
	return { bench, off, set, of };
}

describe("spells off suction", () => {
	test("add up to the minutes off suction, and those of them that began in fill or dwell to the wet ones", () => {
		const { off, set, of } = made();
		set(0, true);
		set(3, true, "fill");
		set(5, false, "fill");
		set(6, false);
		const wet: Phase[] = ["fill", "dwell"];
		const dry: Phase[] = ["drain", "change", "suction"];
		let from = 10;
		for (const phase of [...wet, ...dry]) {
			set(from, true, phase);
			set(from + 2, false);
			from += 10;
		}
		expect([off.minutes, off.wetMinutes]).toEqual([15, 4]);
		expect(of("off suction")).toHaveLength(6);
		off.reset();
		expect([off.minutes, off.wetMinutes]).toEqual([0, 0]);
	});

	test("are told with their ends; one of no length is none", () => {
		const { set, of } = made();
		set(7, true);
		set(9.5, false);
		set(20, true);
		set(20, false);
		expect(of("off suction")).toEqual(["9.5: dressing 2 off suction 7 to 9.5"]);
	});

	test("raise an alarm after 20 min, which ends with the spell", () => {
		const { bench, set, of } = made();
		set(7, true);
		set(28, false);
		set(30, true);
		set(49, false);
		bench.sim.run(100);
		expect(of("suction-absent")).toEqual([
			"27: dressing 2 suction-absent from 27",
			"28: dressing 2 suction-absent 27 to 28 by by-itself",
		]);
	});

	test("raise none in a dressing change", () => {
		const { bench, set, of } = made();
		set(7, true, "change");
		bench.sim.run(100);
		expect(of("suction-absent")).toEqual([]);
	});

	test("that end with nothing begun end nothing", () => {
		const { bench, off } = made();
		bench.alarms.raise("suction-absent");
		off.end();
		off.close();
		expect(bench.alarms.stands("suction-absent")).toBe(true);
		expect(off.minutes).toBe(0);
	});

	test("are booked at the end of the day and leave their alarm standing", () => {
		const { bench, off, set, of } = made();
		set(0, true);
		bench.sim.run(30);
		off.close();
		off.close();
		expect(off.minutes).toBe(30);
		expect(of("off suction")).toEqual(["30: dressing 2 off suction 0 to 30"]);
		expect(bench.alarms.stands("suction-absent")).toBe(true);
	});

	test("do not run on into another day", () => {
		const { bench, off, set } = made();
		set(5, true);
		off.reset();
		bench.sim.run(30);
		off.close();
		expect(off.minutes).toBe(0);
	});
});
