import { Stream } from "../engine/index.ts";
import type { HiddenCause } from "../scenario/index.ts";
import type { Placed } from "./bedside.ts";

/** Every hidden cause with the moment at which it comes, drawn from the seed where the case leaves room. */
export function placedCauses(
	hides: readonly HiddenCause[],
	transferMin: number | null,
	seed: string,
): Placed[] {
	return hides.map((hidden, i) => {
		if ("atMin" in hidden)
			return {
				...hidden,
				onsetMin:
					hidden.withinMin === 0
						? hidden.atMin
						: hidden.atMin +
							hidden.withinMin * new Stream(seed, "rehearsal", i).uniform(),
			};
		const onsetMin =
			hidden.cause === "dressing-dislodged"
				? (transferMin ?? Number.POSITIVE_INFINITY)
				: 0;
		return { ...hidden, onsetMin };
	});
}
