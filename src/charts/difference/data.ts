/** One measure of two regimens, a and b, and how far they differ. */
export interface DifferenceRow {
	/** 'Washes'. */
	readonly label: string;
	/** Written after every number of the row: 'mL', 'min', 'a day'; '' for a bare count. */
	readonly unit: string;
	readonly meanA: number;
	readonly meanB: number;
	/** a − b. */
	readonly mean: number;
	/** 95 % interval of the difference; null where none could be given: the dot is hollow then. */
	readonly low: number | null;
	readonly high: number | null;
	/** 'fewer: 0.04 a day (0.03 to 0.05)', 'no difference found at 0.1 a day', 'not judged'. */
	readonly verdict: string;
	/** A difference was found; none was found; nothing can be said (the row is greyed). */
	readonly tone: "difference" | "none" | "unknown";
	/** Most digits after the point of the two means; by default three figures of the larger. */
	readonly decimals?: readonly [number, number];
}

export interface DifferenceRowsData {
	readonly title: string;
	/** Names of the regimens. */
	readonly a: string;
	readonly b: string;
	/** In the order of what the reader asked for; 1 to 40. */
	readonly rows: readonly DifferenceRow[];
}
