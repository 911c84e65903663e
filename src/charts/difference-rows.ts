import { type ChartOptions, setSize } from "./chart-root.ts";
import { comparisonRoot, narrowBelowPx } from "./comparison-root.ts";
import { differenceStack } from "./difference-stack.ts";
import { differenceTable } from "./difference-table.ts";
import { differenceWords } from "./difference-words.ts";
import { svgElement } from "./svg-element.ts";

/** One measure of two regimens, a and b, and how far they differ. */
export interface DifferenceRow {
	/** 'Washes'. */
	readonly label: string;
	/** Written after every number of the row: 'mL', 'min', 'a day'; '' for a bare count. */
	readonly unit: string;
	readonly meanA: number;
	readonly meanB: number;
	/** a − b. */
	readonly mean: number;
	/** 95 % interval of the difference; null where none could be given: the dot is hollow then. */
	readonly low: number | null;
	readonly high: number | null;
	/** 'fewer: 0.04 a day (0.03 to 0.05)', 'no difference found at 0.1 a day', 'not judged'. */
	readonly verdict: string;
	/** A difference was found; none was found; nothing can be said (the row is greyed). */
	readonly tone: "difference" | "none" | "unknown";
	/** Most digits after the point of the two means; by default three figures of the larger. */
	readonly decimals?: readonly [number, number];
}

export interface DifferenceRowsData {
	readonly title: string;
	/** Names of the regimens. */
	readonly a: string;
	readonly b: string;
	/** In the order of what the reader asked for; 1 to 40. */
	readonly rows: readonly DifferenceRow[];
}

/**
 * The differences between two regimens, a row a measure: both means, the difference as a dot with its 95 % bar on a scale of
 * its own with zero in the middle, and the verdict in words. Below 600 px the words stand over the bar.
 */
export function differenceRows(
	data: DifferenceRowsData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? 900;
	const { root, headPx } = comparisonRoot(
		document,
		options,
		widthPx,
		differenceWords(data),
	);
	const bottom =
		data.rows.length === 0
			? emptyRow(root, document, headPx)
			: widthPx < narrowBelowPx
				? differenceStack(root, data, document, widthPx, headPx)
				: differenceTable(root, data, document, widthPx, headPx);
	setSize(root, widthPx, bottom + 4);
	return root;
}

function emptyRow(
	root: SVGSVGElement,
	document: Document,
	topPx: number,
): number {
	root.append(
		svgElement(
			document,
			"text",
			{ class: "muted", x: 0, y: topPx + 18 },
			"no measure was asked for",
		),
	);
	return topPx + 26;
}
