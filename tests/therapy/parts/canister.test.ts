import { describe, expect, test } from "vitest";
import type { Constants } from "../../../src/physics/index.ts";
import { Canister } from "../../../src/therapy/parts/canister.ts";
import { Bench } from "../bench.ts";

/** A canister of 500 mL, at 0, into which runs a millilitre a minute, as long as the pump is not stopped. */
function made(constants: Partial<Constants> = {}) {
	const bench = new Bench({ constants });
	const { air, liquid, sim } = bench;
	const canister = new Canister(bench, 500);
	air.depth = 125;
	liquid.level = liquid.retained;
	const full = () => bench.alarms.stands("canister-at-capacity");
	bench.plans = () => {
		liquid.exudateRate = full() ? 0 : 1;
		liquid.route(air, full() ? "none" : "port");
		canister.plan(Number.POSITIVE_INFINITY);
	};
	bench.plans();
	/** Lines of the log so far, but for what the alarms ask and the nurse who is called. */
	const told = () => bench.noted().filter((line) => !line.includes("fill"));
	return { bench, sim, canister, told };
}

describe("a canister", () => {
	test("is noted at nine tenths of its size, and at it the pump stops and an alarm is raised", () => {
		const { sim, told, bench } = made();
		sim.run(449);
		expect(told()).toEqual([]);
		sim.run(503);
		expect(told()).toEqual([
			"450: dressing 2 canister-nearly-full at 450",
			"500: pauses for canister",
			"500: dressing 2 canister-at-capacity from 500",
		]);
		expect(bench.liquid.canister).toBe(500);
	});

	test("is noted when it is full where a share of 1 or more is noted", () => {
		for (const share of [1, 1.5]) {
			const { sim, told } = made({ "notice.canister": share });
			sim.run(503);
			expect(told()[0]).toBe("500: dressing 2 canister-nearly-full at 500");
		}
	});

	test("is changed for an empty one of another size, whose marks are its own", () => {
		const { sim, canister, told, bench } = made();
		sim.run(503);
		told();
		canister.change("at-capacity", 800);
		expect(told()).toEqual([
			"503: dressing 2 canister changed at 503 by at-capacity, due at 500",
			"503: dressing 2 canister-at-capacity 500 to 503 by call",
			"503: resumes from round",
			"503: resumes from canister",
		]);
		expect(bench.liquid.canister).toBe(0);
		expect([canister.size, canister.changes]).toEqual([800, 1]);
		sim.run(2000);
		expect(told().slice(0, 2)).toEqual(["1223: dressing 2 canister-nearly-full at 1223", "1303: pauses for canister"]);
	});

	test.each(["round", "scripted"] as const)("changed by %s ends its alarm by that", (reason) => {
		const { sim, canister, told } = made();
		sim.run(502);
		told();
		canister.change(reason, 500);
		expect(told()[1]).toBe(`502: dressing 2 canister-at-capacity 500 to 502 by ${reason}`);
	});

	test("of another day is empty, of its size, and has had no change", () => {
		const { sim, canister, told, bench } = made();
		sim.run(460);
		canister.change("scripted", 800);
		sim.run(1300);
		sim.reset();
		bench.alarms.reset();
		bench.liquid.canister = 0;
		canister.reset(100);
		expect([canister.size, canister.changes]).toEqual([100, 0]);
		told();
		bench.settle();
		bench.plans();
		sim.run(95);
		expect(told()).toEqual(["90: dressing 2 canister-nearly-full at 90"]);
	});
});

describe("a change at a round", () => {
	test.each(["suction", "drain"] as const)("in %s stops the pump for a minute, and takes a nurse three", (phase) => {
		const { bench, sim, canister, told } = made();
		bench.phase = phase;
		sim.run(100);
		canister.changeAsAtRound("round");
		expect(told()).toEqual(["100: pauses for round"]);
		sim.run(100.5);
		// Another round, or the same, finds it under way.
		canister.changeAsAtRound("scripted");
		expect(told()).toEqual([]);
		sim.run(102);
		expect(told()).toEqual([
			"101: takes canister for round",
			"101: dressing 2 canister changed at 101 by round, due at 100",
			"101: resumes from round",
			"101: resumes from canister",
		]);
		expect(bench.alarms.nurseMin).toBe(3);
	});

	test.each(["fill", "dwell", "change"] as const)("in %s, where the pump stands, is done at once", (phase) => {
		const { bench, sim, canister, told } = made();
		bench.phase = phase;
		sim.run(100);
		canister.changeAsAtRound("scripted");
		expect(told().slice(0, 2)).toEqual([
			"100: takes canister for scripted",
			"100: dressing 2 canister changed at 100 by scripted, due at 100",
		]);
		expect(bench.alarms.nurseMin).toBe(3);
		sim.run(200);
		expect(canister.changes).toBe(1);
	});

	test("is put off where the stores hold none", () => {
		const { bench, sim, canister, told } = made();
		bench.stock.delete("canister");
		sim.run(100);
		canister.changeAsAtRound("round");
		sim.run(200);
		expect(told()).toEqual([]);
		expect(bench.alarms.nurseMin).toBe(0);
	});

	test("is not made again where the canister is changed meanwhile", () => {
		const { sim, canister } = made();
		sim.run(100);
		canister.changeAsAtRound("round");
		sim.run(100.5);
		canister.change("at-capacity", 500);
		sim.run(200);
		expect(canister.changes).toBe(1);
	});
});

describe("a change of a canister is due", () => {
	const dueOf = (lines: readonly string[]) =>
		lines.flatMap((line) => (line.includes("changed") ? [line.slice(line.indexOf("due"))] : []));

	test("since it was full, though a round asks for it later, and the next one counts anew", () => {
		const { bench, sim, canister, told } = made();
		sim.run(502);
		bench.phase = "dwell";
		canister.changeAsAtRound("round");
		expect(dueOf(told())).toEqual(["due at 500"]);
		sim.run(600);
		canister.change("scripted", 500);
		expect(dueOf(told())).toEqual(["due at 600"]);
	});

	test("since it was first asked for, be it at the very beginning, while the stores had none", () => {
		const { bench, sim, canister, told } = made();
		canister.changeAsAtRound("round");
		bench.stock.delete("canister");
		sim.run(5);
		bench.stock.add("canister");
		canister.changeAsAtRound("round");
		sim.run(7);
		expect(dueOf(told())).toEqual(["due at 0"]);
	});

	test("since then, though it is full before one comes", () => {
		const { bench, sim, canister, told } = made();
		canister.changeAsAtRound("round");
		bench.stock.delete("canister");
		sim.run(502);
		expect(bench.alarms.stands("canister-at-capacity")).toBe(true);
		canister.change("at-capacity", 500);
		expect(dueOf(told())).toEqual(["due at 0"]);
	});

	test("at once where one that starts at the beginning takes a minute", () => {
		const { sim, canister, told } = made();
		canister.changeAsAtRound("scripted");
		sim.run(2);
		expect(dueOf(told())).toEqual(["due at 0"]);
	});
});
