/** What the JSON Schemas (draft 2020-12) of all results are made of. Objects may gain keys unless they are closed; those named keep their meaning. */
export interface Schema {
	readonly [keyword: string]: unknown;
	readonly properties?: { readonly [key: string]: Schema };
	readonly items?: Schema;
	readonly additionalProperties?: Schema | boolean;
}

export const number: Schema = { type: "number" };
export const text: Schema = { type: "string" };
export const count: Schema = { type: "integer", minimum: 0 };
export const share: Schema = { type: "number", minimum: 0, maximum: 1 };
export const atLeast0: Schema = { type: "number", minimum: 0 };
export const numberOrNull: Schema = { type: ["number", "null"] };
export const oneOf = (...values: readonly string[]): Schema => ({
	enum: values,
});
export const list = (items: Schema): Schema => ({ type: "array", items });
export const object = (
	properties: { readonly [key: string]: Schema },
	optional: readonly string[] = [],
): Schema => ({
	type: "object",
	properties,
	required: Object.keys(properties).filter((key) => !optional.includes(key)),
});

/** An object that may hold no other keys. */
export const closed = (schema: Schema): Schema => ({
	...schema,
	additionalProperties: false,
});

export const condition = oneOf(
	"canister-at-capacity",
	"suction-path-obstructed",
	"fill-path-obstructed",
	"seal-leak",
	"depth-not-held",
	"source-empty",
	"suction-absent",
	"large-output",
);

export const regimen = object({
	fromMin: atLeast0,
	begin: oneOf("suction", "fill"),
	depthMmHg: atLeast0,
	fillMl: atLeast0,
	dwellMin: numberOrNull,
	suctionMin: numberOrNull,
	drawdown: { type: "number", exclusiveMinimum: 0, maximum: 1 },
	drawdownSec: numberOrNull,
});

export const supply = object({
	item: text,
	p50: atLeast0,
	p90: atLeast0,
	packSize: numberOrNull,
	packs: numberOrNull,
});

export const scenario = object({
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
			canisterHoldsMl: atLeast0,
			sourceLeftMl: atLeast0,
			regimens: list(regimen),
		}),
	),
	roundsClockMin: list(atLeast0),
	happenings: list(
		object({
			atMin: atLeast0,
			dressing: text,
			what: text,
			forMin: numberOrNull,
			planned: { type: "boolean" },
		}),
	),
	supplies: list(supply),
});

export const spread = object(
	{
		mean: number,
		halfWidth95: numberOrNull,
		p10: number,
		p50: number,
		p90: number,
		quantiles95: list(object({ low: numberOrNull, high: numberOrNull })),
	},
	["quantiles95"],
);

export const changeTime = object({
	ordinal: { type: "integer", minimum: 1 },
	p10Min: atLeast0,
	p50Min: atLeast0,
	p90Min: atLeast0,
	probabilityWithinHorizon: share,
});

export const cautions = list(
	object({ code: text, text, dressing: text }, ["dressing"]),
);

export const assumptions = list(
	object({
		name: text,
		value: { type: ["number", "string"] },
		unit: text,
		provenance: oneOf("published", "common practice", "assumed"),
		source: text,
		meaning: text,
		defaulted: { type: "boolean" },
	}),
);
