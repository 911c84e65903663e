import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Arrow, arrowsOf, bare, files, roomOf, root, textOf } from "./source.ts";

const arrows = files.flatMap((file) => arrowsOf(file));
const inner = arrows.filter(({ inside, to }) => inside && !to.startsWith("..")); // out of src: package.json and the like

/** Rooms that a room may import, types included, and why no others. */
interface Room {
	readonly mayUse: readonly string[];
	readonly because: string;
}

const simulated = ["elementary", "engine", "physics", "vocabulary", "scenario"];
const found = [...simulated, "results", "statistics", "therapy", "ward", "studies", "rehearsal"];
const shown = ["results", "words", "vocabulary"];
const all = [...found, "words", "charts", "report"];
const rooms: Readonly<Record<string, Room>> = {
	elementary: { mayUse: [], because: "a logarithm needs nothing of the project" },
	engine: { mayUse: ["elementary"], because: "the engine knows nothing of wounds" },
	physics: { mayUse: ["elementary"], because: "physics is pure functions with their equation above" },
	statistics: { mayUse: ["elementary"], because: "a mean is a mean, whatever it is of" },
	vocabulary: { mayUse: ["physics"], because: "the model's words are values that every room above may use" },
	scenario: { mayUse: ["vocabulary", "physics"], because: "a scenario is read without anything being run" },
	results: {
		mayUse: ["vocabulary", "physics"],
		because:
			"a format is declared by itself: who reads it need not have run it; physics says where a number may come from",
	},
	therapy: { mayUse: simulated, because: "a replication knows no statistics" },
	ward: { mayUse: [...simulated, "therapy"], because: "a replication knows no statistics" },
	studies: { mayUse: found.slice(0, -2), because: "answers are data: how they are shown is decided above" },
	rehearsal: { mayUse: found.slice(0, -1), because: "a drill is data: how it is shown is decided above" },
	words: { mayUse: ["results", "vocabulary", "physics"], because: "words are written for whoever reads a result" },
	charts: { mayUse: shown, because: "a chart draws what it is given and works nothing out" },
	report: { mayUse: [...shown, "charts"], because: "a report writes what it is given and works nothing out" },
	cli: { mayUse: all, because: "the page in the browser and the terminal are two shells of one house" },
	page: { mayUse: all, because: "a page has no files, processes and workers of the terminal" },
	"index.ts": { mayUse: all, because: "whoever imports the library brings a shell of their own" },
};

/** What is wrong with an arrow between rooms, in words; null where it points where it may. */
function objection({ from, to, inside }: Arrow): string | null {
	if (!inside || to.startsWith("..")) return null;
	const [room, target] = [roomOf(from), roomOf(to)];
	const rule = rooms[room];
	if (rule === undefined) return `${from}: no room is called ${room}`;
	return room === target || rule.mayUse.includes(target) ? null : `${from} imports ${to}: ${rule.because}`;
}

/** Groups of more than one that can be reached from each other along arrows: Tarjan, SIAM J. Comput. 1 (1972) 146-160. */
function circles(edges: readonly (readonly [from: string, to: string])[]): string[][] {
	const targets = new Map<string, Set<string>>();
	for (const [from, to] of edges) {
		if (!targets.has(from)) targets.set(from, new Set());
		targets.get(from)?.add(to);
	}
	const [seen, low, stack, groups] = [
		new Map<string, number>(),
		new Map<string, number>(),
		[] as string[],
		[] as string[][],
	];
	const visit = (node: string): void => {
		const place = seen.size;
		seen.set(node, place);
		low.set(node, place);
		stack.push(node);
		for (const target of targets.get(node) ?? []) {
			if (!seen.has(target)) visit(target);
			if (stack.includes(target)) low.set(node, Math.min(low.get(node) ?? 0, low.get(target) ?? 0));
		}
		if (low.get(node) !== place) return;
		const group = stack.splice(stack.indexOf(node));
		if (group.length > 1) groups.push(group.sort());
	};
	for (const node of targets.keys()) if (!seen.has(node)) visit(node);
	return groups;
}

const folderOf = (file: string) => file.split("/").slice(0, -1).join("/");
const isIndex = (file: string) => file.endsWith("/index.ts");

const shells = ["cli", "page"];

