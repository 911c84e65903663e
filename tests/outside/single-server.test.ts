import { describe, expect, test } from "vitest";
import { lognormal, Stream } from "../../src/engine/index.ts";
import { batchesOf, expectMean, exponentialTimes, meanOf } from "./batches.ts";
import { generalService, severalServers } from "./erlang.ts";
import { WaitingLine } from "./waiting-line.ts";

// Standing: 'read', 'derived', 'from memory' as in the other files of this folder.

/** Poisson arrivals before one server; time in the unit of the source. */
function singleServer(
	name: string,
	rate: number,
	service: (stream: Stream) => () => number,
) {
	return new WaitingLine({
		servers: 1,
		gap: exponentialTimes(new Stream("single server", name, 0), 1 / rate),
		service: service(new Stream("single server", name, 1)),
	});
}

describe("M/M/1", () => {
	// Bronson 1982, examples 23.3 and 23.14, by web.ist.utl.pt/mcasquilho/compute/or/Fx-queuevars.php (read)
	test("24 an hour, 30 served an hour: L 4, W a sixth of an hour, empty a fifth of the time", () => {
		const line = severalServers(1, 24, 30);
		expect(line.all).toBeCloseTo(4, 9);
		expect(line.inSystem).toBeCloseTo(1 / 6, 9);
		expect(line.empty).toBeCloseTo(0.2, 9);
	});

	test("30 an hour, 1.5 min each: Lq 2.25, Wq 4.5 min, empty a quarter of the time", () => {
		const line = severalServers(1, 30, 40);
		expect(line.waiting).toBeCloseTo(2.25, 9);
		expect(60 * line.wait).toBeCloseTo(4.5, 9);
		expect(line.empty).toBeCloseTo(0.25, 9);
	});

	test("2 an hour, 3 served an hour: Wq 2/3 h", () => {
		// Problem of a mechanic, nursingpaperhelp.com/1-tom-jones-the-mechanic (read)
		expect(severalServers(1, 2, 3).wait).toBeCloseTo(2 / 3, 9);
	});

	// The same values, simulated on the engine
	test.each([
		{
			rate: 24,
			served: 30,
			waiting: 4 - 0.8,
			wait: 1 / 6 - 1 / 30,
			empty: 0.2,
		},
		{ rate: 30, served: 40, waiting: 2.25, wait: 4.5 / 60, empty: 0.25 },
		{ rate: 2, served: 3, waiting: 4 / 3, wait: 2 / 3, empty: 1 / 3 },
	])("$rate an hour, $served served an hour, simulated", (row) => {
		const line = singleServer(`M/M/1 ${row.rate}`, row.rate, (stream) =>
			exponentialTimes(stream, 1 / row.served),
		);
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
	test("Pollaczek and Khinchine: L = ρ + (ρ² + λ²·Var S)/(2(1 − ρ)), M/M/1 among them", () => {
		// theinfolist.com, Pollaczek–Khinchine formula (read, text)
		expect(generalService(2, 1 / 3, 1 / 9).all).toBeCloseTo(2, 12);
	});

	test("the square of ρ counts: λ 2, μ 3, variance 1 gives 7.3333, not 6.67", () => {
		// waycalculator.com prints 6.67, for want of ρ² (a mistake, taken here as one to tell apart; derived)
		expect(generalService(2, 1 / 3, 1).all).toBeCloseTo(22 / 3, 12);
	});

	// Anderson et al., Management Science, section on M/G/1: 0.35 a minute, mean 2, sd 1.2 min (from memory, recomputed)
	const printed = { waiting: 1.1107, wait: 3.1733 };
	test("0.35 a minute, service of mean 2 and sd 1.2 min: Lq 1.1107, Wq 3.1733 min", () => {
		const line = generalService(0.35, 2, 1.2 ** 2);
		expect(Math.abs(line.waiting - printed.waiting)).toBeLessThan(1e-4);
		expect(Math.abs(line.wait - printed.wait)).toBeLessThan(1e-4);
	});

	test("the same with lognormal service, simulated", () => {
		const sigma = Math.sqrt(Math.log(1 + (1.2 / 2) ** 2));
		const median = 2 * Math.exp(-(sigma ** 2) / 2);
		const line = singleServer(
			"M/G/1",
			0.35,
			(stream) => () => lognormal(stream, median, sigma),
		);
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

	// A constant service of 5 min, 8 an hour: the problem text at nursingpaperhelp.com (read), the answer derived
	test("8 an hour, 12 served an hour at constant length: Wq 5 min, Lq 2/3", () => {
		const line = generalService(8, 1 / 12, 0);
		expect(60 * line.wait).toBeCloseTo(5, 9);
		expect(line.waiting).toBeCloseTo(2 / 3, 9);
	});

	test("the same, simulated", () => {
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
