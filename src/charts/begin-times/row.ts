import { minutesADay } from "../../vocabulary/index.ts";
import { clockWords, percentWords } from "../../words/index.ts";
import type { KeyItem } from "../kit/comparison-chart.ts";
import { textWidth } from "../kit/fitted-text.ts";
import { barPath, cellNumber, currentMark } from "../kit/marks.ts";
import { circle, group, path, rect, type Shape, tooltip } from "../kit/shape.ts";
import { heatEdges, heatStep } from "../theme/palette.ts";
import { ifAtAll, leastProbability } from "../time/canister-panel.ts";
import type { BeginTimesData, BeginTimesRow, ClockPlace } from "./clock-face.ts";
import { clearBand, clockPieces, onClock } from "./clock-face.ts";

const binMin = 30;
const cellPx = 15;
/** From this chance on a half-hour carries its number where it fits. */
const numbered = 0.05;

/** Canister changes as bars above, alarm chances as half-hours below, and where the day begins. */
export function beginRow(row: BeginTimesRow, place: ClockPlace): Shape {
	const mark = row.current === true ? currentMark : beginMark;
	const beginPx = place.x(onClock(row.startClockMin, place.fromMin));
	return group(...alarmCells(row, place), ...changeBars(row, place), mark(beginPx, place.topPx + 12));
}

/** A triangle that points at what follows. */
const beginMark = (x: number, y: number): Shape => path("ink", `M${x.toFixed(2)},${y - 6}l8,6l-8,6Z`);

function alarmCells(row: BeginTimesRow, { x, fromMin, topPx }: ClockPlace): Shape[] {
	const top = topPx + 24;
	const binPx = x(binMin) - x(0);
	const size = [11, 10, 9].find((one) => textWidth("00", one) <= binPx - 1);
	return row.alarmBins.slice(0, minutesADay / binMin).flatMap((chance, index) => {
		const step = heatStep(chance);
		if (step === null) return [];
		const start = row.startClockMin + index * binMin;
		const words = `${clockWords(start)} to ${clockWords(start + binMin)}: ${percentWords(chance)}`;
		const number = String(Math.min(99, Math.round(chance * 100)));
		return clockPieces(start, start + binMin, fromMin).flatMap(({ from, to }) => {
			const [left, right] = [x(from), x(to)];
			// A half-hour that the end of the clock cuts in two may have no room for it.
			const fits = size !== undefined && chance >= numbered && textWidth(number, size) <= right - left;
			const box = { x: left + 0.3, y: top, width: Math.max(0.6, right - left - 0.6), height: cellPx };
			return [
				rect(`heat${step}`, box, tooltip(words)),
				...(fits ? [cellNumber(number, `heat${step}-text`, (left + right) / 2, top + cellPx / 2, size)] : []),
			];
		});
	});
}

/** Neighbouring changes stand at two heights, since their ranges may overlap; those in fewer than half of the days are dashed. */
function changeBars(row: BeginTimesRow, { x, fromMin, topPx }: ClockPlace): Shape[] {
	return row.canisterChanges.flatMap(({ p10Min, p50Min, p90Min, probabilityWithinHorizon: chance }, index) => {
		if (chance < leastProbability || p10Min >= minutesADay) return [];
		const y = topPx + (index % 2 === 0 ? 8 : 17);
		const start = row.startClockMin + p10Min;
		const end = row.startClockMin + Math.min(p90Min, minutesADay);
		const [barClass, dotClass] =
			chance >= 0.5 ? ["canister-edge", "canister-mark"] : ["canister-edge dashed", "canister-edge hollow"];
		const middle = x(onClock(row.startClockMin + p50Min, fromMin));
		return [
			group(
				tooltip(`change ${index + 1}: between ${clockWords(start)} and ${clockWords(end)}${ifAtAll(chance)}`),
				...clockPieces(start, end, fromMin).map(({ from, to }) =>
					path(barClass, barPath(x(from), Math.max(x(to), x(from) + 2), y, 4)),
				),
				p50Min < minutesADay ? circle(dotClass, middle, y, 3.5) : null,
			),
		];
	});
}

export const beginKey = (data: BeginTimesData): (KeyItem | null)[] => [
	{ words: "the day begins", sample: (x, y) => beginMark(x - 4, y) },
	data.rows.some((row) => row.current) ? { words: "the current time", sample: currentMark } : null,
	{
		words:
			"canister change: half of the days before the dot, 8 days in 10 within the bar (dashed: in fewer than half of the days)",
		sample: (x, y) =>
			group(path("canister-edge", `M${x - 10},${y - 4}v8m0,-4h20m0,-4v8`), circle("canister-mark", x, y, 3.5)),
	},
	{
		words: `chance that an alarm starts in a half-hour: from ${heatEdges[0] * 100} %, stronger for more; in % from 5 % on, where there is room`,
		sample: (x, y) => {
			const cell = (step: number, at: number) => rect(`heat${step}`, { x: at, y: y - 7, width: 6.5, height: 14 });
			return group(cell(1, x - 10), cell(3, x - 3), cell(5, x + 4));
		},
	},
	data.windows.length > 0
		? { words: "to be kept clear", sample: (x, y) => group(...clearBand(x - 9, x + 9, y - 8, y + 8)) }
		: null,
];
