import { measureNames } from "./measure-words.ts";
import {
	assumptions,
	atLeast0,
	cautions,
	closed,
	count,
	list,
	number,
	numberOrNull,
	object,
	oneOf,
	regimen,
	type Schema,
	scenario,
	share,
	spread,
	text,
} from "./schema-parts.ts";
import { totalNames } from "./totals-table.ts";

const measure = oneOf(...measureNames);
const textOrNull: Schema = { type: ["string", "null"] };
const shareOrNull: Schema = {
	type: ["number", "null"],
	minimum: 0,
	maximum: 1,
};
const atLeast0OrNull: Schema = { type: ["number", "null"], minimum: 0 };
const atLeast1: Schema = { type: "integer", minimum: 1 };

const spreads = (names: readonly string[], optional: boolean): Schema =>
	closed(
		object(
			Object.fromEntries(names.map((name) => [name, spread])),
			optional ? names : [],
		),
	);

const regimenResult = closed(
	object({
		name: text,
		regimen,
		regimenOf: list(text),
		dressings: list(
			closed(
				object({
					id: text,
					regimen: { ...regimen, type: ["object", "null"] },
					canisterMl: atLeast0OrNull,
					sourceMl: atLeast0OrNull,
					canisterHoldsMl: atLeast0OrNull,
					sourceLeftMl: atLeast0OrNull,
					regimens: list(regimen),
					totals: spreads(totalNames, false),
					measures: spreads(measureNames, true),
				}),
			),
		),
	}),
);

const pair = { a: text, b: text, dressing: text, measure };

const difference = closed(
	object({
		...pair,
		unit: text,
		meanA: number,
		meanB: number,
		mean: number,
		low95: numberOrNull,
		high95: numberOrNull,
		replications: atLeast1,
		shareAHigher: share,
		shareBHigher: share,
		shareABetter: shareOrNull,
		variance: closed(object({ paired: atLeast0, independent: atLeast0 })),
		kind: oneOf(
			"differs",
			"none-found",
			"same",
			"steady",
			"too-rare",
			"not-judged",
		),
		verdict: text,
	}),
);

const restsOn: Schema = {
	...closed(
		object({
			a: text,
			b: text,
			replications: atLeast1,
			rows: list(
				closed(
					object({
						name: text,
						meaning: text,
						value: number,
						unit: text,
						provenance: text,
						effects: list(
							closed(
								object({
									dressing: text,
									measure,
									base: number,
									half: numberOrNull,
									twice: numberOrNull,
									without: numberOrNull,
									turns: { type: "boolean" },
									appears: { type: "boolean" },
									hangs: { type: "boolean" },
								}),
							),
						),
					}),
				),
			),
			leftOut: list(closed(object({ name: text, why: text }))),
		}),
	),
	type: ["object", "null"],
};

/** JSON Schema of the format `slackwater/compare@1`. */
export const compareJsonSchema: Schema = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	$id: "urn:slackwater:compare:1",
	title: "slackwater/compare@1",
	description:
		"Regimens of one scenario against each other on the same random numbers. Means and differences (a − b) are per horizon, volumes are mL, times min.",
	...closed(
		object({
			format: { const: "slackwater/compare@1" },
			scenario,
			replications: atLeast1,
			trace: object({
				replication: count,
				typicalOf: { type: ["integer", "null"], minimum: 1 },
			}),
			currency: textOrNull,
			measures: list(measure),
			regimens: list(regimenResult),
			differences: list(difference),
			restsOn,
			precision: list(
				closed(
					object({
						...pair,
						target: { type: "number", exclusiveMinimum: 0 },
						halfWidth: numberOrNull,
						reached: { type: "boolean" },
					}),
				),
			),
			cautions,
			assumptions,
		}),
	),
};
