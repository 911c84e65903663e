import { figureWords } from "../../words/index.ts";
import { comparisonWidthPx } from "../kit/comparison-chart.ts";
import { textWidth, widestText } from "../kit/fitted-text.ts";
import { smallPx } from "../theme/letters.ts";

/** A grid of regimens: columns along one axis, rows along the other, both named by what is varied. */
export interface DesignMapData {
	readonly title: string;
	/** 'dwell'; values in words from left to right: '5 min', '10 min'. */
	readonly x: DesignMapAxis;
	/** 'suction period'; values from the bottom up. */
	readonly y: DesignMapAxis;
	/** In the order of drawing: those of one measure follow each other and share their scale of shades. */
	readonly maps: readonly DesignMapPanel[];
	/** Only these maps are drawn, first and last but one; shades are those of all. */
	readonly only?: readonly [number, number];
	/** Names of the two marked regimens for the key; by default 'the current regimen' and 'the site's usual regimen'. */
	readonly currentName?: string;
	readonly usualName?: string;
	/** What the crossed-out cells break: 'night calls under 0.5'. */
	readonly constraints?: string;
	/** What is best in the efficient cells: 'washes and leaks'. */
	readonly efficientIn?: string;
}

interface DesignMapAxis {
	readonly label: string;
	readonly values: readonly string[];
}

/** One heat map: one measure, at one setting of whatever else is varied. */
export interface DesignMapPanel {
	/** 'Washes'; panels of the same name share their scale. */
	readonly measure: string;
	/** 'a day', 'mL'; '' for a bare count. */
	readonly unit: string;
	/** Digits after the point in the cells. */
	readonly decimals: number;
	/** 'fill 50 mL, depth −125 mmHg'; '' where nothing else is varied. */
	readonly facet: string;
	/** Any order; cells may be missing. */
	readonly cells: readonly DesignMapCell[];
}

export interface DesignMapCell {
	/** Places in the values of the axes, from 0. */
	readonly x: number;
	readonly y: number;
	/** Null where it could not be worked out. */
	readonly value: number | null;
	/** The regimen that the reader has now: a heavy outline with a dot. */
	readonly current?: boolean;
	/** The site's usual one: a diamond. */
	readonly usual?: boolean;
	/** Outside the usual range of the tissue: hatched. */
	readonly outside?: boolean;
	/** Breaks a constraint: crossed out. */
	readonly broken?: boolean;
	/** In the efficient set: a ticked corner. */
	readonly efficient?: boolean;
}

/** Sizes that all maps of a chart share. */
export type MapLayout = ReturnType<typeof mapLayout>;

export interface Range {
	readonly least: number;
	readonly most: number;
}

export const panelGapPx = 28;

/** Cells as wide as their numbers and their names want, as narrow as the page needs. */
export function mapLayout(data: DesignMapData, widthPx: number) {
	const columns = Math.max(1, data.x.values.length);
	const labelPx = Math.min(Math.max(widestText(data.y.values, smallPx), 24) + 8, widthPx * 0.3);
	const wanted = Math.max(40, widestText(data.maps.flatMap(numbersOf), 12) + 8, widestText(data.x.values, smallPx) + 6);
	const cellPx = Math.min(wanted, 72, (widthPx - labelPx - 4) / columns);
	// A map of few columns still has room for its heading.
	const panelPx = Math.max(labelPx + cellPx * columns, Math.min(widthPx, 150));
	return {
		/** Room for the names of the rows. */
		labelPx,
		cellPx,
		rowPx: data.y.values.length > 16 ? 16 : 30,
		panelPx,
		/** Maps beside each other. */
		columns: Math.max(1, Math.floor((widthPx + panelGapPx) / (panelPx + panelGapPx))),
	};
}

const numbersOf = ({ cells, decimals }: DesignMapPanel): string[] =>
	cells.flatMap(({ value }) => (value === null ? [] : [figureWords(value, decimals, "")]));

/** Smaller ones would not be read on paper. */
const numberSizes = [12, 11.5];

/** Size at which every number of a map fits its cell, or null where that would be too small to read. */
export function mapNumberSize(map: DesignMapPanel, layout: MapLayout): number | null {
	if (layout.rowPx < 15) return null;
	const numbers = numbersOf(map);
	const fits = (size: number): boolean => numbers.every((number) => textWidth(number, size) <= layout.cellPx - 5);
	return numberSizes.find(fits) ?? null;
}

/** Most of a page of paper that maps take beside their key, px of the usual grid. */
const mostPagePx = 950;
const aroundMapPx = 150;

/** How many maps, beside and under each other, a page of paper holds at the usual width. */
export function mapsAPage(data: DesignMapData): number {
	const { columns, rowPx } = mapLayout(data, comparisonWidthPx);
	const mapPx = aroundMapPx + data.y.values.length * rowPx;
	return columns * Math.max(1, Math.floor(mostPagePx / mapPx));
}

/** Ranges of all measures, each over all its maps. */
export function measureRanges(maps: readonly DesignMapPanel[]): ReadonlyMap<string, Range> {
	const ranges = new Map<string, Range>();
	for (const map of maps)
		for (const { value } of map.cells) {
			if (value === null || !Number.isFinite(value)) continue;
			const range = ranges.get(map.measure) ?? { least: value, most: value };
			ranges.set(map.measure, { least: Math.min(range.least, value), most: Math.max(range.most, value) });
		}
	return ranges;
}

/** Maps in rows: those of one measure together where it has several, a new row for each measure then. */
export function mapRows(maps: readonly DesignMapPanel[], columns: number): DesignMapPanel[][] {
	const names = [...new Set(maps.map((map) => map.measure))];
	const groups =
		names.length === maps.length ? [[...maps]] : names.map((name) => maps.filter((map) => map.measure === name));
	return groups.flatMap((group) => {
		const rows: DesignMapPanel[][] = [];
		for (let from = 0; from < group.length; from += columns) rows.push(group.slice(from, from + columns));
		return rows;
	});
}
