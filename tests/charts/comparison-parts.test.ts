import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { centredScale, niceAbove } from "../../src/charts/centred-scale.ts";
import { clockPieces, clockWords } from "../../src/charts/clock-round.ts";
import { figureWords, threeFigures } from "../../src/charts/figures.ts";
import { type Box, placedLabels } from "../../src/charts/place-labels.ts";
import { shadeStep } from "../../src/charts/shade.ts";
import { textWidth } from "../../src/charts/text-width.ts";
import { labelledTicks, valueScale } from "../../src/charts/value-axes.ts";
import { wrappedText } from "../../src/charts/wrapped-text.ts";

test("wrapped text keeps every word and its room, and no number parts from its unit", () => {
	fc.assert(
		fc.property(
			fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { maxLength: 30 }),
			fc.integer({ min: 120, max: 600 }),
			(words, room) => {
				const lines = wrappedText(words.join(" "), 13, room);
				expect(lines.join(" ")).toBe(words.join(" "));
				for (const line of lines)
					expect(textWidth(line, 13)).toBeLessThanOrEqual(room);
			},
		),
	);
	expect(wrappedText("about 220 mL", 13, textWidth("about 220", 13))).toEqual([
		"about",
		"220 mL",
	]);
	expect(wrappedText("one two three", 13, 40, 2).at(-1)).toMatch(/…$/);
});

test("a centred scale holds its values, zero in the middle, ends that a reader can halve", () => {
	fc.assert(
		fc.property(
			fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), {
				minLength: 1,
				maxLength: 5,
			}),
			(values) => {
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
			},
		),
	);
	expect([0, 0.3, 1.2, 7.2, 0.0451, 99].map(niceAbove)).toEqual([
		1, 0.3, 1.5, 8, 0.05, 100,
	]);
});

test("three figures are shown of the largest number, and no unit stands alone", () => {
	expect([[0], [0.0123], [1.5, 0.2], [42], [1234]].map(threeFigures)).toEqual([
		0, 4, 2, 1, 0,
	]);
	expect(figureWords(-0.04, 2, "a day")).toBe("−0.04 a day");
	expect(figureWords(Number.NaN, 2, "a day")).toBe("none");
});

test("the shade of a value grows with it, and all equal is the middle one", () => {
	expect([0, 49, 51, 100].map((value) => shadeStep(value, 0, 100))).toEqual([
		0, 3, 3, 6,
	]);
	expect(shadeStep(5, 5, 5)).toBe(3);
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

describe("a clock of 24 h", () => {
	test("cuts a span at its end and loses none of it", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 2880 }),
				fc.integer({ min: 0, max: 1440 }),
				fc.integer({ min: 0, max: 1439 }),
				(start, length, from) => {
					const pieces = clockPieces(start, start + length, from);
					const sum = pieces.reduce(
						(so, piece) => so + piece.to - piece.from,
						0,
					);
					expect(sum).toBe(length);
					for (const piece of pieces) {
						expect(piece.from).toBeGreaterThanOrEqual(0);
						expect(piece.to).toBeLessThanOrEqual(1440);
					}
				},
			),
		);
	});

	test("is written from 00:00 to 23:59", () => {
		expect([0, 425, 1439.7, 1500, -30].map(clockWords)).toEqual([
			"00:00",
			"07:05",
			"00:00",
			"01:00",
			"23:30",
		]);
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
			const marks: Box[] = labels.map(({ x, y }) => ({
				left: x - 5,
				right: x + 5,
				top: y - 5,
				bottom: y + 5,
			}));
			const boxes = placedLabels(labels, marks, frame, 12).flatMap(
				(place, index) => {
					if (place === null) return [];
					const wide = labels[index]?.widthPx ?? 0;
					const left =
						place.x - { start: 0, middle: wide / 2, end: wide }[place.anchor];
					return [
						{
							left,
							right: left + wide,
							top: place.y - 11,
							bottom: place.y + 2,
						},
					];
				},
			);
			const touch = (a: Box, b: Box) =>
				a.left < b.right &&
				b.left < a.right &&
				a.top < b.bottom &&
				b.top < a.bottom;
			boxes.forEach((box, index) => {
				expect(boxes.slice(index + 1).some((other) => touch(box, other))).toBe(
					false,
				);
				expect(marks.some((mark) => touch(box, mark))).toBe(false);
				expect(box.left >= 0 && box.right <= 400).toBe(true);
			});
		}),
	);
});
