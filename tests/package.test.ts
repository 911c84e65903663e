import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

/** `LONG=1`: installed by npm into an empty folder, with its dependencies from the registry. Else unpacked beside ours. */
const long = process.env.LONG !== undefined;
const folder = mkdtempSync(join(tmpdir(), "slackwater-"));
const packed = join(folder, "node_modules", "slackwater");
const scenario = join(packed, "scenarios", "thigh-short-dwell.yaml");
const run = (command: string, ...args: string[]) => execFileSync(command, args, { cwd: folder, encoding: "utf8" });

beforeAll(() => {
	const [{ filename }] = JSON.parse(
		execFileSync("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", folder], { encoding: "utf8" }),
	);
	writeFileSync(join(folder, "package.json"), '{ "type": "module" }');
	if (long) {
		run("npm", "install", "--no-audit", "--no-fund", filename);
		return;
	}
	mkdirSync(packed, { recursive: true });
	run("tar", "-xzf", filename, "-C", packed, "--strip-components=1");
	symlinkSync(join(import.meta.dirname, "../node_modules"), join(packed, "node_modules"));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("the package", () => {
	test("holds the program, the library with its types, and the scenarios: nothing else", () => {
		expect(readdirSync(packed).filter((name) => name !== "node_modules")).toEqual([
			"README.md",
			"dist",
			"package.json",
			"scenarios",
		]);
		const files = readdirSync(packed, { recursive: true, encoding: "utf8" });
		const own = files.filter((name) => !name.startsWith("node_modules"));
		expect(own.filter((name) => /test|benchmark|\.map$/.test(name))).toEqual([]);
		expect(own.filter((name) => /\.ts$/.test(name) && !/\.d\.ts$/.test(name))).toEqual([]);
	});

	test("has a command that works", () => {
		const main = join(packed, "dist", "cli", "main.js");
		expect(run("node", main, "--help")).toMatch(/Usage: slackwater/);
		run("node", main, "check", scenario);
		run("node", main, "day", scenario, "--out", "report", "--quiet");
		expect(readdirSync(join(folder, "report"))).toContain("report.html");
		if (long) expect(run("npx", "slackwater", "--help")).toMatch(/Usage: slackwater/);
	});

	test("has a library that works, types included", () => {
		const body = (type: string) => `
			import { readScenario, traceDay${type && ", type Scenario"} } from "slackwater";
			const scenario${type} = readScenario(${JSON.stringify(
				"slackwater: 1\ntitle: t\ndressings:\n- id: a\n  wound: { tissue: soft-tissue, exudate: 160 mL/d }\n  foam: [{ area: 240 cm2, thickness: 1 cm }]\n  regimen: { depth: -125 mmHg, fill: none }\n",
			)});
			console.log(traceDay(scenario).trace.events);`;
		writeFileSync(join(folder, "use.js"), body(""));
		expect(Number(run("node", "use.js"))).toBeGreaterThan(0);

		const typed = body(": Scenario");
		writeFileSync(join(folder, "right.ts"), typed);
		writeFileSync(join(folder, "wrong.ts"), `${typed}\nexport const title: number = scenario.title;`);
		const tsc = (file: string) => {
			const flags = "--noEmit --strict --module nodenext --target es2023 --lib es2023,dom --types".split(" ");
			try {
				return execFileSync(join(import.meta.dirname, "../node_modules/.bin/tsc"), [...flags, "", file], {
					cwd: folder,
					encoding: "utf8",
				});
			} catch (error) {
				return (error as { stdout: string }).stdout; // what execFileSync throws
			}
		};
		expect(tsc("right.ts")).toBe("");
		expect(tsc("wrong.ts")).toMatch(/wrong\.ts.*not assignable to type 'number'/);
	});
});

test("nothing in the manifest, the files or what they export is unused, and nothing is used that the manifest lacks", () => {
	execFileSync("node_modules/.bin/knip", ["--no-progress", "--config", "tests/knip.json"], { encoding: "utf8" });
});
