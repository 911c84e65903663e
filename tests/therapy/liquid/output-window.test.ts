import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { OutputWindow } from "../../../src/therapy/liquid/output-window.ts";

const limit = 200;
const windowMin = 60;

/** What happens at a whole minute: another rate, mL/min, or a burst, mL. */
type Happening = { readonly at: number; readonly rate: number } | { readonly at: number; readonly burst: number };

/** What came within the window that ends at `now`, interval by interval of an equal rate. */
function came(start: number, happenings: readonly Happening[], now: number) {
	const opens = now - windowMin;
	let sum = 0;
	let rate = start;
	let since = 0;
	const steady = (until: number) => {
		sum += rate * Math.max(0, Math.min(until, now) - Math.max(since, opens));
		since = until;
	};
	for (const happening of happenings) {
		if (happening.at > now) break;
		steady(happening.at);
		if ("rate" in happening) rate = happening.rate;
		else if (happening.at > opens) sum += happening.burst;
	}
	steady(now);
	return sum;
}

/** Walks a window through its happenings and its own moments; returns when it went above the limit and when below. */
function crossings(window: OutputWindow, happenings: readonly Happening[], end: number): number[] {
	const turns: number[] = [];
	let was = false;
	const look = (now: number) => {
		if (window.above !== was) turns.push(now);
		was = window.above;
	};
	const runTo = (until: number) => {
		for (let next = window.next(); next <= until; next = window.next()) {
			window.pass(next);
			look(next);
		}
	};
	for (const happening of happenings) {
		runTo(happening.at);
		if ("rate" in happening) window.setRate(happening.at, happening.rate);
		else {
			window.burst(happening.at, happening.burst);
			window.compare();
		}
		look(happening.at);
	}
	runTo(end);
	return turns;
}

describe("the output of the last hour", () => {
	test("stands above the limit when a sum over the hour does, and turns when that crosses it", () => {
		let turned = 0;
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 6 }),
				fc.array(
					fc.record({
						gap: fc.integer({ min: 1, max: 70 }),
						rate: fc.option(fc.integer({ min: 0, max: 8 })),
						burst: fc.integer({ min: 1, max: 250 }),
					}),
					{ maxLength: 12 },
				),
				(start, parts) => {
					let at = 0;
					const happenings = parts.map(({ gap, rate, burst }): Happening => {
						at += gap;
						return rate === null ? { at, burst } : { at, rate };
					});
					const window = new OutputWindow(limit, windowMin);
					window.reset(0, start, false);
					const end = at + 200;
					const turns = crossings(window, happenings, end);
					turned += turns.length;
					// With an hour of one rate behind it nothing is left to come.
					expect(window.next()).toBe(Number.POSITIVE_INFINITY);
					// In a steady stretch the sum is straight between whole minutes, and above where most of the minute is.
					for (let minute = 0; minute < end; minute++) {
						const middle = minute + 0.5;
						const sum = came(start, happenings, middle);
						if (Math.abs(sum - limit) < 5) continue;
						const above = turns.filter((turn) => turn <= middle).length % 2 === 1;
						expect(above, `at ${middle}: ${sum} mL`).toBe(sum > limit);
					}
					for (const turn of turns) {
						const [before, after] = [turn - 1e-6, turn + 1e-6].map((t) => came(start, happenings, t));
						expect(Math.min(before, after)).toBeLessThan(limit + 1e-4);
						expect(Math.max(before, after)).toBeGreaterThan(limit - 1e-4);
					}
				},
			),
			{ numRuns: 400, seed: 60 },
		);
		expect(turned).toBeGreaterThan(300);
	});

	test("at 4 mL/min from the start is above 200 mL after 50 min, and until 10 min after it ends", () => {
		const window = new OutputWindow(limit, windowMin);
		window.reset(0, 4, false);
		const turns = crossings(window, [{ at: 90, rate: 0 }], 500);
		expect(turns.map((turn) => Number(turn.toFixed(6)))).toEqual([50, 100]);
	});

	test("counts the last hour alone where a rate rises after hours in which it could not reach the limit", () => {
		const window = new OutputWindow(limit, windowMin);
		window.reset(0, 3, false);
		// 180 mL in the hour before; half a millilitre a minute more brings 200 mL after 40 min, 210 mL after an hour.
		const turns = crossings(
			window,
			[
				{ at: 240, rate: 3.5 },
				{ at: 400, rate: 3 },
			],
			900,
		);
		expect(turns.map((turn) => Number(turn.toFixed(6)))).toEqual([280, 420]);
	});

	test("is not above the limit when it is just at it", () => {
		const window = new OutputWindow(limit, windowMin);
		window.reset(0, 0, true);
		expect(crossings(window, [{ at: 10, burst: 200 }], 500)).toEqual([]);
		window.reset(0, 0, true);
		expect(crossings(window, [{ at: 10, burst: 201 }], 500)).toEqual([10, 70]);
	});

	test("is not watched while its rate cannot reach the limit and no burst is to be expected", () => {
		const window = new OutputWindow(limit, windowMin);
		window.reset(0, 3, false);
		expect(window.next()).toBe(Number.POSITIVE_INFINITY);
		window.setRate(5, 200 / 60);
		expect(window.next()).toBe(Number.POSITIVE_INFINITY);
		window.burst(10, 1);
		expect(window.next()).toBeLessThan(100);
		window.reset(0, 3, true);
		expect(window.next()).toBeLessThan(100);
	});

	test("starts anew at a reset, with nothing of what came before", () => {
		const window = new OutputWindow(limit, windowMin);
		window.reset(0, 5, true);
		crossings(window, [{ at: 30, burst: 300 }], 45);
		expect(window.above).toBe(true);
		window.reset(100, 4, false);
		expect(window.above).toBe(false);
		const turns = crossings(window, [{ at: 190, rate: 0 }], 600);
		expect(turns.map((turn) => Number(turn.toFixed(6)))).toEqual([150, 200]);
		window.reset(0, 1, false);
		expect(window.next()).toBe(Number.POSITIVE_INFINITY);
	});
});
