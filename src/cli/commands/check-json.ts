import type { Problem } from "../../scenario/index.ts";

/** What `check` found in one file. */
export interface CheckedFile {
	readonly file: string;
	readonly sound: boolean;
	readonly problems: readonly Problem[];
	readonly notes: readonly string[];
}

/** What `check --json` prints: format `slackwater/check@1`. */
export function checkJson(files: readonly CheckedFile[]): string {
	const printed = files.map(({ file, sound, problems, notes }) => ({ file, sound, problems, notes }));
	return `${JSON.stringify({ format: "slackwater/check@1", files: printed }, null, 2)}\n`;
}

const text = { type: "string" };
const place = { type: "integer", minimum: 1 };

/** JSON Schema (draft 2020-12) of the format. Objects may gain keys; those named here keep their meaning. */
export const checkJsonSchema = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	$id: "urn:slackwater:check:1",
	title: "slackwater/check@1",
	description: "Which scenario files are sound, and what is wrong with others.",
	type: "object",
	required: ["format", "files"],
	properties: {
		format: { const: "slackwater/check@1" },
		files: {
			type: "array",
			items: {
				type: "object",
				required: ["file", "sound", "problems", "notes"],
				properties: {
					file: { ...text, description: "As it was named." },
					sound: { type: "boolean" },
					problems: {
						type: "array",
						items: {
							type: "object",
							required: ["path", "expected", "received"],
							properties: {
								path: { ...text, description: "Path in the file; empty for the file itself." },
								expected: text,
								received: text,
								suggestion: { ...text, description: "A near miss." },
								line: place,
								column: place,
							},
						},
					},
					notes: { type: "array", items: text, description: "What is allowed but probably not meant." },
				},
				// A file is sound where it has no problem, and only there.
				if: { properties: { sound: { const: true } } },
				// biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
				then: { properties: { problems: { type: "array", maxItems: 0 } } },
				else: { properties: { problems: { type: "array", minItems: 1 } } },
			},
		},
	},
};
