import { describe, expect, test } from "vitest";
import { Source } from "../../../src/therapy/parts/source.ts";
import type { SourceReason } from "../../../src/vocabulary/index.ts";
import { Bench } from "../bench.ts";
import { continuousSuction, shortDwell } from "../example.ts";

/** A source of solution that holds so much, hung at 0; the regimen fills 50 mL. */
function made(holdsMl = 1000) {
	const bench = new Bench();
	const { liquid, sim } = bench;
	const source = new Source(bench, 1000);
	source.reset(1000);
	liquid.source = holdsMl;
	/** A fill of 60 mL/min lacks so much. */
	const fill = (lackingMl: number) => {
		bench.phase = "fill";
		liquid.fillRate = 60;
		return source.plan(lackingMl);
	};
	/** Lines of the log so far that name one of these. */
	const told = (...words: string[]) => bench.noted().filter((line) => words.some((word) => line.includes(word)));
	return { bench, sim, liquid, source, fill, told };
}

describe("a source in a fill", () => {
	test("that holds more than this fill and another is enough", () => {
		const { sim, source, fill, told } = made(100);
		expect(fill(50)).toBe(false);
		expect(source.emptyAt).toBe(Number.POSITIVE_INFINITY);
		sim.run(10);
		expect(told("source")).toEqual([]);
	});

	test("is noted when it has become less than another fill", () => {
		const { sim, fill, told } = made(80);
		expect(fill(50)).toBe(false);
		sim.run(10);
		expect(told("source")).toEqual(["0.5: dressing 2 source-low at 0.5"]);
	});

	test("is noted once", () => {
		const { sim, fill, told } = made(80);
		fill(50);
		sim.run(1);
		fill(50);
		sim.run(10);
		expect(told("source-low")).toHaveLength(1);
	});

	test("that holds less than this fill is noted at once and runs out, which raises an alarm", () => {
		const { bench, sim, liquid, source, fill, told } = made(30);
		let plans = 0;
		bench.plans = () => plans++;
		sim.run(2);
		bench.settle();
		expect(fill(50)).toBe(true);
		expect(source.emptyAt).toBe(2.5);
		expect(source.isEmpty).toBe(false);
		sim.run(3);
		expect(told("source")).toEqual(["2: dressing 2 source-low at 2", "2.5: dressing 2 source-empty from 2.5"]);
		expect([liquid.source, source.isEmpty, plans]).toEqual([0, true, 1]);
	});

	test("that holds just what lacks does not run out", () => {
		const { source, fill } = made(50);
		expect(fill(50)).toBe(false);
		expect(source.emptyAt).toBe(Number.POSITIVE_INFINITY);
		// A billionth of a millilitre is nothing, more is something.
		expect(fill(50 + 5e-10)).toBe(false);
		expect(fill(50 + 5e-9)).toBe(true);
		expect(fill(40)).toBe(false);
		expect(source.emptyAt).toBe(Number.POSITIVE_INFINITY);
	});

	test("runs out and is noted no more when the fill stands still", () => {
		const { sim, source, fill, told } = made(30);
		fill(50);
		source.rest();
		sim.run(10);
		expect(told("source")).toEqual([]);
	});
});

describe("a source that is looked at", () => {
	test("is noted where it holds less than one fill, and once", () => {
		for (const [holds, times] of [
			[50, 0],
			[50 - 5e-10, 0],
			[49, 1],
		]) {
			const { source, told } = made(holds);
			source.look();
			source.look();
			expect(told("source-low")).toHaveLength(times);
		}
	});
});

