import { centredScale } from "./centred-scale.ts";
import type { DifferenceRow } from "./difference-rows.ts";
import { figureWords } from "./figures.ts";
import { svgElement } from "./svg-element.ts";
import { fittedText, textWidth } from "./text-width.ts";

interface BarPlace {
	readonly left: number;
	readonly right: number;
	/** The line that the dot stands on. */
	readonly y: number;
}

/** Room at both ends, so that a dot at the end of the scale is whole. */
const insetPx = 6;

/** A dot with its 95 % bar over a scale of its own; hollow and without bar where no interval could be given. */
export function differenceBar(
	document: Document,
	row: DifferenceRow,
	place: BarPlace,
): SVGGElement {
	const { low, high, mean } = row;
	const [from, to] = [place.left + insetPx, place.right - insetPx];
	const values = [mean, low ?? 0, high ?? 0].filter(Number.isFinite);
	const { x, most } = centredScale(values, from, to);
	const { y } = place;
	const found = row.tone === "difference";
	const edge = found ? "found-edge thick" : "unsure-edge";
	const group = svgElement(
		document,
		"g",
		{},
		svgElement(document, "title", {}, `${row.label}: ${row.verdict}`),
		svgElement(document, "line", {
			class: "rule",
			x1: from,
			x2: to,
			y1: y + 8,
			y2: y + 8,
		}),
		...[from, (from + to) / 2, to].map((at) =>
			svgElement(document, "line", {
				class: "rule",
				x1: at,
				x2: at,
				y1: y + 5,
				y2: y + 11,
			}),
		),
		...scaleNumbers(document, place, most, row.unit),
	);
	if (low !== null && high !== null)
		group.append(
			svgElement(document, "path", {
				class: edge,
				d: `M${x(low).toFixed(2)},${y - 5}v10m0,-5H${x(high).toFixed(2)}m0,-5v10`,
			}),
		);
	if (!Number.isFinite(mean)) return group;
	const whole = low !== null && high !== null;
	group.append(
		svgElement(document, "circle", {
			class: whole
				? found
					? "found"
					: "unsure"
				: `${found ? "found-edge" : "unsure-edge"} hollow`,
			cx: x(mean),
			cy: y,
			r: whole ? 5 : 4.5,
		}),
	);
	return group;
}

function scaleNumbers(
	document: Document,
	place: BarPlace,
	most: number,
	unit: string,
): SVGTextElement[] {
	// A nice end has at most two figures.
	const decimals = Math.max(0, 1 - Math.floor(Math.log10(most)));
	const room = (place.right - place.left) / 2 - 12;
	const [bare, whole] = ["", unit].map((of) => figureWords(most, decimals, of));
	const at = (x: number, anchor: string, words = ""): SVGTextElement =>
		svgElement(
			document,
			"text",
			{
				class: "small muted halo",
				x,
				y: place.y + 22,
				"text-anchor": anchor,
			},
			fittedText(words, 11.5, room),
		);
	return [
		at(place.left, "start", figureWords(-most, decimals, "")),
		at((place.left + place.right) / 2, "middle", "0"),
		at(place.right, "end", textWidth(whole ?? "", 11.5) > room ? bare : whole),
	];
}

/** Which side of the zero stands for more of which regimen. */
export function sideWords(
	document: Document,
	names: { readonly a: string; readonly b: string },
	place: BarPlace,
): SVGTextElement[] {
	const room = (place.right - place.left) / 2 - 8;
	// A name that has no room is told by its place in the line above, which names both in full.
	const moreWith = (name: string, placeWords: string): string =>
		textWidth(`more with ${name}`, 11.5) <= room
			? `more with ${name}`
			: fittedText(`more with ${placeWords}`, 11.5, room);
	const side = (x: number, anchor: string, words: string): SVGTextElement =>
		svgElement(
			document,
			"text",
			{ class: "small muted", x, y: place.y, "text-anchor": anchor },
			words,
		);
	return [
		side(place.left, "start", moreWith(names.b, "the second")),
		side(place.right, "end", moreWith(names.a, "the first")),
	];
}
