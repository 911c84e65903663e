import type { Browser, BrowserContext, BrowserContextOptions } from "playwright-core";

/** Machines for which the package that brings Chromium along has one. */
export const hasChromium = process.platform === "linux" && process.arch === "x64";

/** How long a browser is waited for, whatever else the machine is busy with: by then it hangs. */
const patienceMs = 300_000;

/** A browser's context without a network, of which everything is waited for with patience. */
export async function offlineContext(browser: Browser, options: BrowserContextOptions = {}): Promise<BrowserContext> {
	const context = await browser.newContext({ ...options, offline: true });
	context.setDefaultTimeout(patienceMs);
	context.setDefaultNavigationTimeout(patienceMs);
	return context;
}

/** A Chromium without a network of its own, or why there is none. */
export async function launched(): Promise<{ readonly browser: Browser } | { readonly missing: string }> {
	try {
		// Makes the package unpack its own libraries where the system lacks them; it looks when it is imported.
		process.env.AWS_LAMBDA_JS_RUNTIME = "nodejs22.x";
		const { default: chromium } = await import("@sparticuz/chromium");
		const { chromium: driver } = await import("playwright-core");
		const browser = await driver.launch({
			executablePath: await chromium.executablePath(),
			headless: true,
			timeout: patienceMs,
			args: [
				...chromium.args,
				"--no-sandbox",
				"--disable-gpu",
				"--disable-background-networking",
				"--disable-component-update",
				"--disable-sync",
				"--no-first-run",
			],
		});
		return { browser };
	} catch (error) {
		const [first] = String(error).split("\n");
		return { missing: first ?? "no reason given" };
	}
}
