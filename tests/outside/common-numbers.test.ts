import { describe, expect, test } from "vitest";
import { exponential, Substream } from "../../src/engine/index.ts";
import { addTo, noMoments, variance } from "../../src/statistics/index.ts";
import { severalServers } from "../oracles/erlang.ts";
import { WaitingLine } from "./waiting-line.ts";

// Var(X − Y) = Var X + Var Y − 2·Cov(X, Y): informationdelight.info, variance reduction (read), which also warns that a
// negative covariance backfires. No worked example of it was found; the values below are derived from that equation.

const count = 40_000;

function varianceOf(draw: () => number): number {
	const moments = noMoments();
	for (let i = 0; i < count; i++) addTo(moments, draw());
	return variance(moments);
}

/** Within 4 standard errors of a variance, √((κ − 1)/n) of it; the kurtosis κ is worked out or bounded where it is called. */
function expectVariance(value: number, expected: number, kurtosis: number) {
	const error = expected * Math.sqrt((kurtosis - 1) / count);
	expect(Math.abs(value - expected)).toBeLessThan(4 * error);
}

describe("two exponential times of means 3 and 2 by inversion, on our streams", () => {
	const stream = (owner: string) => new Substream("common numbers", owner, 0);

	test("from streams of their own: the difference has the variance 9 + 4 (derived)", () => {
		const [a, b] = [stream("a"), stream("b")];
		// fourth cumulants 6·81 and 6·16, so κ = 3 + 582/169
		expectVariance(
			varianceOf(() => 3 * exponential(a) - 2 * exponential(b)),
			13,
			3 + 582 / 169,
		);
	});

	test("from one stream, number for number: (3 − 2)², 13 times less (derived)", () => {
		const [a, b] = [stream("c"), stream("c")];
		expectVariance(
			varianceOf(() => 3 * exponential(a) - 2 * exponential(b)),
			1,
			9,
		);
	});

	test("out of step by one number the gain is gone: 13 again (derived)", () => {
		const [a, b] = [stream("d"), stream("d")];
		exponential(b);
		expectVariance(
			varianceOf(() => 3 * exponential(a) - 2 * exponential(b)),
			13,
			3 + 582 / 169,
		);
	});

	test("with U for one and 1 − U for the other it backfires: 13 + 12·(π²/6 − 1) (derived)", () => {
		const numbers = stream("e");
		// Cov(ln U, ln(1 − U)) = 1 − π²/6
		const expected = 13 + 12 * (Math.PI ** 2 / 6 - 1);
		const value = varianceOf(() => {
			const u = numbers.uniform();
			return -3 * Math.log(1 - u) + 2 * Math.log(u || Number.MIN_VALUE);
		});
		expectVariance(value, expected, 24); // κ of an exponential is 9, that of this difference no more than 24
		expect(value).toBeGreaterThan(18);
	});
});

describe("uniform numbers, on our streams", () => {
	test("U and 1 − U differ with the variance 1/12 + 1/12 + 2/12, twice that of independent ones (derived)", () => {
		const stream = new Substream("common numbers", "uniform", 1);
		const value = varianceOf(() => {
			const u = stream.uniform();
			return u - (1 - u);
		});
		expectVariance(value, 1 / 3, 1.8);
	});
});

describe("30 customers an hour before a server of 40 an hour and one of 44, on our engine", () => {
	/** Mean wait, h, of the first 400 customers in each of 300 replications; the service of customer k takes the same number at both servers. */
	const waits = (served: number, seed: string) => {
		const gaps = new Substream(seed, "gaps", 0);
		const services = new Substream(seed, "services", 1);
		return Array.from({ length: 300 }, (_, replication) => {
			gaps.reset(replication);
			services.reset(replication);
			const line = new WaitingLine({
				servers: 1,
				gap: (customer) => (customer < 400 ? exponential(gaps) / 30 : Number.POSITIVE_INFINITY),
				service: () => exponential(services) / served,
			});
			line.run(1e6);
			const sum = line.served.reduce((total, { arrived, started }) => total + started - arrived, 0);
			return sum / 400;
		});
	};
	const slow = waits(40, "one line");
	const quick = waits(44, "one line");
	const stranger = waits(44, "another line");
	const differences = (a: readonly number[], b: readonly number[]) => {
		const moments = noMoments();
		a.forEach((value, i) => {
			addTo(moments, value - b[i]);
		});
		return moments;
	};
	const paired = differences(slow, quick);
	const independent = differences(slow, stranger);

	test("common numbers leave less than a fifth of the variance of the difference", () => {
		expect(variance(independent) / variance(paired)).toBeGreaterThan(5);
	});

	test("in every replication the quicker server lets nobody wait longer (derived: waits rise with every service time)", () => {
		slow.forEach((wait, i) => {
			expect(wait).toBeGreaterThanOrEqual(quick[i]);
		});
	});

	test("both estimate the same difference, a little below the steady one, as the line starts empty", () => {
		// M/M/1: 4.5 min at 40 an hour (Bronson 1982, example 23.14, read), 2.92 at 44 by the same formula (derived)
		const steady = severalServers(1, 30, 40).wait - severalServers(1, 30, 44).wait;
		expect(60 * severalServers(1, 30, 40).wait).toBeCloseTo(4.5, 9);
		expect(paired.mean).toBeGreaterThan(0.8 * steady);
		expect(paired.mean).toBeLessThan(1.05 * steady);
		const error = Math.sqrt((variance(paired) + variance(independent)) / paired.count);
		expect(Math.abs(paired.mean - independent.mean)).toBeLessThan(4 * error);
	});
});
