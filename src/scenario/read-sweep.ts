import { crossGrid } from "./cross-sweep.ts";
import { problemsOf } from "./issues.ts";
import type { Problem } from "./problem.ts";
import type { SweepGrid } from "./scenario.ts";
import { sweep } from "./schema-sweep.ts";

/** Reads the axes of a grid, written as they would be under `sweep:`, for these dressings; with everything that is wrong with them. */
export function readSweep(
	data: unknown,
	dressings: readonly { readonly id: string }[],
): { readonly axes: SweepGrid["axes"]; readonly problems: readonly Problem[] } {
	const parsed = sweep.safeParse(data);
	const problems = problemsOf(parsed.error?.issues ?? [], { sweep: data }, [
		"sweep",
	]).concat(crossGrid(data, dressings));
	const { dressing: _, ...axes } = parsed.data ?? {};
	return {
		axes: Object.fromEntries(
			Object.entries(axes).filter(([, values]) => values !== undefined),
		),
		problems: problems.map(({ keys: __, ...problem }) => problem),
	};
}
