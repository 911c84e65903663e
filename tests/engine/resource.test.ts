import { describe, expect, test } from "vitest";
import { type Job, Resource } from "../../src/engine/index.ts";

/** A clock that is set by hand, a resource on it, and jobs that note when they start. */
function bench(servers: number) {
	const clock = { now: 0 };
	const desk = new Resource(servers, clock);
	const started: string[] = [];
	const job = (name: string, priority = 0): Job => ({
		priority,
		start: () => {
			started.push(name);
		},
	});
	return { clock, desk, started, job };
}

describe("a resource", () => {
	test("starts a job at once while a server is free, else when one becomes free", () => {
		const { desk, started, job } = bench(2);
		const [a, b, c] = ["a", "b", "c"].map((name) => job(name));
		for (const each of [a, b, c]) desk.request(each);
		expect(started).toEqual(["a", "b"]);
		expect([desk.busy, desk.waiting]).toEqual([2, 1]);
		desk.release(b);
		expect(started).toEqual(["a", "b", "c"]);
		expect([desk.busy, desk.waiting, desk.started]).toEqual([2, 0, 3]);
		desk.release(a);
		desk.release(c);
		expect([desk.busy, desk.waiting]).toEqual([0, 0]);
	});

	test("serves the queue by priority, then by arrival", () => {
		const { desk, started, job } = bench(1);
		const first = job("first", 9);
		const queue = [job("late a", 5), job("soon a", 1), job("late b", 5), job("soon b", 1), job("middle", 3)];
		desk.request(first);
		for (const each of queue) desk.request(each);
		desk.release(first);
		for (const each of [queue[1], queue[3], queue[4], queue[0], queue[2]]) desk.release(each);
		expect(started).toEqual(["first", "soon a", "soon b", "middle", "late a", "late b"]);
	});

	test("does not interrupt a started job for a more urgent one", () => {
		const { desk, started, job } = bench(1);
		desk.request(job("routine", 5));
		desk.request(job("urgent", 0));
		expect(started).toEqual(["routine"]);
	});

	test("takes a waiting job out of the queue without starting anything", () => {
		const { desk, started, job } = bench(1);
		const [at, gone, next] = ["at work", "gone", "next"].map((name) => job(name));
		for (const each of [at, gone, next]) desk.request(each);
		desk.release(gone);
		expect([desk.busy, desk.waiting]).toEqual([1, 1]);
		desk.release(at);
		expect(started).toEqual(["at work", "next"]);
	});

	test("leaves alone a job that it does not know", () => {
		const { desk, job } = bench(1);
		desk.request(job("known"));
		desk.release(job("stranger"));
		expect([desk.busy, desk.waiting]).toEqual([1, 0]);
		desk.request(job("waiting"));
		desk.release(job("stranger"));
		expect([desk.busy, desk.waiting]).toEqual([1, 1]);
	});

	test("lets a job ask again once it was released, and again from its own start", () => {
		const { desk, started, job } = bench(1);
		const again = job("again");
		const nested: Job = {
			priority: 0,
			start: () => {
				started.push("nested");
				desk.request(again);
			},
		};
		desk.request(nested);
		expect([desk.busy, desk.waiting]).toEqual([1, 1]);
		desk.release(nested);
		desk.release(again);
		desk.request(again);
		expect(started).toEqual(["nested", "again", "again"]);
	});

	test("with servers without end nobody ever waits", () => {
		const { desk, started, job } = bench(Number.POSITIVE_INFINITY);
		for (let i = 0; i < 100; i++) desk.request(job(`${i}`));
		expect([desk.busy, desk.waiting, started.length]).toEqual([100, 0, 100]);
	});

	test("keeps means over time of busy servers and of the queue", () => {
		const { clock, desk, job } = bench(1);
		const [a, b, c] = ["a", "b", "c"].map((name) => job(name));
		clock.now = 2;
		desk.request(a);
		clock.now = 3;
		desk.request(b);
		clock.now = 4;
		desk.request(c);
		clock.now = 7;
		desk.release(a); // b starts
		clock.now = 8;
		desk.release(c); // out of the queue
		clock.now = 9;
		desk.release(b);
		clock.now = 10;
		// busy from 2 to 9; queue: 1 from 3 to 4, 2 from 4 to 7, 1 from 7 to 8
		expect(desk.meanBusy()).toBeCloseTo(7 / 10, 14);
		expect(desk.meanWaiting()).toBeCloseTo((1 + 6 + 1) / 10, 14);
		expect(desk.meanBusy()).toBeCloseTo(7 / 10, 14);
		clock.now = 20;
		expect(desk.meanBusy()).toBeCloseTo(7 / 20, 14);
	});

	test("after a reset is as new", () => {
		const { clock, desk, started, job } = bench(1);
		clock.now = 5;
		desk.request(job("old"));
		desk.request(job("old, waiting"));
		clock.now = 9;
		clock.now = 0;
		desk.reset();
		expect([desk.busy, desk.waiting, desk.started]).toEqual([0, 0, 0]);
		const fresh = job("fresh");
		desk.request(fresh);
		clock.now = 4;
		desk.release(fresh);
		clock.now = 8;
		expect(started).toEqual(["old", "fresh"]);
		expect([desk.meanBusy(), desk.meanWaiting()]).toEqual([0.5, 0]);
	});

	test.each([0, -1, Number.NaN])("refuses %d servers", (servers) => {
		expect(() => new Resource(servers, { now: 0 })).toThrow(
			`a resource needs at least one server, received ${servers}`,
		);
	});

	test("with another shift starts what waits where there are more, and lets the others finish where there are fewer", () => {
		const { desk, started, job } = bench(1);
		const [a, b, c, d] = ["a", "b", "c", "d"].map((name) => job(name));
		for (const each of [a, b, c, d]) desk.request(each);
		desk.staff(3);
		expect(started).toEqual(["a", "b", "c"]);
		desk.staff(1);
		expect(desk.busy).toBe(3);
		desk.release(a);
		desk.release(b);
		expect(started).toEqual(["a", "b", "c"]);
		desk.release(c);
		expect(started).toEqual(["a", "b", "c", "d"]);
	});
});
