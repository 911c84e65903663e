import type { TextItem } from "pdfjs-dist/types/src/display/api.js";
import type { Page } from "playwright-core";

/** A piece of text on paper; pt from the left and from the top of its sheet of paper. */
export interface Printed {
	readonly text: string;
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
	readonly sizePt: number;
}

/** One sheet of paper. */
export interface PaperPage {
	readonly widthPt: number;
	readonly heightPt: number;
	readonly texts: readonly Printed[];
	/** All its words, one line a piece. */
	readonly words: string;
}

const isText = (item: object): item is TextItem => "str" in item;

/** Prints what is open, as a reader's browser would, and reads where every piece of text stands on the paper. */
export async function printed(page: Page, format: "A4" | "Letter"): Promise<PaperPage[]> {
	const pdf = await page.pdf({ format });
	const { getDocument } = await import("pdfjs-dist/legacy/build/pdf.mjs");
	const loading = getDocument({
		data: new Uint8Array(pdf),
		verbosity: 0,
		useSystemFonts: false,
		disableFontFace: true,
	});
	const file = await loading.promise;
	const pages: PaperPage[] = [];
	for (let number = 1; number <= file.numPages; number++) {
		const sheet = await file.getPage(number);
		const { width, height } = sheet.getViewport({ scale: 1 });
		const { items } = await sheet.getTextContent({ disableNormalization: true });
		const texts = items.filter(isText).flatMap((item) => {
			const [, , c = 0, d = 0, x = 0, y = 0] = item.transform as number[]; // a matrix of six numbers
			const sizePt = Math.hypot(c, d);
			if (item.str.trim() === "") return [];
			const base = height - y;
			const [above, below] = [sizePt * 0.75, sizePt * 0.2];
			// A text that runs upwards stands on a line from below to above.
			const isUpright = Math.abs(c) > Math.abs(d);
			const box = isUpright
				? { left: x - above, right: x + below, top: base - item.width, bottom: base }
				: { left: x, right: x + item.width, top: base - above, bottom: base + below };
			return [{ text: item.str, ...box, sizePt }];
		});
		pages.push({ widthPt: width, heightPt: height, texts, words: texts.map(({ text }) => text).join("\n") });
	}
	await loading.destroy();
	return pages;
}

const leastPt = 6.5;
/** Of the report's margins no more than this is written into, pt: a little less than 10 mm. */
const marginPt = 26;

/** What is wrong with printed pages whatever they say, one sentence each. */
export function paperFaults(pages: readonly PaperPage[]): string[] {
	return pages.flatMap(({ widthPt, heightPt, texts }, index) => {
		const where = `page ${index + 1}`;
		const faults: string[] = [];
		for (const [i, one] of texts.entries()) {
			const called = `"${one.text.slice(0, 40)}"`;
			if (one.sizePt < leastPt - 0.01) faults.push(`${where}: ${called} has letters of ${one.sizePt.toFixed(2)} pt`);
			if (
				one.left < marginPt ||
				one.right > widthPt - marginPt ||
				one.top < marginPt ||
				one.bottom > heightPt - marginPt
			)
				faults.push(`${where}: ${called} leaves the page's text`);
			for (const other of texts.slice(i + 1)) {
				const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
				const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
				// A halo is the same text, written once more beneath.
				const halo =
					Math.abs(one.bottom - other.bottom) < 0.1 && (one.text.includes(other.text) || other.text.includes(one.text));
				if (across > 1 && down > 2 && !halo)
					faults.push(
						`${where}: ${called} lies on "${other.text.slice(0, 40)}": ${across.toFixed(1)} × ${down.toFixed(1)} pt`,
					);
			}
		}
		return faults;
	});
}
