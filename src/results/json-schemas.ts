import * as z from "zod";
import { compareFormat } from "./compare.ts";
import { dayFormat } from "./day.ts";
import { debriefFormat } from "./debrief.ts";
import { supplyFormat } from "./supply.ts";
import { sweepFormat } from "./sweep.ts";

type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * JSON Schema (draft 2020-12) of a format. Objects may gain keys unless they are closed; those named keep their meaning.
 * What may be null says so among its types, and a whole number has no bounds but its own.
 */
function jsonSchemaOf(format: z.ZodType): JsonSchema {
	const { $schema, $id, title, description, ...rest } = z.toJSONSchema(format, {
		io: "input",
		reused: "inline",
		override: ({ zodSchema, jsonSchema }) => {
			if (zodSchema instanceof z.ZodNullable) {
				const { type, enum: values, ...inner } = jsonSchema.anyOf?.[0] ?? {};
				delete jsonSchema.anyOf;
				Object.assign(jsonSchema, values === undefined ? { type: [type, "null"] } : { enum: [...values, null] }, inner);
			}
			if (jsonSchema.maximum === Number.MAX_SAFE_INTEGER) delete jsonSchema.maximum;
			if (jsonSchema.minimum === Number.MIN_SAFE_INTEGER) delete jsonSchema.minimum;
			if (jsonSchema.enum !== undefined || jsonSchema.const !== undefined) delete jsonSchema.type;
		},
	});
	return { $schema, $id, title, description, ...rest };
}

export const dayJsonSchema = jsonSchemaOf(dayFormat);
export const compareJsonSchema = jsonSchemaOf(compareFormat);
export const sweepJsonSchema = jsonSchemaOf(sweepFormat);
export const supplyJsonSchema = jsonSchemaOf(supplyFormat);
export const debriefJsonSchema = jsonSchemaOf(debriefFormat);
