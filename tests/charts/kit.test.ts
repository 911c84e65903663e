import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fittedText, textWidth, wrappedText } from "../../src/charts/kit/fitted-text.ts";
import { type Box, placedLabels, stackedRows } from "../../src/charts/kit/label-places.ts";
import { centredScale, labelledTicks, niceAbove, valueScale } from "../../src/charts/kit/value-axis.ts";

test("wrapped text keeps every word and its room, and no number parts from its unit", () => {
	fc.assert(
		fc.property(
			fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { maxLength: 30 }),
			fc.integer({ min: 120, max: 600 }),
			(words, room) => {
				const lines = wrappedText(words.join(" "), 13, room);
				expect(lines.join(" ")).toBe(words.join(" "));
				for (const line of lines) expect(textWidth(line, 13)).toBeLessThanOrEqual(room);
			},
		),
	);
	expect(wrappedText("about 220 mL", 13, textWidth("about 220", 13))).toEqual(["about", "220 mL"]);
	expect(wrappedText("one two three", 13, 40, 2).at(-1)).toMatch(/…$/);
});

test("a centred scale holds its values, zero in the middle, ends that a reader can halve", () => {
	fc.assert(
		fc.property(fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 5 }), (values) => {
			const { x, most } = centredScale(values, 100, 300);
			expect(x(0)).toBe(200);
			for (const value of values) {
				expect(x(value)).toBeGreaterThanOrEqual(100 - 1e-6);
				expect(x(value)).toBeLessThanOrEqual(300 + 1e-6);
			}
			const largest = Math.max(...values.map(Math.abs));
			// Below that it is rounding of the machine, which spreads over no scale.
			if (largest >= 1e-9) expect(most).toBeLessThanOrEqual(largest * 1.51);
			else expect(most).toBe(1);
		}),
	);
	expect([0, 0.3, 1.2, 7.2, 0.0451, 99].map(niceAbove)).toEqual([1, 0.3, 1.5, 8, 0.05, 100]);
});

describe("ticks of values", () => {
	test("tell themselves apart", () => {
		fc.assert(
			fc.property(
				fc.double({ min: -1e4, max: 1e4, noNaN: true }),
				fc.double({ min: 1e-4, max: 1e4, noNaN: true }),
				(least, range) => {
					const scale = valueScale([least, least + range], 6);
					const labels = labelledTicks(scale, 6).map((tick) => tick.label);
					expect(new Set(labels).size).toBe(labels.length);
				},
			),
		);
	});

	test("hold a lone value in their midst, and begin at zero for a lone zero", () => {
		expect(valueScale([4], 4).domain()).toEqual([2, 6]);
		expect(valueScale([0], 4).domain()).toEqual([0, 1]);
		expect(valueScale([], 4).domain()).toEqual([0, 1]);
	});
});

test("labels of points touch neither each other nor a mark nor the edge", () => {
	const frame = { left: 0, right: 400, top: 0, bottom: 300 };
	const points = fc.array(
		fc.record({
			x: fc.integer({ min: 0, max: 400 }),
			y: fc.integer({ min: 0, max: 300 }),
			widthPx: fc.integer({ min: 5, max: 120 }),
			clearPx: fc.constant(11),
		}),
		{ maxLength: 25 },
	);
	fc.assert(
		fc.property(points, (labels) => {
			const marks: Box[] = labels.map(({ x, y }) => ({ left: x - 5, right: x + 5, top: y - 5, bottom: y + 5 }));
			const boxes = placedLabels(labels, marks, frame, 12).flatMap((place, index) => {
				if (place === null) return [];
				const wide = labels[index]?.widthPx ?? 0;
				const left = place.x - { start: 0, middle: wide / 2, end: wide }[place.anchor];
				return [{ left, right: left + wide, top: place.y - 11, bottom: place.y + 2 }];
			});
			const touch = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
			boxes.forEach((box, index) => {
				expect(boxes.slice(index + 1).some((other) => touch(box, other))).toBe(false);
				expect(marks.some((mark) => touch(box, mark))).toBe(false);
				expect(box.left >= 0 && box.right <= 400).toBe(true);
			});
		}),
	);
});

test("labels of one row never overlap, however they crowd", () => {
	const extents = fc.array(
		fc
			.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 1, max: 300 }))
			.map(([left, width]) => ({ left, right: left + width })),
		{ maxLength: 60 },
	);
	fc.assert(
		fc.property(extents, (labels) => {
			const rows = stackedRows(labels, 8);
			labels.forEach((a, i) => {
				labels.forEach((b, j) => {
					if (i < j && rows[i] === rows[j]) expect(a.right + 8 <= b.left || b.right + 8 <= a.left).toBe(true);
				});
			});
		}),
	);
});

test("a title is cut to its room with an ellipsis", () => {
	const cut = fittedText("A title that is much longer than its chart is wide", 17, 120);
	expect(cut.endsWith("…")).toBe(true);
	expect(textWidth(cut, 17)).toBeLessThanOrEqual(120);
	expect(fittedText("short", 17, 120)).toBe("short");
});
