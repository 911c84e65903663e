import * as z from "zod";
import { refuse } from "./quantity.ts";

/** Minutes after midnight of `07:00`; null where it is no clock time. */
export function clockMin(text: string): number | null {
	const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/u.exec(text) ?? [];
	return hours === undefined || minutes === undefined
		? null
		: Number(hours) * 60 + Number(minutes);
}

/** A clock time, as minutes after midnight. */
export const clock = z
	.unknown()
	.transform((raw, context): number => {
		const minutes = typeof raw === "string" ? clockMin(raw) : null;
		if (minutes !== null) return minutes;
		const padded =
			typeof raw === "string"
				? `0${raw.trim().replace(".", ":")}`.slice(-5)
				: "";
		const suggestion = clockMin(padded) === null ? undefined : `"${padded}"`;
		return refuse(
			context,
			raw,
			'a clock time from "00:00" to "23:59", such as "07:00"',
			suggestion,
		);
	})
	.meta({
		type: "string",
		pattern: "^(?:[01]\\d|2[0-3]):[0-5]\\d$",
		description: "a clock time",
		examples: ["07:00"],
	});

/** A stretch of the day, `22:00-06:00`; the end comes first on the clock where it runs over midnight. */
export const clockSpan = z
	.unknown()
	.transform((raw, context): ClockSpan => {
		const [from = "", to = "", ...rest] =
			typeof raw === "string" ? raw.split(/\s*[-\u2013]\s*/u) : [];
		const [fromMin, toMin] = [clockMin(from), clockMin(to)];
		if (
			fromMin === null ||
			toMin === null ||
			fromMin === toMin ||
			rest.length > 0
		)
			return refuse(
				context,
				raw,
				'a stretch of the day such as "06:30-07:30", from one clock time to another',
			);
		return { fromMin, toMin };
	})
	.meta({
		type: "string",
		pattern:
			"^(?:[01]\\d|2[0-3]):[0-5]\\d\\s*[-\\u2013]\\s*(?:[01]\\d|2[0-3]):[0-5]\\d$",
		description: "a stretch of the day",
		examples: ["06:30-07:30"],
	});

export interface ClockSpan {
	/** Minutes after midnight. */
	readonly fromMin: number;
	readonly toMin: number;
}
