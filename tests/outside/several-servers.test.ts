import { describe, test } from "vitest";
import { Substream } from "../../src/engine/index.ts";
import { severalServers } from "../oracles/erlang.ts";
import { batchesOf, expectMean, exponentialTimes, meanOf } from "./batches.ts";
import { WaitingLine } from "./waiting-line.ts";

// Bronson 1982, example 24.6, and Trueman 1977, table 12.2: what is printed there is held against the closed form in
// ../oracles/waiting-lines.test.ts.
const rows = [
	{ name: "300 a year, 182.5 served a year by each of 3", arrivalRate: 300, serviceRate: 182.5 },
	{ name: "1.2 a minute, 0.5 served a minute by each of 3", arrivalRate: 1.2, serviceRate: 0.5 },
];

describe.each(rows)("M/M/3: $name", (row) => {
	const exact = severalServers(3, row.arrivalRate, row.serviceRate);

	test("simulated on the engine", () => {
		const line = new WaitingLine({
			servers: 3,
			gap: exponentialTimes(new Substream("several servers", row.name, 0), 1 / row.arrivalRate),
			service: exponentialTimes(new Substream("several servers", row.name, 1), 1 / row.serviceRate),
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
			batches.map(({ waits }) => waits.filter((wait) => wait > 0).length / waits.length),
			exact.delayed,
		);
	});
});
