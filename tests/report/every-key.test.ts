import { describe, expect, test } from "vitest";
import {
	compareJson,
	compareJsonSchema,
	dayJson,
	dayJsonSchema,
	supplyJson,
	supplyJsonSchema,
	sweepJson,
	sweepJsonSchema,
} from "../../src/results/index.ts";
import { pairedDay, troubledDay } from "../charts/fixture.ts";
import { smallResult } from "../ward/small-result.ts";
import { comparison } from "./compare/compare-fixture.ts";
import { closedThroughout, withStrangers } from "./every-key.ts";
import { sweep } from "./sweep-fixture.ts";

// ajv's build of draft 2020-12 is CommonJS; its class is the default of the module.
const { Ajv2020 } = await import("ajv/dist/2020.js");

const formats: readonly (readonly [string, object, () => readonly string[]])[] = [
	["a day", dayJsonSchema, () => [dayJson(troubledDay()), dayJson(pairedDay())]],
	["a comparison", compareJsonSchema, () => [compareJson(comparison({}).result)]],
	["a sweep", sweepJsonSchema, () => [sweepJson(sweep())]],
	["a ward", supplyJsonSchema, () => [supplyJson(smallResult())]],
];

describe.each(formats)("the JSON Schema of %s", (_, schema, texts) => {
	const { $id: _id, ...rest } = { $id: "", ...schema };
	const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(closedThroughout(rest));

	test("knows every key of it", () => {
		for (const text of texts()) {
			validate(JSON.parse(text));
			expect(validate.errors).toBeNull();
		}
	});

	test("and would not pass over one that it does not know, wherever it stood", () => {
		for (const text of texts()) {
			const strangers = withStrangers(JSON.parse(text));
			expect(strangers.length).toBeGreaterThan(10);
			for (const { place, data } of strangers) expect(validate(data), place).toBe(false);
		}
	});
});
