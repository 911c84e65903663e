import { describe, expect, test } from "vitest";
import { Substream } from "../../src/engine/index.ts";

const first = (seed: string, owner: string, purpose: number, replication = 0): number => {
	const stream = new Substream(seed, owner, purpose);
	stream.reset(replication);
	return stream.uniform();
};

const take = (stream: Substream, count: number) => Array.from({ length: count }, () => stream.uniform());

/** Pearson's coefficient. */
function correlation(xs: readonly number[], ys: readonly number[]): number {
	const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
	const [mx, my] = [mean(xs), mean(ys)];
	const product = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, i) => sum + value * b[i], 0);
	const [dx, dy] = [xs.map((x) => x - mx), ys.map((y) => y - my)];
	return product(dx, dy) / Math.sqrt(product(dx, dx) * product(dy, dy));
}

describe("a stream", () => {
	test("gives these numbers for these names, in every version", () => {
		// Frozen output: a change of these numbers changes the day of every scenario.
		expect(take(new Substream("reference", "thigh", 0), 3)).toEqual([
			0.27871179291910286, 0.47527303425914125, 0.20592231717424214,
		]);
		const second = new Substream("tidemark-7", "", 22);
		second.reset(399);
		expect(take(second, 3)).toEqual([0.3008882339500357, 0.3151414246976729, 0.4656908838745152]);
		const later = new Substream("tide", "thigh", 3);
		later.reset(7, 41);
		expect(take(later, 3)).toEqual([0.4176018540918093, 0.008215486844944442, 0.05881854617788118]);
	});

	test("is decided by its name alone: others, made or drawn from, change nothing", () => {
		const alone = take(new Substream("seed", "thigh", 3), 100);
		const among = new Substream("seed", "thigh", 3);
		const others = [
			new Substream("seed", "calf", 3),
			new Substream("seed", "thigh", 4),
			new Substream("seed", "thigh", 3),
		];
		const numbers = Array.from({ length: 100 }, () => {
			for (const other of others) other.uniform();
			return among.uniform();
		});
		expect(numbers).toEqual(alone);
	});

	test("starts each replication anew, whichever came before", () => {
		const stream = new Substream("seed", "thigh", 0);
		take(stream, 17);
		stream.reset(5);
		const fifth = take(stream, 10);
		stream.reset(0);
		take(stream, 3);
		stream.reset(5);
		expect(take(stream, 10)).toEqual(fifth);
	});

	test("is another one for another seed, owner, purpose or replication", () => {
		const numbers = [
			first("seed", "thigh", 0),
			first("seeds", "thigh", 0),
			first("seed", "calf", 0),
			first("seed", "thigh", 1),
			first("seed", "thigh", 0, 1),
			first("seed ", "thigh", 0),
			first("Seed", "thigh", 0),
			first("", "seedthigh", 0),
			first("seedt", "high", 0),
		];
		expect(new Set(numbers).size).toBe(numbers.length);
	});

	test("no two of 20 000 names share their first number", () => {
		const numbers = new Set<number>();
		for (const seed of ["a", "b", "tide", "tide 2"])
			for (const owner of ["thigh", "calf", "thigh2", "2thigh", ""])
				for (let purpose = 0; purpose < 20; purpose++)
					for (let replication = 0; replication < 50; replication++)
						numbers.add(first(seed, owner, purpose, replication));
		expect(numbers.size).toBe(20_000);
	});

	test("numbers lie in 0 ≤ u < 1 and carry 53 bits", () => {
		const numbers = take(new Substream("bits", "owner", 0), 10_000);
		for (const u of numbers) {
			expect(u >= 0 && u < 1).toBe(true);
			expect(Number.isInteger(u * 2 ** 53)).toBe(true);
		}
		expect(numbers.filter((u) => (u * 2 ** 53) % 2 === 1).length).toBeGreaterThan(4800);
	});
});

describe("numbers of streams are uniform", () => {
	/** Chi-square over 100 equal bins; 99 degrees of freedom, 99.9 % of it between 55 and 155 (text-book tables, from memory). */
	function expectUniform(numbers: readonly number[]): void {
		const counts = new Array<number>(100).fill(0);
		for (const u of numbers) counts[Math.floor(100 * u)]++;
		const expected = numbers.length / 100;
		const chiSquare = counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
		expect(chiSquare).toBeGreaterThan(55);
		expect(chiSquare).toBeLessThan(155);
	}

	test("along one stream", () => {
		expectUniform(take(new Substream("uniform", "thigh", 7), 100_000));
	});

	test("across the first numbers of replications", () => {
		expectUniform(Array.from({ length: 50_000 }, (_, i) => first("uniform", "thigh", 7, i)));
	});

	test("across the first numbers of owners", () => {
		expectUniform(Array.from({ length: 50_000 }, (_, i) => first("uniform", `bed ${i}`, 0)));
	});
});

describe("neighbouring streams do not follow each other", () => {
	const count = 20_000;
	const firsts = (purpose: number, shift = 0) =>
		Array.from({ length: count }, (_, i) => first("neighbours", "thigh", purpose, i + shift));
	// Four standard errors of the coefficient of independent numbers, 1/√n
	const limit = 4 / Math.sqrt(count);

	test.each([
		[0, 1],
		[1, 2],
		[6, 7],
		[21, 22],
	])("purposes %d and %d, over replications", (a, b) => {
		expect(Math.abs(correlation(firsts(a), firsts(b)))).toBeLessThan(limit);
	});

	test("a replication and the next", () => {
		expect(Math.abs(correlation(firsts(3), firsts(3, 1)))).toBeLessThan(limit);
	});

	test("a number and the next of the same stream", () => {
		const numbers = take(new Substream("neighbours", "thigh", 0), count + 1);
		expect(Math.abs(correlation(numbers.slice(1), numbers.slice(0, -1)))).toBeLessThan(limit);
	});

	test("first and second number of a stream, over replications", () => {
		const pairs = Array.from({ length: count }, (_, i) => {
			const stream = new Substream("neighbours", "calf", 2);
			stream.reset(i);
			return take(stream, 2);
		});
		expect(
			Math.abs(
				correlation(
					pairs.map((pair) => pair[0]),
					pairs.map((pair) => pair[1]),
				),
			),
		).toBeLessThan(limit);
	});
});

test("an owner that comes many times has a stream for each time, and the first is that of one who comes once", () => {
	const stream = new Substream("tide", "thigh", 3);
	const firsts = new Set<number>();
	for (let replication = 0; replication < 40; replication++)
		for (let instance = 0; instance < 250; instance++) {
			stream.reset(replication, instance);
			firsts.add(stream.uniform());
		}
	expect(firsts.size).toBe(10_000);
	stream.reset(7);
	const once = take(stream, 5);
	stream.reset(7, 0);
	expect(take(stream, 5)).toEqual(once);
	const mean = [...firsts].reduce((sum, u) => sum + u, 0) / firsts.size;
	// Standard error of 10,000 uniform numbers: 0.0029.
	expect(Math.abs(mean - 0.5)).toBeLessThan(0.012);
});
