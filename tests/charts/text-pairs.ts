import type { lightTheme } from "../../src/charts/index.ts";

/** Pairs of text and ground that occur in charts and reports. */
export function textPairs(
	theme: typeof lightTheme,
): { readonly text: string; readonly ground: string; readonly where: string }[] {
	const onPaper = (["ink", "muted", "waterText", "alarmText", "canisterText"] as const).flatMap((name) => [
		{ text: theme[name], ground: theme.paper, where: `${name} on paper` },
		{ text: theme[name], ground: theme.night, where: `${name} on night` },
	]);
	const onHeat = theme.heat.map((step, index) => ({
		text: step.text,
		ground: step.ground,
		where: `heat step ${index}`,
	}));
	return [...onPaper, ...onHeat];
}
