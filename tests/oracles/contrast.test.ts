import { describe, expect, test } from "vitest";
import { contrast, luminance } from "./contrast.ts";

// Guards the contrast that the program's colours are measured with. Nothing here looks at the program.

const passes = 4.5;

describe("contrast on white", () => {
	test.each([
		// a much quoted pair: the lightest grey that passes and the next, which does not (quoted)
		["#767676", 4.54, true],
		["#777777", 4.48, false],
		// dev.to/michael_lip_…, unitcalctools.com/color-codes/contrast-checker (read)
		["#999999", 2.85, false],
		["#1E293B", 14.63, true],
		["#000000", 21, true],
	])("%s: %d", (colour, printed, enough) => {
		expect(Math.abs(contrast(colour, "#ffffff") - printed)).toBeLessThan(5e-3);
		expect(contrast(colour, "#ffffff") >= passes).toBe(enough);
	});

	test("the luminance of #1E293B is 0.0218", () => {
		// unitcalctools.com/color-codes/contrast-checker (read)
		expect(luminance("#1E293B")).toBeCloseTo(0.0218, 4);
	});
});
