import { type Clock, readClock, readDate, readRange } from "./clock.ts";

/** What a hole of a pattern stands for: how far it reaches in a text, and whether what is written there is what was derived. */
export interface Hole {
	/** The written text at the start of what follows, or null where there is none of this kind. */
	readonly reach: (rest: string, expected: unknown) => string | null;
	/** null where it is right, else what was derived, in words. */
	readonly check: (written: string, expected: unknown, clock: Clock) => string | null;
}

const slack = 1e-6;

/** A number with how many digits after the point it may have: what is written lies within half of the last of these. */
export interface Fixed {
	readonly value: number;
	readonly decimals: number;
}

export const fixed = (value: number, decimals: number): Fixed => ({ value, decimals });

/** A number as it reads with so many digits after the point; to tens where there are −1. Two that read alike are alike. */
export function asWritten(value: number, decimals: number): number {
	const step = 10 ** Math.max(0, -decimals);
	return Number((value / step).toFixed(Math.max(0, decimals))) * step || 0;
}

const plain = /^−?\d+(?:\.\d+)?/u;
const money = /^−?\d{1,3}(?:\u202F\d{3})*(?:\.\d+)?/u;

const numberOf = (text: string): number => Number(text.replaceAll("\u202F", "").replace("−", "-"));

const decimalsOf = (text: string): number => text.split(".")[1]?.length ?? 0;

const at = (pattern: RegExp) => (rest: string) => pattern.exec(rest)?.[0] ?? null;

const near = (written: number, value: number, within: number): boolean =>
	Number.isFinite(written) && Math.abs(written - value) <= within * (1 + slack) + 1e-9 * Math.abs(value);

/** Wrong type of what was derived: a fault of the catalogue, not of the paper. */
function asNumber(expected: unknown, kind: string): number {
	if (typeof expected === "number") return expected;
	throw new TypeError(`a ${kind} needs a number, not ${String(expected)}`);
}

function pairOf(expected: unknown, kind: string): readonly [number, number] {
	if (Array.isArray(expected) && typeof expected[0] === "number" && typeof expected[1] === "number")
		return [expected[0], expected[1]];
	throw new TypeError(`a ${kind} needs two numbers, not ${String(expected)}`);
}

export const isFixed = (value: unknown): value is Fixed =>
	typeof value === "object" && value !== null && "value" in value && "decimals" in value;

/** A whole number, or one with as many digits after the point as were said to be deserved. */
function checkNumber(written: string, expected: unknown): string | null {
	const { value, decimals } = isFixed(expected) ? expected : { value: asNumber(expected, "number"), decimals: 0 };
	const step = 10 ** -decimals;
	const number = numberOf(written);
	const right =
		decimalsOf(written) <= Math.max(0, decimals) &&
		(decimals >= 0 || number % step === 0) &&
		near(number, value, step / 2);
	return right ? null : `${value} to ${decimals} digits`;
}

/** Tenths of a mL below 10 mL, whole ones above, tenths of a litre from 10 L. */
function checkVolume(written: string, expected: unknown): string | null {
	const value = asNumber(expected, "volume");
	const [number = "", unit] = written.split(" ");
	const litres = unit === "L";
	const step = litres ? 100 : Math.abs(value) < 9.95 ? 0.1 : 1;
	const ml = numberOf(number) * (litres ? 1000 : 1);
	return litres === Math.abs(value) >= 10_000 - 1e-6 && near(ml, value, step / 2) ? null : `${value} mL`;
}

const durationText = /^−?(?:\d+ d(?: \d+ h)?|\d+(?:\.\d{1,2})? h(?: \d+ min)?|\d+(?:\.\d)? min|\d+ s)(?![a-z])/u;

