import { describe, expect, test } from "vitest";
import { exponential, lognormal, Substream } from "../../../src/engine/index.ts";
import { type Constants, constantsWith } from "../../../src/physics/index.ts";
import { type LevelOver, Seal } from "../../../src/therapy/hazards/seal.ts";

const never = Number.POSITIVE_INFINITY;
const stream = (purpose: number) => new Substream("seal", "bed 1", purpose);

/** A seal, and twins of its streams, which give the draws it works with. */
function bench(constants: Partial<Constants> = {}, difficulty = 1.5) {
	const k = constantsWith({ "breach.dry": 2, "breach.wetScale": 30, "breach.age": 1, ...constants });
	const seal = new Seal(k, difficulty, { dry: stream(0), drySize: stream(1), wet: stream(2), wetSize: stream(3) });
	const [dry, drySize, wet, wetSize] = [0, 1, 2, 3].map(stream);
	return { k, seal, difficulty, dry, drySize, wet, wetSize };
}

/** ∫f by the midpoint rule. */
function midpoints(f: (t: number) => number, from: number, to: number) {
	const steps = 20_000;
	const h = (to - from) / steps;
	let sum = 0;
	for (let i = 0; i < steps; i++) sum += f(from + (i + 0.5) * h);
	return sum * h;
}

/** The hazards as the model words them, per minute, of a dressing put on at `ageZero`. */
const aged = (k: Constants, at: number, ageZero: number) => 1 + k["breach.age"] * ((at - ageZero) / 1440);
const dryHazard = (k: Constants, difficulty: number, ageZero: number) => (at: number) =>
	(k["breach.dry"] / 60) * difficulty * aged(k, at, ageZero);
const wetHazard =
	(
		k: Constants,
		difficulty: number,
		ageZero: number,
		fillBegan: number,
		level: (at: number) => number = () => 0,
		capacity = 100,
	) =>
	(at: number) => {
		const [shape, scale] = [k["breach.wetShape"], k["breach.wetScale"]];
		const s = Math.min(at - fillBegan, 60);
		const over = Math.min(1, Math.max(0, level(at) - capacity) / capacity);
		return (
			(shape / scale) *
			(s / scale) ** (shape - 1) *
			aged(k, at, ageZero) *
			Math.exp(k["breach.overfill"] * over) *
			difficulty
		);
	};

const low: LevelOver = { levelAt: () => 50, capacity: 100 };

describe("a dry seal", () => {
	test("breaks when the hazard of its age has added up to its draw", () => {
		const { k, seal, difficulty, dry } = bench();
		seal.reset(-2000);
		const at = seal.beginDry(300);
		expect(at).toBeGreaterThan(300);
		expect(midpoints(dryHazard(k, difficulty, -2000), 300, at)).toBeCloseTo(exponential(dry), 9);
	});

	test("has over all its spells the one draw, and a new one when it has broken", () => {
		const { k, seal, difficulty, dry } = bench();
		const hazard = dryHazard(k, difficulty, 100);
		seal.reset(100);
		let drawn = exponential(dry);
		for (let breaks = 0, from = 1000; breaks < 20; from += 50) {
			const at = seal.beginDry(from);
			const to = from + 7;
			if (at < to) {
				seal.endDry(at);
				expect(midpoints(hazard, from, at)).toBeCloseTo(drawn, 8);
				seal.breakDry();
				breaks++;
				drawn = exponential(dry);
			} else {
				seal.endDry(to);
				drawn -= midpoints(hazard, from, to);
			}
		}
	});

	test("that should have broken a moment ago breaks now", () => {
		const { seal } = bench();
		seal.reset(0);
		const at = seal.beginDry(0);
		seal.endDry(at + 1e-6);
		expect(seal.beginDry(5000)).toBe(5000);
	});

	test.each([0, 5e-324, 1e-310])("of a rate of %s never breaks", (rate) => {
		const { seal } = bench({ "breach.dry": rate });
		seal.reset(0);
		expect(seal.beginDry(10)).toBe(never);
		seal.endDry(1000);
		expect(seal.beginDry(1000)).toBe(never);
	});

	test("breaks by a lognormal size of the stream for it, and a move by one of its own", () => {
		const { k, seal, drySize, wetSize } = bench();
		const [median, sigma] = [k["breach.sizeMedian"], k["breach.sizeSigma"]];
		seal.reset(0);
		expect(seal.breakDry()).toBe(lognormal(drySize, median, sigma));
		expect(seal.breakWet(0)).toBe(lognormal(wetSize, median, sigma));
		expect(seal.size(stream(9))).toBe(lognormal(stream(9), median, sigma));
	});
});

