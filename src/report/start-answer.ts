import type { DressingSummary } from "../analysis/day-result.ts";
import { volumeWords } from "../charts/index.ts";
import { type Sentence, strong } from "./sentence.ts";

/** What hangs on the unit when the day begins: every time and volume of canister and bag counts from it. */
export function startAnswer(dressing: DressingSummary): Sentence {
	const hasFill = dressing.regimens.some(({ fillMl }) => fillMl > 0);
	const { canisterHoldsMl, sourceLeftMl, sourceMl } = dressing;
	const fresh = canisterHoldsMl === 0;
	const full = sourceLeftMl >= sourceMl;
	if (fresh && (full || !hasFill))
		return [
			hasFill
				? "The canister is taken to be empty and the bag full at the start."
				: "The canister is taken to be empty at the start.",
		];
	const held = fresh
		? "an empty canister"
		: `${volumeWords(canisterHoldsMl)} in the canister`;
	if (!hasFill) return ["The day starts with ", strong(held), "."];
	const left = full
		? "a full bag"
		: `${volumeWords(sourceLeftMl)} left in the bag`;
	return ["The day starts with ", strong(`${held} and ${left}`), "."];
}
