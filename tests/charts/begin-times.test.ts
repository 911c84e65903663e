import { describe, expect, test } from "vitest";
import { beginTimes } from "../../src/charts/index.ts";
import { sixBeginnings } from "./begin-examples.ts";
import { document, options, textsOf, wordsOf } from "./chart-words.ts";

describe("the times to begin", () => {
	test("wrap round the clock: a range past its end goes on at its beginning", () => {
		const texts = wordsOf(beginTimes(sixBeginnings, document, options));
		expect(texts).toContain(
			"Begin 14:00: first canister change between 22:40 and 01:40",
		);
		const chart = beginTimes(sixBeginnings, document, options);
		const pieces = [...chart.querySelectorAll("g > title")]
			.filter((title) =>
				title.textContent?.startsWith("change 1: between 22:40"),
			)
			.map((title) => title.parentElement?.querySelectorAll("path").length);
		expect(pieces).toEqual([2]);
	});

	test("name every window that is to be kept clear, the one past midnight at both ends", () => {
		const texts = textsOf(beginTimes(sixBeginnings, document, options));
		expect(texts.filter((text) => text === "small hours")).toHaveLength(2);
		expect(texts.filter((text) => text === "hand-over")).toHaveLength(2);
	});
});
