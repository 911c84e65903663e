import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What axe-core holds against a page as it is shown now, one sentence each. */
export async function shutOut(page: Page): Promise<string[]> {
	await page.evaluate(axe);
	return page.evaluate(async () => {
		// Colours that are on their way to others are nobody's fault.
		await Promise.all(document.getAnimations().map(({ finished }) => finished));
		// biome-ignore lint/suspicious/noExplicitAny: axe comes as text and puts itself there
		const { violations } = await (globalThis as any).axe.run(document, { resultTypes: ["violations"] });
		return violations.flatMap(({ id, nodes }: { id: string; nodes: { html: string; failureSummary: string }[] }) =>
			nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 120)}: ${failureSummary}`),
		);
	});
}
