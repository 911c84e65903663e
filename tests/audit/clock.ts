/** What is needed to read the times of a paper. */
export interface Clock {
	readonly start: string;
	/** Minutes after midnight at the start. */
	readonly startClockMin: number;
	readonly horizonMin: number;
}

const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const months = [
	"January",
	"February",
	"March",
	"April",
	"May",
	"June",
	"July",
	"August",
	"September",
	"October",
	"November",
	"December",
];

const msADay = 86_400_000;

/** The day of the start, as a count of days. */
const firstDay = ({ start }: Clock): number => Date.parse(`${start.slice(0, 10)}T00:00:00Z`) / msADay;

/**
 * Days from the day of the start that a reader takes a name of a day for: a date for itself (its weekday must be right), a
 * bare weekday for the next of that name, no name for the day of the start. NaN for a day that is none.
 */
export function readDate(text: string, clock: Clock): number {
	if (text === "") return 0;
	const first = firstDay(clock);
	const key = `${first} ${text}`;
	const known = dates.get(key);
	if (known !== undefined) return known;
	const read = dateFrom(first, text);
	dates.set(key, read);
	return read;
}

/** Dates that were read already, each from its day of the start. */
const dates = new Map<string, number>();

function dateFrom(first: number, text: string): number {
	const [weekday = "", day, month, year] = text.split(" ");
	const place = weekdays.indexOf(weekday);
	if (place === -1) return Number.NaN;
	// The first of January 1970 was a Thursday.
	const weekdayOf = (date: number): number => (((date + 4) % 7) + 7) % 7;
	if (day === undefined) return (((place - weekdayOf(first)) % 7) + 7) % 7;
	for (let offset = -40; offset < 400; offset++) {
		const date = new Date((first + offset) * msADay);
		if (
			date.getUTCDate() === Number(day) &&
			months[date.getUTCMonth()] === month &&
			(year === undefined || date.getUTCFullYear() === Number(year))
		)
			return weekdayOf(first + offset) === place ? offset : Number.NaN;
	}
	return Number.NaN;
}

/** Minutes from the start that a reader takes '14:20', 'Tue 14:20' or 'Tue 3 March 14:20' for. */
export function readClock(text: string, clock: Clock, day = ""): number {
	const words = text.split(" ");
	const [hours, minutes] = (words.pop() ?? "").split(":").map(Number);
	const named = words.length === 0 ? day : words.join(" ");
	return readDate(named, clock) * 1440 + (hours ?? Number.NaN) * 60 + (minutes ?? Number.NaN) - clock.startClockMin;
}

/** 'at 19:00', 'between 23:05 and Tue 01:10', 'Tue between 01:05 and 02:40', '08:59 to 09:09': both ends, minutes from the start. */
export function readRange(text: string, clock: Clock): readonly [number, number] {
	const [, day = "", rest = ""] = /^(?:(.*) )?((?:at|between) .*)$/u.exec(text) ?? [];
	if (rest === "") {
		const [from = "", to = ""] = text.split(" to ");
		const named = from.split(" ").slice(0, -1).join(" ");
		return [readClock(from, clock), readClock(to, clock, named)];
	}
	if (rest.startsWith("at ")) {
		const at = readClock(rest.slice(3), clock, day);
		return [at, at];
	}
	const [from = "", to = ""] = rest.slice("between ".length).split(" and ");
	return [readClock(from, clock, day), readClock(to, clock, day)];
}
