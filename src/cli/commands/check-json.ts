import * as z from "zod";
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

const place = z.int().min(1).optional();
const problem = z.looseObject({
	path: z.string().describe("Path in the file; empty for the file itself."),
	expected: z.string(),
	received: z.string(),
	suggestion: z.string().optional().describe("A near miss."),
	line: place,
	column: place,
});
const file = z.string().describe("As it was named.");
const notes = z.array(z.string()).describe("What is allowed but probably not meant.");
const sound = z.looseObject({ file, sound: z.literal(true), problems: z.array(problem).max(0), notes });
const unsound = z.looseObject({ file, sound: z.literal(false), problems: z.array(problem).min(1), notes });

/** The format. Objects may gain keys; those named here keep their meaning. */
export const checkFormat = z
	.looseObject({ format: z.literal("slackwater/check@1"), files: z.array(z.union([sound, unsound])) })
	.meta({
		$id: "urn:slackwater:check:1",
		title: "slackwater/check@1",
		description: "Which scenario files are sound, and what is wrong with others.",
	});
