import type { ChangeTime } from "../../results/index.ts";

export interface BeginTimesData {
	readonly title: string;
	/** Left end of the clock of 24 h, in minutes after midnight; midnight by default. */
	readonly fromClockMin?: number;
	/** Times of day to be kept clear; one may pass midnight (its end is then the smaller). */
	readonly windows: readonly {
		/** 'hand-over'; windows of one label share it. */
		readonly label: string;
		readonly startClockMin: number;
		readonly endClockMin: number;
	}[];
	readonly rows: readonly BeginTimesRow[];
}

/** A day that begins at one clock time; its other times count from there, and the first 24 h are drawn. */
export interface BeginTimesRow {
	/** Minutes after midnight at which the first phase begins. */
	readonly startClockMin: number;
	/** Beside the time: 'now', 'in step', '30 min apart'. */
	readonly note?: string;
	/** The reader's own time. */
	readonly current?: boolean;
	readonly canisterChanges: readonly Pick<ChangeTime, "p10Min" | "p50Min" | "p90Min" | "probabilityWithinHorizon">[];
	/** Chance that an alarm starts, in each half-hour from the row's start. */
	readonly alarmBins: readonly number[];
}
