import type { ChangeTime } from "../../results/index.ts";
import { minutesADay } from "../../vocabulary/index.ts";
import { textWidth } from "../kit/fitted-text.ts";
import { centred, rowCount, stackedRows } from "../kit/label-places.ts";
import { group, rect, type Shape, text, uprightLine } from "../kit/shape.ts";
import type { Scale } from "../kit/value-axis.ts";
import { smallLetters, smallPx } from "../theme/letters.ts";

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

/** Minutes from the left end of a clock of 24 h that begins at `fromMin`, in 0 … 1440. */
export const onClock = (clockMin: number, fromMin: number): number =>
	(((clockMin - fromMin) % minutesADay) + minutesADay) % minutesADay;

/** A span of at most 24 h on that clock: two pieces where it passes the end, none where it is empty. */
export function clockPieces(startMin: number, endMin: number, fromMin: number) {
	const length = Math.min(endMin - startMin, minutesADay);
	if (!(length >= 0)) return [];
	const from = onClock(startMin, fromMin);
	const to = from + length;
	if (to <= minutesADay) return [{ from, to }];
	return [
		{ from, to: minutesADay },
		{ from: 0, to: to - minutesADay },
	];
}

/** A clock of 24 h that begins at `fromMin`, on a scale of minutes, and where what is drawn on it begins. */
export interface ClockPlace {
	readonly x: Scale;
	readonly fromMin: number;
	readonly topPx: number;
}

/** Times of day to be kept clear: bands with dashed edges, each named above it; names stack where they would touch. */
export function clearWindows(windows: BeginTimesData["windows"], { x, fromMin, topPx }: ClockPlace, widthPx: number) {
	const pieces = windows.flatMap(({ label, startClockMin, endClockMin }) => {
		const past = endClockMin <= startClockMin ? minutesADay : 0;
		return clockPieces(startClockMin, endClockMin + past, fromMin).map(({ from, to }) => {
			const [fromPx, toPx] = [x(from), x(to)];
			const room = { left: 0, right: widthPx };
			return { label, fromPx, toPx, ...centred((fromPx + toPx) / 2, textWidth(label, smallPx), room) };
		});
	});
	const rows = stackedRows(pieces, 8);
	const names = pieces.map(({ label, middle }, index) => {
		// The lowest row first: names that stand alone are next to their bands.
		const y = topPx + (rowCount(rows) - (rows[index] ?? 0)) * smallLetters.linePx - 3;
		return text({ class: "small muted", x: middle, y, "text-anchor": "middle" }, label);
	});
	return {
		names: group(...names),
		heightPx: rowCount(rows) * smallLetters.linePx + 6,
		bands: (bandTopPx: number, bottomPx: number): Shape[] =>
			pieces.flatMap(({ fromPx, toPx }) => clearBand(fromPx, toPx, bandTopPx, bottomPx)),
	};
}

export const clearBand = (leftPx: number, rightPx: number, topPx: number, bottomPx: number): Shape[] => [
	rect("clear", { x: leftPx, y: topPx, width: Math.max(1, rightPx - leftPx), height: bottomPx - topPx }),
	uprightLine("boundary", leftPx, topPx, bottomPx),
	uprightLine("boundary", rightPx, topPx, bottomPx),
];