/** Minutes that a duration says, and half of the last digit that it gives. */
function readDuration(text: string): { readonly min: number; readonly within: number } {
	const sign = text.startsWith("−") ? -1 : 1;
	const parts = [...text.matchAll(/(\d+(?:\.\d+)?) (d|h|min|s)/gu)];
	const min = parts.reduce(
		(sum, [, number, unit]) => sum + Number(number) * { d: 1440, h: 60, min: 1, s: 1 / 60 }[unit as "d"],
		0,
	);
	const units = parts.map(([, , unit]) => unit);
	const within = units.includes("d")
		? 30
		: units.includes("s")
			? 0.5 / 60
			: units.includes("h") || min >= 9.95
				? 0.5
				: 0.05;
	return { min: sign * min, within };
}

function checkDuration(written: string, expected: unknown): string | null {
	const value = asNumber(expected, "duration");
	const { min, within } = readDuration(written);
	return near(min, value, within) ? null : `${value} min`;
}

function checkPercent(written: string, expected: unknown): string | null {
	const share = asNumber(expected, "percentage");
	const right = written.startsWith("<")
		? share > 0 && share < 0.01
		: written.startsWith(">")
			? share < 1 && share > 0.99
			: near(Number.parseFloat(written), 100 * share, 0.5) &&
				(share === 0 || share === 1 ? Number.parseFloat(written) === 100 * share : share >= 0.01 && share <= 0.99);
	return right ? null : `${100 * share} %`;
}

const words = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const wordPattern = new RegExp(`^(?:${words.join("|")}|\\d+)(?![\\p{L}\\d])`, "iu");

function checkWord(written: string, expected: unknown): string | null {
	const value = asNumber(expected, "number in words");
	const place = words.indexOf(written.toLowerCase());
	return (place === -1 ? Number(written) : place) === value && (place !== -1 || value > 10) ? null : String(value);
}

/** ' (between A and B)', or nothing where both ends are written alike. */
function spreadOf(
	one: RegExp,
	check: (written: string, expected: unknown) => string | null,
	within: (value: number) => number,
): Hole {
	const body = one.source.replace(/^\^/u, "");
	const pattern = new RegExp(`^ \\(between (${body}) and (${body})\\)`, "u");
	return {
		reach: (rest) => pattern.exec(rest)?.[0] ?? "",
		check: (written, expected) => {
			const [low, high] = pairOf(expected, "spread");
			const said = pattern.exec(written);
			if (said === null) return high - low <= 2 * within(high) + slack ? null : `between ${low} and ${high}`;
			return check(said[1] ?? "", low) ?? check(said[2] ?? "", high);
		},
	};
}

/** 'between A and B', or the one where both are written alike. */
function betweenOf(one: RegExp, check: (written: string, expected: unknown) => string | null): Hole {
	const body = one.source.replace(/^\^/u, "");
	const both = new RegExp(`^between (${body}) and (${body})`, "u");
	return {
		reach: (rest) => (both.exec(rest) ?? one.exec(rest))?.[0] ?? null,
		check: (written, expected) => {
			const said = both.exec(written);
			const pair = Array.isArray(expected) ? expected : [expected, expected];
			const [low, high] = said === null ? [written, written] : said.slice(1);
			return check(low ?? "", pair[0]) ?? check(high ?? "", pair[1]);
		},
	};
}

const volume = /^−?\d+(?:\.\d+)? m?L(?![a-z/])/u;
const clockText = /^(?:(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun)(?: \d{1,2} [A-Z][a-z]+)? )?\d\d:\d\d/u;
const dateText = /^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2} [A-Z][a-z]+(?: \d{4})?/u;
const clockBody = clockText.source.slice(1);
const rangeText = new RegExp(
	`^(?:(?:(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun)(?: \\d{1,2} [A-Z][a-z]+)? )?(?:at \\d\\d:\\d\\d|between \\d\\d:\\d\\d and \\d\\d:\\d\\d)|at ${clockBody}|between ${clockBody} and ${clockBody}|${clockBody} to ${clockBody})`,
	"u",
);

