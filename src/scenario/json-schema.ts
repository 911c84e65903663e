import * as z from "zod";
import { scenarioSchema } from "./schema.ts";

/** JSON Schema (draft 2020-12) of a scenario file as it is written, so that an editor completes and checks as one types. */
export function scenarioJsonSchema(): Record<string, unknown> {
	const { $schema, ...schema } = z.toJSONSchema(scenarioSchema, {
		io: "input",
		target: "draft-2020-12",
		reused: "inline",
		// zod leaves examples out where a value is transformed; an editor offers them for the value as written.
		override: ({ zodSchema, jsonSchema }) => {
			const examples = z.globalRegistry.get(zodSchema)?.examples;
			if (Array.isArray(examples)) jsonSchema.examples = examples;
		},
	});
	return {
		$schema,
		$id: "slackwater-scenario-1",
		title: "Scenario of slackwater, version 1",
		description:
			"Form of a scenario file. Units, bounds and rules that join several values are checked by the command `check`.",
		...schema,
	};
}

const lineWidth = 80;
const tabWidth = 2;

/** The text of `scenarios/schema.json`, laid out as the formatter of this project leaves it: short lists on one line. */
export function schemaText(): string {
	const spread = JSON.stringify(scenarioJsonSchema(), null, "\t");
	const laidOut = spread.replace(
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
