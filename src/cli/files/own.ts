import { readFileSync } from "node:fs";

const fromSource = import.meta.url.endsWith(".ts");

/** A file that comes with the program, by its path in the repository. The built program is bundled two folders deep. */
export const ownFile = (path: string): URL => new URL(`${fromSource ? "../../../" : "../../"}${path}`, import.meta.url);

/** The script of a thread, by its name. */
export const threadScript = (name: string): URL =>
	ownFile(fromSource ? `src/cli/threads/${name}.ts` : `dist/cli/${name}.js`);

/** The version of the program, from its manifest. */
export function version(): string {
	const manifest: unknown = JSON.parse(readFileSync(ownFile("package.json"), "utf8"));
	return (manifest as { version: string }).version; // npm insists on it
}
