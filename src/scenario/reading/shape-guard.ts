import { Lexer } from "yaml";
import type { Problem } from "./problem.ts";

/** Deepest nesting that is read; a scenario needs six levels. */
export const maxDepth = 32;
/** Most marks of YAML or JSON that are read: enough for the most values of a file with all defaults filled in. */
const maxTokens = 130_000;
const maxIndent = 200;

/**
 * Refuses a text whose nesting or number of marks would cost the parser its stack or minutes of work. It looks at the
 * lexer's marks only, so it takes time and memory in proportion to the text.
 */
export function guardShape(text: string): Problem | null {
	let line = 1;
	let tokens = 0;
	let flow = 0;
	let marksOfLine = 0;
	let lineStart = true;
	let scalar = false;
	for (const token of new Lexer().lex(text)) {
		tokens++;
		if (tokens > maxTokens)
			return { path: "", expected: `at most ${maxTokens} marks of YAML or JSON`, received: "more", line };
		if (scalar) scalar = false;
		else if (token === "\u001f") scalar = true;
		else if (token === "[" || token === "{") flow++;
		else if (token === "]" || token === "}") flow = Math.max(0, flow - 1);
		else if (token === "?" || (flow === 0 && (token === "-" || token === ":"))) marksOfLine++;
		const indent = lineStart && /^[ \t]+$/u.test(token) ? token.length : 0;
		if (flow > maxDepth || marksOfLine > maxDepth || (flow === 0 && indent > maxIndent))
			return { path: "", expected: `lists and maps at most ${maxDepth} deep`, received: "deeper ones", line };
		const breaks = token.includes("\n") ? token.split("\n").length - 1 : 0;
		line += breaks;
		lineStart = token.endsWith("\n");
		if (breaks > 0) marksOfLine = 0;
	}
	return null;
}
