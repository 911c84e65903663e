import {
	assumptions,
	atLeast0,
	cautions,
	changeTime,
	condition,
	count,
	list,
	number,
	numberOrNull,
	object,
	oneOf,
	type Schema,
	scenario,
	share,
	spread,
	supply,
	text,
} from "./schema-parts.ts";

const countTotals = ["fills", "washes"];
const volumeTotals = [
	"instilledMl",
	"exudateMl",
	"toCanisterMl",
	"weptMl",
	"discardedMl",
	"inDressingMl",
	"solutionWastedMl",
	"woundOutputMl",
	"notReturnedMl",
	"offSuctionMin",
	"underSuctionMin",
	"wetMin",
];
const moreTotals = [
	"breaches",
	"meanExudateShare",
	"canisterChanges",
	"sourceChanges",
	"dressingChanges",
	"portsReplaced",
	"alarms",
	"nightCalls",
	"nurseMin",
];
const totalsOf = (each: Schema): Schema =>
	object(
		Object.fromEntries(
			[...countTotals, ...volumeTotals, ...moreTotals].map((name) => [
				name,
				each,
			]),
		),
	);

const span = { startMin: atLeast0, endMin: atLeast0 };

const dressingDay = object({
	id: text,
	phases: list(
		object({
			phase: oneOf("suction", "fill", "dwell", "drain", "change"),
			...span,
		}),
	),
	pauses: list(
		object({ reason: oneOf("off", "canister", "round", "port"), ...span }),
	),
	notices: list(
		object({
			notice: oneOf("canister-nearly-full", "source-low"),
			atMin: atLeast0,
		}),
	),
	alarms: list(
		object({
			condition,
			priority: oneOf("medium", "high"),
			...span,
			endedBy: oneOf(
				"call",
				"round",
				"scripted",
				"dressing-change",
				"by-itself",
				"horizon",
			),
		}),
	),
	canisterChanges: list(
		object({
			atMin: atLeast0,
			reason: oneOf("at-capacity", "round", "scripted"),
		}),
	),
	sourceChanges: list(
		object({
			atMin: atLeast0,
			reason: oneOf("empty", "round", "expired", "scripted"),
			wastedMl: atLeast0,
		}),
	),
	dressingChanges: list(object(span)),
	takeovers: list(
		object({ regimen: count, fromMin: atLeast0, atMin: atLeast0 }),
	),
	totals: totalsOf(number),
	curve: object({
		atMin: list(atLeast0),
		depthMmHg: list(number),
		liquidMl: list(number),
		canisterMl: list(number),
		sourceMl: list(number),
	}),
});

const {
	id: _id,
	notices: _notices,
	totals: _totals,
	curve: _curve,
	...scheduled
} = dressingDay.properties ?? {};

const content = { p10Ml: number, p50Ml: number, p90Ml: number };
const perDay = { meanPerDay: atLeast0, halfWidth95: numberOrNull };

const projection = object({
	replications: { type: "integer", minimum: 1 },
	dressings: list(
		object({
			id: text,
			totals: totalsOf(spread),
			canisterChanges: list(changeTime),
			canisterNeeds: list(
				object({
					...changeTime.properties,
					windows: list(object({ ...span, probability: share })),
				}),
			),
			fills: list(changeTime),
			rounds: list(object({ atMin: atLeast0, ...content })),
			sourceChanges: list(changeTime),
			alarms: list(
				object({
					condition,
					...perDay,
					byChance: object(perDay),
					bins: list(
						object({
							...span,
							probability: share,
							low: share,
							high: share,
							chance: share,
						}),
					),
					windows: list(object({ ...span, peakProbability: share })),
				}),
			),
			canisterAtEnd: object(content),
			canisterLevel: object({
				stepMin: { type: "number", exclusiveMinimum: 0 },
				p10Ml: list(number),
				p50Ml: list(number),
				p90Ml: list(number),
			}),
		}),
	),
});

/** JSON Schema of the format `slackwater/day@1`. */
export const dayJsonSchema: Schema = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	$id: "urn:slackwater:day:1",
	title: "slackwater/day@1",
	description:
		"What a day and its replications gave. Minutes count from the start of the scenario, volumes are mL.",
	...object({
		format: { const: "slackwater/day@1" },
		scenario,
		trace: object({
			replication: count,
			typicalOf: { type: ["integer", "null"], minimum: 1 },
			events: count,
			hash: text,
		}),
		dressings: list(
			object({ ...dressingDay.properties, schedule: object(scheduled) }),
		),
		projection,
		home: {
			anyOf: [
				{ type: "null" },
				object({
					fromMin: atLeast0,
					forMin: atLeast0,
					supplies: list(supply),
				}),
			],
		},
		cautions,
		assumptions,
	}),
};