describe("the rooms of the house", () => {
	test("are those of the plan", () => {
		for (const file of files) expect(Object.keys(rooms), file).toContain(roomOf(file));
		expect(arrows.length).toBeGreaterThan(100); // the reader of imports does read
	});

	test("arrows point down only, types included", () => {
		expect(inner.map(objection).filter((one) => one !== null)).toEqual([]);
	});

	test("an arrow up is seen, whatever its form", () => {
		const from = (file: string, text: string) =>
			arrowsOf(file, text)
				.map(objection)
				.filter((one) => one !== null);
		const up = 'import {\n\ta,\n} from "../therapy/index.ts";';
		expect(from("engine/a.ts", up)).toEqual([
			"engine/a.ts imports therapy/index.ts: the engine knows nothing of wounds",
		]);
		expect(from("physics/a.ts", 'export { a } from "../engine/a.ts";')).toHaveLength(1);
		expect(from("report/kit/a.ts", 'const a = await import("../../studies/a.ts");')).toHaveLength(1);
		expect(from("charts/a.ts", 'import type { B } from "../studies/a.ts";')).toHaveLength(1);
		expect(from("charts/a.ts", 'import type { B } from "../results/a.ts";')).toHaveLength(0);
		expect(from("cli/a.ts", 'import "../page/a.ts";')).toHaveLength(1);
		expect(from("engine/a.ts", `// ${up}`)).toHaveLength(0);
	});

	test("between the folders of a room they point down too: a room's own files stand above its folders", () => {
		const between = inner.filter(
			({ from, to }) => roomOf(from) === roomOf(to) && folderOf(from) !== folderOf(to) && !isIndex(from),
		);
		expect(circles(between.map(({ from, to }) => [folderOf(from), folderOf(to)]))).toEqual([]);
		expect(between.filter(({ to }) => isIndex(to))).toEqual([]); // a room does not ask for itself at its own door
	});

	test("no file reaches itself, types included", () => {
		expect(circles(inner.map(({ from, to }) => [from, to]))).toEqual([]);
		expect(circles([["a", "b"], ["b", "c"], ["c", "b"], ["c", "d"]])).toEqual([["b", "c"]]); // biome-ignore format: one line
	});

	test("no folder holds more than 15 files beside its index", () => {
		const counts = new Map<string, number>();
		for (const file of files) if (!isIndex(file)) counts.set(folderOf(file), (counts.get(folderOf(file)) ?? 0) + 1);
		expect([...counts].filter(([, count]) => count > 15)).toEqual([]);
	});

	test("a file of more than 300 lines says why in its first line", () => {
		const long = files.filter((file) => textOf(file).split("\n").length > 301);
		expect(long.filter((file) => !textOf(file).startsWith("// Long, since "))).toEqual([]);
	});

	test("an index is a table of contents: a sentence on what the folder is for, and named exports", () => {
		for (const file of files.filter(isIndex)) {
			expect(textOf(file), file).toMatch(/^\/\*\* [A-Z]/u);
			const rest = textOf(file).replace(/\/\*\*[\s\S]*?\*\/|export (?:type )?\{[^}]*\} from "\.\/[^"]+";|\s/g, "");
			expect(rest, file).toBe("");
		}
	});

	test("only the command line knows node's own modules", () => {
		const own = arrows.filter(({ to }) => to.startsWith("node:") || builtinModules.includes(to));
		expect(own.filter(({ from }) => roomOf(from) !== "cli")).toEqual([]);
		expect(own.length).toBeGreaterThan(3);
	});

	test("packages that a room uses are those of the manifest's dependencies", () => {
		const { dependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
		const packages = arrows
			.filter(({ to, inside }) => !inside && !to.startsWith("node:"))
			.map(({ to }) =>
				to
					.split("/")
					.slice(0, to.startsWith("@") ? 2 : 1)
					.join("/"),
			);
		const strangers = packages.filter((name) => dependencies[name] === undefined);
		expect(strangers).toEqual([]);
		expect(Object.keys(dependencies).filter((name) => !packages.includes(name))).toEqual([]);
	});

	test("charts draw with d3 and nothing else from outside", () => {
		const outside = arrows.filter(({ from, inside }) => roomOf(from) === "charts" && !inside);
		expect(outside.filter(({ to }) => !to.startsWith("d3-"))).toEqual([]);
	});
});

