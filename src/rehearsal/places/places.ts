import type { Place } from "../../vocabulary/index.ts";
import { type Bed, drawsAir } from "./bed.ts";

/** What is known of a place where a trainee can look, before it is known what is to be seen there. */
export interface PlaceFact {
	/** What looking there means, as it stands in a list of what can be done. */
	readonly words: string;
	/** How long a look takes; assumed. */
	readonly minutes: number;
	/** What is said instead of all else while the dressing is off. */
	readonly bare?: string;
	/** Where a look that finds nothing tells nothing either, and what is said then. */
	readonly inconclusive?: { readonly words: string; when(bed: Bed): boolean };
}

export const placeFacts: { readonly [P in Place]: PlaceFact } = {
	dressing: {
		words: "look at the dressing, lights on",
		minutes: 1,
		bare: "There is no dressing on the wound at the moment.",
	},
	"suction-line": { words: "follow the suction line from the dressing to the canister", minutes: 1 },
	"fill-line": { words: "follow the fill line from the source to the dressing", minutes: 1 },
	canister: { words: "look at the canister", minutes: 0.5 },
	source: { words: "look at the source of solution", minutes: 0.5 },
	port: { words: "look closely at the port and what is under it", minutes: 2 },
	edge: {
		words: "listen and feel along the edge of the film",
		minutes: 3,
		inconclusive: {
			when: (bed) => !drawsAir(bed),
			words: "Nothing is to be heard, as no air is drawn now, and the skin is dry: that says little.",
		},
	},
	unit: { words: "look whether the therapy unit runs", minutes: 0.5 },
};
