import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hostileScenario, hostileTitle } from "../cli/hostile-scenario.ts";
import { here, scenario, temporary, written } from "../cli/program.ts";
import { hasChromium, launched, offlineContext } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { shutOut } from "./shut-out.ts";

const folder = temporary();
const reports = ["thigh-short-dwell", "two-dressings", "step-down-home", "hostile"];

const started = await launched();
if ("missing" in started)
	console.warn(`SKIPPED: every test in a real browser. Chromium does not start: ${started.missing}`);

test.runIf("missing" in started)("Chromium starts where the package brings one along", () => {
	const missing = "missing" in started ? started.missing : "";
	expect(hasChromium, missing).toBe(false);
});

describe.skipIf("missing" in started)("in a real browser", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	/** Everything that a page says or asks for. */
	const heard: { what: string; text: string }[] = [];
	let page: Page;
	const addressOf = (name: string) => pathToFileURL(join(folder, name, "report.html")).href;

	beforeAll(async () => {
		const hostile = written(folder, "hostile.yaml", hostileScenario);
		for (const name of reports) {
			const file = name === "hostile" ? hostile : scenario(name);
			const { status, err } = await here("day", file, "--out", join(folder, name));
			expect(status, err).toBe(0);
		}
		const context = await offlineContext(browser);
		page = await context.newPage();
		page.on("request", (request) => heard.push({ what: "request", text: request.url() }));
		page.on("console", (message) => heard.push({ what: message.type(), text: message.text() }));
		page.on("pageerror", (error) => heard.push({ what: "error", text: error.message }));
		page.on("dialog", (dialog) => {
			heard.push({ what: "dialog", text: dialog.message() });
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

	describe.each(reports)("the report of %s", (name) => {
		test("asks for nothing but itself, runs no script, and the browser finds no fault in it", async () => {
			await opened(name, 1440);
			await page.evaluate(() => new Promise((resume) => requestAnimationFrame(resume)));
			expect(heard).toEqual([{ what: "request", text: addressOf(name) }]);
			const found = await page.evaluate(() => ({
				scripts: document.scripts.length,
				images: document.images.length,
				title: document.title,
			}));
			expect(found).toMatchObject({ scripts: 0, images: 0 });
			if (name === "hostile") expect(found.title).toContain(hostileTitle.slice(0, 40));
		});

		test.each([390, 1440])("shuts nobody out, light and dark, at %i px", async (width) => {
			await opened(name, width);
			for (const colorScheme of ["light", "dark"] as const) {
				await page.emulateMedia({ colorScheme });
				const violations = await shutOut(page);
				expect(violations, colorScheme).toEqual([]);
			}
		});

		test.each([320, 390, 768, 1440])(
			"at %i px does not scroll sideways, and no text is cut or lies on another",
			async (width) => {
				await opened(name, width);
				expect(await page.evaluate(layoutFaults)).toEqual([]);
			},
		);

		test("on A4 every hand-over sheet fits its page, the first beside the head", async () => {
			await opened(name, 1440);
			const margin = { across: 22, down: 20 }; // mm, of the report's @page
			const pxOf = (mm: number) => (mm / 25.4) * 96;
			await page.setViewportSize({
				width: Math.floor(pxOf(210 - margin.across)),
				height: Math.floor(pxOf(297 - margin.down)),
			});
			await page.emulateMedia({ media: "print" });
			const sheets = await page.evaluate(() =>
				[...document.querySelectorAll<HTMLElement>(".sheet")].map((sheet) => {
					const inner = [...sheet.children].map((child) => child.getBoundingClientRect().bottom);
					const { top, bottom } = sheet.getBoundingClientRect();
					return { top: top + scrollY, bottom: bottom + scrollY, overrun: Math.max(...inner) - bottom };
				}),
			);
			const several = sheets.length > 1;
			expect(sheets.length).toBeGreaterThan(0);
			for (const [i, { top, bottom, overrun }] of sheets.entries()) {
				// One dressing shares its page with the head of the report; of several each begins a page.
				const height = several ? bottom - top : bottom;
				expect(height, `sheet ${i + 1}`).toBeLessThanOrEqual(pxOf(297 - margin.down));
				expect(overrun, `sheet ${i + 1}`).toBeLessThanOrEqual(1);
			}
			expect(await page.evaluate(layoutFaults)).toEqual([]);
			const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
			expect(pdf).toMatch(/\/MediaBox \[0 0 59[45](\.\d+)? 84[12](\.\d+)?\]/);
			const pages = pdf.match(/\/Type \/Page\b/g)?.length ?? 0;
			expect(pages).toBeGreaterThanOrEqual(sheets.length + (several ? 1 : 0));
		});
	});
});
