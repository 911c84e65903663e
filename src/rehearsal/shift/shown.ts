import type { Bedside } from "./bedside.ts";

/** Share of the set depth at which a dressing looks held, and depth below which it looks slack, mmHg; assumed. */
const firmShare = 0.8;
const slackMmHg = 10;

/** How depth shows: held, lower than it should be, or not at all. */
export type DepthShown = "held" | "low" | "none";

export function depthShown(depthMmHg: number, setDepthMmHg: number): DepthShown {
	if (depthMmHg >= firmShare * setDepthMmHg) return "held";
	return depthMmHg >= slackMmHg ? "low" : "none";
}

/** What shows without a look. */
export interface Shown {
	readonly atMin: number;
	/** `signBits` of the bedside. */
	readonly signs: number;
	readonly depth: DepthShown;
}

/** What shows at the bedside now, as a belief takes note of it. */
export function shownAt({ process, now, signBits }: Bedside): Shown {
	return { atMin: now, signs: signBits, depth: depthShown(process.depthAt(now), process.regimen.depthMmHg) };
}
