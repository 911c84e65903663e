import { readFileSync } from "node:fs";

/** The version of the program, from its manifest. */
export function version(): string {
	const manifest: unknown = JSON.parse(
		readFileSync(new URL("../../package.json", import.meta.url), "utf8"),
	);
	return (manifest as { version: string }).version; // npm insists on it
}
