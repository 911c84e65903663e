import type { EfficientSetData, EfficientSetPoint } from "./efficient-set.ts";
import { figureWords } from "./figures.ts";
import { type Box, placedLabels } from "./place-labels.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { smallLinePx, textLines, wrappedText } from "./wrapped-text.ts";

interface Place {
	readonly point: EfficientSetPoint;
	readonly x: number;
	readonly y: number;
}

const fontPx = 12;
const mostListed = 40;

/** 'third' of a point in words, or ''. */
export const thirdWords = (
	data: EfficientSetData,
	point: EfficientSetPoint,
): string =>
	data.third === undefined || point.third === undefined
		? ""
		: `${data.third.label} ${figureWords(point.third, data.third.decimals, data.third.unit)}`;

/** Names beside the points of the set where all find room; else numbers there, and a list of what they stand for below. */
export function namedPoints(
	data: EfficientSetData,
	document: Document,
	efficient: readonly Place[],
	drawn: {
		readonly marks: readonly {
			readonly x: number;
			readonly y: number;
			readonly halfPx: number;
		}[];
		readonly frame: Box;
		readonly listTopPx: number;
		readonly widthPx: number;
	},
): { readonly group: SVGGElement; readonly heightPx: number } {
	const group = svgElement(document, "g", {});
	const box = (x: number, y: number, half: number): Box => ({
		left: x - half,
		right: x + half,
		top: y - half,
		bottom: y + half,
	});
	const taken = [
		...drawn.marks.map((mark) => box(mark.x, mark.y, mark.halfPx)),
		...efficient.map((place) => box(place.x, place.y, 5)),
	];
	const places = together(efficient);
	const draw = (words: readonly string[]): SVGTextElement[] | null => {
		const placed = placedLabels(
			places.map((place, index) => ({
				...place,
				widthPx: textWidth(words[index] ?? "", fontPx),
				clearPx: place.points.some((one) => one.current || one.usual) ? 15 : 11,
			})),
			taken,
			drawn.frame,
			fontPx,
		);
		if (
			placed.some((place) => place === null) &&
			words.some((one) => one.length > 8)
		)
			return null;
		return placed.flatMap((place, index) =>
			place === null
				? []
				: [
						svgElement(
							document,
							"text",
							{
								class: "halo",
								x: place.x,
								y: place.y,
								"text-anchor": place.anchor,
								style: `font-size:${fontPx}px`,
							},
							words[index] ?? "",
						),
					],
		);
	};
	const nameOf = (point: EfficientSetPoint): string => {
		const third = thirdWords(data, point);
		return third === "" ? point.label : `${point.label} (${third})`;
	};
	const named = draw(
		places.map((place) => place.points.map(nameOf).join("; ")),
	);
	if (named !== null) {
		group.append(...named);
		return { group, heightPx: 0 };
	}
	let number = 0;
	const numbers = places.map((place) => place.points.map(() => ++number));
	group.append(...(draw(numbers.map((some) => some.join(", "))) ?? []));
	const lines = places
		.flatMap((place) => place.points)
		.slice(0, mostListed)
		.map(
			(point, index) =>
				`${index + 1}: ${nameOf(point)}: ${figureWords(point.x, data.x.decimals, data.x.unit)}, ${figureWords(point.y, data.y.decimals, data.y.unit)}`,
		);
	if (number > mostListed) lines.push(`and ${number - mostListed} more`);
	const heading = wrappedText(
		`In the list: regimen, ${data.x.label}, ${data.y.label}`,
		11.5,
		drawn.widthPx - 4,
		2,
	);
	const headPx = heading.length * smallLinePx + 2;
	const list = columnsOf(
		document,
		lines,
		drawn.listTopPx + headPx,
		drawn.widthPx,
	);
	group.append(
		...textLines(
			document,
			{ class: "small muted", x: 0, y: drawn.listTopPx + 14 },
			heading,
			smallLinePx,
		),
		...list.texts,
	);
	return { group, heightPx: headPx + list.heightPx };
}

/** A list in as many columns as there is room for, read downwards. */
function columnsOf(
	document: Document,
	lines: readonly string[],
	topPx: number,
	widthPx: number,
): { readonly texts: SVGTextElement[]; readonly heightPx: number } {
	const widest = Math.max(...lines.map((line) => textWidth(line, 11.5))) + 24;
	const columns = Math.max(1, Math.floor((widthPx + 24) / widest));
	const perColumn = Math.ceil(lines.length / columns);
	let heightPx = 0;
	const texts = Array.from({ length: columns }, (_, column) => {
		let y = topPx + 14;
		return lines
			.slice(column * perColumn, (column + 1) * perColumn)
			.flatMap((line) => {
				const wrapped = wrappedText(line, 11.5, widthPx - 4, 2);
				const at = { class: "small", x: column * widest, y };
				y += wrapped.length * smallLinePx + 2;
				heightPx = Math.max(heightPx, y - topPx);
				return textLines(document, at, wrapped, smallLinePx);
			});
	});
	return { texts: texts.flat(), heightPx };
}

/** Points that fall on the same px share one name. */
function together(places: readonly Place[]): {
	readonly x: number;
	readonly y: number;
	readonly points: EfficientSetPoint[];
}[] {
	const groups: { x: number; y: number; points: EfficientSetPoint[] }[] = [];
	for (const place of places) {
		const same = groups.find(
			(group) =>
				Math.abs(group.x - place.x) < 2 && Math.abs(group.y - place.y) < 2,
		);
		if (same === undefined)
			groups.push({ x: place.x, y: place.y, points: [place.point] });
		else same.points.push(place.point);
	}
	return groups;
}
