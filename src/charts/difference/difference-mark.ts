import { figureWords } from "../../words/index.ts";
import { Chart, type ChartOptions } from "../kit/chart.ts";
import { fittedText, textWidth } from "../kit/fitted-text.ts";
import type { Extent } from "../kit/label-places.ts";
import { barPath } from "../kit/marks.ts";
import { circle, group, levelLine, path, type Shape, text, tooltip, uprightLine } from "../kit/shape.ts";
import { centredScale } from "../kit/value-axis.ts";
import { smallPx } from "../theme/letters.ts";
import type { DifferenceRow } from "./data.ts";

/** Size of a lone bar, px of its grid. */
const widthPx = 240;
const heightPx = 36;

/** The dot and the bar of one row, to stand in a cell of a table that says the rest in words. */
export function differenceMark(row: DifferenceRow, document: Document, options: ChartOptions): SVGSVGElement {
	const chart = new Chart(options, widthPx, { title: row.label, description: row.verdict });
	chart.append(uprightLine("boundary", widthPx / 2, 0, 20), differenceBar(row, { left: 1, right: widthPx - 1, y: 11 }));
	return chart.drawnIn(document, heightPx);
}

/** Where a bar begins and ends, and the line that its dot stands on. */
type BarPlace = Extent & { readonly y: number };

/** Room at both ends, so that a dot at the end of the scale is whole. */
const insetPx = 6;

/** A dot with its 95 % bar over a scale of its own; hollow and without bar where no interval could be given. */
export function differenceBar(row: DifferenceRow, place: BarPlace): Shape {
	const { low, high, mean } = row;
	const { y } = place;
	const [from, to] = [place.left + insetPx, place.right - insetPx];
	const { x, most } = centredScale([mean, low ?? 0, high ?? 0].filter(Number.isFinite), from, to);
	const tone = row.tone === "difference" ? "found" : "unsure";
	const bar = group(
		tooltip(`${row.label}: ${row.verdict}`),
		levelLine("rule", from, to, y + 8),
		...[from, (from + to) / 2, to].map((at) => uprightLine("rule", at, y + 5, y + 11)),
		...scaleNumbers(place, most, row.unit),
	);
	const whole = low !== null && high !== null;
	if (whole) bar.append(path(tone === "found" ? "found-edge thick" : "unsure-edge", barPath(x(low), x(high), y, 5)));
	if (Number.isFinite(mean)) {
		const className = whole ? tone : `${tone}-edge hollow`;
		bar.append(circle(className, x(mean), y, whole ? 5 : 4.5));
	}
	return bar;
}

function scaleNumbers(place: BarPlace, most: number, unit: string): Shape[] {
	// A nice end has at most two figures.
	const decimals = Math.max(0, 1 - Math.floor(Math.log10(most)));
	const room = (place.right - place.left) / 2 - 12;
	const whole = figureWords(most, decimals, unit);
	const at = (x: number, anchor: string, words: string): Shape =>
		text({ class: "small muted halo", x, y: place.y + 22, "text-anchor": anchor }, fittedText(words, smallPx, room));
	return [
		at(place.left, "start", figureWords(-most, decimals, "")),
		at((place.left + place.right) / 2, "middle", "0"),
		at(place.right, "end", textWidth(whole, smallPx) > room ? figureWords(most, decimals, "") : whole),
	];
}