describe("a source that is renewed", () => {
	test.each([
		["empty", "call"],
		["round", "round"],
		["expired", "round"],
		["scripted", "scripted"],
	] as const)("as %s leaves what it still held as waste, and its alarm ends by %s", (reason: SourceReason, ending) => {
		const { bench, sim, liquid, source, told } = made(30);
		source.look();
		bench.alarms.raise("source-empty");
		sim.run(3);
		told("");
		source.renew(reason);
		expect(told("source", "solution")).toEqual([
			`3: takes solution for ${reason}`,
			`3: dressing 2 source changed at 3 by ${reason}, 30 mL wasted`,
			`3: dressing 2 source-empty 0 to 3 by ${ending}`,
		]);
		expect(liquid.source).toBe(500);
		expect([source.changes, source.wasted]).toEqual([1, 30]);
		// And it is noted anew.
		liquid.source = 20;
		source.look();
		expect(told("source-low")).toHaveLength(1);
	});

	test("adds up its waste over a day, and not over two", () => {
		const { source } = made(30);
		source.renew("scripted");
		source.renew("scripted");
		expect([source.changes, source.wasted]).toEqual([2, 530]);
		source.reset(1000);
		expect([source.changes, source.wasted]).toEqual([0, 0]);
	});

	test("that holds less than a fill itself is noted", () => {
		const { bench, source, told } = made(30);
		bench.regimen = { ...bench.regimen, fillMl: 600 };
		source.renew("scripted");
		expect(told("source-low")).toHaveLength(1);
	});

	test("is no longer about to fall below one fill", () => {
		const { sim, source, fill, told } = made(80);
		fill(50);
		source.renew("scripted");
		sim.run(10);
		expect(told("source-low")).toEqual([]);
	});

	test("at a round takes a nurse three minutes; without one in the stores it is put off", () => {
		const { bench, source } = made(30);
		bench.stock.delete("solution");
		source.renewAsAtRound("round");
		expect([source.changes, bench.alarms.nurseMin]).toEqual([0, 0]);
		bench.stock.add("solution");
		source.renewAsAtRound("round");
		expect([source.changes, bench.alarms.nurseMin]).toEqual([1, 3]);
	});

	test("is noted as low on a new day as on the day before", () => {
		const { source, told } = made(30);
		source.look();
		source.reset(1000);
		source.look();
		expect(told("source-low")).toHaveLength(2);
	});
});

describe("a source that has hung for 24 h", () => {
	const expired = (bench: Bench) => bench.noted().filter((line) => line.includes("by expired"));
	const at = (minute: number, wasted = 1000) =>
		`${minute}: dressing 2 source changed at ${minute} by expired, ${wasted} mL wasted`;

	test("is renewed, and the new one after another 24 h", () => {
		const { bench, sim, source } = made();
		sim.run(1000);
		source.renew("scripted");
		sim.run(2439);
		expect(source.changes).toBe(1);
		sim.run(4000);
		expect(expired(bench)).toEqual([at(2440, 500), at(3880, 500)]);
	});

	test("in a fill waits for its end", () => {
		const { bench, sim, source, fill } = made();
		sim.run(1439);
		source.fillOver();
		bench.settle();
		fill(50);
		sim.run(1441);
		expect(source.changes).toBe(0);
		source.fillOver();
		source.fillOver();
		expect(source.changes).toBe(1);
		expect(expired(bench)).toHaveLength(1);
	});

	test("does not wait into another day, nor where it has been renewed in the fill", () => {
		for (const begun of ["renewed", "reset"]) {
			const { sim, source, fill } = made();
			fill(50);
			sim.run(1441);
			if (begun === "renewed") source.renew("scripted");
			else source.reset(1000);
			const { changes } = source;
			source.fillOver();
			expect(source.changes).toBe(changes);
		}
	});

	test("is left under suction alone, until a regimen with fill takes over", () => {
		const { bench, sim, source } = made();
		bench.regimen = continuousSuction;
		sim.run(2000);
		source.takeOver();
		expect(source.changes).toBe(0);
		bench.regimen = shortDwell;
		source.takeOver();
		expect(expired(bench)).toEqual([at(2000)]);
	});

	test("is old at 24 h and not before, counted from when it was hung", () => {
		for (const [minute, changes] of [
			[1439, 0],
			[1440, 1],
		]) {
			const { bench, sim, source } = made();
			sim.run(minute);
			source.takeOver();
			expect(source.changes).toBe(changes);
			source.reset(1000);
			bench.regimen = continuousSuction;
			sim.run(2 * minute);
			bench.regimen = shortDwell;
			source.takeOver();
			expect(source.changes).toBe(changes);
		}
	});

	test("that a regimen takes over is looked at", () => {
		const { source, told } = made(30);
		source.takeOver();
		expect(told("source-low")).toHaveLength(1);
	});
});
