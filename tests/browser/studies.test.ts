import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { JSDOM } from "jsdom";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { compareHtml, sweepHtml } from "../../src/report/index.ts";
import { temporary, written } from "../cli/program.ts";
import { comparison } from "../report/compare/compare-fixture.ts";
import { hostileText } from "../report/hostile.ts";
import { sweep } from "../report/sweep-fixture.ts";
import { launched, offlineContext } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { shutOut } from "./shut-out.ts";

const folder = temporary();
const { document } = new JSDOM("").window;

const comparisonPage = (plan: Parameters<typeof comparison>[0]): string => {
	const { result, drawings } = comparison(plan);
	return compareHtml(result, drawings, document);
};
const two = [{ id: "thigh" }, { id: "abdomen", fillMl: 100 }];
const long = "a-name-as-long-as-a-regimen-may-have-but-nobody-would-type-0123";

/** Reports by name; of a comparison the first page is one of paper. */
const pages: Readonly<Record<string, () => string>> = {
	comparison: () => comparisonPage({ names: ["short", "long", "suction-alone"] }),
	"comparison-of-two-dressings": () =>
		comparisonPage({ dressings: two, names: ["begin-suction", "begin-fill"], firstHours: true }),
	"comparison-hostile": () =>
		comparisonPage({ names: [hostileText, long], dressings: [{ id: hostileText }], scenario: { title: hostileText } }),
	grid: () => sweepHtml(sweep(), document),
	"grid-of-three": () =>
		sweepHtml(sweep({ axes: { dwell: [1, 5, 10, 20], suction: [60, 120, 210], fill: [30, 50, 70] } }), document),
	"grid-of-one": () => sweepHtml(sweep({ axes: { dwell: [1, 5, 20] }, plain: true }), document),
	beginnings: () =>
		sweepHtml(
			sweep({ axes: { start: [360, 420, 480, 600], apart: [0, 30, 60] }, dressings: [{ id: "thigh" }, { id: "hip" }] }),
			document,
		),
	"grid-hostile": () =>
		sweepHtml(
			sweep({ dressings: [{ id: hostileText }], scenario: { title: hostileText }, reason: hostileText }),
			document,
		),
};

const started = await launched();
// That Chromium starts where it can is held in report.test.ts.
describe.skipIf("missing" in started)("in a real browser", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	const heard: string[] = [];
	let page: Page;
	const addressOf = (name: string) => pathToFileURL(join(folder, `${name}.html`)).href;

	beforeAll(async () => {
		for (const [name, html] of Object.entries(pages)) written(folder, `${name}.html`, html());
		const context = await offlineContext(browser);
		page = await context.newPage();
		page.on("request", (request) => heard.push(request.url()));
		page.on("console", (message) => heard.push(message.text()));
		page.on("pageerror", (error) => heard.push(error.message));
		page.on("dialog", (dialog) => {
			heard.push(dialog.message());
			void dialog.dismiss();
		});
	});
	afterAll(async () => {
		await browser.close();
	});

	async function opened(name: string, width: number): Promise<void> {
		await page.emulateMedia({ media: "screen", colorScheme: "light" });
		await page.setViewportSize({ width, height: 900 });
		heard.length = 0;
		await page.goto(addressOf(name));
	}
	const unfolded = () =>
		page.evaluate(() => {
			for (const details of document.querySelectorAll("details")) details.open = true;
		});

	describe.each(Object.keys(pages))("the report called %s", (name) => {
		test("asks for nothing but itself and runs no script", async () => {
			await opened(name, 1440);
			expect(heard).toEqual([addressOf(name)]);
			expect(await page.evaluate(() => document.scripts.length)).toBe(0);
		});

		test.each([320, 768, 1440])("at %i px shuts nobody out, light and dark, folded parts opened", async (width) => {
			await opened(name, width);
			await unfolded();
			for (const colorScheme of ["light", "dark"] as const) {
				await page.emulateMedia({ colorScheme });
				expect(await shutOut(page), colorScheme).toEqual([]);
			}
		});

		test.each([320, 390, 768, 1440])(
			"at %i px does not scroll sideways, and no text is cut or lies on another",
			async (width) => {
				await opened(name, width);
				expect(await page.evaluate(layoutFaults)).toEqual([]);
				await unfolded();
				expect(await page.evaluate(layoutFaults), "unfolded").toEqual([]);
			},
		);

		test("on A4 the first page holds what a meeting needs, and nothing is cut", async () => {
			await opened(name, 1440);
			const pxOf = (mm: number) => (mm / 25.4) * 96;
			const [across, down] = [210 - 22, 297 - 20]; // mm, less the margins of the report's @page
			await page.setViewportSize({ width: Math.floor(pxOf(across)), height: Math.floor(pxOf(down)) });
			await page.emulateMedia({ media: "print" });
			const bottom = await page.evaluate(
				() => (document.querySelector(".brief")?.getBoundingClientRect().bottom ?? Number.POSITIVE_INFINITY) + scrollY,
			);
			expect(bottom).toBeLessThanOrEqual(pxOf(down));
			expect(await page.evaluate(layoutFaults)).toEqual([]);
			const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
			expect(pdf).toMatch(/\/MediaBox \[0 0 59[45](\.\d+)? 84[12](\.\d+)?\]/);
			expect(pdf.match(/\/Type \/Page\b/g)?.length ?? 0).toBeGreaterThan(1);
		});
	});

	test("a picture without a name would be found", async () => {
		await opened("comparison", 1440);
		await page.evaluate(() => {
			for (const svg of document.querySelectorAll("svg")) {
				svg.removeAttribute("aria-labelledby");
				svg.querySelector("title")?.remove();
			}
		});
		expect((await shutOut(page)).length).toBeGreaterThan(0);
	});
});
