import { crossSweep, resolveSweep, sweep } from "./keys/sweep.ts";
import type { SweepGrid } from "./meaning/scenario.ts";
import { problemsOf } from "./reading/issues.ts";
import type { Problem } from "./reading/problem.ts";

/** Reads the axes of a grid, written as they would be under `sweep:`, for these dressings; with everything that is wrong with them. */
export function readSweep(
	data: unknown,
	dressings: readonly { readonly id: string }[],
): { readonly axes: SweepGrid["axes"]; readonly problems: readonly Problem[] } {
	const parsed = sweep.safeParse(data);
	const problems = [
		...problemsOf(parsed.error?.issues ?? [], { sweep: data }, ["sweep"]),
		...crossSweep(data, dressings),
	];
	return {
		axes: parsed.success ? resolveSweep(parsed.data).axes : {},
		problems: problems.map(({ keys: _, ...problem }) => problem),
	};
}
