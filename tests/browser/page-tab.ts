import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { expect } from "vitest";
import { here } from "../cli/program.ts";
import { offlineContext } from "./launch.ts";

/** A workbench that was written by the command line and is open in a browser without a network. */
export interface Tab {
	readonly page: Page;
	readonly context: BrowserContext;
	/** Everything that the page says or asks for, but for itself and its workers. */
	readonly heard: string[];
	readonly address: string;
}

/** Writes a workbench into a folder and opens it, as a reader would who has it on a disk. */
export async function openedTab(browser: Browser, folder: string, words: readonly string[] = []): Promise<Tab> {
	const file = join(folder, "workbench.html");
	const { status, err } = await here("page", ...words, "--out", file, "--force", "--quiet");
	expect(status, err).toBe(0);
	const address = pathToFileURL(file).href;
	const context = await offlineContext(browser, { acceptDownloads: true });
	const page = await context.newPage();
	const heard: string[] = [];
	page.on("request", (request) => {
		const url = request.url();
		if (url.split("#")[0] !== address && !url.startsWith("blob:")) heard.push(`request ${url}`);
	});
	page.on("console", (message) => heard.push(message.text()));
	page.on("pageerror", (error) => heard.push(error.message));
	page.on("dialog", (dialog) => {
		heard.push(`dialog ${dialog.message()}`);
		void dialog.dismiss();
	});
	await page.goto(address);
	await settled(page);
	return { page, context, heard, address };
}

/** Waits until what lies on the bench has been simulated to the end. */
export async function settled(page: Page): Promise<void> {
	await page.waitForFunction(() => document.body.dataset.settled === "yes");
}

/** Turns the page to a view, and waits until it shows what lies on the bench. */
export async function turned(page: Page, view: string): Promise<void> {
	await page.getByRole("button", { name: view, exact: true }).click();
	await settled(page);
}

/** Types a text in the place of the one that lies on the bench, and waits until it has been simulated. */
export async function typed(page: Page, text: string): Promise<void> {
	await page.getByRole("button", { name: "As text" }).click();
	const field = page.locator("#scenario-text");
	await field.fill(text);
	await field.dispatchEvent("change");
	await settled(page);
}

/** The text of a file that a button hands out; pressed again where the press fell between two answers, as anybody would. */
export async function saved(page: Page, button: string): Promise<string> {
	for (let press = 1; ; press++) {
		const handed = page.waitForEvent("download", { timeout: 20_000 });
		await page.getByRole("button", { name: button }).click();
		const download = await handed.catch((error: unknown) => {
			if (press === 4) throw error;
			return null;
		});
		if (download !== null) return readFileSync(await download.path(), "utf8");
	}
}

/** Drops files onto the page, together. */
export async function droppedTogether(
	page: Page,
	files: readonly (readonly [name: string, text: string])[],
): Promise<void> {
	await page.evaluate((files) => {
		const dataTransfer = new DataTransfer();
		for (const [name, text] of files) dataTransfer.items.add(new File([text], name));
		document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
	}, files);
}

/** Drops a file onto the page, and waits until its text lies on the bench. */
export async function dropped(page: Page, name: string, text: string): Promise<void> {
	await droppedTogether(page, [[name, text]]);
	await onBench(page, text);
}

/** Waits until a text lies on the bench that is looked at. */
export async function onBench(page: Page, text: string): Promise<void> {
	// The file is read in its own time.
	await page.waitForFunction(
		(content) => document.querySelector<HTMLTextAreaElement>("#scenario-text")?.value === content,
		text,
	);
}

/** Makes the page so wide, and waits until what it draws anew for its width has been drawn. */
export async function widened(page: Page, width: number): Promise<void> {
	await page.setViewportSize({ width, height: 900 });
	await page.evaluate(async (width) => {
		const picture = () => new Promise(requestAnimationFrame);
		// The page hears of a new width before it draws the next picture, and then waits a moment for the last of them:
		// a timer of its own that was set later and for longer ends behind that one, on the busiest machine.
		while (innerWidth !== width) await picture();
		await picture();
		await new Promise((ended) => setTimeout(ended, 300));
		// What is drawn comes in pieces, one or more a picture.
		let isChanged = true;
		const watch = new MutationObserver(() => {
			isChanged = true;
		});
		watch.observe(document.body, { childList: true, subtree: true });
		for (let still = 0; still < 10; still++) {
			isChanged = false;
			await picture();
			if (isChanged) still = 0;
		}
		watch.disconnect();
	}, width);
}

/** Waits for so many ticks of a clock of the page's own that ticks as often as the one that lets a shift pass. */
export const ticked = (page: Page, ticks: number): Promise<void> =>
	page.evaluate(
		(ticks) =>
			new Promise<void>((ended) => {
				let left = ticks;
				const timer = setInterval(() => {
					if (--left > 0) return;
					clearInterval(timer);
					ended();
				}, 250);
			}),
		ticks,
	);
