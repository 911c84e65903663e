import { describe, expect, test } from "vitest";
import { Substream } from "../../src/engine/index.ts";
import { causeCounts, drawCase, drawCauses, hazardsOf } from "../../src/rehearsal/shift/draw-case.ts";
import { wilson } from "../../src/statistics/index.ts";
import { hiding } from "./cases.ts";

const weightOf = (of: ReturnType<typeof hiding>, cause: string): number =>
	hazardsOf(of).find((hazard) => hazard.cause === cause)?.weight ?? 0;

describe("drawn cases", () => {
	const of = hiding([], { transferMin: 130 });
	const hazards = hazardsOf(of);
	const drawn = Array.from({ length: 20_000 }, (_, i) => {
		const stream = new Substream(`case ${i}`, "draw", 0);
		return drawCauses(hazards, () => stream.uniform());
	});

	test("hide none, one or two causes in their shares", () => {
		[causeCounts.none, causeCounts.one, causeCounts.two].forEach((share, count) => {
			const hits = drawn.filter(({ length }) => length === count).length;
			expect(Math.abs(hits / 20_000 - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / 20_000));
		});
	});

	test("single causes come by the weights of the model", () => {
		const single = drawn.flatMap((hides) => (hides.length === 1 ? hides : []));
		const sum = hazards.reduce((all, { weight }) => all + weight, 0);
		for (const { cause, weight } of hazards) {
			const hits = single.filter((hidden) => hidden.cause === cause).length;
			const p = weight / sum;
			expect(Math.abs(hits / single.length - p), cause).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / single.length));
		}
	});

	test("two causes are never of one kind", () => {
		for (const hides of drawn) expect(new Set(hides.map(({ cause }) => cause)).size).toBe(hides.length);
	});

	test("a fifth of the kinks free themselves", () => {
		const kinks = drawn.flat().filter((hidden) => hidden.cause === "suction-line-kinked");
		const freed = kinks.filter((hidden) => "lastsMin" in hidden && Number.isFinite(hidden.lastsMin)).length;
		const { low, high } = wilson(freed, kinks.length);
		expect(low - 0.02).toBeLessThan(0.2);
		expect(high + 0.02).toBeGreaterThan(0.2);
	});

	test("the same seed draws the same case, another seed another", () => {
		expect(drawCase(of, "tuesday")).toEqual(drawCase(of, "tuesday"));
		const some = ["a", "b", "c", "d", "e"].map((seed) => JSON.stringify(drawCase(of, seed).rehearsal.hides));
		expect(new Set(some).size).toBeGreaterThan(2);
	});

	test("a scenario without a rehearsal can be drawn from as well", () => {
		const { rehearsal: _, ...plain } = of;
		expect(drawCase(plain, "a").rehearsal.brief).not.toBe("");
	});
});

describe("the weights of causes follow the model's assumptions", () => {
	const of = hiding([], { transferMin: 130 });

	test("kinks by their rate, 0.004 /h over 8 h, three fifths of them in the suction line", () => {
		expect(weightOf(of, "suction-line-kinked")).toBeCloseTo(0.004 * 8 * 0.6, 12);
		expect(weightOf(of, "fill-line-kinked")).toBeCloseTo(0.004 * 8 * 0.4, 12);
	});

	test("a longer dwell brings more wet breaches (common practice, no source: shorter dwell, fewer leaks)", () => {
		const longer = {
			...of,
			dressings: of.dressings.map((dressing) => ({
				...dressing,
				regimens: dressing.regimens.map((regimen) => ({ ...regimen, dwellMin: 20 })),
			})),
		};
		expect(weightOf(longer, "seal-breach")).toBeGreaterThan(1.5 * weightOf(of, "seal-breach"));
	});

	test("a transfer of a wet dressing dislodges it fifteen times as often as of a held one", () => {
		const wet = hiding([], { transferMin: 123 });
		expect(weightOf(wet, "dressing-dislodged") / weightOf(of, "dressing-dislodged")).toBeCloseTo(15, 6);
	});

	test("without a transfer nothing is dislodged, without a fill no source runs out", () => {
		expect(weightOf(hiding([]), "dressing-dislodged")).toBe(0);
		const dry = {
			...of,
			dressings: of.dressings.map((dressing) => ({
				...dressing,
				regimens: dressing.regimens.map((regimen) => ({
					...regimen,
					fillMl: 0,
					dwellMin: 0,
					suctionMin: Number.POSITIVE_INFINITY,
				})),
			})),
		};
		for (const cause of ["source-empty", "fill-line-kinked"]) expect(weightOf(dry, cause)).toBe(0);
	});
});
