import { darkTheme, lightTheme, type Theme } from "./palette.ts";

/** `--sw-water: #0072b2; …`: the colours of a theme as CSS custom properties. */
function themeVariables(theme: Theme): string {
	const { heat, ...colours } = theme;
	const plain = Object.entries(colours).map(
		([name, colour]) => `--sw-${kebab(name)}:${colour}`,
	);
	const steps = heat.flatMap((step, index) => [
		`--sw-heat${index}:${step.ground}`,
		`--sw-heat${index}-text:${step.text}`,
	]);
	return [...plain, ...steps].join(";");
}

/** Light unless the reader's system asks for dark; paper is always light. */
export const themeRules = (selector: string): string =>
	[
		`${selector}{${themeVariables(lightTheme)}}`,
		`@media screen and (prefers-color-scheme:dark){${selector}{${themeVariables(darkTheme)}}}`,
	].join("\n");

export const kebab = (name: string): string =>
	name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

export type Role = Exclude<keyof Theme, "heat">;

/** What is painted in which colour: selector within a chart, property, role in the theme. */
const paints: readonly (readonly [
	selector: string,
	property: "fill" | "stroke",
	role: Role,
])[] = [
	["text", "fill", "ink"],
	["text.muted", "fill", "muted"],
	["text.alarm-text", "fill", "alarmText"],
	["text.canister-text", "fill", "canisterText"],
	[".paper", "fill", "paper"],
	[".night", "fill", "night"],
	[".rule", "stroke", "rule"],
	[".boundary", "stroke", "muted"],
	[".line", "stroke", "line"],
	[".water", "fill", "water"],
	[".water-slender", "stroke", "water"],
	[".hatch-ground", "fill", "suctionGround"],
	[".hatch-stroke", "stroke", "suctionHatch"],
	[".suction-edge", "stroke", "suctionHatch"],
	[".alarm", "fill", "alarm"],
	[".alarm-edge", "stroke", "alarm"],
	[".care-edge", "stroke", "care"],
	[".canister", "fill", "canister"],
	[".canister-band", "fill", "canister"],
	[".canister-edge", "stroke", "canisterEdge"],
	[".canister-mark", "fill", "canisterEdge"],
	[".band-edge", "stroke", "canisterEdge"],
	[".level", "stroke", "canisterEdge"],
	[".source", "fill", "source"],
	[".source-edge", "stroke", "sourceEdge"],
	[".pale", "stroke", "muted"],
];

/** The same marks without their colours. */
const shapes: readonly string[] = [
	".rule,.boundary,.line,.suction-edge,.alarm-edge,.care-edge,.canister-edge,.band-edge,.level,.source-edge,.pale{fill:none}",
	".boundary{stroke-dasharray:1 3}",
	".line,.alarm-edge{stroke-width:1.5}",
	".water-slender{stroke-width:.9}",
	".hatch-stroke{stroke-width:1.6}",
	".care-edge,.canister-edge{stroke-width:1.4}",
	".canister{fill-opacity:.75}",
	".canister-band{fill-opacity:.28}",
	".band-edge{stroke-width:.8;stroke-dasharray:2 2}",
	".level{stroke-dasharray:6 3}",
	".source{fill-opacity:.45}",
	".source-edge{stroke-width:1.2}",
	".pale{stroke-opacity:.45}",
	"text.title{font-size:16px;font-weight:600}",
	"text.heading{font-weight:600}",
	"text.small{font-size:11.5px}",
];

/** Every selector of a list, under the class of the chart. */
export const inChart = (rule: string): string => {
	const [selectors = "", body = ""] = rule.split("{");
	return `${selectors
		.split(",")
		.map((selector) => `.sw-chart ${selector}`)
		.join(",")}{${body}`;
};

/** The paints, each with its light colour or with its custom property. */
const painted = (colour: (name: string, light: string) => string): string =>
	[
		...paints.map(
			([selector, property, role]) =>
				`${selector}{${property}:${colour(kebab(role), lightTheme[role])}}`,
		),
		...lightTheme.heat.flatMap((step, index) => [
			`.heat${index}{fill:${colour(`heat${index}`, step.ground)}}`,
			`text.heat${index}-text{fill:${colour(`heat${index}-text`, step.text)}}`,
		]),
	]
		.map(inChart)
		.join("\n");

/**
 * The style sheet that every chart carries in itself, so that it stands alone; the colours are under a selector too quiet to
 * stop a page's own. A viewer that knows no custom properties paints the light theme.
 */
export const chartStyle: string = [
	themeRules(":where(.sw-chart)"),
	`.sw-chart{font-family:system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","DejaVu Sans",sans-serif;font-size:13px;font-variant-numeric:tabular-nums;print-color-adjust:exact;-webkit-print-color-adjust:exact}`,
	...shapes.map(inChart),
	painted((_, light) => light),
	`@supports (fill:var(--sw-ink)){`,
	painted((name) => `var(--sw-${name})`),
	"}",
].join("\n");
