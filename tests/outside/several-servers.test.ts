import { describe, expect, test } from "vitest";
import { Stream } from "../../src/engine/index.ts";
import { batchesOf, expectMean, exponentialTimes, meanOf } from "./batches.ts";
import { severalServers } from "./erlang.ts";
import { WaitingLine } from "./waiting-line.ts";

interface Row {
	readonly name: string;
	readonly arrivalRate: number;
	readonly serviceRate: number;
	/** What is printed, and half of its last digit or what the source rounds by. */
	readonly printed: readonly (readonly [
		keyof ReturnType<typeof severalServers>,
		number,
		number,
	])[];
}

const rows: readonly Row[] = [
	{
		// Bronson 1982, example 24.6, by web.ist.utl.pt/mcasquilho/compute/or/Fx-queuevars.php (read); years
		name: "300 a year, 182.5 served a year by each of 3",
		arrivalRate: 300,
		serviceRate: 182.5,
		printed: [
			["waiting", 0.352, 5e-4],
			["all", 1.996, 5e-4],
			["wait", 0.001175, 1e-6],
			["inSystem", 0.006654, 1e-6],
			["empty", 0.17754, 1e-5],
		],
	},
	{
		// Trueman 1977, table 12.2 p. 512, quoted by a calculator solutions handbook, p. 145 (read); minutes. C derived
		name: "1.2 a minute, 0.5 served a minute by each of 3",
		arrivalRate: 1.2,
		serviceRate: 0.5,
		printed: [
			["wait", 2.16, 5e-3],
			["inSystem", 4.16, 5e-3],
			["waiting", 2.59, 5e-3],
			["all", 4.99, 5e-3],
			["delayed", 0.647191, 1e-6],
		],
	},
];

describe.each(rows)("M/M/3: $name", (row) => {
	const exact = severalServers(3, row.arrivalRate, row.serviceRate);

	test.each(row.printed)("%s is %d by closed form", (name, printed, within) => {
		expect(Math.abs(exact[name] - printed)).toBeLessThan(within);
	});

	test("simulated on the engine", () => {
		const line = new WaitingLine({
			servers: 3,
			gap: exponentialTimes(
				new Stream("several servers", row.name, 0),
				1 / row.arrivalRate,
			),
			service: exponentialTimes(
				new Stream("several servers", row.name, 1),
				1 / row.serviceRate,
			),
		});
		const batches = batchesOf(line, 10_000 / row.arrivalRate);
		expectMean(
			batches.map((batch) => meanOf(batch.waits)),
			exact.wait,
		);
		expectMean(
			batches.map((batch) => batch.meanWaiting),
			exact.waiting,
		);
		expectMean(
			batches.map((batch) => batch.meanWaiting + batch.meanBusy),
			exact.all,
		);
		expectMean(
			batches.map(
				({ waits }) => waits.filter((wait) => wait > 0).length / waits.length,
			),
			exact.delayed,
		);
	});
});

test("0.001175 of a year is 0.43 days", () => {
	// The same example of Bronson (read)
	expect(365 * severalServers(3, 300, 182.5).wait).toBeCloseTo(0.43, 2);
});
