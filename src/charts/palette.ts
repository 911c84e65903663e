/**
 * Colours by what they stand for. Marks are of the Okabe–Ito palette (black, #E69F00, #56B4E9, #009E73, #F0E442, #0072B2,
 * #D55E00, #CC79A7); text colours are darker or lighter relatives of a contrast of 4.5 or better on their ground.
 */
export interface Theme {
	readonly paper: string;
	readonly night: string;
	readonly ink: string;
	readonly muted: string;
	readonly rule: string;
	readonly line: string;
	readonly water: string;
	readonly waterText: string;
	readonly suctionGround: string;
	readonly suctionHatch: string;
	readonly alarm: string;
	readonly alarmText: string;
	readonly care: string;
	readonly canister: string;
	readonly canisterEdge: string;
	readonly canisterText: string;
	readonly source: string;
	readonly sourceEdge: string;
	/** Grounds of the heat strip, from hardly likely to likely, each with the colour of text on it. */
	readonly heat: readonly HeatStep[];
}

export interface HeatStep {
	readonly ground: string;
	readonly text: string;
}

export const lightTheme: Theme = {
	paper: "#ffffff",
	night: "#eef1f6",
	ink: "#16191d",
	muted: "#4a525c",
	rule: "#d9dee5",
	line: "#000000",
	water: "#0072b2",
	waterText: "#005a8e",
	suctionGround: "#e6eaef",
	suctionHatch: "#8793a3",
	alarm: "#d55e00",
	alarmText: "#8a3c00",
	care: "#16191d",
	canister: "#e69f00",
	canisterEdge: "#8f6100",
	canisterText: "#6b4900",
	source: "#56b4e9",
	sourceEdge: "#00669f",
	heat: [
		{ ground: "#fdf3ea", text: "#16191d" },
		{ ground: "#fadcc3", text: "#16191d" },
		{ ground: "#f2b68a", text: "#16191d" },
		{ ground: "#e58542", text: "#16191d" },
		{ ground: "#a84800", text: "#ffffff" },
		{ ground: "#6b2d00", text: "#ffffff" },
	],
};

export const darkTheme: Theme = {
	paper: "#14181d",
	night: "#1f262f",
	ink: "#eef1f4",
	muted: "#b4bdc8",
	rule: "#39424d",
	line: "#ffffff",
	water: "#56b4e9",
	waterText: "#7cc6f0",
	suctionGround: "#29313b",
	suctionHatch: "#7d8a9a",
	alarm: "#e8772a",
	alarmText: "#ffa66b",
	care: "#eef1f4",
	canister: "#e69f00",
	canisterEdge: "#f3c35e",
	canisterText: "#f3c35e",
	source: "#0072b2",
	sourceEdge: "#7cc6f0",
	heat: [
		{ ground: "#2a211b", text: "#eef1f4" },
		{ ground: "#45301f", text: "#eef1f4" },
		{ ground: "#6f4120", text: "#ffffff" },
		{ ground: "#d9792f", text: "#16191d" },
		{ ground: "#f2a56a", text: "#16191d" },
		{ ground: "#ffd9bb", text: "#16191d" },
	],
};

/** Pairs of text and ground that occur in charts and reports; a test computes the contrast of each. */
export function textPairs(theme: Theme): {
	readonly text: string;
	readonly ground: string;
	readonly where: string;
}[] {
	const onPaper = (
		["ink", "muted", "waterText", "alarmText", "canisterText"] as const
	).flatMap((name) => [
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
