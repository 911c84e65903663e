import { readFileSync } from "node:fs";
import { afterAll, describe, expect, test } from "vitest";
import { launched } from "../browser/launch.ts";
import { bundled, type Engine, javaScriptCore, logIn, quickJs, tracesIn } from "./engines.ts";
import { files } from "./files.ts";
import { parting, seeds } from "./traces.ts";

const count = process.env.LONG === undefined ? 2 : 20;
const bundle = await bundled();
const chromium = await launched();
const page = "browser" in chromium ? await chromium.browser.newPage() : undefined;
afterAll(async () => {
	if ("browser" in chromium) await chromium.browser.close();
});

const engines: Record<string, Engine | undefined> = {
	"JavaScriptCore (bun)": await startable(javaScriptCore),
	QuickJS: await startable(quickJs),
	"V8 in a browser (Chromium)":
		page === undefined
			? undefined
			: async (script, expression) => {
					await page.goto("about:blank");
					return page.evaluate(`${script}\n;${expression}`);
				},
};

/** An engine that has no build for this machine is left out, and says so. */
async function startable(engine: Engine): Promise<Engine | undefined> {
	try {
		await engine("", "1");
		return engine;
	} catch (error) {
		console.warn(`SKIPPED: an engine does not start: ${error}`);
		return undefined;
	}
}

const frozen = readFileSync("tests/frozen/traces.txt", "utf8")
	.trim()
	.split("\n")
	.filter((line) => seeds(count).includes(line.split(" ")[1].replace("own", "")));

describe.each(Object.entries(engines))("in %s", (_, engine) => {
	test.skipIf(engine === undefined)(
		"every scenario has the frozen trace under every seed, to the last bit",
		async () => {
			if (engine === undefined) return;
			const here = (await engine(bundle, tracesIn(files, count))) as string[]; // what `traces` returns
			for (const [i, line] of frozen.entries()) {
				if (here[i] === line) continue;
				const [name, seed] = line.split(" ");
				const file = files.find((one) => one.name === name);
				expect(file, `${name} is frozen, but there is no such file`).toBeDefined();
				if (file === undefined) continue;
				const named = seed.replace("own", "");
				const theirs = (await engine(bundle, logIn(file, named))) as { times: number[]; names: string[] }; // what `logIn` asks for
				expect.soft(parting(file, named, theirs), `${name}, seed ${seed}`).toBeNull();
			}
			expect(here).toEqual(frozen);
		},
	);
});

test.skipIf(engines["JavaScriptCore (bun)"] === undefined)(
	"with an engine's own exponential the days would part, and the first event at which they do is named",
	async () => {
		const host = await bundled(true);
		const parted = [];
		for (const file of files) {
			const theirs = (await javaScriptCore(host, logIn(file, ""))) as { times: number[]; names: string[] }; // what `logIn` asks for
			const where = parting(file, "", theirs);
			if (where !== null) parted.push(where);
			if (parted.length > 0) break;
		}
		expect(parted.length).toBeGreaterThan(0);
		expect(parted[0].first?.name ?? parted[0].second?.name).toMatch(/\w+: \w+/);
	},
);
