import { type HeatStep, lightTheme } from "./palette.ts";
import { darkShades, lightShades } from "./shade.ts";
import { inChart, kebab, type Role } from "./theme-style.ts";

/** Painted in the colours of the theme: selector within a chart, property, role. */
const paints: readonly (readonly [string, "fill" | "stroke", Role])[] = [
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
];

const shapes: readonly string[] = [
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
];

const variables = (steps: readonly HeatStep[]): string =>
	steps
		.flatMap((step, index) => [
			`--sw-shade${index}:${step.ground}`,
			`--sw-shade${index}-text:${step.text}`,
		])
		.join(";");

/** The colours of shade, where the theme has its own. */
const shadeRules = (selector: string): string =>
	[
		`${selector}{${variables(lightShades)}}`,
		`@media screen and (prefers-color-scheme:dark){${selector}{${variables(darkShades)}}}`,
	].join("\n");

const painted = (colour: (name: string, light: string) => string): string =>
	[
		...paints.map(
			([selector, property, role]) =>
				`${selector}{${property}:${colour(kebab(role), lightTheme[role])}}`,
		),
		...lightShades.flatMap((step, index) => {
			const ground = colour(`shade${index}`, step.ground);
			const text = colour(`shade${index}-text`, step.text);
			return [
				`.shade${index}{fill:${ground}}`,
				`.shade${index}-text{fill:${text}}`,
				`.shade${index}-stroke{stroke:${text}}`,
				`text.shade${index}-text{stroke:${ground};stroke-width:3px;paint-order:stroke;stroke-linejoin:round}`,
			];
		}),
	]
		.map(inChart)
		.join("\n");

/**
 * What the charts of comparisons carry beside `chartStyle`; a page that holds them unstyled (`styled: false`) needs both.
 * It is a sheet of its own so that the report of a day does not carry it.
 */
export const comparisonStyle: string = [
	shadeRules(":where(.sw-chart)"),
	...shapes.map(inChart),
	painted((_, light) => light),
	"@supports (fill:var(--sw-ink)){",
	painted((name) => `var(--sw-${name})`),
	"}",
].join("\n");
