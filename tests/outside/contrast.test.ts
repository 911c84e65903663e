import { expect, test } from "vitest";
import { darkTheme, lightTheme } from "../../src/charts/index.ts";
import { textPairs } from "../charts/text-pairs.ts";
import { contrast } from "../oracles/contrast.ts";

const passes = 4.5;

test("the knee of before May 2021 makes no difference to any pair of the project", () => {
	// 0.03928 before, "no practical effect": w3c/wcag, techniques/general/G18.html (read)
	for (const { text, ground, where } of [...textPairs(lightTheme), ...textPairs(darkTheme)]) {
		expect(contrast(text, ground), where).toBeGreaterThanOrEqual(passes);
		expect(contrast(text, ground, 0.03928), where).toBe(contrast(text, ground));
	}
});
