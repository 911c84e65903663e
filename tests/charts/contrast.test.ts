import { describe, expect, test } from "vitest";
import { darkTheme, lightTheme, textPairs } from "../../src/charts/index.ts";
import { darkShades, lightShades } from "../../src/charts/shade.ts";

/**
 * Contrast ratio of two colours, (L1 + 0.05)/(L2 + 0.05) with relative luminance
 * L = 0.2126·R + 0.7152·G + 0.0722·B, each channel c/12.92 up to 0.04045, else ((c + 0.055)/1.055)^2.4.
 * Source: w3c/wcag, techniques/general/G18.html.
 */
function contrast(a: string, b: string): number {
	const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort(
		(x, y) => y - x,
	);
	return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
	const channel = (at: number): number => {
		const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
		return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	};
	return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

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
	test.each(textPairs(theme))(
		"$where reads at 4.5 or better",
		({ text, ground }) => {
			expect(contrast(text, ground)).toBeGreaterThanOrEqual(4.5);
		},
	);

	// 3:1 for graphical objects: w3c/wcag, success criterion 1.4.11.
	test.each([
		"water",
		"alarm",
		"care",
		"canisterEdge",
		"sourceEdge",
		"line",
		"suctionHatch",
	] as const)("the mark of %s stands out at 3 or better", (name) => {
		expect(contrast(theme[name], theme.paper)).toBeGreaterThanOrEqual(3);
	});

	test("heat grows steadily away from the paper", () => {
		const steps = theme.heat.map((step) => contrast(step.ground, theme.paper));
		expect(steps).toEqual(steps.toSorted((a, b) => a - b));
	});
});

// Okabe and Ito's palette: EmilHvitfeldt.github.io/r-color-palettes, discrete/khroma/okabeito.
test("the marks of water, alarm, canister and source are of the palette that most eyes can tell apart", () => {
	const palette = [
		"#000000",
		"#e69f00",
		"#56b4e9",
		"#009e73",
		"#f0e442",
		"#0072b2",
		"#d55e00",
		"#cc79a7",
	];
	const { water, alarm, canister, source } = lightTheme;
	expect(
		[water, alarm, canister, source].every((colour) =>
			palette.includes(colour),
		),
	).toBe(true);
});

describe.each([
	["light", lightShades, lightTheme.paper],
	["dark", darkShades, darkTheme.paper],
] as const)("on a map in the %s theme", (_, shades, paper) => {
	test("every number reads at 4.5 or better on its shade", () => {
		for (const { text, ground } of shades)
			expect(contrast(text, ground), ground).toBeGreaterThanOrEqual(4.5);
	});

	test("shades grow steadily away from the paper, in grey too", () => {
		const steps = shades.map(({ ground }) => contrast(ground, paper));
		expect(steps).toEqual(steps.toSorted((a, b) => a - b));
		expect(new Set(steps).size).toBe(shades.length);
	});
});
