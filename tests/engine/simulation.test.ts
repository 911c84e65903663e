import { describe, expect, test } from "vitest";
import { Simulation, TraceLog } from "../../src/engine/index.ts";
import { nameHash, Trace } from "../../src/engine/trace.ts";

describe("a simulation", () => {
	test("runs a half-open span: what is due at its end waits for the next run", () => {
		const sim = new Simulation();
		const seen: number[] = [];
		const tick = sim.event("tick", 0, () => {
			seen.push(sim.now);
			sim.schedule(tick, sim.now + 5);
		});
		sim.schedule(tick, 0);
		sim.run(10);
		expect(seen).toEqual([0, 5]);
		expect(sim.now).toBe(10);
		expect(sim.timeOf(tick)).toBe(10);
		sim.run(10.1);
		expect(seen).toEqual([0, 5, 10]);
		expect(sim.executed).toBe(3);
	});

	test("sets the clock to the time of each event, and to the end when nothing more is due", () => {
		const sim = new Simulation();
		sim.run(42);
		expect(sim.now).toBe(42);
		expect(sim.executed).toBe(0);
	});

	test("runs simultaneous events by priority, then as scheduled, and those that they bring at the same instant", () => {
		const sim = new Simulation();
		const seen: string[] = [];
		const note = (name: string, priority: number, more?: () => void) =>
			sim.event(name, priority, () => {
				seen.push(name);
				more?.();
			});
		const urgent = note("urgent", 0);
		const first = note("first", 5, () => sim.schedule(urgent, sim.now));
		const second = note("second", 5);
		const last = note("last", 9);
		for (const event of [last, first, second]) sim.schedule(event, 3);
		sim.run(4);
		expect(seen).toEqual(["first", "urgent", "second", "last"]);
	});

	test("moves an event that is pending, and cancels it", () => {
		const sim = new Simulation();
		const seen: number[] = [];
		const event = sim.event("moved", 0, () => seen.push(sim.now));
		sim.schedule(event, 3);
		sim.schedule(event, 8);
		expect(sim.isPending(event)).toBe(true);
		sim.run(5);
		expect(seen).toEqual([]);
		sim.cancel(event);
		sim.cancel(event);
		expect(sim.timeOf(event)).toBe(Number.POSITIVE_INFINITY);
		sim.run(20);
		expect(seen).toEqual([]);
	});

	test("refuses a time before now, with the name of the event", () => {
		const sim = new Simulation();
		const late = sim.event("fill starts", 0, () => {});
		sim.run(10);
		expect(() => sim.schedule(late, 9)).toThrow("fill starts scheduled at 9, before 10");
		expect(() => sim.schedule(late, Number.NaN)).toThrow(RangeError);
		sim.schedule(late, 10);
		expect(sim.timeOf(late)).toBe(10);
	});

	test("after a reset it runs another replication with the same events, to the same trace", () => {
		const sim = new Simulation();
		let count = 0;
		const even = sim.event("even", 1, () => sim.schedule(odd, sim.now + 1.5));
		const odd = sim.event("odd", 0, () => {
			count++;
			sim.schedule(even, sim.now + 0.25);
		});
		const replication = () => {
			sim.reset();
			expect([sim.now, sim.executed, sim.isPending(even)]).toEqual([0, 0, false]);
			const trace = new TraceLog();
			sim.trace = trace;
			sim.schedule(even, 1);
			sim.run(50);
			expect(trace.events).toBe(sim.executed);
			return trace.hash;
		};
		const first = replication();
		expect(count).toBeGreaterThan(20);
		expect(replication()).toBe(first);
	});

	test("a reset also counts schedulings anew, so that ties fall as in the run before", () => {
		const sim = new Simulation();
		const seen: string[] = [];
		const [a, b] = ["a", "b"].map((name) => sim.event(name, 0, () => seen.push(name)));
		for (let replication = 0; replication < 3; replication++) {
			sim.reset();
			sim.schedule(b, 1);
			sim.schedule(a, 1);
			sim.run(2);
		}
		expect(seen).toEqual(["b", "a", "b", "a", "b", "a"]);
	});

	test("stops where time stands still, and says at which event", () => {
		const sim = new Simulation();
		const stuck = sim.event("dwell ends", 0, () => sim.schedule(stuck, sim.now));
		sim.schedule(stuck, 12.5);
		expect(() => sim.run(60)).toThrow("time stands still at 12.5, at: dwell ends");
	});

	test("does not mistake many events at one instant for that", () => {
		const sim = new Simulation();
		let left = 500_000;
		const busy = sim.event("busy", 0, () => {
			if (--left > 0) sim.schedule(busy, left === 250_000 ? 2 : sim.now);
		});
		sim.schedule(busy, 1);
		sim.run(3);
		expect(left).toBe(0);
	});

	test("does not mistake a million events one after the other for that", () => {
		const sim = new Simulation();
		let left = 1_000_010;
		const tick = sim.event("tick", 0, () => {
			if (--left > 0) sim.schedule(tick, sim.now + 1);
		});
		sim.schedule(tick, 0);
		sim.run(2_000_000);
		expect(left).toBe(0);
	});

	test("tells an action which of the events that share it has come, however many they are", () => {
		const sim = new Simulation();
		const seen: number[] = [];
		const note = (event: number) => seen.push(event);
		const events = Array.from({ length: 1000 }, () => sim.event("one of many", 0, note));
		for (const event of events) sim.schedule(event, 1000 - event);
		sim.run(2000);
		expect(seen).toEqual(events.toReversed());
	});

	test("does for each event what was asked for it, under its own name: one action of two names, two of one name, any of them again", () => {
		const sim = new Simulation();
		const seen: string[] = [];
		const one = () => seen.push("one");
		const other = () => seen.push("other");
		const kinds = [
			["a", one],
			["b", one],
			["b", other],
			["b", other],
			["b", one],
			["a", one],
			["b", one],
		] as const;
		const traced: string[] = [];
		class Noted extends Trace {
			override note(time: number, hash: number, name: string): void {
				traced.push(`${time} ${name} ${hash}`);
			}
		}
		sim.trace = new Noted();
		kinds.forEach(([name, action], i) => {
			sim.schedule(sim.event(name, 0, action), i);
		});
		sim.run(10);
		expect(seen.join(" ")).toBe("one one other other one one one");
		expect(traced).toEqual(kinds.map(([name], i) => `${i} ${name} ${nameHash(name)}`));
	});

	test("refuses an end that lies before now; an end that is now runs nothing", () => {
		const sim = new Simulation();
		sim.run(10);
		expect(() => sim.run(9)).toThrow("the end 9 lies before 10");
		expect(() => sim.runThrough(9)).toThrow("the end 9 lies before 10");
		sim.schedule(
			sim.event("due", 0, () => {}),
			10,
		);
		sim.run(10);
		expect([sim.now, sim.executed]).toEqual([10, 0]);
	});

	test("says when the next event is due", () => {
		const sim = new Simulation();
		expect(sim.nextTime).toBe(Number.POSITIVE_INFINITY);
		const event = sim.event("due", 0, () => {});
		sim.schedule(event, 7);
		expect(sim.nextTime).toBe(7);
		sim.run(8);
		expect(sim.nextTime).toBe(Number.POSITIVE_INFINITY);
	});

	test("through an instant it runs what is due at it too, with what that brings, and nothing later", () => {
		const sim = new Simulation();
		const seen: string[] = [];
		const event = (name: string, more: () => void = () => {}) =>
			sim.event(name, 0, () => {
				seen.push(`${name} ${sim.now}`);
				more();
			});
		const brought = event("brought");
		const later = event("later");
		for (const [made, time] of [
			[event("before"), 3],
			[event("at", () => sim.schedule(brought, sim.now)), 5],
			[later, 5.01],
		])
			sim.schedule(made, time);
		sim.runThrough(5);
		expect(seen).toEqual(["before 3", "at 5", "brought 5"]);
		expect([sim.now, sim.executed]).toEqual([5, 3]);
		expect(sim.isPending(later)).toBe(true);
	});

	test("through an instant at which time stands still it stops as well, and not for many events", () => {
		const sim = new Simulation();
		let left = 500_000;
		const busy = sim.event("busy", 0, () => {
			if (--left > 0) sim.schedule(busy, sim.now);
		});
		sim.schedule(busy, 4);
		sim.runThrough(4);
		expect(left).toBe(0);
		const stuck = sim.event("turn", 0, () => sim.schedule(stuck, sim.now));
		sim.schedule(stuck, 6);
		expect(() => sim.runThrough(6)).toThrow("time stands still at 6, at: turn");
	});
});
