import { figureWords, measureHeading, numberWord } from "../../words/index.ts";
import type { ChartOptions } from "../kit/chart.ts";
import { ComparisonChart, type ComparisonWords } from "../kit/comparison-chart.ts";
import { markWords } from "../kit/marks.ts";
import { text } from "../kit/shape.ts";
import { designMapKey, mapHatching } from "./cell.ts";
import type { DesignMapCell, DesignMapData, DesignMapPanel } from "./layout.ts";
import { mapLayout, mapRows, measureRanges, panelGapPx } from "./layout.ts";
import { headedMap, mapPanel } from "./panel.ts";

/** Small multiples: a heat map for each measure and facet, stronger shade for more, the number in the cell where it fits. */
export function designMap(data: DesignMapData, document: Document, options: ChartOptions): SVGSVGElement {
	const chart = new ComparisonChart(options, designMapWords(data));
	const { widthPx, headPx } = chart;
	const hatchId = `${options.idPrefix}-hatch`;
	chart.append(mapHatching(hatchId));
	let y = headPx + chart.appendKey(designMapKey(data, hatchId), headPx + 2) + 14;
	if (data.maps.length === 0 || data.x.values.length === 0 || data.y.values.length === 0) {
		chart.append(text({ class: "muted", x: 0, y: y + 8 }, "no measure differs between the regimens that were run"));
		return chart.drawnIn(document, y + 18);
	}
	const layout = mapLayout(data, widthPx);
	const ranges = measureRanges(data.maps);
	for (const row of mapRows(data.maps.slice(...(data.only ?? [])), layout.columns)) {
		const headed = row.map((map) => headedMap(map, ranges.get(map.measure), layout));
		const tallest = Math.max(...headed.map((map) => map.headPx));
		for (const [index, map] of headed.entries()) {
			const leftPx = index * (layout.panelPx + panelGapPx);
			chart.append(mapPanel(data, map, layout, { leftPx, topPx: y, headPx: tallest, hatchId }));
		}
		y += tallest + 18 + data.y.values.length * layout.rowPx + 30 + 22;
	}
	return chart.drawnIn(document, y);
}

const mostNamed = 8;

/** Title, how to read, and what a reader would see in the maps. */
function designMapWords(data: DesignMapData): ComparisonWords {
	const named = data.maps.slice(0, mostNamed).map((map) => mapWords(data, map));
	const more = data.maps.length > mostNamed ? ` And ${numberWord(data.maps.length - mostNamed)} more maps.` : "";
	return {
		title: data.title,
		legend: "Each cell is a regimen. The stronger its shade, the larger the number; each measure has its own scale.",
		description:
			data.maps.length === 0
				? "No measure differs between the regimens that were run."
				: `${data.x.label} across, ${data.y.label} upwards. ${named.join(" ")}${more}`,
	};
}

function mapWords(data: DesignMapData, map: DesignMapPanel): string {
	const heading = measureHeading(map.measure, map.unit);
	const name = map.facet === "" ? heading : `${heading} (${map.facet})`;
	const valued = map.cells.filter((cell): cell is DesignMapCell & { value: number } => cell.value !== null);
	const [first] = valued;
	if (first === undefined) return `${name}: no values.`;
	const least = valued.reduce((a, b) => (b.value < a.value ? b : a), first);
	const most = valued.reduce((a, b) => (b.value > a.value ? b : a), first);
	const at = (cell: DesignMapCell): string => `${data.x.values[cell.x] ?? "?"} and ${data.y.values[cell.y] ?? "?"}`;
	const number = (value: number): string => figureWords(value, map.decimals, "");
	const marked = [
		[data.currentName ?? markWords.current, valued.find((cell) => cell.current)],
		[data.usualName ?? markWords.usual, valued.find((cell) => cell.usual)],
	] as const;
	const marks = marked.flatMap(([words, cell]) => (cell === undefined ? [] : [`${words} ${number(cell.value)}`]));
	const range =
		least.value === most.value
			? `${number(least.value)} everywhere`
			: `from ${number(least.value)} at ${at(least)} to ${number(most.value)} at ${at(most)}`;
	return `${name}: ${[range, ...marks].join("; ")}.`;
}
