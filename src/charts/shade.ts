import type { HeatStep } from "./palette.ts";

/**
 * Grounds of a map of values, from least to most: one blue that grows away from the paper, so that it reads in grey too, each
 * with the colour of text on it (contrast 4.5 or better).
 */
export const lightShades: readonly HeatStep[] = [
	{ ground: "#eef5fb", text: "#16191d" },
	{ ground: "#d3e5f5", text: "#16191d" },
	{ ground: "#a9cdeb", text: "#16191d" },
	{ ground: "#79b0dc", text: "#16191d" },
	{ ground: "#4f96cd", text: "#16191d" },
	{ ground: "#0f65a3", text: "#ffffff" },
	{ ground: "#0a3f6b", text: "#ffffff" },
];

export const darkShades: readonly HeatStep[] = [
	{ ground: "#1e2731", text: "#eef1f4" },
	{ ground: "#243a4f", text: "#eef1f4" },
	{ ground: "#2a5075", text: "#eef1f4" },
	{ ground: "#2f6698", text: "#ffffff" },
	{ ground: "#5c9bd1", text: "#16191d" },
	{ ground: "#93c1e8", text: "#16191d" },
	{ ground: "#cfe5f8", text: "#16191d" },
];

/** Step of a value between the least and the most of its measure; the middle one where all are equal. */
export function shadeStep(value: number, least: number, most: number): number {
	const count = lightShades.length;
	if (!(most > least)) return Math.floor(count / 2);
	const share = (value - least) / (most - least);
	return Math.min(count - 1, Math.max(0, Math.floor(share * count)));
}
