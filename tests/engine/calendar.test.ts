import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Calendar } from "../../src/engine/index.ts";

interface Pending {
	readonly slot: number;
	readonly time: number;
	readonly priority: number;
	readonly serial: number;
}

/** The plainest calendar: an array, sorted whenever it is looked at. */
class SortedArray {
	readonly priorities: number[] = [];
	pending: Pending[] = [];
	#serial = 0;

	slot(priority: number): number {
		return this.priorities.push(priority) - 1;
	}

	schedule(slot: number, time: number): void {
		this.cancel(slot);
		const priority = this.priorities[slot];
		this.pending.push({ slot, time, priority, serial: this.#serial++ });
		this.pending.sort((a, b) => a.time - b.time || a.priority - b.priority || a.serial - b.serial);
	}

	cancel(slot: number): void {
		this.pending = this.pending.filter((other) => other.slot !== slot);
	}

	pop(): number | undefined {
		return this.pending.shift()?.slot;
	}

	clear(): void {
		this.pending = [];
		this.#serial = 0;
	}
}

type Step =
	| { readonly do: "schedule"; readonly slot: number; readonly time: number }
	| { readonly do: "cancel"; readonly slot: number }
	| { readonly do: "pop" }
	| { readonly do: "clear" };

const slots = 90;
const slot = fc.nat(slots - 1);
// Few different times, so that priority and serial have to decide; and times of any kind among them.
const time = fc.oneof(
	{ weight: 4, arbitrary: fc.integer({ min: -2, max: 5 }) },
	{ weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
);
const step: fc.Arbitrary<Step> = fc.oneof(
	{ weight: 160, arbitrary: fc.record({ do: fc.constant("schedule" as const), slot, time }) },
	{ weight: 60, arbitrary: fc.record({ do: fc.constant("cancel" as const), slot }) },
	{ weight: 80, arbitrary: fc.constant({ do: "pop" } as const) },
	{ weight: 1, arbitrary: fc.constant({ do: "clear" } as const) },
);

describe("the calendar", () => {
	test("gives back what a sorted array does, through any scheduling, moving, cancelling and popping", () => {
		fc.assert(
			fc.property(
				fc.array(fc.constantFrom(0, 1, 2, 127), { minLength: slots, maxLength: slots }),
				fc.array(step, { minLength: 50, maxLength: 400, size: "max" }),
				(priorities, steps) => {
					const [calendar, plain] = [new Calendar(), new SortedArray()];
					for (const priority of priorities) expect(calendar.slot(priority)).toBe(plain.slot(priority));
					const next = () => {
						expect(calendar.size).toBe(plain.pending.length);
						expect(calendar.nextTime()).toBe(plain.pending[0]?.time ?? Number.POSITIVE_INFINITY);
					};
					for (const action of steps) {
						if (action.do === "schedule") {
							calendar.schedule(action.slot, action.time);
							plain.schedule(action.slot, action.time);
							expect(calendar.isPending(action.slot)).toBe(true);
							expect(calendar.timeOf(action.slot)).toBe(action.time);
						} else if (action.do === "cancel") {
							calendar.cancel(action.slot);
							plain.cancel(action.slot);
							expect(calendar.isPending(action.slot)).toBe(false);
							expect(calendar.timeOf(action.slot)).toBe(Number.POSITIVE_INFINITY);
						} else if (action.do === "clear") {
							calendar.clear();
							plain.clear();
						} else if (plain.pending.length > 0) expect(calendar.pop()).toBe(plain.pop());
						next();
					}
					while (plain.pending.length > 0) {
						expect(calendar.pop()).toBe(plain.pop());
						next();
					}
				},
			),
			{ numRuns: 80, seed: 1964 },
		);
	});

	test("takes thousands of slots and gives them back in order of time", () => {
		const calendar = new Calendar();
		const times = Array.from({ length: 5000 }, (_, i) => (i * 7919) % 5003);
		for (const time of times) calendar.schedule(calendar.slot(3), time);
		const order = times.map(() => times[calendar.pop()]);
		expect(order).toEqual(times.toSorted((a, b) => a - b));
		expect(calendar.size).toBe(0);
	});

	test("uses a slot again after it was popped, cancelled or cleared", () => {
		const calendar = new Calendar();
		const once = calendar.slot(0);
		calendar.schedule(once, 1);
		expect(calendar.pop()).toBe(once);
		calendar.schedule(once, 2);
		calendar.cancel(once);
		calendar.schedule(once, 3);
		calendar.clear();
		expect(calendar.isPending(once)).toBe(false);
		calendar.schedule(once, 4);
		expect(calendar.nextTime()).toBe(4);
		expect(calendar.pop()).toBe(once);
		expect(calendar.size).toBe(0);
	});

	test("at one time, priority decides before the order of scheduling, and moving counts as scheduling", () => {
		const calendar = new Calendar();
		const [late, early, first, second] = [9, 1, 5, 5].map((priority) => calendar.slot(priority));
		for (const each of [late, first, second, early]) calendar.schedule(each, 7);
		calendar.schedule(first, 7);
		expect([0, 0, 0, 0].map(() => calendar.pop())).toEqual([early, second, first, late]);
	});

	test.each([-1, 128, 0.5, Number.NaN])("refuses the priority %d", (priority) => {
		expect(() => new Calendar().slot(priority)).toThrow(`priority ${priority} is not a whole number 0…127`);
	});

	test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
		"refuses the time %d, and leaves the slot as it was",
		(time) => {
			const calendar = new Calendar();
			const slot = calendar.slot(0);
			calendar.schedule(slot, 3);
			expect(() => calendar.schedule(slot, time)).toThrow(RangeError);
			expect(calendar.timeOf(slot)).toBe(3);
		},
	);
});
