import { describe, expect, test } from "vitest";
import { darkTheme, lightTheme } from "../../src/charts/index.ts";
import { darkShades, lightShades, shadeStep } from "../../src/charts/theme/palette.ts";
import { contrast } from "../oracles/contrast.ts";
import { textPairs } from "./text-pairs.ts";

// From memory: #767676 on white is the lightest grey that passes 4.5, #777777 the darkest that fails.
test("the formula parts #767676 from #777777 on white", () => {
	expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
	expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
	expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
});

describe.each([
	["light", lightTheme],
	["dark", darkTheme],
] as const)("in the %s theme", (_, theme) => {
	test.each(textPairs(theme))("$where reads at 4.5 or better", ({ text, ground }) => {
		expect(contrast(text, ground)).toBeGreaterThanOrEqual(4.5);
	});

	// 3:1 for graphical objects: w3c/wcag, success criterion 1.4.11.
	test.each(["water", "alarm", "care", "canisterEdge", "sourceEdge", "line", "suctionHatch"] as const)(
		"the mark of %s stands out at 3 or better",
		(name) => {
			expect(contrast(theme[name], theme.paper)).toBeGreaterThanOrEqual(3);
		},
	);

	test("heat grows steadily away from the paper", () => {
		const steps = theme.heat.map((step) => contrast(step.ground, theme.paper));
		expect(steps).toEqual(steps.toSorted((a, b) => a - b));
	});
});

// Okabe and Ito's palette: EmilHvitfeldt.github.io/r-color-palettes, discrete/khroma/okabeito.
test("the marks of water, alarm, canister and source are of the palette that most eyes can tell apart", () => {
	const palette = ["#000000", "#e69f00", "#56b4e9", "#009e73", "#f0e442", "#0072b2", "#d55e00", "#cc79a7"];
	const { water, alarm, canister, source } = lightTheme;
	expect([water, alarm, canister, source].every((colour) => palette.includes(colour))).toBe(true);
});

describe.each([
	["light", lightShades, lightTheme.paper],
	["dark", darkShades, darkTheme.paper],
] as const)("on a map in the %s theme", (_, shades, paper) => {
	test("every number reads at 4.5 or better on its shade", () => {
		for (const { text, ground } of shades) expect(contrast(text, ground), ground).toBeGreaterThanOrEqual(4.5);
	});

	test("shades grow steadily away from the paper, in grey too", () => {
		const steps = shades.map(({ ground }) => contrast(ground, paper));
		expect(steps).toEqual(steps.toSorted((a, b) => a - b));
		expect(new Set(steps).size).toBe(shades.length);
	});
});

test("the shade of a value grows with it, and all equal is the middle one", () => {
	expect([0, 49, 51, 100].map((value) => shadeStep(value, 0, 100))).toEqual([0, 3, 3, 6]);
	expect(shadeStep(5, 5, 5)).toBe(3);
});
