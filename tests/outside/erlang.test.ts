import { describe, test } from "vitest";
import { Substream } from "../../src/engine/index.ts";
import { erlangB } from "../oracles/erlang.ts";
import { batchesOf, expectMean, exponentialTimes } from "./batches.ts";
import { WaitingLine } from "./waiting-line.ts";

// Standing of each value: 'read' in a copy of the source named; 'quoted' read in a copy that quotes the primary;
// 'derived' recomputed from inputs of the source; 'from memory'.
const stream = (owner: string, purpose: number) => new Substream("erlang", owner, purpose);

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
		test(`loses ${printed} when simulated on the engine`, () => {
			const batches = batchesOf(lossLine(servers, load), 10_000 / load);
			expectMean(
				batches.map((batch) => batch.lostShare),
				printed,
			);
		});
	});

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
	const printed = { delayed: 0.1741319335950498, withinTwentySeconds: 0.8883500191794669, occupancy: 0.7142857 };
	const [servers, rate, handling] = [14, 100 / 30, 3];
	const limit = 20 / 60;

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
