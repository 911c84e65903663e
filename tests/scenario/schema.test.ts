import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { checkScenario, fullScenario, scenarioJsonSchema, schemaText } from "../../src/scenario/index.ts";
import { keptFiles, keptText } from "./kept.ts";
import { changed, least, type Raw } from "./sample.ts";

const validate = new Ajv2020({ allErrors: true }).compile(scenarioJsonSchema());

/** Every schema inside a schema, itself included. */
function inner(schema: Raw): Raw[] {
	if (typeof schema !== "object" || schema === null) return [];
	return [schema, ...Object.values(schema).flatMap(inner)];
}

// biome-ignore format: a table
const refused: [string, (raw: Raw) => void][] = [
	["an unknown key", (raw) => (raw.colour = "red")],
	["an unknown word", (raw) => (raw.dressings[0].wound.tissue = "bone")],
	["a bare number for a quantity", (raw) => (raw.dressings[0].regimen.dwell = 5)],
	["a quantity without a unit", (raw) => (raw.dressings[0].regimen.dwell = "5")],
	["a comma", (raw) => (raw.dressings[0].regimen.dwell = "1,5 min")],
	["a positive depth", (raw) => (raw.dressings[0].regimen.depth = "125 mmHg")],
	["a missing title", (raw) => delete raw.title],
	["a breach without a size", (raw) => (raw.happenings = [{ at: "1 h", dressing: "thigh", what: "breach" }])],
	["an unknown assumption", (raw) => (raw.assumptions = { "breach.dri": "1 /h" })],
];

describe("JSON Schema of a scenario", () => {
	test("scenarios/schema.json is current (vitest -u writes it)", async () => {
		await expect(schemaText()).toMatchFileSnapshot("../../scenarios/schema.json");
	});

	test.each(keptFiles)("%s is valid", (name) => {
		validate(parse(keptText(name)));
		expect(validate.errors).toBeNull();
	});

	test.each(keptFiles)("%s is valid with its defaults filled in", (name) => {
		validate(parse(fullScenario(keptText(name))));
		expect(validate.errors).toBeNull();
	});

	test.each(refused)("%s is refused by the schema and by the reader", (_, change) => {
		const text = changed(change);
		expect(validate(parse(text))).toBe(false);
		expect(checkScenario(text).scenario).toBeNull();
	});

	test("the least scenario is valid: what has a default is not required", () => {
		validate(parse(least));
		expect(validate.errors).toBeNull();
	});

	test("an editor is told the words, the examples and the defaults", () => {
		const schema: Raw = scenarioJsonSchema();
		const { regimen, wound } = schema.properties.dressings.items.properties;
		expect(wound.properties.tissue.enum).toContain("open-abdomen");
		expect(wound.properties.slough.default).toBe("ordinary");
		expect(regimen.anyOf[0].properties.dwell.examples).toEqual(["5 min"]);
	});

	test("every key has a description", () => {
		const bare = inner(scenarioJsonSchema())
			.flatMap(({ properties }) =>
				properties && typeof properties === "object" ? Object.entries<Raw>(properties) : [],
			)
			.filter(([, value]) => typeof value === "object" && value.const === undefined)
			.filter(([, value]) => value.description === undefined)
			.map(([key]) => key);
		expect([...new Set(bare)]).toEqual([]);
	});
});
