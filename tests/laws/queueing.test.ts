import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exponential, gamma2, Substream } from "../../src/engine/index.ts";
import { meanOf } from "../outside/batches.ts";
import { type Line, WaitingLine } from "../outside/waiting-line.ts";

/** Who is served first, by number of arrival and length of service. */
const disciplines: readonly [string, Line["priority"]][] = [
	["first come, first served", () => 0],
	["last come, first served", (customer) => -customer],
	["shortest first", (_, service) => service],
	["longest first", (_, service) => -service],
	["two classes", (customer) => customer % 2],
	["in no order that anyone would want", (customer) => (customer * 7919) % 101],
];

/** Serves a list of customers to the last one; returns the line and the time at which it stood empty for good. */
function servedOut(
	customers: readonly { readonly gap: number; readonly service: number }[],
	servers: number,
	priority: Line["priority"],
) {
	const line = new WaitingLine({
		servers,
		gap: (customer) => customers[customer]?.gap ?? Number.POSITIVE_INFINITY,
		service: (customer) => customers[customer].service,
		priority,
	});
	line.run(Number.MAX_VALUE);
	const end = Math.max(...line.served.map((customer) => customer.started + customer.service));
	return { line, end };
}

const waitOf = (customer: { arrived: number; started: number }) => customer.started - customer.arrived;
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

const customers = fc.array(
	fc.record({
		gap: fc.integer({ min: 0, max: 20 }).map((i) => i / 4),
		service: fc.integer({ min: 1, max: 30 }).map((i) => i / 4),
	}),
	{ minLength: 1, maxLength: 80 },
);

/** Random customers of a line that is busy four fifths of the time. */
function busyLine(count: number, servers: number) {
	const gaps = new Substream("queueing", `${servers}`, 0);
	const services = new Substream("queueing", `${servers}`, 1);
	return Array.from({ length: count }, () => ({ gap: exponential(gaps), service: gamma2(services, 0.8 * servers) }));
}

describe.each(disciplines)("%s", (_, priority) => {
	test.each([1, 2, 3])("Little's law, L = λ·W, holds for the queue and for the servers, %d of them", (servers) => {
		// J. D. C. Little 1961, Operations Research 9:383–387 (from memory): exact on every path that ends empty
		const list = busyLine(4000, servers);
		const { line, end } = servedOut(list, servers, priority);
		expect(line.served.length).toBe(list.length);
		// The clock stands at the end of time; the means go by spans, so they are undone by it.
		const span = line.sim.now;
		const rate = list.length / end;
		const [queue, busy] = [(line.desk.meanWaiting() * span) / end, (line.desk.meanBusy() * span) / end];
		const wait = meanOf(line.served.map(waitOf));
		const service = meanOf(list.map((customer) => customer.service));
		expect(wait).toBeGreaterThan(0.1);
		expect(Math.abs(queue / (rate * wait) - 1)).toBeLessThan(1e-9);
		expect(Math.abs(busy / (rate * service) - 1)).toBeLessThan(1e-9);
	});

	test("nobody waits while a server is free, and no server takes two at a time", () => {
		fc.assert(
			fc.property(customers, fc.integer({ min: 1, max: 4 }), (list, servers) => {
				const { line } = servedOut(list, servers, priority);
				expect(line.served.length).toBe(list.length);
				for (const { arrived, started } of line.served) {
					const others = (from: number, to: number) =>
						line.served.filter(
							(other) =>
								other.started <= from && other.started + other.service >= to && other.started + other.service > from,
						).length;
					// who waited found every server at work all along, up to the instant of the start
					if (started > arrived)
						for (const at of [arrived, (arrived + started) / 2]) expect(others(at, at)).toBeGreaterThanOrEqual(servers);
					expect(
						line.served.filter((other) => other.started <= started && other.started + other.service > started).length,
					).toBeLessThanOrEqual(servers);
				}
			}),
			{ numRuns: 100, seed: 1961 },
		);
	});

	test("one server: the work that waits does not depend on who goes first", () => {
		// Kleinrock's conservation law (text-books, from memory), exact on every path that ends empty: the integral of
		// unfinished work is Σ service·wait + Σ service²/2 in any order of service that never idles.
		fc.assert(
			fc.property(customers, (list) => {
				const work = (line: WaitingLine) => total(line.served.map((each) => each.service * waitOf(each)));
				const inOrder = work(servedOut(list, 1, () => 0).line);
				expect(work(servedOut(list, 1, priority).line)).toBeCloseTo(inOrder, 6);
			}),
			{ numRuns: 100, seed: 1965 },
		);
	});
});

test("shortest first waits least on average, longest first most", () => {
	// text-books of scheduling (from memory); here on one long path
	const list = busyLine(20_000, 1);
	const mean = (priority: Line["priority"]) => meanOf(servedOut(list, 1, priority).line.served.map(waitOf));
	const [inOrder, shortest, longest] = [mean(() => 0), mean((_, service) => service), mean((_, service) => -service)];
	expect(shortest).toBeLessThan(0.9 * inOrder);
	expect(longest).toBeGreaterThan(1.1 * inOrder);
});

test("the urgent class waits less than the other, and equals are served in order of arrival", () => {
	const list = busyLine(20_000, 1);
	const { line } = servedOut(list, 1, (customer) => customer % 2);
	const [urgent, other] = [0, 1].map((kind) => line.served.filter((each) => each.customer % 2 === kind));
	expect(meanOf(urgent.map(waitOf))).toBeLessThan(0.5 * meanOf(other.map(waitOf)));
	for (const kind of [urgent, other]) {
		const order = kind.map((each) => each.customer);
		expect(order).toEqual(order.toSorted((a, b) => a - b));
	}
});
