import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const root = fileURLToPath(new URL("../", import.meta.url));

/** Text files that are tracked or about to be. */
const texts = execFileSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], {
	cwd: root,
	encoding: "utf8",
})
	.split("\0")
	.filter((name) => name !== "" && existsSync(join(root, name)))
	.map((name) => ({ name, text: readFileSync(join(root, name), "utf8") }))
	.filter(({ text }) => !text.includes("\0"));

const places = (pattern: RegExp, except: (name: string) => boolean) =>
	texts
		.filter(({ name }) => !except(name))
		.flatMap(({ name, text }) =>
			text.split("\n").flatMap((line, i) => (pattern.test(line) ? [`${name}:${i + 1}: ${line.slice(0, 120)}`] : [])),
		);

// Put together from pieces, so that this file does not hold what it looks for.
const registry = new RegExp([["\\bregistry", "[a-z]"].join("[.]"), ["npm", "js"].join("")].join("|"), "i");
const machine = new RegExp(`(?<![\\w.~*])/(?:${["home", "root", "work", "Users", "mnt"].join("|")})/`);
const passing = new RegExp(`(?<![\\w.~*])/(?:${["tmp", "var"].join("|")})/`);

test("there are texts to look at", () => {
	expect(texts.length).toBeGreaterThan(150);
});

test("no file names the host of a registry", () => {
	expect(places(registry, () => false)).toEqual([]);
	expect(places(/"resolved":\s*"https?:/, () => false)).toEqual([]);
});

test("no file names a place on somebody's machine", () => {
	expect(places(machine, () => false)).toEqual([]);
});

test("no file outside the tests names a temporary place", () => {
	expect(places(passing, (name) => name.startsWith("tests/"))).toEqual([]);
});

test("the patterns find what they are for", () => {
	for (const place of ["home", "root", "work"]) expect(`see /${place}/x`).toMatch(machine);
	expect(`https://${["registry", "npm"].join(".")}js.org/a`).toMatch(registry);
	expect(`in /${"tmp"}/x`).toMatch(passing);
	expect("scenarios/work/x and ~/home/x").not.toMatch(machine);
});
