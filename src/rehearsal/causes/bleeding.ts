import type { Bed } from "../places/bed.ts";
import type { Cause, Hidden } from "./cause.ts";
import { anyTime, assumedNumbers, between, comesAt } from "./chance.ts";

const name = "bleeding";
const bleeds = (bed: Bed) => bed.present(name);

/** Blood stays in the canister that it ran into, also when the bleed has stopped. */
function bloodInCanister(bed: Bed): boolean {
	const newSinceMin = bed.doneMin("change-canister");
	return bed.troubles.some(
		({ cause, onsetMin, endMin }) => cause === name && onsetMin !== null && (endMin === null || endMin > newSinceMin),
	);
}

export const bleeding: Cause<Hidden<typeof name>> = {
	name,
	words: "the wound bled",
	sights: [
		{
			place: "dressing",
			seen: bleeds,
			words: "The foam is red with fresh blood.",
			absent: "What shows in the foam is wound fluid.",
		},
		{ place: "suction-line", seen: bleeds, words: "There is fresh blood in it." },
		{ place: "canister", seen: bloodInCanister, words: "There is fresh blood in it." },
	],
	laidOpen: "There was fresh blood under the old one.",
	mendedBy: [],
	forClinician: true,
	raises: ["large-output"],
	possible: () => true, // a wound bleeds without a dressing too
	begin: ({ volumeMl, lastsMin }, { process }) => process.wound.bleed(volumeMl / lastsMin),
	end: ({ volumeMl, lastsMin }, { process }) => process.wound.bleed(-volumeMl / lastsMin),
	hazard: (shift) => ({
		weight: assumedNumbers["chance.bleeding"].value * shift.hours,
		draw: (uniform) => ({
			cause: name,
			...comesAt(anyTime(uniform(), shift)),
			volumeMl: between(uniform(), 80, 500), // assumed, as is how long it lasts
			lastsMin: between(uniform(), 30, 90),
		}),
	}),
};
