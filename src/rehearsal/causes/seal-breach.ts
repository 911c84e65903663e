import { type Bed, drawsAir } from "../places/bed.ts";
import type { Cause, Hidden, Sight, SoundShift } from "./cause.ts";
import { anyTime, between, comesAt, sizeAbove, sizeBelow } from "./chance.ts";

/** Liquid that is felt at the edge, mL/min; assumed. */
const feltMlPerMin = 0.2;

/**
 * A leak is heard where the pump draws through an open path and the flow at the set depth is what a round would hear; it
 * is felt where the dressing is vented and liquid weeps out.
 */
function isLeakTold(bed: Bed): boolean {
	const { air, constants, liquid, phase } = bed.process;
	if (phase === "change") return false;
	if (drawsAir(bed)) return air.leak * air.setDepth >= constants["round.leakAbove"];
	return liquid.isWet && liquid.outflow === "weeping" && liquid.weepRate >= feltMlPerMin;
}

/** What every leak at the edge shows, whatever brought it. */
export const leakAtEdge: Sight = {
	place: "edge",
	seen: isLeakTold,
	words: ({ process: { phase } }) =>
		phase === "fill" || phase === "dwell"
			? "The skin beside the film is wet: it leaks there."
			: "There is a hiss at one place along the edge: it leaks there.",
	absent: "Nothing is to be heard or felt along the edge.",
};

export const sealBreach: Cause<Hidden<"seal-breach">> = {
	name: "seal-breach",
	words: "the seal leaked at the edge",
	sights: [leakAtEdge],
	mendedBy: ["patch-edge", "new-dressing"],
	raises: ["seal-leak", "depth-not-held", "suction-absent"],
	begin: ({ size }, { process }) => process.seal.breach(size),

	/** Dry breaches by their rate and by turns, wet ones by the Weibull hazard of each wet spell. */
	hazard(shift) {
		const { constants: k, dressing, horizonMin, hours, turningMin } = shift;
		const worn = 1 + k["breach.age"] * ((dressing.ageMin + horizonMin / 2) / 1440);
		const seal = k[`difficulty.${dressing.difficulty}`] * worn;
		const wet = wetSpells(shift.phases);
		const dryBreaches =
			k["breach.dry"] * seal * hours + (turningMin === null ? 0 : (horizonMin / turningMin) * k["turn.held"]);
		const wetBreaches =
			wet.reduce((sum, { startMin, endMin }) => sum + ((endMin - startMin) / k["breach.wetScale"]) ** 2, 0) * seal;
		const breaches = dryBreaches + wetBreaches;
		const heard = 1 - sizeBelow(audible(shift), k["breach.sizeMedian"], k["breach.sizeSigma"]);
		return {
			weight: breaches * heard,
			draw(uniform) {
				const first = uniform();
				const isWet = uniform() * breaches < wetBreaches && wet.length > 0;
				const spell = wet[Math.floor(first * wet.length)];
				const onsetMin = isWet
					? between((first * wet.length) % 1, spell.startMin, spell.endMin)
					: anyTime(first, shift);
				return { cause: "seal-breach", ...comesAt(onsetMin), size: breachSize(shift, uniform()) };
			},
		};
	},
};

/** A breach that nobody hears is no case: the least leak that a round would hear, L/min/mmHg. */
const audible = ({ constants, dressing }: SoundShift) => constants["round.leakAbove"] / dressing.regimens[0].depthMmHg;

/** A size from those that would be heard, of breaches so many times as large as the model's. */
export function breachSize(shift: SoundShift, u: number, times = 1): number {
	const k = shift.constants;
	return sizeAbove(audible(shift) / times, u, k["breach.sizeMedian"], k["breach.sizeSigma"]) * times;
}

/** Spells from the start of a fill to the end of its drain. */
function wetSpells(phases: SoundShift["phases"]) {
	const spells: { startMin: number; endMin: number }[] = [];
	for (const { phase, startMin, endMin } of phases) {
		const last = spells.at(-1);
		if (phase === "fill") spells.push({ startMin, endMin });
		else if ((phase === "dwell" || phase === "drain") && last !== undefined) last.endMin = endMin;
	}
	return spells;
}
