import type { CauseName } from "../scenario/index.ts";
import type { Bedside } from "./bedside.ts";
import type { Place } from "./places.ts";

/**
 * What a look at a place finds, as a number of two bits; 0: nothing amiss. Each is a function of what is there to be seen,
 * heard or felt at that place and of nothing else. It changes only at events, so that it can be tabled.
 */
export function findingAt(place: Place, bedside: Bedside): number {
	const { process } = bedside;
	const blood = bedside.present("bleeding") ? 2 : 0;
	switch (place) {
		case "dressing":
			return (bedside.cornerUp ? 1 : 0) | blood;
		case "suction-line":
			return (process.lineKinked ? 1 : 0) | blood;
		case "fill-line":
			return process.fillKinked ? 1 : 0;
		case "canister":
			return (
				(process.alarms.stands("canister-at-capacity") ? 1 : 0) |
				(bedside.bloodCollected ? 2 : 0)
			);
		case "source":
			return process.source.isEmpty ? 1 : 0;
		case "port":
			return process.port.debris > 0 ? 1 : 0;
		case "edge":
			return edge(bedside);
		case "unit":
			return bedside.stopped ? 1 : 0;
	}
}

/** Liquid that is felt at the edge, mL/min; assumed. */
const feltMlPerMin = 0.2;

/**
 * 0 quiet and dry, 1 a leak, 2 nothing to be told. A leak is heard where the pump draws through an open path and the flow
 * at the set depth is what a round would hear; it is felt where the dressing is vented and liquid weeps out.
 */
function edge({ process, stopped }: Bedside): number {
	const k = process.constants;
	const { air, liquid, phase } = process;
	if (phase === "change") return 2;
	const vented = phase === "fill" || phase === "dwell";
	const full = process.alarms.stands("canister-at-capacity");
	if (!vented && !stopped && !full && process.isOpen)
		return air.leak * air.setDepth >= k["round.leakAbove"] ? 1 : 0;
	return liquid.isWet &&
		liquid.outflow === "weeping" &&
		liquid.weepRate >= feltMlPerMin
		? 1
		: 2;
}

/** Which kinds of cause a finding shows. */
export function causesShown(place: Place, code: number): CauseName[] {
	const blood: CauseName[] = (code & 2) > 0 ? ["bleeding"] : [];
	const first = (code & 1) > 0;
	switch (place) {
		case "dressing":
			return first ? ["dressing-dislodged", ...blood] : blood;
		case "suction-line":
			return first ? ["suction-line-kinked", ...blood] : blood;
		case "canister":
			return first ? ["canister-full", ...blood] : blood;
		case "fill-line":
			return first ? ["fill-line-kinked"] : [];
		case "source":
			return first ? ["source-empty"] : [];
		case "port":
			return first ? ["port-clogged"] : [];
		case "edge":
			return first ? ["seal-breach", "dressing-dislodged"] : [];
		case "unit":
			return first ? ["left-off"] : [];
	}
}
