import type { Page } from "playwright-core";

const wideByShare = 0.15;
const sample = "canister between 226 and 300 of 500 mL; Fill, drains at 17:43, drawn down by 17:44";

/**
 * Makes every letter of a page take 15 % more room sideways than in the machine's own typeface, as another typeface would.
 * Only the space after each letter grows (`letter-spacing`, in shares of each element's own size), by 15 % of the mean advance
 * of the letters of a sentence as reports write them: so lines do not become higher, which a scaled typeface would do.
 */
export async function widened(page: Page): Promise<void> {
	const advanceEm = await page.evaluate((words) => {
		const line = document.createElement("span");
		line.textContent = words;
		line.style.cssText = "position:absolute;white-space:pre;font-size:100px;letter-spacing:0";
		document.body.append(line);
		const { width } = line.getBoundingClientRect();
		line.remove();
		return width / words.length / 100;
	}, sample);
	await page.addStyleTag({ content: `*{letter-spacing:${(advanceEm * wideByShare).toFixed(4)}em}` });
}
