import { figureWords, measureHeading } from "../../words/index.ts";
import { fittedText, textBlock, textWidth, widestText } from "../kit/fitted-text.ts";
import { group, type Shape, text } from "../kit/shape.ts";
import { everyNth } from "../kit/value-axis.ts";
import { smallLetters, smallPx, textLetters } from "../theme/letters.ts";
import { shadeStep } from "../theme/palette.ts";
import { emptyCell, mapCell, regimenMarks } from "./cell.ts";
import { type DesignMapData, type DesignMapPanel, type MapLayout, mapNumberSize, type Range } from "./layout.ts";

/** A map with what stands over it, heading, facet and range, in lines that fit its width. */
export function headedMap(map: DesignMapPanel, range: Range | undefined, layout: MapLayout) {
	const numberPx = mapNumberSize(map, layout);
	const heading = textBlock(measureHeading(map.measure, map.unit), textLetters, layout.panelPx, 3);
	const note = (words: string) => textBlock(words, smallLetters, layout.panelPx, 3);
	const notes = [...(map.facet === "" ? [] : [note(map.facet)]), note(rangeWords(map, range, numberPx))];
	const headPx = notes.reduce((sum, one) => sum + one.heightPx, heading.heightPx);
	return { map, range, numberPx, heading, notes, headPx };
}

function rangeWords(map: DesignMapPanel, range: Range | undefined, numberPx: number | null): string {
	if (range === undefined) return "no values";
	const [least, most] = [range.least, range.most].map((value) => figureWords(value, map.decimals, ""));
	const scale = range.least === range.most ? `all ${least}` : `from ${least} to ${most}`;
	return numberPx === null ? `${scale}; no room for numbers in the cells` : scale;
}

/** One heat map with its heading and the names of its columns and rows. Heads of one row of maps are as high as the highest. */
export function mapPanel(
	data: DesignMapData,
	{ map, range, numberPx, heading, notes }: ReturnType<typeof headedMap>,
	layout: MapLayout,
	place: { readonly leftPx: number; readonly topPx: number; readonly headPx: number; readonly hatchId: string },
): Shape {
	const { leftPx, topPx } = place;
	const gridLeft = leftPx + layout.labelPx;
	const gridTop = topPx + place.headPx + 18;
	const rows = data.y.values.length;
	const panel = group(...heading.at({ class: "heading", x: leftPx, y: topPx + 13 }));
	let noteY = topPx + 12 + heading.heightPx;
	for (const note of notes) {
		panel.append(...note.at({ class: "small muted", x: leftPx, y: noteY }));
		noteY += note.heightPx;
	}
	const yName = fittedText(data.y.label, smallPx, layout.panelPx);
	panel.append(text({ class: "small muted", x: leftPx, y: gridTop - 5 }, yName));
	const cells = new Map(map.cells.map((cell) => [`${cell.x},${cell.y}`, cell]));
	const marks: Shape[] = [];
	for (let y = 0; y < rows; y++)
		for (let x = 0; x < data.x.values.length; x++) {
			const cell = cells.get(`${x},${y}`);
			const value = range === undefined ? null : (cell?.value ?? null);
			const at = {
				x: gridLeft + x * layout.cellPx,
				y: gridTop + (rows - 1 - y) * layout.rowPx,
				width: layout.cellPx,
				height: layout.rowPx,
				step: value === null || range === undefined ? 0 : shadeStep(value, range.least, range.most),
			};
			if (cell === undefined || value === null) panel.append(emptyCell(at));
			else {
				const where = `${data.x.label} ${data.x.values[x] ?? ""}, ${data.y.label} ${data.y.values[y] ?? ""}`;
				const words = `${where}: ${figureWords(value, map.decimals, map.unit)}`;
				const number = numberPx === null ? null : { words: figureWords(value, map.decimals, ""), sizePx: numberPx };
				panel.append(mapCell(cell, at, place.hatchId, words, number));
			}
			if (cell !== undefined) marks.push(...regimenMarks(cell, at));
		}
	panel.append(...axisNames(data, layout, gridLeft, gridTop), ...marks);
	return panel;
}

/** Names of rows at the left, of columns below, every second or third where they are dense; what varies across under them. */
function axisNames(data: DesignMapData, layout: MapLayout, gridLeft: number, gridTop: number): Shape[] {
	const { labelPx, cellPx, rowPx } = layout;
	const rows = data.y.values.length;
	const bottom = gridTop + rows * rowPx;
	const widest = widestText(data.x.values, smallPx);
	const acrossPx = cellPx * data.x.values.length;
	const nth = everyNth(Math.min(widest, acrossPx) + 4, cellPx);
	const name = (className: string, x: number, y: number, anchor: string, words: string, roomPx: number) =>
		text({ class: className, x, y, "text-anchor": anchor }, fittedText(words, smallPx, roomPx));
	const { label } = data.x;
	const titleY = bottom + 30;
	return [
		...data.y.values.map((value, index) =>
			name("small", gridLeft - 6, gridTop + (rows - 0.5 - index) * rowPx + 4, "end", value, labelPx - 6),
		),
		...data.x.values.flatMap((value, index) => {
			const middle = gridLeft + (index + 0.5) * cellPx;
			return index % nth === 0
				? [name("small", middle, bottom + 14, "middle", value, Math.max(cellPx * nth - 4, 12))]
				: [];
		}),
		// Under the end of the columns, or from the left edge of the map where it is longer than the map is wide.
		textWidth(label, smallPx) <= gridLeft + acrossPx - (gridLeft - labelPx)
			? name("small muted", gridLeft + acrossPx, titleY, "end", label, layout.panelPx)
			: name("small muted", gridLeft - labelPx, titleY, "start", label, layout.panelPx),
	];
}
