import { describe, expect, test } from "vitest";
import { addTo, mergeInto, noMoments } from "../../src/statistics/moments.ts";
import { VectorMoments } from "../../src/statistics/vector-moments.ts";

/** Vectors of three values, the last of which never changes. */
const vectors = (count: number, first = 0) =>
	Array.from({ length: count }, (_, i) => Float64Array.of(Math.sin(first + i) * 1e3, first + i ** 2, 705.4712345));

function momentsOf(rows: readonly Float64Array[]): VectorMoments {
	const moments = new VectorMoments(3);
	for (const row of rows) moments.add(row);
	return moments;
}

describe("moments of vectors", () => {
	test("are those of each value, bit for bit", () => {
		const rows = vectors(40);
		const moments = momentsOf(rows);
		for (let place = 0; place < 3; place++) {
			const one = noMoments();
			for (const row of rows) addTo(one, row[place]);
			expect(moments.at(place)).toEqual(one);
		}
		expect(moments.at(2)).toEqual({ count: 40, mean: 705.4712345, squares: 0 });
	});

	test("of blocks that are merged are those of each value's, bit for bit", () => {
		const blocks = [vectors(10), vectors(1, 90), vectors(0), vectors(25, 40)];
		const merged = new VectorMoments(3);
		const each = [noMoments(), noMoments(), noMoments()];
		for (const block of blocks) {
			const moments = momentsOf(block);
			merged.merge(moments.parts());
			each.forEach((one, place) => {
				mergeInto(one, moments.at(place));
			});
		}
		each.forEach((one, place) => {
			expect(merged.at(place)).toEqual(one);
		});
		expect(merged.parts()).toEqual({
			count: 36,
			mean: each.map(({ mean }) => mean),
			squares: each.map(({ squares }) => squares),
		});
	});

	test("of nothing merged with nothing are none", () => {
		const none = new VectorMoments(2);
		none.merge(new VectorMoments(2).parts());
		expect(none.parts()).toEqual({ count: 0, mean: [0, 0], squares: [0, 0] });
	});
});
