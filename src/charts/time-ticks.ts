import {
	type Clock,
	dateWords,
	dayOffset,
	monthWords,
	shortDate,
	timeOfDay,
} from "./clock.ts";

export interface TimeTick {
	readonly atMin: number;
	readonly label: string;
	/** A second line: the date, where a new day begins on the axis; the month, where days are ticks. */
	readonly date: string;
}

const stepsMin = [
	1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 10080,
];
const minutesADay = 1440;
/** Steps of hours fall on 07:00, so that both shift boundaries are among them. */
const dayShiftMin = 420;

/** Ticks at round clock times, at most about `most` of them; whole days are named by date. */
export function timeTicks(
	fromMin: number,
	toMin: number,
	clock: Clock,
	most: number,
): TimeTick[] {
	const step =
		stepsMin.find((candidate) => (toMin - fromMin) / candidate <= most) ??
		2 * 10080;
	const offset = clock.startClockMin - (step >= minutesADay ? 0 : dayShiftMin);
	const ticks: TimeTick[] = [];
	let named =
		step >= minutesADay ? "" : dateWords(dayOffset(fromMin, clock), clock);
	for (
		let number = Math.ceil((fromMin + offset) / step - 1e-9);
		number * step - offset <= toMin + 1e-9;
		number++
	) {
		const atMin = number * step - offset;
		const day = dayOffset(atMin, clock);
		const isDays = step >= minutesADay;
		const second = isDays ? monthWords(day, clock) : dateWords(day, clock);
		ticks.push({
			atMin,
			label: isDays ? shortDate(day, clock) : timeOfDay(atMin, clock),
			date: second === named ? "" : second,
		});
		named = second;
	}
	return ticks;
}
