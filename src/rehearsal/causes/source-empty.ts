import type { Cause, Hidden } from "./cause.ts";
import { assumedNumbers } from "./chance.ts";

export const sourceEmpty: Cause<Hidden<"source-empty">> = {
	name: "source-empty",
	words: "the source of solution was empty",
	sights: [
		{
			place: "source",
			seen: ({ process }) => process.source.isEmpty,
			words: "The source hangs empty.",
			absent: ({ process, now }) => `It holds about ${Math.round(Math.max(0, process.sourceAt(now)))} mL.`,
		},
	],
	mendedBy: ["change-source"],
	raises: ["source-empty", "suction-absent"],
	showsAs: "source-empty",
	prepare({ holdsMl }, { liquid }) {
		liquid.source = holdsMl;
	},

	/** By what the shift takes out of a source that was passed over. */
	hazard: ({ dressing: { sourceMl }, totals: { instilledMl } }) => ({
		weight: assumedNumbers["chance.passed-over"].value * Math.min(1, instilledMl / sourceMl),
		draw: (uniform) => ({
			cause: "source-empty",
			onsetMin: 0,
			holdsMl: uniform() * Math.min(instilledMl - 1, 0.9 * sourceMl),
		}),
	}),
};
