import type { Cause, Hidden, SoundShift } from "./cause.ts";
import { assumedNumbers } from "./chance.ts";
import { breachSize, leakAtEdge } from "./seal-breach.ts";

export const dressingDislodged: Cause<Hidden<"dressing-dislodged">> = {
	name: "dressing-dislodged",
	words: "the dressing came loose at a corner when the patient was moved",
	sights: [
		{
			place: "dressing",
			seen: (bed) => bed.present("dressing-dislodged"),
			words: "A corner of the film has come up, and the foam under it lies open.",
			absent: "The film lies flat all round as far as the eye can tell.",
		},
		leakAtEdge,
	],
	mendedBy: ["patch-edge", "new-dressing"],
	raises: ["seal-leak", "depth-not-held", "suction-absent"],
	withTransfer: true,
	begin: ({ size }, { process }) => process.seal.breach(size),
	hazard: (shift) => ({
		weight: shift.transferMin === null ? 0 : shift.constants[`transfer.${stateAt(shift.transferMin, shift.phases)}`],
		draw: (uniform) => ({
			cause: "dressing-dislodged",
			onsetMin: shift.transferMin ?? 0,
			size: breachSize(shift, uniform(), assumedNumbers["corner.times"].value),
		}),
	}),
};

/** What the dressing of a sound shift is doing, as the chances of a move have it. */
function stateAt(atMin: number, phases: SoundShift["phases"]): "held" | "wet" | "between" {
	const at = phases.find(({ startMin, endMin }) => startMin <= atMin && atMin < endMin);
	if (at === undefined) return "between";
	if (at.phase === "fill" || at.phase === "dwell") return "wet";
	// The longest that a drawdown holds the pump back.
	return atMin - at.startMin < 3 ? "between" : "held";
}
