import { describe, expect, test } from "vitest";
import { Simulation } from "../../../src/engine/index.ts";
import { AlarmTimer } from "../../../src/therapy/alarms/alarm-timer.ts";

/** A timer of an alarm, and when that was raised. */
function made(horizon = 100) {
	const sim = new Simulation();
	const alarm = { since: -1 };
	const raised: number[] = [];
	const runsOut = sim.event("runs out", 0, () => {
		raised.push(sim.now);
		alarm.since = sim.now;
	});
	const timer = new AlarmTimer(sim, horizon, runsOut, alarm);
	/** `holds` from a minute on, with a delay of 5 min. */
	const watch = (from: number, holds: boolean) => {
		sim.run(from);
		timer.watch(holds, 5);
	};
	return { sim, alarm, raised, timer, watch };
}

describe("the timer of an alarm", () => {
	test("raises it when its condition has held for so long, seen once or often", () => {
		const { sim, raised, watch } = made();
		watch(10, true);
		for (const minute of [11, 12, 14.9]) watch(minute, true);
		sim.run(100);
		expect(raised).toEqual([15]);
	});

	test("goes back to 0 where the condition no longer holds, and where it is set back", () => {
		const { sim, raised, timer, watch } = made();
		watch(10, true);
		watch(14, false);
		watch(14, false);
		watch(16, true);
		sim.run(20);
		timer.rewind();
		watch(30, true);
		sim.run(100);
		expect(raised).toEqual([35]);
	});

	test("does not run while its alarm stands, from the first minute of a day on", () => {
		const { sim, alarm, raised, watch } = made();
		alarm.since = 0;
		watch(10, true);
		sim.run(50);
		alarm.since = -1;
		expect(raised).toEqual([]);
		watch(50, true);
		sim.run(100);
		expect(raised).toEqual([55]);
	});

	test("raises nothing at the end of the day or later", () => {
		const at = made(15);
		at.watch(10, true);
		at.sim.run(1000);
		expect(at.raised).toEqual([]);
		const before = made(15.01);
		before.watch(10, true);
		before.sim.run(1000);
		expect(before.raised).toEqual([15]);
	});
});
