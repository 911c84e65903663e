/**
 * Colours by what they stand for: on light paper, on dark paper. Marks are of the Okabe–Ito palette (black, #E69F00, #56B4E9,
 * #009E73, #F0E442, #0072B2, #D55E00, #CC79A7); text colours are darker or lighter relatives of a contrast of 4.5 or better on
 * their ground.
 */
const colours = {
	paper: ["#ffffff", "#14181d"],
	night: ["#eef1f6", "#1f262f"],
	ink: ["#16191d", "#eef1f4"],
	muted: ["#4a525c", "#b4bdc8"],
	rule: ["#d9dee5", "#39424d"],
	line: ["#000000", "#ffffff"],
	water: ["#0072b2", "#56b4e9"],
	waterText: ["#005a8e", "#7cc6f0"],
	suctionGround: ["#e6eaef", "#29313b"],
	suctionHatch: ["#8793a3", "#7d8a9a"],
	alarm: ["#d55e00", "#e8772a"],
	alarmText: ["#8a3c00", "#ffa66b"],
	care: ["#16191d", "#eef1f4"],
	canister: ["#e69f00", "#e69f00"],
	canisterEdge: ["#8f6100", "#f3c35e"],
	canisterText: ["#6b4900", "#f3c35e"],
	source: ["#56b4e9", "#0072b2"],
	sourceEdge: ["#00669f", "#7cc6f0"],
} as const;

export type Role = keyof typeof colours;

/** A ground with the colour of text on it. */
export interface HeatStep {
	readonly ground: string;
	readonly text: string;
}

export type Theme = { readonly [R in Role]: string } & {
	/** Grounds of the heat strip, from hardly likely to likely. */
	readonly heat: readonly HeatStep[];
};

function themeOf(paper: 0 | 1, heat: readonly HeatStep[]): Theme {
	const painted = Object.entries(colours).map(([role, pair]) => [role, pair[paper]]);
	return { ...(Object.fromEntries(painted) as { [R in Role]: string }), heat }; // a colour for each role, by construction
}

/** Grounds in runs: the colour of text, then the grounds that it stands on. */
const steps = (...runs: readonly (readonly [text: string, ...grounds: string[]])[]): readonly HeatStep[] =>
	runs.flatMap(([text, ...grounds]) => grounds.map((ground) => ({ ground, text })));

export const lightTheme: Theme = themeOf(
	0,
	steps(["#16191d", "#fdf3ea", "#fadcc3", "#f2b68a", "#e58542"], ["#ffffff", "#a84800", "#6b2d00"]),
);

export const darkTheme: Theme = themeOf(
	1,
	steps(["#eef1f4", "#2a211b", "#45301f"], ["#ffffff", "#6f4120"], ["#16191d", "#d9792f", "#f2a56a", "#ffd9bb"]),
);

/** Lower edges of the steps of heat; a chance below the first is left bare. */
export const heatEdges = [0.005, 0.02, 0.05, 0.1, 0.2, 0.4] as const;

/** Step of heat for a probability, or null for bare paper. */
export function heatStep(probability: number): number | null {
	const step = heatEdges.findLastIndex((edge) => probability >= edge);
	return step === -1 ? null : step;
}

/** Grounds of a map, from least to most: one blue, readable in grey, with text of a contrast of 4.5 or better. */
export const lightShades = steps(
	["#16191d", "#eef5fb", "#d3e5f5", "#a9cdeb", "#79b0dc", "#4f96cd"],
	["#ffffff", "#0f65a3", "#0a3f6b"],
);

export const darkShades = steps(
	["#eef1f4", "#1e2731", "#243a4f", "#2a5075"],
	["#ffffff", "#2f6698"],
	["#16191d", "#5c9bd1", "#93c1e8", "#cfe5f8"],
);

/** Step of a value between the least and the most of its measure; the middle one where all are equal. */
export function shadeStep(value: number, least: number, most: number): number {
	const count = lightShades.length;
	if (!(most > least)) return Math.floor(count / 2);
	const share = (value - least) / (most - least);
	return Math.min(count - 1, Math.max(0, Math.floor(share * count)));
}
