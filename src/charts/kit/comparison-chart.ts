import { smallLetters, smallPx, titleLetters } from "../theme/letters.ts";
import { chartStyle, comparisonStyle } from "../theme/style-sheet.ts";
import { Chart, type ChartOptions, type ChartWords } from "./chart.ts";
import { fittedText, textBlock, textWidth, widestText } from "./fitted-text.ts";
import type { Extent } from "./label-places.ts";
import { group, type Shape, text } from "./shape.ts";

/** Below this width the words of a row stand over its marks instead of beside them. */
const narrowBelowPx = 600;
/** Width of a chart of a comparison, px of its grid, where none is asked for. */
export const comparisonWidthPx = 900;

/** How to read the chart is said in a line under its title. */
export interface ComparisonWords extends ChartWords {
	readonly legend: string;
}

/** One entry of a key: a sample, drawn around the middle of its place, and what it means. */
export interface KeyItem {
	readonly words: string;
	readonly sample: (x: number, y: number) => Shape;
}

const samplePx = 30;
const rowGapPx = 9;

/** A chart with the styles of a comparison, its title, if it has one, and its legend; broken into lines on a narrow page. */
export class ComparisonChart extends Chart {
	readonly isNarrow: boolean;
	/** Room that title and legend take at the top. */
	readonly headPx: number;

	constructor(options: ChartOptions, words: ComparisonWords) {
		const widthPx = options.widthPx ?? comparisonWidthPx;
		super(options, widthPx, words, [chartStyle, comparisonStyle]);
		this.isNarrow = widthPx < narrowBelowPx;
		let y = 0;
		if (options.titled !== false) {
			const title = textBlock(words.title, titleLetters, widthPx - 4, 4);
			this.append(...title.at({ class: "title", x: 0, y: 18 }));
			y = title.heightPx + 2;
		}
		const legend = textBlock(words.legend, smallLetters, widthPx - 4, 6);
		this.append(...legend.at({ class: "small muted", x: 0, y: y + 12 }));
		this.headPx = y + legend.heightPx + 6;
	}

	/**
	 * Says what its marks mean from `topPx` on: samples with their words, as many beside each other as there is room for; null
	 * for a mark that does not occur. Returns the px that takes.
	 */
	appendKey(items: readonly (KeyItem | null)[], topPx: number): number {
		const key = group();
		let [x, y, rowPx] = [0, topPx, 0];
		for (const item of items) {
			if (item === null) continue;
			const words = textBlock(item.words, smallLetters, this.widthPx - samplePx - 4, 3);
			const wide = samplePx + widestText(words.lines, smallPx) + 18;
			if (x > 0 && x + wide - 18 > this.widthPx) {
				y += rowPx + rowGapPx;
				x = 0;
				rowPx = 0;
			}
			key.append(item.sample(x + 12, y + 9), ...words.at({ class: "small muted", x: x + samplePx, y: y + 13 }));
			x += wide;
			rowPx = Math.max(rowPx, words.heightPx);
		}
		this.append(key);
		return x === 0 ? 0 : y - topPx + rowPx + 6;
	}
}

/** Which dot is hollow, where one is. */
export const hollowWords = (dots: readonly { readonly low: number | null; readonly high: number | null }[]): string =>
	dots.some(({ low, high }) => low === null || high === null) ? " A hollow dot has no interval that would hold." : "";

/** Which side of the zero stands for more of which regimen. */
export function sideWords(names: { readonly [name in "a" | "b"]: string }, place: Extent & { readonly y: number }) {
	const { left, right, y } = place;
	const room = (right - left) / 2 - 8;
	const side = (x: number, anchor: string, name: string, inOrder: string): Shape => {
		// A name that has no room is told by its place in the line above, which names both in full.
		const words = textWidth(`more with ${name}`, smallPx) <= room ? name : inOrder;
		const at = { class: "small muted", x, y, "text-anchor": anchor };
		return text(at, fittedText(`more with ${words}`, smallPx, room));
	};
	return [side(left, "start", names.b, "the second"), side(right, "end", names.a, "the first")];
}
