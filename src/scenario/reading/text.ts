import type { Problem } from "./problem.ts";

/** Longest scenario that is read, in bytes of UTF-8; the command line refuses a file by its size before reading it. */
export const maxScenarioBytes = 1_000_000;

/** Problem of a file that is too large to be read. */
export function tooLarge(bytes: number): Problem {
	return { path: "", expected: `at most ${maxScenarioBytes} bytes`, received: `${bytes} bytes` };
}

/** What no text may hold, what is said of it, and what was expected instead. */
const unreadable: readonly (readonly [held: RegExp, received: (code: string) => string, expected: string])[] = [
	[/\uFFFD/u, () => "a byte that is not UTF-8", "text in UTF-8"],
	[/\p{Cs}/u, () => "half of a surrogate pair", "text in UTF-8"],
	[/\uFEFF/u, () => "a byte order mark inside the text", "one at the very start, or none"],
	[/(?![\t\n\r])\p{Cc}/u, (code) => `a control character (U+${code})`, "text without control characters"],
];

/** The text without a leading byte order mark, and what makes it unreadable. */
export function checkText(raw: string): { readonly text: string; readonly problems: readonly Problem[] } {
	const bytes = raw.length > maxScenarioBytes ? raw.length : new TextEncoder().encode(raw).length;
	if (bytes > maxScenarioBytes) return { text: "", problems: [tooLarge(bytes)] };
	const text = raw.replace(/^\uFEFF/u, "");
	const problems = unreadable.flatMap(([held, received, expected]): Problem[] => {
		const at = text.search(held);
		if (at < 0) return [];
		const code = (text.codePointAt(at) ?? 0).toString(16).toUpperCase().padStart(4, "0");
		const before = text.slice(0, at).split("\n");
		const place = { line: before.length, column: (before.at(-1) ?? "").length + 1 };
		return [{ path: "", expected, received: received(code), ...place }];
	});
	if (problems.length === 0 && text.trim() === "")
		problems.push({ path: "", expected: "a scenario", received: "an empty file" });
	return { text, problems };
}

/** The text of a file's bytes; what is not UTF-8 becomes U+FFFD, which `checkText` refuses. */
export function scenarioText(bytes: Uint8Array): string {
	return new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
}
