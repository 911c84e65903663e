import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clockPieces } from "../../src/charts/begin-times/clock-face.ts";
import { beginTimes } from "../../src/charts/index.ts";
import { clockWords } from "../../src/words/index.ts";
import { sixBeginnings } from "./begin-times-examples.ts";
import { document, options, textsOf, wordsOf } from "./example.ts";

describe("the times to begin", () => {
	test("wrap round the clock: a range past its end goes on at its beginning", () => {
		const texts = wordsOf(beginTimes(sixBeginnings, document, options));
		expect(texts).toContain("Begin 14:00: first canister change between 22:40 and 01:40");
		const chart = beginTimes(sixBeginnings, document, options);
		const pieces = [...chart.querySelectorAll("g > title")]
			.filter((title) => title.textContent?.startsWith("change 1: between 22:40"))
			.map((title) => title.parentElement?.querySelectorAll("path").length);
		expect(pieces).toEqual([2]);
	});

	test("name every window that is to be kept clear, the one past midnight at both ends", () => {
		const texts = textsOf(beginTimes(sixBeginnings, document, options));
		expect(texts.filter((text) => text === "small hours")).toHaveLength(2);
		expect(texts.filter((text) => text === "hand-over")).toHaveLength(2);
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
					const sum = pieces.reduce((so, piece) => so + piece.to - piece.from, 0);
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
		expect([0, 425, 1439.7, 1500, -30].map(clockWords)).toEqual(["00:00", "07:05", "00:00", "01:00", "23:30"]);
	});
});
