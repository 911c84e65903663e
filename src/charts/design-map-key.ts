import type { KeyItem } from "./chart-key.ts";
import type { DesignMapCell, DesignMapData } from "./design-map.ts";
import { type CellPlace, mapCell } from "./design-map-cell.ts";
import { currentCell, emptyCell, usualCell } from "./design-map-marks.ts";
import { currentWords, usualWords } from "./regimen-mark.ts";
import { svgElement } from "./svg-element.ts";

/** What the marks mean, those that occur. */
export function designMapKey(
	data: DesignMapData,
	document: Document,
	hatchId: string,
): KeyItem[] {
	const cells = data.maps.flatMap((map) => map.cells);
	const has = (mark: (cell: DesignMapCell) => boolean | undefined): boolean =>
		cells.some((cell) => mark(cell) === true);
	const place = (x: number, y: number): CellPlace => ({
		x: x - 11,
		y: y - 9,
		widthPx: 20,
		heightPx: 16,
	});
	const sample =
		(marks: Partial<DesignMapCell>, over?: typeof currentCell) =>
		(x: number, y: number): SVGGElement => {
			const ground = mapCell(
				document,
				{ value: 0, ...marks },
				{
					place: place(x, y),
					step: 1,
					number: "",
					sizePx: null,
					words: "",
					hatchId,
				},
			);
			if (over === undefined) return ground;
			return svgElement(
				document,
				"g",
				{},
				ground,
				over(document, place(x, y), 1),
			);
		};
	const whole = data.x.values.length * data.y.values.length;
	const missing = data.maps.some(
		(map) => map.cells.filter((cell) => cell.value !== null).length < whole,
	);
	const items: (KeyItem | null)[] = [
		has((cell) => cell.current)
			? {
					words: data.currentName ?? currentWords,
					sample: sample({}, currentCell),
				}
			: null,
		has((cell) => cell.usual)
			? {
					words: data.usualName ?? usualWords,
					sample: (x, y) =>
						svgElement(
							document,
							"g",
							{},
							sample({})(x, y),
							usualCell(document, place(x, y), 1),
						),
				}
			: null,
		has((cell) => cell.efficient)
			? {
					words: `no other regimen betters it in ${data.efficientIn ?? "one measure"} without being worse elsewhere`,
					sample: sample({ efficient: true }),
				}
			: null,
		has((cell) => cell.outside)
			? {
					words: "outside the usual range of the tissue",
					sample: sample({ outside: true }),
				}
			: null,
		has((cell) => cell.broken)
			? {
					words:
						data.constraints === undefined
							? "breaks a limit"
							: `does not keep: ${data.constraints}`,
					sample: sample({ broken: true }),
				}
			: null,
		missing
			? {
					words: "not run",
					sample: (x, y) => emptyCell(document, place(x, y)),
				}
			: null,
	];
	return items.filter((item) => item !== null);
}
