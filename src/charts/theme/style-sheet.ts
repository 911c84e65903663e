import { smallPx, textPx } from "./letters.ts";
import { darkShades, darkTheme, type HeatStep, lightShades, lightTheme, type Role, type Theme } from "./palette.ts";

type Paint = readonly [selector: string, property: "fill" | "stroke", role: Role];
/** How a colour is written: by its value, or by the custom property of its name. */
type Colour = (name: string, light: string) => string;

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** `--sw-heat0: #fdf3ea; …`: the grounds of a scale and the text on them as CSS custom properties. */
const stepVariables = (name: string, steps: readonly HeatStep[]): string[] =>
	steps.flatMap(({ ground, text }, step) => [`--sw-${name}${step}:${ground}`, `--sw-${name}${step}-text:${text}`]);

/** `--sw-water: #0072b2; …`: the colours of a theme likewise. */
const themeVariables = ({ heat, ...colours }: Theme): string[] => [
	...Object.entries(colours).map(([name, colour]) => `--sw-${kebab(name)}:${colour}`),
	...stepVariables("heat", heat),
];

/** Light unless the reader's system asks for dark; paper is always light. */
const inBothThemes = (selector: string, light: readonly string[], dark: readonly string[]): string =>
	`${selector}{${light.join(";")}}
@media screen and (prefers-color-scheme:dark){${selector}{${dark.join(";")}}}`;

export const themeRules = (selector: string): string =>
	inBothThemes(selector, themeVariables(lightTheme), themeVariables(darkTheme));

/** Every selector of a rule, under the class of the chart. */
function inChart(rule: string): string {
	const [selectors = "", body = ""] = rule.split("{");
	const within = selectors.split(",").map((selector) => `.sw-chart ${selector}`);
	return `${within.join(",")}{${body}`;
}

/**
 * A sheet that a chart can carry in itself, so that it stands alone; the colours are under a selector too quiet to stop a
 * page's own. A viewer that knows no custom properties paints the light theme.
 */
function styleSheet(
	head: readonly string[],
	shapes: readonly string[],
	paints: readonly Paint[],
	steps: (colour: Colour) => string[],
): string {
	const painted = (colour: Colour): string[] => [
		...paints.map(([selector, property, role]) => `${selector}{${property}:${colour(kebab(role), lightTheme[role])}}`),
		...steps(colour),
	];
	return [
		...head,
		...shapes.map(inChart),
		...painted((_, light) => light).map(inChart),
		"@supports (fill:var(--sw-ink)){",
		...painted((name) => `var(--sw-${name})`).map(inChart),
		"}",
	].join("\n");
}

const scope = ":where(.sw-chart)";

/** What every chart carries. */
export const chartStyle: string = styleSheet(
	[
		themeRules(scope),
		`.sw-chart{font-family:system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","DejaVu Sans",sans-serif;font-size:${textPx}px;font-variant-numeric:tabular-nums;print-color-adjust:exact;-webkit-print-color-adjust:exact}`,
	],
	[
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
		`text.small{font-size:${smallPx}px}`,
	],
	[
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
	],
	(colour) =>
		lightTheme.heat.flatMap(({ ground, text }, step) => [
			`.heat${step}{fill:${colour(`heat${step}`, ground)}}`,
			`text.heat${step}-text{fill:${colour(`heat${step}-text`, text)}}`,
		]),
);

/** What charts of comparisons carry beside `chartStyle`: a sheet of its own, which a day's report can leave out. */
export const comparisonStyle: string = styleSheet(
	[inBothThemes(scope, stepVariables("shade", lightShades), stepVariables("shade", darkShades))],
	[
		".found-edge,.unsure-edge,.ink-edge,.paper-edge{fill:none}",
		".hollow{fill:var(--sw-paper,#fff)}",
		".found-edge{stroke-width:2}",
		".unsure-edge{stroke-width:1.5}",
		".ink-edge{stroke-width:1.5}",
		".thick{stroke-width:3.5}",
		".found-band{fill-opacity:.22}",
		".absent{stroke-dasharray:2 3}",
		".dashed{stroke-dasharray:5 3}",
		".light{stroke-opacity:.55;stroke-width:1}",
		".faint{stroke-opacity:.75}",
		"text.halo,text.on-band{stroke-width:4px;paint-order:stroke;stroke-linejoin:round}",
		"text.strong{font-weight:600}",
	],
	[
		[".found", "fill", "water"],
		[".found-edge", "stroke", "water"],
		[".unsure", "fill", "muted"],
		[".unsure-edge", "stroke", "muted"],
		[".ink", "fill", "ink"],
		[".ink-edge", "stroke", "ink"],
		[".paper-edge", "stroke", "paper"],
		[".clear", "fill", "night"],
		["text.halo", "stroke", "paper"],
		["text.on-band", "stroke", "night"],
	],
	(colour) =>
		lightShades.flatMap((shade, step) => {
			const [ground, text] = [colour(`shade${step}`, shade.ground), colour(`shade${step}-text`, shade.text)];
			return [
				`.shade${step}{fill:${ground}}`,
				`.shade${step}-text{fill:${text}}`,
				`.shade${step}-stroke{stroke:${text}}`,
				`text.shade${step}-text{stroke:${ground};stroke-width:3px;paint-order:stroke;stroke-linejoin:round}`,
			];
		}),
);
