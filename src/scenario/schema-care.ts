import * as z from "zod";
import { defaults } from "./defaults.ts";
import { count, record } from "./leaf.ts";
import { nearest } from "./nearest.ts";
import {
	judge,
	type QuantityRule,
	quantity,
	quantityOr,
	refuse,
} from "./quantity.ts";
import { clock, clockSpan } from "./schema-clock.ts";
import { duration } from "./schema-regimen.ts";

const response = (what: string) =>
	duration(
		`median delay until a nurse comes, ${what}`,
		"0.1 min",
		"24 h",
		"4 min",
	);

const interval: QuantityRule = {
	unit: "min",
	what: "a duration",
	example: "48 h",
	from: "2 h",
	to: "28 d",
};
const instant: QuantityRule = {
	unit: "min",
	what: "a duration from the start",
	example: "36 h",
	from: "0 h",
	to: "28 d",
};

/** `none`, an age at which a dressing is changed, or a list of times from the start. */
const dressingChange = z
	.union(
		[
			z
				.array(quantity(instant), {
					error: "a list of durations from the start",
				})
				.max(200, { error: "at most 200 changes" }),
			z
				.unknown()
				.transform((raw, context): number | "none" => {
					if (raw === "none") return raw;
					const judged = judge(raw, interval, ["none"]);
					if (judged.ok) return judged.value;
					const word =
						typeof raw === "string" ? nearest(raw, ["none"]) : undefined;
					return refuse(
						context,
						raw,
						`${judged.expected}, or a list of durations from the start`,
						judged.suggestion ?? word,
					);
				})
				.meta({ type: "string", examples: ["48 h", "none"] }),
		],
		{
			error:
				'none, an age such as "48 h", or a list of durations from the start',
		},
	)
	.meta({
		description:
			"age at which a dressing is changed, or a list of times from the start, or none",
	});

const keptClear = (what: string) =>
	z
		.array(clockSpan, {
			error:
				'a list of stretches of the day such as [ "06:30-07:30" ]; [] for none',
		})
		.max(24, { error: "at most 24 stretches of the day" })
		.meta({ description: `${what}, stretches of the day` });

export const care = record("care", {
	response: record("response", {
		day: response("07:00 to 19:00").prefault(
			defaults["care.response.day"].write,
		),
		night: response("19:00 to 07:00").prefault(
			defaults["care.response.night"].write,
		),
		spread: quantity({
			unit: "",
			what: "a spread",
			example: "0.6",
			from: "0",
			to: "3",
			description: "lognormal sigma of the delay",
		}).prefault(defaults["care.response.spread"].write),
	})
		.prefault({})
		.meta({ description: "how long an alarm waits for a nurse" }),
	rounds: z
		.array(clock, {
			error: 'a list of clock times such as [ "07:00", "19:00" ]; [] for none',
		})
		.max(96, { error: "at most 96 rounds a day" })
		.prefault([...defaults["care.rounds"].write])
		.meta({ description: "clock times of the rounds; [] for none" }),
	turning: quantityOr(["none"], {
		unit: "min",
		what: "a duration",
		example: "4 h",
		from: "30 min",
		to: "7 d",
		description: "interval of turning in bed, or none",
	}).prefault(defaults["care.turning"].write),
	nurses: z
		.union(
			[
				z.literal("unlimited"),
				count("unlimited, or how many nurses", 1, 1000, "number of nurses"),
			],
			{
				error: "unlimited, or a whole number from 1 to 1000",
			},
		)
		.prefault(defaults["care.nurses"].write)
		.meta({ description: "nurses who can answer alarms at the same time" }),
	dressingChange: dressingChange.prefault(
		defaults["care.dressingChange"].write,
	),
	avoid: record("times to keep clear", {
		handOver: keptClear("hand-over").prefault([
			...defaults["care.avoid.handOver"].write,
		]),
		meals: keptClear("meals").prefault([...defaults["care.avoid.meals"].write]),
		smallHours: keptClear("the small hours").prefault([
			...defaults["care.avoid.smallHours"].write,
		]),
	})
		.prefault({})
		.meta({
			description:
				"times of the day at which a ward would rather not be called; nothing in the simulated day depends on them",
		}),
});
