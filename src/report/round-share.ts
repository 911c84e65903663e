import type { DayResult } from "../analysis/day-result.ts";
import { constantFacts } from "../physics/index.ts";

/** Share of its size at which a round changes a canister, as the result assumed it. */
export function roundShare(result: Pick<DayResult, "assumptions">): number {
	const assumed = result.assumptions.find(
		(assumption) => assumption.name === "round.canisterAbove",
	);
	const value = Number(assumed?.value);
	return Number.isFinite(value)
		? value
		: constantFacts["round.canisterAbove"].value;
}
