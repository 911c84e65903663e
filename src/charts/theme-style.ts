import { darkTheme, lightTheme, type Theme } from "./palette.ts";

/** `--sw-water: #0072b2; …`: the colours of a theme as CSS custom properties. */
export function themeVariables(theme: Theme): string {
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

const kebab = (name: string): string =>
	name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

const paint = (className: string, declarations: string): string =>
	`.sw-chart .${className}{${declarations}}`;

/** A colour with the light one before it, for a viewer that knows no custom properties. */
const colour = (property: string, name: Exclude<keyof Theme, "heat">): string =>
	`${property}:${lightTheme[name]};${property}:var(--sw-${kebab(name)})`;

const heatRules = lightTheme.heat.flatMap((step, index) => [
	paint(`heat${index}`, `fill:${step.ground};fill:var(--sw-heat${index})`),
	paint(
		`heat${index}-text`,
		`fill:${step.text};fill:var(--sw-heat${index}-text)`,
	),
]);

/** The style sheet that every chart carries in itself, so that it stands alone; no selector is loud enough to stop a page's own. */
export const chartStyle: string = [
	themeRules(":where(.sw-chart)"),
	`.sw-chart{font-family:system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","DejaVu Sans",sans-serif;font-size:13px;font-variant-numeric:tabular-nums;print-color-adjust:exact;-webkit-print-color-adjust:exact}`,
	`.sw-chart text{${colour("fill", "ink")}}`,
	paint("paper", colour("fill", "paper")),
	paint("night", colour("fill", "night")),
	paint("rule", `${colour("stroke", "rule")};fill:none`),
	paint(
		"boundary",
		`${colour("stroke", "muted")};fill:none;stroke-dasharray:1 3`,
	),
	paint("frame", `${colour("stroke", "muted")};fill:none`),
	paint("line", `${colour("stroke", "line")};fill:none;stroke-width:1.5`),
	paint("water", colour("fill", "water")),
	paint("water-edge", `${colour("stroke", "water")};fill:none`),
	paint("hatch-ground", colour("fill", "suctionGround")),
	paint("hatch-stroke", `${colour("stroke", "suctionHatch")};stroke-width:1.6`),
	paint("suction-edge", `${colour("stroke", "suctionHatch")};fill:none`),
	paint("suction-plain", colour("fill", "suctionHatch")),
	paint("alarm", colour("fill", "alarm")),
	paint(
		"alarm-edge",
		`${colour("stroke", "alarm")};fill:none;stroke-width:1.5`,
	),
	paint("care", colour("fill", "care")),
	paint("care-edge", `${colour("stroke", "care")};fill:none;stroke-width:1.4`),
	paint("canister", `${colour("fill", "canister")};fill-opacity:.75`),
	paint("canister-band", `${colour("fill", "canister")};fill-opacity:.28`),
	paint(
		"canister-edge",
		`${colour("stroke", "canisterEdge")};fill:none;stroke-width:1.4`,
	),
	paint("canister-mark", colour("fill", "canisterEdge")),
	paint(
		"band-edge",
		`${colour("stroke", "canisterEdge")};fill:none;stroke-width:.8;stroke-dasharray:2 2`,
	),
	paint(
		"level",
		`${colour("stroke", "canisterEdge")};fill:none;stroke-dasharray:6 3`,
	),
	paint("source", `${colour("fill", "source")};fill-opacity:.45`),
	paint(
		"source-edge",
		`${colour("stroke", "sourceEdge")};fill:none;stroke-width:1.2`,
	),
	paint("pale", `${colour("stroke", "muted")};fill:none;stroke-opacity:.45`),
	...heatRules,
	`.sw-chart text.title{font-size:16px;font-weight:600}`,
	`.sw-chart text.heading{font-weight:600}`,
	`.sw-chart text.small{font-size:11.5px}`,
	`.sw-chart text.muted{${colour("fill", "muted")}}`,
	`.sw-chart text.alarm-text{${colour("fill", "alarmText")}}`,
	`.sw-chart text.canister-text{${colour("fill", "canisterText")}}`,
	`.sw-chart text.halo{${colour("stroke", "paper")};stroke-width:3px;paint-order:stroke;stroke-linejoin:round}`,
].join("\n");
