import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { Rehearsal } from "../../src/rehearsal/index.ts";
import { readScenario } from "../../src/scenario/index.ts";
import { here, root, scenario, temporary, written } from "../cli/program.ts";
import { launched, offlineContext } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { shutOut } from "./shut-out.ts";

const folder = temporary();
const started = await launched();

describe.skipIf("missing" in started)("a debrief in a real browser", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	const heard: string[] = [];
	let page: Page;
	const address = pathToFileURL(join(folder, "report", "report.html")).href;

	beforeAll(async () => {
		const script = written(
			folder,
			"acts.txt",
			"next\nlook port\nlook suction-line\nact free-suction-line\nwait 8\nact new-port\nlook edge\nact patch-edge\nnext\n",
		);
		const { status, err } = await here(
			"drill",
			scenario("rehearse-12"),
			"--script",
			script,
			"--out",
			join(folder, "report"),
			"--quiet",
		);
		expect(status, err).toBe(0);
		const context = await offlineContext(browser);
		page = await context.newPage();
		page.on("request", (request) => heard.push(request.url()));
		page.on("console", (message) => heard.push(message.text()));
		page.on("pageerror", (error) => heard.push(error.message));
	});
	afterAll(async () => {
		await browser.close();
	});

	async function opened(width: number): Promise<void> {
		await page.emulateMedia({ media: "screen", colorScheme: "light" });
		await page.setViewportSize({ width, height: 900 });
		heard.length = 0;
		await page.goto(address);
	}

	test("asks for nothing but itself", async () => {
		await opened(1440);
		expect(heard).toEqual([address]);
		expect(await page.evaluate(() => document.scripts.length)).toBe(0);
	});

	test.each([390, 1440])("shuts nobody out, light and dark, at %i px", async (width) => {
		await opened(width);
		for (const colorScheme of ["light", "dark"] as const) {
			await page.emulateMedia({ colorScheme });
			const violations = await shutOut(page);
			expect(violations, colorScheme).toEqual([]);
		}
	});

	test.each([320, 768, 1440])(
		"at %i px does not scroll sideways, and no text is cut or lies on another",
		async (width) => {
			await opened(width);
			expect(await page.evaluate(layoutFaults)).toEqual([]);
		},
	);

	test("a rehearsal gives the same debrief in the browser as in Node, to the last bit", async () => {
		const bundle = await build({
			stdin: {
				contents: `export { Rehearsal } from "./src/rehearsal/index.ts"; export { readScenario } from "./src/scenario/index.ts";`,
				resolveDir: root,
				loader: "ts",
			},
			bundle: true,
			write: false,
			format: "iife",
			globalName: "slackwater",
			platform: "browser",
			logLevel: "silent",
		});
		await page.goto("about:blank");
		await page.evaluate(bundle.outputFiles[0]?.text ?? "");
		const names = ["rehearse-03", "rehearse-07", "rehearse-12"];
		const texts = names.map((name) => readFileSync(scenario(name), "utf8"));
		const inBrowser = await page.evaluate(
			(all) =>
				all.map((text) => {
					// biome-ignore lint/suspicious/noExplicitAny: the bundle puts itself there
					const { readScenario, Rehearsal } = (globalThis as any).slackwater;
					const rehearsal = new Rehearsal(readScenario(text), "browser");
					rehearsal.next();
					rehearsal.look("port");
					rehearsal.act("patch-edge");
					rehearsal.wait(90);
					return JSON.stringify(rehearsal.debrief());
				}),
			texts,
		);
		const inNode = texts.map((text) => {
			const rehearsal = new Rehearsal(readScenario(text), "browser");
			rehearsal.next();
			rehearsal.look("port");
			rehearsal.act("patch-edge");
			rehearsal.wait(90);
			return JSON.stringify(rehearsal.debrief());
		});
		expect(inBrowser).toEqual(inNode);
	});
});