const minutesApart = (written: number, expected: number): boolean => near(written, expected, 0.5);

const bareVolume = /^−?\d+(?:\.\d+)?/u;

/** Every kind of hole, by the name that a pattern calls it by. */
export const holes: { readonly [name: string]: Hole } = {
	/** A name or a text that stands elsewhere, letter by letter. */
	text: {
		reach: (rest, expected) => {
			const text = spaced(String(expected));
			return rest.startsWith(text) ? text : null;
		},
		check: (written, expected) => (written === spaced(String(expected)) ? null : String(expected)),
	},
	n: { reach: at(plain), check: checkNumber },
	/** A number that nothing printed says exactly: between two bounds. */
	within: {
		reach: at(plain),
		check: (written, expected) => {
			const [low, high] = pairOf(expected, "number between bounds");
			const value = numberOf(written);
			return value >= low && value <= high ? null : `${low} to ${high}`;
		},
	},
	/** The next of 1, 2, 5, 10, … from a number up. */
	upto: {
		reach: at(/^\d+(?:\.\d+)?(?:e[+-]\d+)?/u),
		check: (written, expected) => {
			const bound = asNumber(expected, "bound");
			const value = Number(written);
			const steps = [1, 2, 5, 10].map((lead) => lead * 10 ** Math.floor(Math.log10(bound * (1 - 1e-9))));
			const next = steps.find((step) => step >= bound * (1 - 1e-6)) ?? 0;
			return Math.abs(value - next) <= 1e-6 * next ? null : String(next);
		},
	},
	money: { reach: at(money), check: checkNumber },
	ml: { reach: at(volume), check: checkVolume },
	/** A volume in mL whose unit stands elsewhere. */
	bareml: { reach: at(bareVolume), check: (written, expected) => checkVolume(`${written} mL`, expected) },
	/** A share of which as many figures are written as it was given with. */
	share: {
		reach: at(/^\d+(?:\.\d+)? %/u),
		check: (written, expected) => {
			const share = asNumber(expected, "share");
			return near(Number.parseFloat(written), 100 * share, 0.005 * 100 * share) ? null : `${100 * share} %`;
		},
	},
	/** Seconds that something takes, about. */
	about: {
		reach: (rest) => /^less than 1 s/u.exec(rest)?.[0] ?? /^about (?:\d+ s|\d+(?:\.\d)? min)/u.exec(rest)?.[0] ?? null,
		check: (written, expected) => {
			const value = asNumber(expected, "time of about") / 60;
			if (written.startsWith("less")) return value < 1 / 60 ? null : `${60 * value} s`;
			return checkDuration(written.slice("about ".length), value);
		},
	},
	duration: { reach: at(durationText), check: checkDuration },
	percent: { reach: at(/^(?:[<>]?\d+) %/u), check: checkPercent },
	word: { reach: at(wordPattern), check: checkWord },
	mmHg: {
		reach: at(/^−\d+ mmHg/u),
		check: (written, expected) =>
			near(numberOf(written.split(" ")[0] ?? ""), -asNumber(expected, "depth"), 0.5)
				? null
				: `−${String(expected)} mmHg`,
	},
	clock: {
		reach: at(clockText),
		check: (written, expected, clock) =>
			minutesApart(readClock(written, clock), asNumber(expected, "time")) ? null : `minute ${String(expected)}`,
	},
	/** By when something is over: the next whole minute. */
	by: {
		reach: at(clockText),
		check: (written, expected, clock) => {
			const late = readClock(written, clock) - asNumber(expected, "time by which");
			return late >= -slack && late <= 1 + slack ? null : `the minute after ${String(expected)}`;
		},
	},
	/** The time of day alone, on whatever day. */
	time: {
		reach: at(/^\d\d:\d\d/u),
		check: (written, expected, clock) => {
			const late = readClock(written, clock) - asNumber(expected, "time of day");
			const days = late / 1440;
			return Math.abs(days - Math.round(days)) * 1440 <= 0.5 + slack ? null : `minute ${String(expected)}`;
		},
	},
	/** The time of day by which something is over, on whatever day. */
	timeby: {
		reach: at(/^\d\d:\d\d/u),
		check: (written, expected, clock) => {
			const late = readClock(written, clock) - asNumber(expected, "time of day");
			const over = ((late % 1440) + 1440) % 1440;
			return over <= 1 + slack || over >= 1440 - slack ? null : `the minute after ${String(expected)}`;
		},
	},
	date: {
		reach: at(dateText),
		check: (written, expected, clock) => {
			const day = readDate(written, clock);
			const minute = Math.round(clock.startClockMin + asNumber(expected, "date"));
			return day === Math.floor(minute / 1440) ? null : `the day of minute ${String(expected)}`;
		},
	},
	range: {
		reach: at(rangeText),
		check: (written, expected, clock) => {
			const [from, to] = pairOf(expected, "range of times");
			const read = readRange(written, clock);
			return minutesApart(read[0], from) && minutesApart(read[1], to) ? null : `minutes ${from} to ${to}`;
		},
	},
	/** A range of times after a day has been named: a bare time is on that day. */
	rangeon: {
		reach: at(rangeText),
		check: (written, expected, clock) => {
			if (!isOnDay(expected)) throw new TypeError("a range on a day needs that day");
			const read = readRange(written, clock);
			const bare = /^(?:at|between) \d/u.test(written) && !/and [A-Z]/u.test(written);
			const shift = bare ? expected.day * 1440 : 0;
			return minutesApart(read[0] + shift, expected.from) && minutesApart(read[1] + shift, expected.to)
				? null
				: `minutes ${expected.from} to ${expected.to}`;
		},
	},
	/** The time of a row: a bare one is on the day of the row before. */
	rowtime: {
		reach: at(clockText),
		check: (written, expected, clock) => {
			if (!isOnDay(expected)) throw new TypeError("the time of a row needs the day before it");
			const shift = /^\d/u.test(written) ? expected.day * 1440 : 0;
			return minutesApart(readClock(written, clock) + shift, expected.from) ? null : `minute ${expected.from}`;
		},
	},
	mlspread: spreadOf(volume, checkVolume, (value) => (Math.abs(value) < 9.95 ? 0.05 : value >= 10_000 ? 50 : 0.5)),
	durationspread: spreadOf(durationText, checkDuration, (value) =>
		value < 1 ? 0.5 / 60 : value < 9.95 ? 0.05 : value < 2880 ? 0.5 : 30,
	),
	betweenml: betweenOf(bareVolume, (written, expected) => checkVolume(`${written} mL`, expected)),
	between: betweenOf(plain, checkNumber),
};

/** A time or a range of times, and the day that a reader has in mind by then, counted from that of the start. */
export interface OnDay {
	readonly from: number;
	readonly to: number;
	readonly day: number;
}

const isOnDay = (value: unknown): value is OnDay => typeof value === "object" && value !== null && "day" in value;

/** '2.5 fills', '1 fill': tenths, and the plural that goes with what is written. */
export function countHole(one: string, many: string): Hole {
	const pattern = new RegExp(`^(−?\\d+(?:\\.\\d+)?) (${many}|${one})(?![a-z])`, "u");
	return {
		reach: (rest) => pattern.exec(rest)?.[0] ?? null,
		check: (written, expected) => {
			const [, number = "", noun] = pattern.exec(written) ?? [];
			if (noun !== (number === "1" ? one : many)) return `${number} ${number === "1" ? one : many}`;
			return checkNumber(number, isFixed(expected) ? expected : fixed(asNumber(expected, "count"), 1));
		},
	};
}

/** As a reader sees it: no break and any other blank alike. */
export const spaced = (text: string): string => text.replace(/[ \t\r\n\u00A0]+/gu, " ").trim();
