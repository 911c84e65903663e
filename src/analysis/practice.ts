import type { Tissue } from "../scenario/index.ts";

/** A range of depth, mmHg below ambient. */
export interface DepthRange {
	readonly least: number;
	readonly most: number;
}

/**
 * Depths that the trade uses by tissue. Common practice, no source, and local practice varies: −125 ordinary; −150, up
 * to −175, for a large necrotising soft-tissue wound; −50 to −75 on the abdomen or with organs exposed.
 */
export const usualDepth: { readonly [T in Tissue]: DepthRange } = {
	"soft-tissue": { least: 75, most: 150 },
	"necrotic-soft-tissue": { least: 100, most: 175 },
	"open-abdomen": { least: 50, most: 75 },
	"exposed-organ": { least: 50, most: 75 },
};

/** Dwells and suction periods that the defaults of the model were set for, min. Common practice, no source. */
export const usualDwellMin = { least: 1, most: 30 };
export const usualSuctionMin = { least: 60, most: 480 };

/** A usual programme: −125 mmHg, a dwell of 10 min, a suction period of 3.5 h. Common practice, no source. */
export const usualProgramme = {
	depthMmHg: 125,
	dwellMin: 10,
	suctionMin: 210,
};
