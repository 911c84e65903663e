import type { Cause, Hidden } from "./cause.ts";
import { anyTime, assumedNumbers, comesAt } from "./chance.ts";

export const leftOff: Cause<Hidden<"left-off">> = {
	name: "left-off",
	words: "the therapy was left switched off",
	sights: [
		{
			place: "unit",
			seen: ({ stopped }) => stopped,
			words: "The therapy unit is switched off.",
			absent: "The therapy unit is on.",
		},
	],
	mendedBy: ["resume"],
	raises: ["suction-absent"],
	possible: ({ process, stopped }) => process.phase !== "change" && !stopped,
	begin: (_, bed) => bed.switchOff(true),
	end: (_, bed) => bed.switchOff(false),
	hazard: (shift) => ({
		weight: assumedNumbers["chance.left-off"].value * shift.hours,
		draw: (uniform) => ({
			cause: "left-off",
			...comesAt(anyTime(uniform(), shift)),
			lastsMin: Number.POSITIVE_INFINITY,
		}),
	}),
};
