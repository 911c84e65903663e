import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { root } from "../cli/program.ts";
import { launched, offlineContext } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { shutOut } from "./shut-out.ts";

const address = pathToFileURL(join(root, "reports", "hospital-stores", "report.html")).href;

const started = await launched();
if ("missing" in started)
	console.warn(`SKIPPED: the report of the stores in a real browser. Chromium does not start: ${started.missing}`);

describe.skipIf("missing" in started)("the report of the stores in a real browser", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	const heard: string[] = [];
	let page: Page;

	beforeAll(async () => {
		const context = await offlineContext(browser);
		page = await context.newPage();
		page.on("request", (request) => heard.push(request.url()));
		page.on("console", (message) => heard.push(message.text()));
	});
	afterAll(async () => {
		await browser.close();
	});

	const opened = async (width: number) => {
		await page.emulateMedia({ media: "screen", colorScheme: "light" });
		await page.setViewportSize({ width, height: 900 });
		heard.length = 0;
		await page.goto(address);
	};

	test("asks for nothing but itself and says nothing", async () => {
		await opened(1440);
		expect(heard).toEqual([address]);
	});

	test.each([390, 1440])("shuts nobody out, light and dark, at %i px", async (width) => {
		await opened(width);
		for (const colorScheme of ["light", "dark"] as const) {
			await page.emulateMedia({ colorScheme });
			const violations = await shutOut(page);
			expect(violations, colorScheme).toEqual([]);
		}
	});

	test.each([1200, 1440])(
		"at %i px shows every column of its tables, 'Sent' of the order list included",
		async (width) => {
			await opened(width);
			const cut = await page
				.locator(".scroll")
				.evaluateAll((regions) =>
					regions.filter((one) => one.scrollWidth > one.clientWidth).map((one) => one.textContent?.slice(0, 40)),
				);
			expect(cut).toEqual([]);
			const sent = page.getByRole("columnheader", { name: "Sent" });
			expect(await sent.isVisible()).toBe(true);
		},
	);

	test.each([320, 390, 768, 1440])(
		"at %i px does not scroll sideways, and no text is cut or lies on another",
		async (width) => {
			await opened(width);
			expect(await page.evaluate(layoutFaults)).toEqual([]);
		},
	);

	test("on A4 the order list begins a page of its own", async () => {
		await opened(1440);
		await page.emulateMedia({ media: "print" });
		const breaks = await page.evaluate(() => {
			const sheet = document.querySelector("section.orders");
			return sheet === null ? null : getComputedStyle(sheet).breakBefore;
		});
		expect(breaks).toBe("page");
	});
});
