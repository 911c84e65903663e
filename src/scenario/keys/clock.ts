import type { ClockSpan } from "../meaning/scenario.ts";
import { leaf } from "../reading/leaf.ts";

/** Minutes after midnight of `07:00`; null where it is no clock time. */
function clockMin(text: string): number | null {
	const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/u.exec(text) ?? [];
	return hours === undefined || minutes === undefined ? null : Number(hours) * 60 + Number(minutes);
}

const time = "(?:[01]\\d|2[0-3]):[0-5]\\d";

/** A clock time, as minutes after midnight. */
export const clock = leaf(
	{ type: "string", pattern: `^${time}$`, description: "a clock time", examples: ["07:00"] },
	(raw, refuse): number => {
		const minutes = typeof raw === "string" ? clockMin(raw) : null;
		if (minutes !== null) return minutes;
		const padded = typeof raw === "string" ? `0${raw.trim().replace(".", ":")}`.slice(-5) : "";
		const suggestion = clockMin(padded) === null ? undefined : `"${padded}"`;
		return refuse('a clock time from "00:00" to "23:59", such as "07:00"', suggestion);
	},
);

/** A stretch of the day, `22:00-06:00`. */
export const clockSpan = leaf(
	{
		type: "string",
		pattern: `^${time}\\s*[-\\u2013]\\s*${time}$`,
		description: "a stretch of the day",
		examples: ["06:30-07:30"],
	},
	(raw, refuse): ClockSpan => {
		const [from = "", to = "", ...rest] = typeof raw === "string" ? raw.split(/\s*[-\u2013]\s*/u) : [];
		const [fromMin, toMin] = [clockMin(from), clockMin(to)];
		if (fromMin === null || toMin === null || fromMin === toMin || rest.length > 0)
			return refuse('a stretch of the day such as "06:30-07:30", from one clock time to another');
		return { fromMin, toMin };
	},
);

/** Whether a day of the calendar exists. */
function exists(year: number, month: number, day: number): boolean {
	const date = new Date(Date.UTC(year, month - 1, day));
	return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

/** When a scenario begins. */
export const start = leaf(
	{
		type: "string",
		pattern: `^\\d{4}-\\d{2}-\\d{2}T${time}$`,
		examples: ["2026-03-02T07:00"],
		description: "wall-clock start, local time without a zone",
	},
	(raw, refuse): string => {
		const expected = "a local date and time such as 2026-03-02T07:00";
		const [, year, month, day] =
			typeof raw === "string" ? (/^(\d{4})-(\d{2})-(\d{2})T(?:[01]\d|2[0-3]):[0-5]\d$/u.exec(raw) ?? []) : [];
		if (typeof raw !== "string" || year === undefined) {
			const zone = typeof raw === "string" && /(?:Z|[+-]\d{2}:?\d{2})$/u.test(raw) && raw.includes("T");
			return refuse(zone ? `${expected}, without a zone` : expected);
		}
		if (Number(year) < 1900 || Number(year) > 2199) return refuse("a year from 1900 to 2199");
		return exists(Number(year), Number(month), Number(day)) ? raw : refuse("a date that exists");
	},
);

/** Minutes after midnight at a start. */
export const startClockMin = (start: string) => clockMin(start.slice(11)) ?? 0;

/** A year, a month or a day at which prices held. */
export const asOf = leaf(
	{
		anyOf: [{ type: "string", pattern: "^\\d{4}(?:-\\d{2}(?:-\\d{2})?)?$" }, { type: "integer" }],
		description: "when the prices held",
		examples: ["2026-01"],
	},
	(raw, refuse): string => {
		const value = Number.isSafeInteger(raw) ? String(raw) : raw;
		const [, year, month = "01", day = "01"] =
			typeof value === "string" ? (/^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/u.exec(value) ?? []) : [];
		return typeof value === "string" && exists(Number(year), Number(month), Number(day))
			? value
			: refuse("the date of the prices, such as 2026-01");
	},
);
