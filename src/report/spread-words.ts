import type { Spread } from "../analysis/day-result.ts";

/** ' (between 520 mL and 560 mL)', or nothing where both ends read alike. */
export function spreadRange(
	spread: Pick<Spread, "p10" | "p90">,
	words: (value: number) => string,
): string {
	const [low, high] = [words(spread.p10), words(spread.p90)];
	return low === high ? "" : ` (between ${low} and ${high})`;
}
