import { describe, test } from "vitest";
import { lognormal, Substream } from "../../src/engine/index.ts";
import { batchesOf, expectMean, exponentialTimes, meanOf } from "./batches.ts";
import { WaitingLine } from "./waiting-line.ts";

// Standing: 'read', 'derived', 'from memory' as in the other files of this folder.

/** Poisson arrivals before one server; time in the unit of the source. */
function singleServer(name: string, rate: number, service: (stream: Substream) => () => number) {
	return new WaitingLine({
		servers: 1,
		gap: exponentialTimes(new Substream("single server", name, 0), 1 / rate),
		service: service(new Substream("single server", name, 1)),
	});
}

describe("M/M/1", () => {
	// Bronson 1982, examples 23.3 and 23.14, by web.ist.utl.pt/mcasquilho/compute/or/Fx-queuevars.php (read); the third is of
	// Render and Stair, Quantitative Analysis for Management, the muffler shop of the chapter on waiting lines (from memory)
	test.each([
		{ rate: 24, served: 30, waiting: 4 - 0.8, wait: 1 / 6 - 1 / 30, empty: 0.2 },
		{ rate: 30, served: 40, waiting: 2.25, wait: 4.5 / 60, empty: 0.25 },
		{ rate: 2, served: 3, waiting: 4 / 3, wait: 2 / 3, empty: 1 / 3 },
	])("$rate an hour, $served served an hour, simulated", (row) => {
		const line = singleServer(`M/M/1 ${row.rate}`, row.rate, (stream) => exponentialTimes(stream, 1 / row.served));
		const batches = batchesOf(line, 10_000 / row.rate);
		expectMean(
			batches.map((batch) => meanOf(batch.waits)),
			row.wait,
		);
		expectMean(
			batches.map((batch) => batch.meanWaiting),
			row.waiting,
		);
		expectMean(
			batches.map((batch) => 1 - batch.meanBusy),
			row.empty,
		);
	});
});

describe("M/G/1", () => {
	// Anderson et al., Management Science, section on M/G/1: 0.35 a minute, mean 2, sd 1.2 min (from memory, recomputed)
	const printed = { waiting: 1.1107, wait: 3.1733 };
	test("0.35 a minute, lognormal service of mean 2 and sd 1.2 min, simulated: Lq 1.1107, Wq 3.1733 min", () => {
		const sigma = Math.sqrt(Math.log(1 + (1.2 / 2) ** 2));
		const median = 2 * Math.exp(-(sigma ** 2) / 2);
		const line = singleServer("M/G/1", 0.35, (stream) => () => lognormal(stream, median, sigma));
		const batches = batchesOf(line, 30_000);
		expectMean(
			batches.map((batch) => meanOf(batch.waits)),
			printed.wait,
		);
		expectMean(
			batches.map((batch) => batch.meanWaiting),
			printed.waiting,
		);
	});

	// Render and Stair, Quantitative Analysis for Management, the recycling yard of the chapter on waiting lines (from memory)
	test("8 an hour, 12 served an hour at constant length, simulated: Wq 5 min, Lq 2/3", () => {
		const line = singleServer("M/D/1", 8, () => () => 1 / 12);
		const batches = batchesOf(line, 1500);
		expectMean(
			batches.map((batch) => meanOf(batch.waits)),
			1 / 12,
		);
		expectMean(
			batches.map((batch) => batch.meanWaiting),
			2 / 3,
		);
	});
});
