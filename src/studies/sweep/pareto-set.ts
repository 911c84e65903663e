/** One measure that is weighed against others. */
export interface Goal {
	readonly better: "lower" | "higher";
	readonly values: readonly number[];
}

/**
 * Places of the Pareto set, the efficient points: those that no other of the `candidates` betters in one goal without being worse
 * in another. Points that are equal in every goal stand or fall together.
 */
export function paretoSet(goals: readonly Goal[], candidates: readonly number[]): number[] {
	const betters = (goal: Goal, a: number, b: number) =>
		goal.better === "lower" ? goal.values[a] < goal.values[b] : goal.values[a] > goal.values[b];
	const dominates = (a: number, b: number) =>
		goals.some((goal) => betters(goal, a, b)) && !goals.some((goal) => betters(goal, b, a));
	return candidates.filter((point) => !candidates.some((other) => dominates(other, point)));
}
