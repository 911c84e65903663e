import type { Bed } from "../places/bed.ts";
import type { Cause, Hidden } from "./cause.ts";
import { assumedNumbers } from "./chance.ts";

const holds = ({ process, now }: Bed) =>
	`It holds about ${Math.round(process.canisterAt(now))} of ${process.canister.size} mL`;

export const canisterFull: Cause<Hidden<"canister-full">> = {
	name: "canister-full",
	words: "the canister was at capacity",
	sights: [
		{
			place: "canister",
			seen: ({ process }) => process.alarms.stands("canister-at-capacity"),
			words: (bed) => `${holds(bed)} and is at capacity.`,
			absent: (bed) => `${holds(bed)}.`,
		},
	],
	mendedBy: ["change-canister"],
	raises: ["canister-at-capacity", "suction-absent"],
	showsAs: "canister-at-capacity",
	prepare({ holdsMl }, { liquid }) {
		liquid.canister = holdsMl;
	},

	/** By what the shift brings into a canister that was passed over; with little flow it does not fill up. */
	hazard({ dressing: { canisterMl }, totals }) {
		const room = totals.toCanisterMl - 0.1 * canisterMl;
		return {
			weight: assumedNumbers["chance.passed-over"].value * Math.max(0, room / canisterMl),
			draw: (uniform) => ({ cause: "canister-full", onsetMin: 0, holdsMl: 0.9 * (canisterMl - uniform() * room) }),
		};
	},
};
