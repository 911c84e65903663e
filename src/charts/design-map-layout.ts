import type { DesignMapData, DesignMapPanel } from "./design-map.ts";
import { figureWords } from "./figures.ts";
import { textWidth } from "./text-width.ts";

/** Sizes that all maps of a chart share. */
export interface MapLayout {
	/** Room for the names of the rows. */
	readonly labelPx: number;
	readonly cellPx: number;
	readonly rowPx: number;
	readonly panelPx: number;
	/** Maps beside each other. */
	readonly columns: number;
}

export const panelGapPx = 28;

/** Cells as wide as their numbers and their names want, as narrow as the page needs. */
export function mapLayout(data: DesignMapData, widthPx: number): MapLayout {
	const columns = Math.max(1, data.x.values.length);
	const labelPx = Math.min(
		Math.max(...data.y.values.map((value) => textWidth(value, 11.5)), 24) + 8,
		widthPx * 0.3,
	);
	const numbers = data.maps.flatMap((map) =>
		map.cells.map((cell) =>
			cell.value === null
				? 0
				: textWidth(figureWords(cell.value, map.decimals, ""), 12),
		),
	);
	const wanted = Math.max(
		40,
		numbers.reduce((most, wide) => Math.max(most, wide), 0) + 8,
		...data.x.values.map((value) => textWidth(value, 11.5) + 6),
	);
	const cellPx = Math.min(wanted, 72, (widthPx - labelPx - 4) / columns);
	// A map of few columns still has room for its heading.
	const panelPx = Math.max(labelPx + cellPx * columns, Math.min(widthPx, 150));
	return {
		labelPx,
		cellPx,
		rowPx: data.y.values.length > 16 ? 16 : 30,
		panelPx,
		columns: Math.max(
			1,
			Math.floor((widthPx + panelGapPx) / (panelPx + panelGapPx)),
		),
	};
}

/** Smaller ones would not be read on paper. */
const numberSizes = [12, 11.5];

/** Size at which every number of a map fits its cell, or null where that would be too small to read. */
export function mapNumberSize(
	map: DesignMapPanel,
	layout: MapLayout,
): number | null {
	if (layout.rowPx < 15) return null;
	const numbers = map.cells.flatMap(({ value }) =>
		value === null ? [] : [figureWords(value, map.decimals, "")],
	);
	const fits = (size: number): boolean =>
		numbers.every((number) => textWidth(number, size) <= layout.cellPx - 5);
	return numberSizes.find(fits) ?? null;
}

/** Most of a page of paper that maps take beside their key, px of a grid of 900. */
const mostPagePx = 950;
const aroundMapPx = 150;

/** How many maps, beside and under each other, a page of paper holds at the usual width. */
export function mapsAPage(data: DesignMapData): number {
	const { columns, rowPx } = mapLayout(data, 900);
	const mapPx = aroundMapPx + data.y.values.length * rowPx;
	return columns * Math.max(1, Math.floor(mostPagePx / mapPx));
}

/** Every how many names are written, so that none touches the next. */
export const everyNth = (widestPx: number, stepPx: number): number =>
	Math.max(1, Math.ceil((widestPx + 4) / stepPx));

/** Least and most of each measure over all its maps. */
export function measureRanges(
	maps: readonly DesignMapPanel[],
): ReadonlyMap<string, { readonly least: number; readonly most: number }> {
	const ranges = new Map<string, { least: number; most: number }>();
	for (const map of maps)
		for (const { value } of map.cells) {
			if (value === null || !Number.isFinite(value)) continue;
			const range = ranges.get(map.measure) ?? { least: value, most: value };
			ranges.set(map.measure, {
				least: Math.min(range.least, value),
				most: Math.max(range.most, value),
			});
		}
	return ranges;
}

/** Maps in rows: those of one measure together where it has several, a new row for each measure then. */
export function mapRows(
	maps: readonly DesignMapPanel[],
	columns: number,
): DesignMapPanel[][] {
	const names = [...new Set(maps.map((map) => map.measure))];
	const groups =
		names.length === maps.length
			? [[...maps]]
			: names.map((name) => maps.filter((map) => map.measure === name));
	return groups.flatMap((group) => {
		const rows: DesignMapPanel[][] = [];
		for (let from = 0; from < group.length; from += columns)
			rows.push(group.slice(from, from + columns));
		return rows;
	});
}
