import { constantFacts } from "../physics/index.ts";
import type { Assumption } from "../results/index.ts";

/** Share of its size at which a round changes a canister, as a result assumed it; the model's own where there is no result yet. */
export function roundShare(result: { readonly assumptions: readonly Assumption[] }): number {
	const assumed = result.assumptions.find(({ name }) => name === "round.canisterAbove");
	const value = Number(assumed?.value);
	return Number.isFinite(value) ? value : constantFacts["round.canisterAbove"].value;
}
