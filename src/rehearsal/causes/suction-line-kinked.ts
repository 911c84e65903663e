import type { Cause, Hidden } from "./cause.ts";
import { kinkCourse, kinksOf } from "./fill-line-kinked.ts";

export const suctionLineKinked: Cause<Hidden<"suction-line-kinked">> = {
	name: "suction-line-kinked",
	words: "the suction line was kinked",
	sights: [
		{
			place: "suction-line",
			seen: ({ process }) => process.lineKinked,
			words: "The suction line is bent flat where the patient lies on it: a kink.",
			absent: "The suction line runs freely from end to end.",
		},
	],
	mendedBy: ["free-suction-line", "new-port", "new-dressing"],
	raises: ["suction-path-obstructed", "suction-absent"],
	begin: (_, { process }) => process.kinks.kink("suction"),
	end(_, { process }) {
		process.kinks.free("suction");
		// A path that opens is a pump start.
		process.portWork(true);
		process.portWork(false);
	},
	hazard: (shift) => ({
		weight: kinksOf(shift, shift.constants["kink.suctionShare"]),
		draw: (uniform) => ({ cause: "suction-line-kinked", ...kinkCourse(shift, uniform) }),
	}),
};
