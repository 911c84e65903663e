import type {
	DesignMapCell,
	DesignMapData,
	DesignMapPanel,
} from "./design-map.ts";
import { axisNames } from "./design-map-axes.ts";
import { type CellPlace, mapCell } from "./design-map-cell.ts";
import { type MapLayout, mapNumberSize } from "./design-map-layout.ts";
import { currentCell, emptyCell, usualCell } from "./design-map-marks.ts";
import { figureWords, measureHeading } from "./figures.ts";
import { shadeStep } from "./shade.ts";
import { svgElement } from "./svg-element.ts";
import { fittedText } from "./text-width.ts";
import {
	smallLinePx,
	textLinePx,
	textLines,
	wrappedText,
} from "./wrapped-text.ts";

interface Range {
	readonly least: number;
	readonly most: number;
}

/** Heading, facet and range of a map, in lines that fit its width. */
export function panelHead(
	map: DesignMapPanel,
	range: Range | undefined,
	layout: MapLayout,
) {
	const widthPx = layout.panelPx;
	const written = (value: number): string =>
		figureWords(value, map.decimals, "");
	const scale =
		range === undefined
			? "no values"
			: range.least === range.most
				? `all ${written(range.least)}`
				: `from ${written(range.least)} to ${written(range.most)}`;
	return {
		heading: wrappedText(measureHeading(map.measure, map.unit), 13, widthPx, 3),
		notes: [
			...(map.facet === "" ? [] : wrappedText(map.facet, 11.5, widthPx, 3)),
			...wrappedText(
				mapNumberSize(map, layout) === null && range !== undefined
					? `${scale}; no room for numbers in the cells`
					: scale,
				11.5,
				widthPx,
				3,
			),
		],
	};
}

/** One heat map with its heading and the names of its columns and rows. Heads of one row of maps are as high as the highest. */
export function mapPanel(
	document: Document,
	data: DesignMapData,
	map: DesignMapPanel,
	layout: MapLayout,
	drawn: {
		readonly range: Range | undefined;
		readonly leftPx: number;
		readonly topPx: number;
		readonly headPx: number;
		readonly hatchId: string;
	},
): SVGGElement {
	const { leftPx, topPx, range } = drawn;
	const head = panelHead(map, range, layout);
	const gridLeft = leftPx + layout.labelPx;
	const gridTop = topPx + drawn.headPx + 18;
	const rows = data.y.values.length;
	const group = svgElement(
		document,
		"g",
		{},
		...textLines(
			document,
			{ class: "heading", x: leftPx, y: topPx + 13 },
			head.heading,
			textLinePx,
		),
		...textLines(
			document,
			{
				class: "small muted",
				x: leftPx,
				y: topPx + 12 + head.heading.length * textLinePx,
			},
			head.notes,
			smallLinePx,
		),
		svgElement(
			document,
			"text",
			{ class: "small muted", x: leftPx, y: gridTop - 5 },
			fittedText(data.y.label, 11.5, layout.panelPx),
		),
	);
	const placeOf = (x: number, y: number): CellPlace => ({
		x: gridLeft + x * layout.cellPx,
		y: gridTop + (rows - 1 - y) * layout.rowPx,
		widthPx: layout.cellPx,
		heightPx: layout.rowPx,
	});
	const sizePx = mapNumberSize(map, layout);
	const cells = new Map(map.cells.map((cell) => [`${cell.x},${cell.y}`, cell]));
	const marks: SVGElement[] = [];
	for (let y = 0; y < rows; y++)
		for (let x = 0; x < data.x.values.length; x++) {
			const cell = cells.get(`${x},${y}`);
			const place = placeOf(x, y);
			const value = cell?.value ?? null;
			if (cell === undefined || value === null || range === undefined) {
				group.append(emptyCell(document, place));
				if (cell !== undefined)
					marks.push(...marksOf(document, cell, place, 0));
				continue;
			}
			const step = shadeStep(value, range.least, range.most);
			group.append(
				mapCell(document, cell, {
					place,
					step,
					number: figureWords(value, map.decimals, ""),
					words: `${data.x.label} ${data.x.values[x] ?? ""}, ${data.y.label} ${data.y.values[y] ?? ""}: ${figureWords(value, map.decimals, map.unit)}`,
					sizePx,
					hatchId: drawn.hatchId,
				}),
			);
			marks.push(...marksOf(document, cell, place, step));
		}
	group.append(
		...axisNames(document, data, layout, gridLeft, gridTop),
		...marks,
	);
	return group;
}

/** The usual regimen first, so that the outline of the current one is whole. */
const marksOf = (
	document: Document,
	cell: DesignMapCell,
	place: CellPlace,
	step: number,
): SVGElement[] => [
	...(cell.usual === true ? [usualCell(document, place, step)] : []),
	...(cell.current === true ? [currentCell(document, place, step)] : []),
];
