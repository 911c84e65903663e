import { expect } from "vitest";
import { exponential, type Substream } from "../../src/engine/index.ts";
import type { WaitingLine } from "./waiting-line.ts";

/** Exponential times of the given mean from a stream, whoever the customer is. */
export const exponentialTimes = (stream: Substream, mean: number) => () => mean * exponential(stream);

/** What a line did in one span of time. */
export interface Batch {
	/** Waits of the customers whose service began in the span. */
	readonly waits: readonly number[];
	readonly meanWaiting: number;
	readonly meanBusy: number;
	readonly lostShare: number;
}

/** Runs a line over `count` spans after a first one that is thrown away, so that the empty start is forgotten. */
export function batchesOf(line: WaitingLine, span: number, count = 40): Batch[] {
	const batches: Batch[] = [];
	let before = { served: 0, arrivals: 0, lost: 0, queue: 0, busy: 0 };
	for (let batch = 0; batch <= count; batch++) {
		const end = (batch + 1) * span;
		line.run(end);
		const after = {
			served: line.served.length,
			arrivals: line.arrivals,
			lost: line.lost,
			queue: line.desk.meanWaiting() * end,
			busy: line.desk.meanBusy() * end,
		};
		if (batch > 0)
			batches.push({
				waits: line.served.slice(before.served, after.served).map((customer) => customer.started - customer.arrived),
				meanWaiting: (after.queue - before.queue) / span,
				meanBusy: (after.busy - before.busy) / span,
				lostShare: (after.lost - before.lost) / (after.arrivals - before.arrivals),
			});
		before = after;
	}
	return batches;
}

export const meanOf = (values: readonly number[]): number =>
	values.reduce((sum, value) => sum + value, 0) / values.length;

/** Standard error of the mean of values that do not depend on each other. */
export function errorOf(values: readonly number[]): number {
	const mean = meanOf(values);
	const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
	return Math.sqrt(squares / (values.length - 1) / values.length);
}

/**
 * The mean of the batches is the expected value to four of its own standard errors, and the error is small enough
 * (`sharpness` of the value, 3 % by default) for the check to mean something.
 */
export function expectMean(values: readonly number[], expected: number, sharpness = 0.03): void {
	const error = errorOf(values);
	expect(error).toBeLessThan(sharpness * Math.abs(expected));
	expect(Math.abs(meanOf(values) - expected)).toBeLessThan(4 * error);
}