describe("a wet seal below capacity", () => {
	test.each([
		// shape, scale, min; the draw is 0.42: before the hour, about it and long after
		[2, 30],
		[2, 200],
		[1, 30],
		[1, 900],
		[0.5, 30],
		[0.5, 900],
		[1.7, 30],
		[3, 60],
	])(
		"of shape %d and scale %d min breaks when the Weibull hazard, held after an hour, has added up to its draw",
		(shape, scale) => {
			const constants = { "breach.wetShape": shape, "breach.wetScale": scale };
			const { k, seal, difficulty, wet } = bench(constants);
			seal.reset(-1500);
			seal.beginWet(0);
			const at = seal.planWet(0, 10, 80, low);
			// With s = v⁴ the beginning of a shape below 1 is smooth.
			const hazard = wetHazard(k, difficulty, -1500, 0);
			const sum =
				midpoints((v) => hazard(v ** 4) * 4 * v ** 3, 0, Math.min(at, 60) ** 0.25) +
				(at > 60 ? midpoints(hazard, 60, at) : 0);
			expect(sum).toBeCloseTo(exponential(wet), 6);
			// The answer does not depend on where the span ends, nor on when it is asked again.
			expect(seal.planWet(at / 2, 9999, 100, low)).toBe(at);
		},
	);

	test("has over all its spells the one draw, each with an hour of its own, and a new one when it has broken", () => {
		const { k, seal, difficulty, wet } = bench();
		seal.reset(0);
		let drawn = exponential(wet);
		for (let breaks = 0, from = 0; breaks < 10; from += 200) {
			seal.beginWet(from);
			const hazard = wetHazard(k, difficulty, 0, from);
			const to = from + (breaks % 2 === 0 ? 9 : 80);
			let since = from;
			for (let at = seal.planWet(since, to, 0, low); at < to; at = seal.planWet(since, to, 0, low)) {
				expect(midpoints(hazard, since, at)).toBeCloseTo(drawn, 6);
				seal.endWet(at, low);
				seal.breakWet(at);
				breaks++;
				drawn = exponential(wet);
				since = at;
			}
			seal.endWet(to, low);
			drawn -= midpoints(hazard, since, to);
		}
	});
});

test("a wet seal has over spells of more than an hour the one draw", () => {
	const { k, seal, difficulty, wet } = bench({ "breach.wetScale": 900 });
	seal.reset(0);
	let drawn = exponential(wet);
	for (let from = 0; ; from += 200) {
		seal.beginWet(from);
		const hazard = wetHazard(k, difficulty, 0, from);
		const at = seal.planWet(from, from + 90, 0, low);
		if (at < from + 90) {
			expect(from).toBeGreaterThan(1000);
			expect(midpoints(hazard, from, at)).toBeCloseTo(drawn, 6);
			return;
		}
		seal.endWet(from + 90, low);
		drawn -= midpoints(hazard, from, from + 90);
	}
});

describe("a wet seal above capacity", () => {
	/** Rises by 3 mL a minute from 90 mL at minute 1000, to 240 at the most. */
	const rising: LevelOver = { levelAt: (at) => Math.min(240, 90 + 3 * (at - 1000)), capacity: 100 };

	test("breaks when the hazard of the level over it has added up to its draw", () => {
		const { k, seal, difficulty, wet } = bench({ "breach.wetScale": 60 });
		seal.reset(-500);
		seal.beginWet(1000);
		const at = seal.planWet(1000, 1200, 240, rising);
		const hazard = wetHazard(k, difficulty, -500, 1000, rising.levelAt);
		expect(at).toBeLessThan(1200);
		expect(midpoints(hazard, 1000, at)).toBeCloseTo(exponential(wet), 4);
	});

	test("does not break within a span whose hazard is less, and the next span has the rest of the draw", () => {
		const { k, seal, difficulty, wet } = bench({ "breach.wetScale": 60 });
		seal.reset(-500);
		seal.beginWet(1000);
		expect(seal.planWet(1000, 1005, 105, rising)).toBe(never);
		seal.passWet(1005, rising);
		const at = seal.planWet(1005, 1200, 240, rising);
		const hazard = wetHazard(k, difficulty, -500, 1000, rising.levelAt);
		expect(midpoints(hazard, 1000, at)).toBeCloseTo(exponential(wet), 4);
	});

	test("goes on from below and falls back with what is left of the draw", () => {
		const { k, seal, difficulty, wet } = bench({ "breach.wetScale": 60 });
		const full: LevelOver = { levelAt: () => 130, capacity: 100 };
		seal.reset(-500);
		seal.beginWet(1000);
		seal.planWet(1000, 1008, 90, low);
		seal.passWet(1008, low);
		expect(seal.planWet(1008, 1010, 130, full)).toBe(never);
		seal.passWet(1010, full);
		const at = seal.planWet(1010, 1020, 90, low);
		const below = wetHazard(k, difficulty, -500, 1000);
		const above = wetHazard(k, difficulty, -500, 1000, () => 130);
		expect(midpoints(below, 1000, 1008) + midpoints(above, 1008, 1010) + midpoints(below, 1010, at)).toBeCloseTo(
			exponential(wet),
			6,
		);
		// And over the end of the fill.
		seal.endWet(1015, low);
		seal.beginWet(2000);
		const late = seal.planWet(2000, 2200, 90, low);
		const again = wetHazard(k, difficulty, -500, 2000);
		expect(midpoints(below, 1010, at) - midpoints(below, 1010, 1015)).toBeCloseTo(midpoints(again, 2000, late), 6);
	});

	test("ends above capacity with what the span has used", () => {
		const { k, seal, difficulty, wet } = bench({ "breach.wetScale": 60 });
		const full: LevelOver = { levelAt: () => 500, capacity: 100 };
		seal.reset(0);
		seal.beginWet(1000);
		seal.planWet(1000, 1001, 500, full);
		seal.endWet(1001, full);
		seal.beginWet(2000);
		const at = seal.planWet(2000, 2200, 90, low);
		const above = wetHazard(k, difficulty, 0, 1000, () => 500);
		const below = wetHazard(k, difficulty, 0, 2000);
		expect(midpoints(above, 1000, 1001) + midpoints(below, 2000, at)).toBeCloseTo(exponential(wet), 6);
	});

	test("at capacity it is not above it", () => {
		const { seal } = bench();
		seal.reset(0);
		seal.beginWet(1000);
		const at = seal.planWet(1000, 1001, 100, low);
		expect(at).toBeGreaterThan(1001);
		expect(at).toBeLessThan(never);
	});
});
