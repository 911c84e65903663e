import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
	type Arrow,
	arrowsOf,
	bare,
	files,
	roomOf,
	root,
	textOf,
} from "./source.ts";

const arrows = files.flatMap((file) => arrowsOf(file));

/** Rooms that a room may import, and why no others. */
interface Room {
	readonly mayUse: readonly string[];
	/** Rooms whose types alone it may use. */
	readonly typesOf?: readonly string[];
	readonly because: string;
}

const below = ["elementary", "engine", "physics", "scenario"];
const rooms: Readonly<Record<string, Room>> = {
	elementary: {
		mayUse: [],
		because: "a logarithm needs nothing of the project",
	},
	engine: {
		mayUse: ["elementary"],
		because: "the engine knows nothing of wounds",
	},
	physics: {
		mayUse: ["elementary"],
		because: "physics is pure functions with their equation above",
	},
	scenario: {
		mayUse: ["physics"],
		because: "a scenario is read without anything being run",
	},
	therapy: { mayUse: below, because: "a replication knows no statistics" },
	analysis: {
		mayUse: [...below, "therapy"],
		because: "answers are data: how they are shown is decided above",
	},
	rehearsal: {
		mayUse: [...below, "therapy", "analysis"],
		because: "a drill is data: how it is shown is decided above",
	},
	charts: {
		mayUse: ["physics/units.ts"],
		typesOf: [...below, "therapy", "analysis", "rehearsal"],
		because: "a chart draws what it is given and works nothing out",
	},
	report: {
		mayUse: ["charts", "physics/units.ts", "physics/index.ts"],
		typesOf: [...below, "therapy", "analysis", "rehearsal"],
		because: "a report writes what it is given and works nothing out",
	},
	cli: {
		mayUse: [...below, "therapy", "analysis", "rehearsal", "charts", "report"],
		because:
			"the page in the browser and the terminal are two shells of one house",
	},
	"index.ts": {
		mayUse: [...below, "therapy", "analysis", "rehearsal", "charts", "report"],
		because: "whoever imports the library brings a shell of their own",
	},
	page: {
		mayUse: [...below, "therapy", "analysis", "rehearsal", "charts", "report"],
		because: "a page has no files, processes and workers of the terminal",
	},
};

/** What is wrong with an arrow, in words; null where it points where it may. */
function objection({ from, to, inside, typeOnly }: Arrow): string | null {
	if (!inside) return null;
	const [room, target] = [roomOf(from), roomOf(to)];
	const rule = rooms[room];
	if (rule === undefined) return `${from}: no room is called ${room}`;
	if (to.startsWith("..")) return null; // out of src: package.json and the like
	const may = (list: readonly string[]) =>
		list.includes(target) || list.includes(to);
	if (room === target || may(rule.mayUse)) return null;
	if (typeOnly && may(rule.typesOf ?? [])) return null;
	return `${from} imports ${to}: ${rule.because}`;
}

const shells = ["cli", "page"];

describe("the rooms of the house", () => {
	test("are those of the plan", () => {
		for (const file of files)
			expect(Object.keys(rooms), file).toContain(roomOf(file));
		expect(arrows.length).toBeGreaterThan(100); // the reader of imports does read
	});

	test("arrows point down only", () => {
		const objections = arrows.map(objection).filter((one) => one !== null);
		expect(objections).toEqual([]);
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
		expect(
			from("physics/a.ts", 'export { a } from "../engine/a.ts";'),
		).toHaveLength(1);
		expect(
			from("report/a.ts", 'const a = await import("../analysis/a.ts");'),
		).toHaveLength(1);
		expect(
			from("charts/a.ts", 'import { a, type B } from "../analysis/a.ts";'),
		).toHaveLength(1);
		expect(
			from("charts/a.ts", 'import type { B } from "../analysis/a.ts";'),
		).toHaveLength(0);
		expect(from("cli/a.ts", 'import "../page/a.ts";')).toHaveLength(1);
		expect(from("engine/a.ts", `// ${up}`)).toHaveLength(0);
	});

	test("only the command line knows node's own modules", () => {
		const own = arrows.filter(
			({ to }) => to.startsWith("node:") || builtinModules.includes(to),
		);
		expect(own.filter(({ from }) => roomOf(from) !== "cli")).toEqual([]);
		expect(own.length).toBeGreaterThan(3);
	});

	test("packages that a room uses are those of the manifest's dependencies", () => {
		const { dependencies } = JSON.parse(
			readFileSync(join(root, "package.json"), "utf8"),
		);
		const packages = arrows
			.filter(({ to, inside }) => !inside && !to.startsWith("node:"))
			.map(({ to }) =>
				to
					.split("/")
					.slice(0, to.startsWith("@") ? 2 : 1)
					.join("/"),
			);
		const strangers = packages.filter(
			(name) => dependencies[name] === undefined,
		);
		expect(strangers).toEqual([]);
		expect(
			Object.keys(dependencies).filter((name) => !packages.includes(name)),
		).toEqual([]);
	});

	test("charts draw with d3 and nothing else from outside", () => {
		const outside = arrows.filter(
			({ from, inside }) => roomOf(from) === "charts" && !inside,
		);
		expect(outside.filter(({ to }) => !to.startsWith("d3-"))).toEqual([]);
	});
});

