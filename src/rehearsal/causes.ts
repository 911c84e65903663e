import type { CauseName } from "../scenario/index.ts";
import type { Condition } from "../therapy/index.ts";
import type { Act } from "./acts.ts";
import type { Place } from "./places.ts";

/** What is known of a kind of cause: in words, where it is seen, what mends it. */
export interface CauseFact {
	/** A noun phrase, for the debrief only: nothing before it may say so. */
	readonly words: string;
	/** Where a look reveals it. */
	readonly seenAt: readonly Place[];
	/** What mends it; the first is the least work. */
	readonly mendedBy: readonly Act[];
}

export const causeFacts: { readonly [C in CauseName]: CauseFact } = {
	"fill-line-kinked": {
		words: "the fill line was kinked",
		seenAt: ["fill-line"],
		mendedBy: ["free-fill-line", "new-dressing"],
	},
	"suction-line-kinked": {
		words: "the suction line was kinked",
		seenAt: ["suction-line"],
		mendedBy: ["free-suction-line", "new-port", "new-dressing"],
	},
	"port-clogged": {
		words: "the port was clogged by debris",
		seenAt: ["port"],
		mendedBy: ["new-port", "new-dressing"],
	},
	"canister-full": {
		words: "the canister was at capacity",
		seenAt: ["canister"],
		mendedBy: ["change-canister"],
	},
	"source-empty": {
		words: "the source of solution was empty",
		seenAt: ["source"],
		mendedBy: ["change-source"],
	},
	"seal-breach": {
		words: "the seal leaked at the edge",
		seenAt: ["edge"],
		mendedBy: ["patch-edge", "new-dressing"],
	},
	"dressing-dislodged": {
		words: "the dressing came loose at a corner when the patient was moved",
		seenAt: ["dressing", "edge"],
		mendedBy: ["patch-edge", "new-dressing"],
	},
	"left-off": {
		words: "the therapy was left switched off",
		seenAt: ["unit"],
		mendedBy: ["resume"],
	},
	bleeding: {
		words: "the wound bled",
		seenAt: ["dressing", "suction-line", "canister"],
		mendedBy: ["call-help"],
	},
};

export const causeNames = Object.keys(causeFacts) as readonly CauseName[]; // keys forgets the names it lists

/** Which kinds of cause an alarm may come from. */
export const explainedBy: { readonly [C in Condition]: readonly CauseName[] } =
	{
		"canister-at-capacity": ["canister-full"],
		"suction-path-obstructed": ["suction-line-kinked", "port-clogged"],
		"fill-path-obstructed": ["fill-line-kinked"],
		"seal-leak": ["seal-breach", "dressing-dislodged"],
		"depth-not-held": ["seal-breach", "dressing-dislodged"],
		"source-empty": ["source-empty"],
		"suction-absent": causeNames.filter((cause) => cause !== "bleeding"),
		"large-output": ["bleeding"],
	};
