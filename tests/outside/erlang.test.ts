import { describe, expect, test } from "vitest";
import { Stream } from "../../src/engine/index.ts";
import { batchesOf, expectMean, exponentialTimes } from "./batches.ts";
import { erlangB, erlangC, lnErlangB } from "./erlang.ts";
import { WaitingLine } from "./waiting-line.ts";

// Standing of each value: 'read' in a copy of the source named; 'quoted' read in a copy that quotes the primary;
// 'derived' recomputed from inputs of the source; 'from memory'.
const stream = (owner: string, purpose: number) =>
	new Stream("erlang", owner, purpose);

/** Poisson arrivals at a desk where nobody waits; `load` customers come in a mean service time of 1. */
function lossLine(servers: number, load: number, service?: () => number) {
	const name = `${servers} servers, load ${load}`;
	return new WaitingLine({
		servers,
		room: servers,
		gap: exponentialTimes(stream(name, 0), 1 / load),
		service: service ?? exponentialTimes(stream(name, 1), 1),
	});
}

describe("Erlang's loss formula", () => {
	// Published Erlang B table values, to four decimals (quoted)
	describe.each([
		[5, 2, 0.0367],
		[14, 10, 0.0568],
		[10, 5, 0.0184],
		[1, 1, 0.5],
	])("%d servers, load %d", (servers, load, printed) => {
		test(`loses ${printed} by closed form`, () => {
			expect(Math.abs(erlangB(servers, load) - printed)).toBeLessThan(5e-5);
		});
		test("loses the same share when simulated on the engine", () => {
			const batches = batchesOf(lossLine(servers, load), 10_000 / load);
			expectMean(
				batches.map((batch) => batch.lostShare),
				erlangB(servers, load),
			);
		});
	});

	// Unit tests named erlang_queues.py, which credit a computer-algebra system (quoted); natural logarithms
	test.each([
		[100, 120, -1.62826407041],
		[100, 20, -84.1661482002],
		[10_000, 12_000, -1.78927734649],
		[10_000, 200, -29_325.7541713],
		[100, 10_000, -0.01004931575],
	])("ln B of %d servers and load %d is %d", (servers, load, printed) => {
		expect(Math.abs(lnErlangB(servers, load) - printed)).toBeLessThan(1e-6);
	});

	// Published Erlang B table read backwards: the load that loses the given share (quoted)
	test.each([
		[50, 0.02, 40.26, 0.01],
		[57, 0.01, 44.2, 0.1],
	])(
		"%d servers lose %d at a load of %d",
		(servers, share, printed, within) => {
			let [low, high] = [0, 2 * servers];
			while (high - low > 1e-9) {
				const middle = (low + high) / 2;
				if (erlangB(servers, middle) < share) low = middle;
				else high = middle;
			}
			expect(Math.abs(low - printed)).toBeLessThan(within);
		},
	);

	test("does not care how service times are spread, only for their mean", () => {
		// The insensitivity of the loss formula, text-books of teletraffic (from memory)
		const batches = batchesOf(
			lossLine(5, 2, () => 1),
			5000,
		);
		expectMean(
			batches.map((batch) => batch.lostShare),
			erlangB(5, 2),
		);
	});
});

describe("Erlang's delay formula: 100 calls in 30 min, 3 min each, 14 agents", () => {
	// README of pyworkforce 0.1.0 (read): P(wait), service level for 20 s, occupancy
	const printed = {
		delayed: 0.1741319335950498,
		withinTwentySeconds: 0.8883500191794669,
		occupancy: 0.7142857,
	};
	const [servers, rate, handling] = [14, 100 / 30, 3];
	const load = rate * handling;
	const limit = 20 / 60;

	test("by closed form", () => {
		const delayed = erlangC(servers, load);
		expect(Math.abs(delayed - printed.delayed)).toBeLessThan(1e-12);
		const within =
			1 - delayed * Math.exp((-(servers - load) * limit) / handling);
		expect(Math.abs(within - printed.withinTwentySeconds)).toBeLessThan(1e-12);
		expect(load / servers).toBeCloseTo(printed.occupancy, 7);
	});

	test("simulated on the engine", () => {
		const batches = batchesOf(
			new WaitingLine({
				servers,
				gap: exponentialTimes(stream("calls", 0), 1 / rate),
				service: exponentialTimes(stream("calls", 1), handling),
			}),
			3000,
		);
		const share = (condition: (wait: number) => boolean) =>
			batches.map(({ waits }) => waits.filter(condition).length / waits.length);
		expectMean(
			share((wait) => wait > 0),
			printed.delayed,
		);
		expectMean(
			share((wait) => wait <= limit),
			printed.withinTwentySeconds,
		);
		expectMean(
			batches.map((batch) => batch.meanBusy / servers),
			printed.occupancy,
		);
	});
});
