import * as z from "zod";
import { byDefault } from "../meaning/defaults.ts";
import type { Care } from "../meaning/scenario.ts";
import type { NurseShift } from "../meaning/ward.ts";
import { count, countOrUnlimited, list, record } from "../reading/leaf.ts";
import { type Found, found, received } from "../reading/problem.ts";
import { duration, quantity, quantityOr, rule, sigma } from "../reading/quantity.ts";
import { again, asList, asMap } from "../reading/raw.ts";
import { clock, clockSpan } from "./clock.ts";

const response = (when: string) =>
	duration(`median delay until a nurse comes, ${when}`, "from 0.1 min to 24 h", "4 min");

const changes = list(
	quantity(rule("min", "a duration from the start", "from 0 h to 28 d", "36 h")),
	"a list of durations from the start",
	200,
	"changes",
);

/** `none`, an age at which a dressing is changed, or a list of times from the start. */
const dressingChange = z
	.union(
		[
			changes,
			quantityOr(["none"], rule("min", "a duration", "from 2 h to 28 d", "48 h"), {
				otherwise: ", or a list of durations from the start",
				as: { type: "string", examples: ["48 h", "none"] },
			}),
		],
		{ error: 'none, an age such as "48 h", or a list of durations from the start' },
	)
	.describe("age at which a dressing is changed, or a list of times from the start, or none");

const keptClear = (what: string) =>
	list(
		clockSpan,
		'a list of stretches of the day such as [ "06:30-07:30" ]; [] for none',
		24,
		"stretches of the day",
	).describe(`${what}, stretches of the day`);

const turning = quantityOr(
	["none"],
	rule("min", "a duration", "from 30 min to 7 d", "4 h", "interval of turning in bed, or none"),
);

const nurses = countOrUnlimited("how many nurses", 1, 1000, "number of nurses");

const shape = {
	response: record("response", {
		day: byDefault(response("07:00 to 19:00"), "care.response.day"),
		night: byDefault(response("19:00 to 07:00"), "care.response.night"),
		spread: byDefault(sigma("lognormal sigma of the delay"), "care.response.spread"),
	})
		.prefault({})
		.describe("how long an alarm waits for a nurse"),
	rounds: byDefault(
		list(clock, 'a list of clock times such as [ "07:00", "19:00" ]; [] for none', 96, "rounds a day"),
		"care.rounds",
	).describe("clock times of the rounds; [] for none"),
	turning: byDefault(turning, "care.turning"),
	nurses: byDefault(nurses, "care.nurses").describe("nurses who can answer alarms at the same time"),
	dressingChange: byDefault(dressingChange, "care.dressingChange"),
	avoid: record("times to keep clear", {
		handOver: byDefault(keptClear("hand-over"), "care.avoid.handOver"),
		meals: byDefault(keptClear("meals"), "care.avoid.meals"),
		smallHours: byDefault(keptClear("the small hours"), "care.avoid.smallHours"),
	})
		.prefault({})
		.describe(
			"times of the day at which a ward would rather not be called; nothing in the simulated day depends on them",
		),
};

const description = "who looks after them, and when";
const dayCare = record("care", shape);

export const care = dayCare.prefault({}).describe(description);

const shift = record("a shift", {
	from: clock.describe("when it begins"),
	nurses: count("nurses", 1, 1000, "nurses who can answer alarms"),
});

const nursesOrShifts = z.union(
	[nurses, list(shift, "a list of shifts", 24, "shifts", { least: "one or more shifts" })],
	{ error: "unlimited, a whole number from 1 to 1000, or a list of shifts with from and nurses" },
);

/** Over weeks the number of nurses may go by the shift. */
export const wardCare = record("care", {
	...shape,
	nurses: byDefault(nursesOrShifts, "care.nurses").describe("nurses who can answer alarms, or a list of shifts"),
})
	.prefault({})
	.describe(description);

/** Rounds and changes stand in their lists once. */
export function crossCare(written: unknown): Found[] {
	const care = asMap(written);
	return ["rounds", "dressingChange"].flatMap((key) => {
		const times = asList(care[key]).map((time) => (typeof time === "string" ? time : undefined));
		return again(times, "each time once", (i) => ["care", key, i]);
	});
}

/** Shifts begin at times of their own; two that do not say when are the same shift twice. */
export function crossShifts(nurses: unknown): Found[] {
	const begins = asList(nurses).map((shift) => asMap(shift).from);
	return begins.flatMap((from, i) =>
		begins.indexOf(from) < i ? [found(["care", "nurses", i, "from"], "each time once", `${received(from)} again`)] : [],
	);
}

/** `nurses` are those of a day: null where they are unlimited, and in a ward, which has them by the shift. */
export function resolveCare(file: Omit<z.output<typeof dayCare>, "nurses">, nurses: number | null): Care {
	const { response, rounds, turning, dressingChange: change, avoid } = file;
	return {
		response: { dayMin: response.day, nightMin: response.night, spread: response.spread },
		roundsClockMin: [...rounds].sort((a, b) => a - b),
		turningMin: turning === "none" ? null : turning,
		nurses,
		dressingChange:
			change === "none"
				? null
				: Array.isArray(change)
					? { atMin: [...change].sort((a, b) => a - b) }
					: { everyMin: change },
		avoid,
	};
}

export const resolveNurses = (nurses: number | "unlimited") => (nurses === "unlimited" ? null : nurses);

export function resolveShifts(nurses: z.output<typeof wardCare>["nurses"]): NurseShift[] {
	if (Array.isArray(nurses))
		return nurses
			.map(({ from, nurses: count }) => ({ fromClockMin: from, nurses: count }))
			.sort((a, b) => a.fromClockMin - b.fromClockMin);
	// Day and night are the shifts of a ward that names none.
	return [7, 19].map((hour) => ({ fromClockMin: hour * 60, nurses: resolveNurses(nurses) }));
}
