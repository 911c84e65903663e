/** What a grid of regimens varies, in the order in which it is laid out, and the unit of its values. */
export const axisUnits = {
	dwell: "min",
	suction: "min",
	fill: "mL",
	/** Positive, below ambient. */
	depth: "mmHg",
	/** Minutes after midnight. */
	start: "clock",
	apart: "min",
} as const;
export type AxisName = keyof typeof axisUnits;

export const axisNames = Object.keys(axisUnits) as readonly AxisName[]; // keys forgets the names it lists
