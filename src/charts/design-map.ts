import { chartKey } from "./chart-key.ts";
import { type ChartOptions, setSize } from "./chart-root.ts";
import { comparisonRoot } from "./comparison-root.ts";
import { mapHatching } from "./design-map-cell.ts";
import { designMapKey } from "./design-map-key.ts";
import {
	mapLayout,
	mapRows,
	measureRanges,
	panelGapPx,
} from "./design-map-layout.ts";
import { mapPanel, panelHead } from "./design-map-panel.ts";
import { designMapWords } from "./design-map-words.ts";
import { svgElement } from "./svg-element.ts";
import { smallLinePx, textLinePx } from "./wrapped-text.ts";

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

/** Small multiples: a heat map for each measure and facet, stronger shade for more, the number in the cell where it fits. */
export function designMap(
	data: DesignMapData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? 900;
	const { root, headPx } = comparisonRoot(
		document,
		options,
		widthPx,
		designMapWords(data),
	);
	const hatchId = `${options.idPrefix}-hatch`;
	root.append(mapHatching(document, hatchId));
	const key = chartKey(document, designMapKey(data, document, hatchId), {
		leftPx: 0,
		topPx: headPx + 2,
		roomPx: widthPx,
	});
	root.append(key.group);
	let y = headPx + key.heightPx + 14;
	const empty =
		data.maps.length === 0 ||
		data.x.values.length === 0 ||
		data.y.values.length === 0;
	if (empty)
		root.append(
			svgElement(
				document,
				"text",
				{ class: "muted", x: 0, y: y + 8 },
				"no measure differs between the regimens that were run",
			),
		);
	const layout = mapLayout(data, widthPx);
	const ranges = measureRanges(data.maps);
	const drawn = data.maps.slice(...(data.only ?? []));
	for (const row of empty ? [] : mapRows(drawn, layout.columns)) {
		const heads = row.map((map) => {
			const head = panelHead(map, ranges.get(map.measure), layout);
			return head.heading.length * textLinePx + head.notes.length * smallLinePx;
		});
		const tallest = Math.max(...heads);
		row.forEach((map, index) => {
			root.append(
				mapPanel(document, data, map, layout, {
					range: ranges.get(map.measure),
					leftPx: index * (layout.panelPx + panelGapPx),
					topPx: y,
					headPx: tallest,
					hatchId,
				}),
			);
		});
		y += tallest + 18 + data.y.values.length * layout.rowPx + 30 + 22;
	}
	setSize(root, widthPx, empty ? y + 18 : y);
	return root;
}
