import { JSDOM } from "jsdom";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { comparisonExamples } from "../charts/examples.ts";
import { galleryPage } from "../charts/gallery-page.ts";
import { launched, offlineContext } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { shutOut } from "./shut-out.ts";

const page = galleryPage(comparisonExamples, new JSDOM("").window.document);
const started = await launched();

describe.skipIf("missing" in started)("the charts of a comparison in a real browser", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	let tab: Page;
	beforeAll(async () => {
		tab = await (await offlineContext(browser)).newPage();
	});
	afterAll(async () => {
		await browser.close();
	});

	test.each([320, 768, 1280])("have no text on another and none outside their drawing at %i px", async (width) => {
		await tab.setViewportSize({ width, height: 900 });
		await tab.setContent(page);
		await tab.evaluate(() => {
			document.documentElement.dataset.charts = "alone";
		});
		expect(await tab.evaluate(layoutFaults)).toEqual([]);
	});

	test.each(["light", "dark"] as const)("shut nobody out in the %s theme", async (colorScheme) => {
		await tab.setViewportSize({ width: 1280, height: 900 });
		await tab.emulateMedia({ colorScheme });
		await tab.setContent(page);
		const violations = await shutOut(tab);
		expect(violations).toEqual([]);
	});
});