/** Lines on which a pattern stands, comments and quotes aside. */
function found(inRooms: readonly string[], pattern: RegExp): string[] {
	return files
		.filter((file) => inRooms.includes(roomOf(file)))
		.flatMap((file) =>
			bare(textOf(file))
				.split("\n")
				.flatMap((line, i) =>
					pattern.test(line) ? [`${file}:${i + 1}: ${line.trim()}`] : [],
				),
		);
}

describe("the same input gives the same bytes", () => {
	test("randomness and time are arguments: nothing below the shells asks the host for them", () => {
		// A date made of numbers or of the scenario's own text is arithmetic; one made of nothing is the clock.
		const host =
			/\bMath\.random\b|\bDate\.now\b|\bDate\(\s*\)|\bnew Date\b(?!\()|\bperformance\b|\bset(?:Timeout|Interval|Immediate)\b|\bcrypto\b|\bprocess\.(?:env|argv|cwd|hrtime|pid|platform|std\w+|on|exit)\b|\bglobalThis\b|\bIntl\b|\btoLocale/;
		const rest = Object.keys(rooms).filter((room) => !shells.includes(room));
		expect(found(rest, host)).toEqual([]);
	});

	const simulating = ["elementary", "engine", "physics", "therapy", "analysis"];

	test("what is simulated uses no function of the host whose last bit is not laid down", () => {
		// ECMAScript leaves these implementation-approximated (ECMA-262, 21.3.2); abs, sqrt, floor and the like are exact.
		const exact =
			"abs|ceil|floor|round|trunc|sign|min|max|sqrt|imul|clz32|fround";
		const approximated = new RegExp(
			`\\bMath\\.(?!(?:${exact}|PI|E|LN2|LN10|SQRT2|SQRT1_2|LOG2E|LOG10E)\\b)|\\bMath\\b(?!\\.)`,
		);
		expect(found(simulating, approximated)).toEqual([]);
	});

	test("nor a power, but for a square and whole powers of two", () => {
		const powers = (text: string) =>
			text
				.replaceAll(/(?<![\w.)\]]\s*)2 \*\* -?\d+(?![\w.])/g, "")
				.match(/\*\*=?(?!\s*2(?![\w.]))/g) ?? [];
		const lines = found(simulating, /\*\*/);
		expect(lines.filter((line) => powers(line).length > 0)).toEqual([]);
		// Held against what it must and must not let pass.
		for (const fine of [
			"x ** 2",
			"(a + b) ** 2 - 1",
			"2 ** -53",
			"1 - 2 ** 10",
		])
			expect(powers(fine), fine).toHaveLength(0);
		for (const bad of [
			"x ** 3",
			"x ** y",
			"2 ** n",
			"x ** 2.5",
			"x ** 20",
			"x **= 2.1",
			"x2 ** -3",
			"f(2) ** -3",
		])
			expect(powers(bad), bad).toHaveLength(1);
	});
});

describe("the top of the repository", () => {
	const ours = [
		"README.md",
		"DEVELOPERS.md",
		"package.json",
		"tsconfig.json",
		"src",
		"scenarios",
		"tests",
		"reports",
	];
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
		const tracked = execFileSync(
			"git",
			["ls-files", "--cached", "--others", "--exclude-standard"],
			{ cwd: root, encoding: "utf8" },
		)
			.split("\n")
			.filter((name) => name !== "");
		const top = [...new Set(tracked.map((name) => name.split("/")[0] ?? ""))];
		const strangers = top.filter(
			(name) =>
				existsSync(join(root, name)) &&
				!ours.includes(name) &&
				insistedOn[name] === undefined,
		);
		expect(strangers).toEqual([]);
		expect(top).toEqual(
			expect.arrayContaining(["package.json", "src", "tests"]),
		);
	});
});
