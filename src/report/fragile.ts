import type { Difference, RestsOn } from "../analysis/compare-result.ts";
import { isFound } from "./verdict-words.ts";

/**
 * Whether a difference that was found is lost or turned round at half or at twice a number that is merely assumed, or
 * without a cause that is merely assumed. False where nobody looked into it for this pair.
 */
export function isFragile(one: Difference, restsOn: RestsOn | null): boolean {
	if (restsOn === null || restsOn.a !== one.a || restsOn.b !== one.b)
		return false;
	return (
		isFound(one) &&
		restsOn.rows.some(
			({ provenance, effects }) =>
				provenance === "assumed" &&
				effects.some(
					({ dressing, measure, turns, hangs }) =>
						(turns || hangs) &&
						dressing === one.dressing &&
						measure === one.measure,
				),
		)
	);
}

/** What stands beside the verdict of such a difference. */
export const fragileMark = "rests on assumed numbers";

/** What the mark means, as a sentence. */
export const fragileSentence = `What ${fragileMark} is lost or turned round at half or at twice one of them, or without one assumed cause: see What the answer rests on.`;
