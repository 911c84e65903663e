import * as z from "zod";
import { dayFile } from "./day.ts";
import { wardFile } from "./ward.ts";

/** JSON Schema (draft 2020-12) of a scenario file as it is written, so that an editor completes and checks as one types. */
export function scenarioJsonSchema(): Record<string, unknown> {
	const { $schema, ...day } = schemaOf(dayFile);
	const { $schema: _, ...ward } = schemaOf(wardFile);
	// One file is a day with dressings or a ward with stores: each branch holds the keys of its own.
	const { care, compare, horizon, prices, replications, ...shared } = day.properties ?? {};
	const differing = { care, compare, horizon, prices, replications };
	const own = [differing, ward.properties ?? {}];
	const eitherWay = Object.fromEntries(
		Object.entries(differing).map(([key, value]) => [
			key,
			typeof value === "object" ? { description: value.description } : {},
		]),
	);
	const schema = {
		type: "object",
		properties: { ...ward.properties, ...shared, ...eitherWay },
		anyOf: [day, ward].map((branch, i) => ({
			properties: Object.fromEntries(Object.entries(own[i] ?? {}).filter(([key]) => !(key in shared))),
			required: branch.required,
		})),
		additionalProperties: false,
	};
	return {
		$schema,
		$id: "slackwater-scenario-1",
		title: "Scenario of slackwater, version 1",
		description:
			"Form of a scenario file. Units, bounds and rules that join several values are checked by the command `check`.",
		...schema,
	};
}

/** The same for a day with dressings alone, from which a form can be made. */
export const dayScenarioSchema = (): Record<string, unknown> => schemaOf(dayFile);

/** The same for a ward with its stores. */
export const wardScenarioSchema = (): Record<string, unknown> => schemaOf(wardFile);

const schemaOf = (schema: z.ZodType) =>
	z.toJSONSchema(schema, {
		io: "input",
		target: "draft-2020-12",
		reused: "inline",
		// zod leaves examples out where a value is transformed; an editor offers them for the value as written.
		override: ({ zodSchema, jsonSchema }) => {
			const examples = z.globalRegistry.get(zodSchema)?.examples;
			if (Array.isArray(examples)) jsonSchema.examples = examples;
		},
	});

const lineWidth = 80;
const tabWidth = 2;

/** The text of `scenarios/schema.json`: short lists on one line. */
export function schemaText(): string {
	const indented = JSON.stringify(scenarioJsonSchema(), null, "\t");
	const laidOut = indented.replace(
		/^(\t*)(.*)\[\n([^[\]{}]*?)\n\t*\](,?)$/gmu,
		(whole, indent: string, lead: string, items: string, comma: string) => {
			const list = items.split("\n").map((item) => item.trim());
			const line = `${lead}[${list.join(" ")}]${comma}`;
			const width = indent.length * tabWidth + line.length;
			return width <= lineWidth ? `${indent}${line}` : whole;
		},
	);
	return `${laidOut}\n`;
}
