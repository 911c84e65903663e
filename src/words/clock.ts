import { minutesADay } from "../vocabulary/index.ts";
import { durationWords } from "./numbers.ts";

/** What a clock needs to know of a scenario; `ScenarioSummary` is one. */
export interface Clock {
	/** ISO local wall-clock time without a zone, e.g. `2026-03-02T07:00`. */
	readonly start: string;
	/** Minutes after midnight at the start. */
	readonly startClockMin: number;
	readonly horizonMin: number;
}

const weekdays = "Sun Mon Tue Wed Thu Fri Sat".split(" ");
const months = "January February March April May June July August September October November December".split(" ");

/** Minutes after the midnight before the start, to the whole minute that is written. */
const wholeMinute = (atMin: number, { startClockMin }: Pick<Clock, "startClockMin">): number =>
	Math.round(startClockMin + atMin);

const twoDigits = (value: number): string => String(value).padStart(2, "0");

/** '14:20', whatever the day. */
export function timeOfDay(atMin: number, clock: Pick<Clock, "startClockMin">): string {
	const minute = ((wholeMinute(atMin, clock) % minutesADay) + minutesADay) % minutesADay;
	return `${twoDigits(Math.floor(minute / 60))}:${twoDigits(minute % 60)}`;
}

/** '07:00' for 420. */
export const clockWords = (clockMin: number): string => timeOfDay(clockMin, { startClockMin: 0 });

/** 0 on the day of the start, 1 on the next. */
export const dayOffset = (atMin: number, clock: Clock): number => Math.floor(wholeMinute(atMin, clock) / minutesADay);

/** The calendar day, read in UTC only to count days: no zone is meant. */
const calendarDay = (offset: number, clock: Clock): Date => {
	const day = new Date(`${clock.start.slice(0, 10)}T00:00:00Z`);
	day.setUTCDate(day.getUTCDate() + offset);
	return day;
};

const weekdayWords = (offset: number, clock: Clock): string => weekdays[calendarDay(offset, clock).getUTCDay()] ?? "";

/** 'March', where an axis names days only by number. */
export const monthWords = (offset: number, clock: Clock): string =>
	months[calendarDay(offset, clock).getUTCMonth()] ?? "";

/** 'Tue 3', for a narrow axis. */
export const shortDate = (offset: number, clock: Clock): string =>
	`${weekdayWords(offset, clock)} ${calendarDay(offset, clock).getUTCDate()}`;

/** 'Tue 3 March'. */
export const dateWords = (offset: number, clock: Clock): string =>
	`${shortDate(offset, clock)} ${monthWords(offset, clock)}`;

/** 'Mon 2 March 2026', for a heading. */
export const fullDate = (offset: number, clock: Clock): string =>
	`${dateWords(offset, clock)} ${calendarDay(offset, clock).getUTCFullYear()}`;

/** Up to a day and a half ahead a weekday says which day it is, and is plainer than a date. */
const weekdaySays = (clock: Clock): boolean => clock.horizonMin <= 36 * 60;

/**
 * '' on the first day, else 'Tue' or, where weekdays may come round again, 'Tue 3 March'. A horizon of many days names
 * every day. Never 'tomorrow': a paper is also read on the day after.
 */
export function dayWords(atMin: number, clock: Clock): string {
	const offset = dayOffset(atMin, clock);
	if (!weekdaySays(clock) || offset < 0 || offset > 6) return dateWords(offset, clock);
	return offset === 0 ? "" : weekdayWords(offset, clock);
}

/** The same with the first day named, too: 'Mon'. For what goes back to it after another day has been named. */
export const everyDayWords = (atMin: number, clock: Clock): string =>
	dayWords(atMin, clock) || weekdayWords(dayOffset(atMin, clock), clock);

/** '14:20', 'Tue 02:10', 'Tue 3 March 02:10'. */
export function clockTime(atMin: number, clock: Clock): string {
	const day = dayWords(atMin, clock);
	const time = timeOfDay(atMin, clock);
	return day === "" ? time : `${day} ${time}`;
}

/** '08:59 to 09:09', 'Mon 2 March 23:50 to Tue 3 March 00:10': the day once where it is the same. */
export function timeSpan(fromMin: number, toMin: number, clock: Clock): string {
	const last = dayWords(fromMin, clock) === dayWords(toMin, clock) ? timeOfDay(toMin, clock) : clockTime(toMin, clock);
	return `${clockTime(fromMin, clock)} to ${last}`;
}

/** Whether both ends of a range are written alike. */
export const isInstant = (fromMin: number, toMin: number, clock: Clock): boolean =>
	clockTime(fromMin, clock) === clockTime(toMin, clock);

/** 'between 19:05 and 21:40', 'between 23:05 and Tue 01:10', 'Tue between 01:05 and 02:40', 'at 19:00', 'Tue at 02:10'. */
export function timeRange(fromMin: number, toMin: number, clock: Clock): string {
	const [first, last] = [dayWords(fromMin, clock), dayWords(toMin, clock)];
	if (first !== last) return `between ${clockTime(fromMin, clock)} and ${clockTime(toMin, clock)}`;
	const times = timesBetween(fromMin, toMin, clock);
	return first === "" ? times : `${first} ${times}`;
}

/** 'between 19:05 and 21:40' or 'at 19:00', where the day has been named. */
export const timesBetween = (fromMin: number, toMin: number, clock: Clock): string =>
	isInstant(fromMin, toMin, clock)
		? `at ${timeOfDay(fromMin, clock)}`
		: `between ${timeOfDay(fromMin, clock)} and ${timeOfDay(toMin, clock)}`;

/** The days that a report is about, so that a paper can be matched to them. */
export const spanWords = (clock: Clock): string =>
	`From ${fullDate(0, clock)} ${timeOfDay(0, clock)} for ${durationWords(clock.horizonMin)}, until ${clockTime(clock.horizonMin, clock)}.`;

/** The wall clock at a time; read in UTC only to count: no zone is meant. */
function wallClock(atMin: number, { start }: Pick<Clock, "start">): string {
	const at = new Date(`${start}:00Z`);
	at.setUTCMinutes(at.getUTCMinutes() + Math.round(atMin));
	return at.toISOString();
}

/** `2026-03-05`. */
export const dateAt = (atMin: number, start: Pick<Clock, "start">): string => wallClock(atMin, start).slice(0, 10);

/** `2026-03-05T14:00`. */
export const dateTimeAt = (atMin: number, start: Pick<Clock, "start">): string => wallClock(atMin, start).slice(0, 16);

interface Shift {
	readonly shift: "day" | "night";
	readonly startMin: number;
	readonly endMin: number;
}

const halfDay = 720;

/** The shifts that a span of time touches, cut to it. */
export function shiftsBetween(fromMin: number, toMin: number, clock: Clock): Shift[] {
	const shifts: Shift[] = [];
	const firstBoundary = Math.floor((clock.startClockMin + fromMin - 420) / halfDay) * halfDay + 420;
	for (let start = firstBoundary; start - clock.startClockMin < toMin; start += halfDay) {
		const startMin = Math.max(fromMin, start - clock.startClockMin);
		const endMin = Math.min(toMin, start + halfDay - clock.startClockMin);
		const isDay = ((start - 420) / halfDay) % 2 === 0;
		if (endMin > startMin) shifts.push({ shift: isDay ? "day" : "night", startMin, endMin });
	}
	return shifts;
}
