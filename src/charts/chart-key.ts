import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { smallLinePx, textLines, wrappedText } from "./wrapped-text.ts";

/** One entry of a key: a sample, drawn around the middle of its place, and what it means. */
export interface KeyItem {
	readonly words: string;
	readonly sample: (x: number, y: number) => SVGElement;
}

const samplePx = 30;
const rowGapPx = 9;

/** Samples with their words, as many beside each other as there is room for. */
export function chartKey(
	document: Document,
	items: readonly KeyItem[],
	place: {
		readonly leftPx: number;
		readonly topPx: number;
		readonly roomPx: number;
	},
): { readonly group: SVGGElement; readonly heightPx: number } {
	const group = svgElement(document, "g", {});
	let [x, y, rowLines] = [place.leftPx, place.topPx, 0];
	for (const item of items) {
		const lines = wrappedText(item.words, 11.5, place.roomPx - samplePx - 4, 3);
		const wide =
			samplePx +
			Math.max(...lines.map((line) => textWidth(line, 11.5)), 0) +
			18;
		if (x > place.leftPx && x + wide - 18 > place.leftPx + place.roomPx) {
			y += rowLines * smallLinePx + rowGapPx;
			x = place.leftPx;
			rowLines = 0;
		}
		group.append(
			item.sample(x + 12, y + 9),
			...textLines(
				document,
				{ class: "small muted", x: x + samplePx, y: y + 13 },
				lines,
				smallLinePx,
			),
		);
		x += wide;
		rowLines = Math.max(rowLines, lines.length);
	}
	const heightPx =
		items.length === 0 ? 0 : y - place.topPx + rowLines * smallLinePx + 6;
	return { group, heightPx };
}