/** Lines on which a pattern stands, comments and quotes aside. */
function linesWith(inRooms: readonly string[], pattern: RegExp): string[] {
	return files
		.filter((file) => inRooms.includes(roomOf(file)))
		.flatMap((file) =>
			bare(textOf(file))
				.split("\n")
				.flatMap((line, i) => (pattern.test(line) ? [`${file}:${i + 1}: ${line.trim()}`] : [])),
		);
}

describe("the same input gives the same bytes", () => {
	test("randomness and time are arguments: nothing below the shells asks the host for them", () => {
		// A date made of numbers or of the scenario's own text is arithmetic; one made of nothing is the clock.
		const host =
			/\bMath\.random\b|\bDate\.now\b|\bDate\(\s*\)|\bnew Date\b(?!\()|\bperformance\b|\bset(?:Timeout|Interval|Immediate)\b|\bcrypto\b|\bprocess\.(?:env|argv|cwd|hrtime|pid|platform|std\w+|on|exit)\b|\bglobalThis\b|\bIntl\b|\btoLocale/;
		const rest = Object.keys(rooms).filter((room) => !shells.includes(room));
		expect(linesWith(rest, host)).toEqual([]);
	});

	const simulating = ["elementary", "engine", "physics", "statistics", "vocabulary", "therapy", "ward", "studies"];

	test("what is simulated uses no function of the host whose last bit is not laid down", () => {
		// ECMAScript leaves these implementation-approximated (ECMA-262, 21.3.2); abs, sqrt, floor and the like are exact.
		const exact = "abs|ceil|floor|round|trunc|sign|min|max|sqrt|imul|clz32|fround";
		const approximated = new RegExp(
			`\\bMath\\.(?!(?:${exact}|PI|E|LN2|LN10|SQRT2|SQRT1_2|LOG2E|LOG10E)\\b)|\\bMath\\b(?!\\.)`,
		);
		expect(linesWith(simulating, approximated)).toEqual([]);
	});

	test("nor a power, but for a square and whole powers of two", () => {
		const powers = (text: string) =>
			text.replaceAll(/(?<![\w.)\]]\s*)2 \*\* -?\d+(?![\w.])/g, "").match(/\*\*=?(?!\s*2(?![\w.]))/g) ?? [];
		const lines = linesWith(simulating, /\*\*/);
		expect(lines.filter((line) => powers(line).length > 0)).toEqual([]);
		// Held against what it must and must not let pass.
		for (const fine of ["x ** 2", "(a + b) ** 2 - 1", "2 ** -53", "1 - 2 ** 10"])
			expect(powers(fine), fine).toHaveLength(0);
		for (const bad of ["x ** 3", "x ** y", "2 ** n", "x ** 2.5", "x ** 20", "x **= 2.1", "x2 ** -3", "f(2) ** -3"])
			expect(powers(bad), bad).toHaveLength(1);
	});
});

describe("the top of the repository", () => {
	const ours = ["README.md", "DEVELOPERS.md", "package.json", "tsconfig.json", "src", "scenarios", "tests", "reports"];
	/** Who insists that it lies there. */
	const insistedOn: Readonly<Record<string, string>> = {
		".gitignore": "git",
		".gitattributes": "git",
		LICENSE: "whoever wants to use the code",
		"package-lock.json": "npm",
		".npmrc": "npm",
		".nvmrc": "version managers of node",
		".editorconfig": "editors",
		".vscode": "an editor",
		".ci": "the machine that runs the tests",
		"biome.json": "the formatter and linter",
		"vitest.config.ts": "the test runner",
	};

	test("holds what a visitor reads and what a tool insists on, nothing else", () => {
		const tracked = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
			cwd: root,
			encoding: "utf8",
		})
			.split("\n")
			.filter((name) => name !== "");
		const top = [...new Set(tracked.map((name) => name.split("/")[0] ?? ""))];
		const strangers = top.filter(
			(name) => existsSync(join(root, name)) && !ours.includes(name) && insistedOn[name] === undefined,
		);
		expect(strangers).toEqual([]);
		expect(top).toEqual(expect.arrayContaining(["package.json", "src", "tests"]));
	});
});
