import type { Act } from "./acts.ts";
import type { Place } from "./places.ts";

/** What to do about a finding, in order. Blood comes first: stop, and call. */
export function remedyFor(place: Place, code: number): readonly Act[] {
	const blood = place !== "edge" && (code & 2) > 0;
	if (blood) return ["pause", "call-help"];
	if (code !== 1) return [];
	const acts: { readonly [P in Place]: Act } = {
		dressing: "patch-edge",
		"suction-line": "free-suction-line",
		"fill-line": "free-fill-line",
		canister: "change-canister",
		source: "change-source",
		port: "new-port",
		edge: "patch-edge",
		unit: "resume",
	};
	return [acts[place]];
}
