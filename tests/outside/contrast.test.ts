import { describe, expect, test } from "vitest";
import { darkTheme, lightTheme, textPairs } from "../../src/charts/index.ts";

/** L = 0.2126·R + 0.7152·G + 0.0722·B of linear channels; `knee` is where the curve turns straight. */
function luminance(colour: string, knee = 0.04045): number {
	const channel = (at: number) => {
		const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
		return share <= knee ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	};
	return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

/** (L1 + 0.05)/(L2 + 0.05), the lighter above: w3c/wcag, techniques/general/G18.html, commit 028ef7f (read). */
function contrast(a: string, b: string, knee?: number): number {
	const [x, y] = [luminance(a, knee), luminance(b, knee)];
	return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
}

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

	// Okabe and Ito's eight: EmilHvitfeldt.github.io/r-color-palettes, discrete/khroma/okabeito (read); ratios derived
	const okabeIto = [
		["#000000", 21],
		["#E69F00", 2.2523],
		["#56B4E9", 2.3075],
		["#009E73", 3.4211],
		["#F0E442", 1.3223],
		["#0072B2", 5.1854],
		["#D55E00", 3.8672],
		["#CC79A7", 3.061],
	] as const;

	test.each(okabeIto)("%s of Okabe and Ito: %d", (colour, derived) => {
		expect(Math.abs(contrast(colour, "#ffffff") - derived)).toBeLessThan(5e-4);
	});

	test("of the eight only black and blue can carry text, so the project's text colours are relatives of them", () => {
		expect(
			okabeIto
				.map(([colour]) => colour)
				.filter((colour) => contrast(colour, "#ffffff") >= passes),
		).toEqual(["#000000", "#0072B2"]);
	});

	test("the knee of before May 2021 makes no difference to any pair of the project", () => {
		// 0.03928 before, "no practical effect": w3c/wcag, techniques/general/G18.html (read)
		for (const { text, ground, where } of [
			...textPairs(lightTheme),
			...textPairs(darkTheme),
		]) {
			expect(contrast(text, ground), where).toBeGreaterThanOrEqual(passes);
			expect(contrast(text, ground, 0.03928), where).toBe(
				contrast(text, ground),
			);
		}
	});
});
