import { measureNames } from "./measure-words.ts";
import {
	assumptions,
	atLeast0,
	cautions,
	changeTime,
	closed,
	count,
	list,
	number,
	numberOrNull,
	object,
	oneOf,
	type Schema,
	scenario,
	share,
	text,
} from "./schema-parts.ts";

const measure = oneOf(...measureNames);
const axisName = oneOf("dwell", "suction", "fill", "depth", "start", "apart");
const flag: Schema = { type: "boolean" };
const better = oneOf("lower", "higher");
const textOrNull: Schema = { type: ["string", "null"] };
const placeOrNull: Schema = { type: ["integer", "null"], minimum: 0 };
const settings = {
	depthMmHg: atLeast0,
	fillMl: atLeast0,
	dwellMin: numberOrNull,
	suctionMin: numberOrNull,
};
const orNull = (schema: Schema): Schema => ({
	...schema,
	type: ["object", "null"],
});

const value = closed(
	object({
		mean: number,
		halfWidth95: numberOrNull,
		difference: number,
		differenceHalfWidth95: numberOrNull,
	}),
);

const measures = closed(
	object(
		Object.fromEntries(measureNames.map((name) => [name, value])),
		measureNames,
	),
);

const point = closed(
	object({
		at: list(number),
		current: flag,
		usual: flag,
		outside: list(text),
		kept: flag,
		measures,
		clock: orNull(
			closed(
				object({
					canisterChanges: list(object(without(changeTime, "ordinal"))),
					alarmBins: list(share),
				}),
			),
		),
	}),
);

/** The properties of an object but one. */
function without(
	schema: Schema,
	key: string,
): { readonly [key: string]: Schema } {
	const { [key]: _, ...rest } = schema.properties ?? {};
	return rest;
}

/** JSON Schema of the format `slackwater/sweep@1`. */
export const sweepJsonSchema: Schema = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	$id: "urn:slackwater:sweep:1",
	title: "slackwater/sweep@1",
	description:
		"A grid of regimens, the same random numbers at every point. Means are per horizon, differences are from the scenario's own regimen; volumes are mL, times min, depths mmHg below ambient.",
	...closed(
		object({
			format: { const: "slackwater/sweep@1" },
			scenario,
			replications: { type: "integer", minimum: 1 },
			currency: textOrNull,
			dressing: text,
			axes: list(
				closed(
					object({
						name: axisName,
						unit: text,
						values: list(number),
						current: number,
					}),
				),
			),
			measures: list(measure),
			points: list(point),
			marks: list(
				closed(
					object({
						mark: oneOf("current", "usual"),
						regimen: closed(object(settings)),
						dressings: list(closed(object({ id: text, ...settings }))),
						point: placeOrNull,
						measures,
					}),
				),
			),
			constraints: list(
				closed(
					object({
						measure,
						test: oneOf("<", "<=", ">", ">="),
						limit: number,
						kept: count,
					}),
				),
			),
			efficient: orNull(
				closed(
					object({
						measures: list(closed(object({ measure, better }))),
						points: list(count),
					}),
				),
			),
			curve: orNull(closed(object({ axis: axisName, points: list(count) }))),
			avoid: object(
				Object.fromEntries(
					["handOver", "meals", "smallHours"].map((time) => [
						time,
						list(object({ fromMin: atLeast0, toMin: atLeast0 })),
					]),
				),
			),
			cautions,
			assumptions,
		}),
	),
};
