/** JSON Schema (draft 2020-12) of the format `slackwater/day@1`. Objects may gain keys; those named here keep their meaning. */
interface Schema {
	readonly [keyword: string]: unknown;
	readonly properties?: { readonly [key: string]: Schema };
	readonly items?: Schema;
	readonly additionalProperties?: Schema | boolean;
}

const number: Schema = { type: "number" };
const text: Schema = { type: "string" };
const count: Schema = { type: "integer", minimum: 0 };
const share: Schema = { type: "number", minimum: 0, maximum: 1 };
const atLeast0: Schema = { type: "number", minimum: 0 };
const numberOrNull: Schema = { type: ["number", "null"] };
const oneOf = (...values: readonly string[]): Schema => ({ enum: values });
const list = (items: Schema): Schema => ({ type: "array", items });
const object = (
	properties: { readonly [key: string]: Schema },
	optional: readonly string[] = [],
): Schema => ({
	type: "object",
	properties,
	required: Object.keys(properties).filter((key) => !optional.includes(key)),
});

const condition = oneOf(
	"canister-at-capacity",
	"suction-path-obstructed",
	"fill-path-obstructed",
	"seal-leak",
	"depth-not-held",
	"source-empty",
	"suction-absent",
	"large-output",
);

const scenario = object({
	title: text,
	seed: text,
	version: text,
	start: { type: "string", pattern: "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}" },
	startClockMin: { type: "number", minimum: 0, exclusiveMaximum: 1440 },
	horizonMin: { type: "number", exclusiveMinimum: 0 },
	replications: { type: "integer", minimum: 1 },
	chance: oneOf("on", "off"),
	solution: text,
	dressings: list(
		object({
			id: text,
			patient: text,
			tissue: text,
			foamVolumeMl: atLeast0,
			capacityMl: atLeast0,
			exudateMlPerDay: atLeast0,
			slough: text,
			difficulty: text,
			canisterMl: atLeast0,
			sourceMl: atLeast0,
			regimens: list(
				object({
					fromMin: atLeast0,
					begin: oneOf("suction", "fill"),
					depthMmHg: atLeast0,
					fillMl: atLeast0,
					dwellMin: numberOrNull,
					suctionMin: numberOrNull,
					drawdown: text,
				}),
			),
		}),
	),
	roundsClockMin: list(atLeast0),
	supplies: list(
		object({
			item: text,
			p50: atLeast0,
			p90: atLeast0,
			packSize: numberOrNull,
			packs: numberOrNull,
		}),
	),
});

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
	totals: totalsOf(number),
	curve: object({
		atMin: list(atLeast0),
		depthMmHg: list(number),
		liquidMl: list(number),
		canisterMl: list(number),
		sourceMl: list(number),
	}),
});

const spread = object({
	mean: number,
	halfWidth95: numberOrNull,
	p10: number,
	p50: number,
	p90: number,
});

const changeTime = object({
	ordinal: { type: "integer", minimum: 1 },
	p10Min: atLeast0,
	p50Min: atLeast0,
	p90Min: atLeast0,
	probabilityWithinHorizon: share,
});

const projection = object({
	replications: { type: "integer", minimum: 1 },
	dressings: list(
		object({
			id: text,
			totals: totalsOf(spread),
			canisterChanges: list(changeTime),
			sourceChanges: list(changeTime),
			alarms: list(
				object({
					condition,
					meanPerDay: atLeast0,
					halfWidth95: numberOrNull,
					bins: list(
						object({ ...span, probability: share, low: share, high: share }),
					),
					windows: list(object({ ...span, peakProbability: share })),
				}),
			),
			canisterLevel: object({
				stepMin: { type: "number", exclusiveMinimum: 0 },
				p10Ml: list(number),
				p50Ml: list(number),
				p90Ml: list(number),
			}),
		}),
	),
});

export const dayJsonSchema: Schema = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	$id: "urn:slackwater:day:1",
	title: "slackwater/day@1",
	description:
		"What a day and its replications gave. Minutes count from the start of the scenario, volumes are mL.",
	...object({
		format: { const: "slackwater/day@1" },
		scenario,
		trace: object({ events: count, hash: text }),
		dressings: list(dressingDay),
		projection,
		cautions: list(object({ code: text, text, dressing: text }, ["dressing"])),
		assumptions: list(
			object({
				name: text,
				value: { type: ["number", "string"] },
				unit: text,
				provenance: oneOf("published", "common practice", "assumed"),
				source: text,
				meaning: text,
				defaulted: { type: "boolean" },
			}),
		),
	}),
};
