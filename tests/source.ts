import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../", import.meta.url));
const src = join(root, "src");

/** An import. */
export interface Arrow {
	/** Path under src. */
	readonly from: string;
	/** Path under src, or the name of a package. */
	readonly to: string;
	readonly inside: boolean;
	readonly typeOnly: boolean;
}

export const files = readdirSync(src, { recursive: true, encoding: "utf8" })
	.filter((name) => name.endsWith(".ts"))
	.map((name) => name.split(sep).join("/"))
	.sort();
export const textOf = (file: string) => readFileSync(join(src, file), "utf8");
export const roomOf = (path: string) => path.split("/")[0] ?? "";

/** The text without comments; line ends stay, so that a place can be named. */
function code(text: string): string {
	return text.replace(
		/("(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`)|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g,
		(whole, string: string | undefined) => string ?? whole.replace(/[^\n]/g, ""),
	);
}

/** The same with what stands in quotes taken out. */
export const bare = (text: string) => code(text).replace(/"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'/g, '""');

export function arrowsOf(file: string, text = textOf(file)): Arrow[] {
	const statement =
		/(?:^|\n)\s*(import|export)\s+(type\s)?([^"';]*?)\bfrom\s*"([^"]+)"|(?:^|\n)\s*import\s*"([^"]+)"|\bimport\(\s*"([^"]+)"/g;
	return [...code(text).matchAll(statement)].map((match) => {
		const to = match[4] ?? match[5] ?? match[6] ?? "";
		const inside = to.startsWith(".");
		const names = /\{([\s\S]*)\}/.exec(match[3] ?? "")?.[1];
		const eachIsType =
			names
				?.split(",")
				.filter((name) => name.trim() !== "")
				.every((name) => name.trim().startsWith("type ")) ?? false;
		return {
			from: file,
			to: inside
				? relative(src, join(src, dirname(file), to))
						.split(sep)
						.join("/")
				: to,
			inside,
			typeOnly: match[2] !== undefined || eachIsType,
		};
	});
}
