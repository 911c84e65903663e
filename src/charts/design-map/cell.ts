import type { KeyItem } from "../kit/comparison-chart.ts";
import { cellNumber, diamondPath, hatchPattern, hatchStroke, heavyOutline, markWords } from "../kit/marks.ts";
import { circle, group, path, rect, type Shape, type Sides, shape, tooltip } from "../kit/shape.ts";
import type { DesignMapCell, DesignMapData } from "./layout.ts";

/** Where a cell stands, and which shade it has. */
export type CellPlace = Sides & { readonly step: number };

export type CellMarks = Omit<DesignMapCell, "x" | "y" | "value">;

/** Cells with no corners to put a mark in. */
const isSmall = ({ width, height }: Sides): boolean => width < 24 || height < 22;

/** Shade, hatching, cross and corner of a cell, and its number. The marks of the two regimens are drawn over all cells. */
export function mapCell(
	cell: CellMarks,
	place: CellPlace,
	hatchId: string,
	words: string,
	/** Null where the numbers of the map do not fit. */
	number: { readonly words: string; readonly sizePx: number } | null,
): Shape {
	const { x, y, width: w, height: h, step } = place;
	const ink = `shade${step}-text`;
	const inner = { x: x + 0.5, y: y + 0.5, width: w - 1, height: h - 1 };
	const drawn = group(tooltip(words), rect(`shade${step}`, inner));
	if (cell.outside === true)
		drawn.append(shape("rect", { fill: `url(#${hatchId}-${step < 5 ? "low" : "high"})`, ...inner }));
	if (cell.broken === true) {
		const [left, right] = [(x + 2).toFixed(2), (x + w - 2).toFixed(2)];
		const cross = `M${left},${y + 2}L${right},${y + h - 2}M${right},${y + 2}L${left},${y + h - 2}`;
		drawn.append(shape("path", { class: `shade${step}-stroke light`, fill: "none", d: cross }));
	}
	if (cell.efficient === true) {
		const side = Math.min(9, w / 3, h / 2);
		const right = (x + w - 1).toFixed(2);
		drawn.append(path(ink, `M${right},${y + 1}h${-side}L${right},${(y + 1 + side).toFixed(2)}Z`));
	}
	// In a small cell a mark takes the place of the number.
	const covered = isSmall(place) && (cell.current === true || cell.usual === true);
	if (number !== null && !covered) drawn.append(cellNumber(number.words, ink, x + w / 2, y + h / 2, number.sizePx));
	return drawn;
}

/** Marks of the two regimens; the usual one first, so that the outline of the current one is whole. */
export const regimenMarks = (cell: CellMarks, place: CellPlace): Shape[] => [
	...(cell.usual === true ? [usualCell(place)] : []),
	...(cell.current === true ? [currentCell(place)] : []),
];

function currentCell({ step, ...box }: CellPlace): Shape {
	const { x, y, width, height } = box;
	const ink = `shade${step}-text`;
	const dot = isSmall(box)
		? circle(ink, x + width / 2, y + height / 2, Math.min(3, width / 4))
		: circle(ink, x + 7, y + height - 6.5, 3.2);
	return group(...heavyOutline(box, 5.5, 2.8), dot);
}

function usualCell(place: CellPlace): Shape {
	const { x, y, width, height, step } = place;
	const diamond = isSmall(place)
		? diamondPath(x + width / 2, y + height / 2, Math.min(4, width / 2 - 1))
		: diamondPath(x + width - 8, y + height - 7, 4.6);
	return path(`shade${step}-text`, diamond);
}

export const emptyCell = ({ x, y, width, height }: Sides): Shape =>
	rect("rule absent", { x: x + 2, y: y + 2, width: Math.max(1, width - 4), height: Math.max(1, height - 4) });

/** Hatching for pale and for strong shades, each in the colour of text on them. */
export function mapHatching(id: string): Shape {
	const pale = hatchPattern(`${id}-low`, 5, hatchStroke("shade0-stroke light", 5));
	return shape("defs", {}, pale, hatchPattern(`${id}-high`, 5, hatchStroke("shade6-stroke light", 5)));
}

/** What the marks mean, those that occur. */
export function designMapKey(data: DesignMapData, hatchId: string): (KeyItem | null)[] {
	const cells = data.maps.flatMap((map) => map.cells);
	const place = (x: number, y: number) => ({ x: x - 11, y: y - 9, width: 20, height: 16, step: 1 });
	const sample = (mark: keyof CellMarks, x: number, y: number): Shape => {
		const cell = mapCell({ [mark]: true }, place(x, y), hatchId, "", null);
		const over = regimenMarks({ [mark]: true }, place(x, y));
		return over.length === 0 ? cell : group(cell, ...over);
	};
	const item = (mark: keyof CellMarks, words: string): KeyItem | null =>
		cells.some((cell) => cell[mark] === true) ? { words, sample: (x, y) => sample(mark, x, y) } : null;
	const whole = data.x.values.length * data.y.values.length;
	const missing = data.maps.some((map) => map.cells.filter((cell) => cell.value !== null).length < whole);
	const { efficientIn = "one measure", constraints } = data;
	return [
		item("current", data.currentName ?? markWords.current),
		item("usual", data.usualName ?? markWords.usual),
		item("efficient", `no other regimen betters it in ${efficientIn} without being worse elsewhere`),
		item("outside", "outside the usual range of the tissue"),
		item("broken", constraints === undefined ? "breaks a limit" : `does not keep: ${constraints}`),
		missing ? { words: "not run", sample: (x, y) => emptyCell(place(x, y)) } : null,
	];
}
