import type { Tissue } from "../../vocabulary/index.ts";

/**
 * Depths that the trade uses by tissue, mmHg below ambient. Common practice, no source, and local practice varies: −125 ordinary; −150, up
 * to −175, for a large necrotising soft-tissue wound; −50 to −75 on the abdomen or with organs exposed.
 */
export const usualDepth: { readonly [T in Tissue]: { readonly least: number; readonly most: number } } = {
	"soft-tissue": { least: 75, most: 150 },
	"necrotic-soft-tissue": { least: 100, most: 175 },
	"open-abdomen": { least: 50, most: 75 },
	"exposed-organ": { least: 50, most: 75 },
};

/** Dwells and suction periods that the defaults of the model were set for, min. Common practice, no source. */
export const usualDwellMin = { least: 1, most: 30 };
export const usualSuctionMin = { least: 60, most: 480 };

/** Longest dwell for its suction period. Assumed: suction is on for most of a cycle in every programme in use. */
export const mostDwellPerSuction = 0.5;

/**
 * More exudate than a wound gives, by area and in all; what is beyond is rather a slip of a unit, or a fistula. Assumed,
 * no source: the wettest wounds of the examples give 1.3 mL/cm2/d.
 */
export const mostExudate = { mlPerCm2PerDay: 5, mlPerDay: 3000 };
