import type { MeasureName } from "../analysis/measures.ts";
import type {
	SweepPoint,
	SweepResult,
	SweepValues,
} from "../analysis/sweep-result.ts";
import { htmlElement, htmlTable, unbroken } from "./html-element.ts";
import { unitWords } from "./measure-number.ts";
import { measureWords } from "./measure-words.ts";
import { differenceWords, sweepScale, valueWords } from "./sweep-parts.ts";
import {
	axisValueWords,
	axisWords,
	markNames,
	markValueWords,
	markWords,
} from "./sweep-words.ts";

/** Some points of the grid with what they come to, and how far that is from the current regimen. */
export function pointsTable(
	result: SweepResult,
	table: {
		readonly id: string;
		readonly caption: string;
		readonly points: readonly SweepPoint[];
		readonly measures: readonly MeasureName[];
		/** Whether the marked regimens follow, on the grid or not. */
		readonly marks?: boolean;
	},
	document: Document,
): HTMLElement {
	const scale = sweepScale(result);
	const { measures, points } = table;
	const cells = (values: SweepValues): string[] =>
		measures.flatMap((measure) => {
			const value = values.measures[measure];
			return value === undefined
				? ["", ""]
				: [valueWords(measure, value), differenceWords(measure, value)];
		});
	const remark = (text: string): Node | string =>
		text === "" ? "" : htmlElement(document, "span", { class: "remark" }, text);
	const marks =
		table.marks === true
			? result.marks.filter(
					({ point }) =>
						point === null ||
						!points.some((listed) => listed === result.points[point]),
				)
			: [];
	return htmlTable(document, {
		id: table.id,
		caption: table.caption,
		columns: [
			...result.axes.map(({ name }) => ({ heading: axisWords[name].label })),
			{ heading: "Remarks" },
			...measures.flatMap((measure) => {
				const unit = unitWords(measure, scale);
				return [
					{
						heading: `${measureWords[measure].label}${unit === "" ? "" : `, ${unit}`}`,
						numeric: true,
					},
					{ heading: "against now", numeric: true },
				];
			}),
		],
		rows: [
			...points.map((point) => [
				...result.axes.map(({ name }, index) =>
					unbroken(axisValueWords(name, point.at[index] ?? 0)),
				),
				remark(remarks(point)),
				...cells(point),
			]),
			...marks.map((mark) => [
				...result.axes.map((axis) => unbroken(markValueWords(mark, axis))),
				remark(`${markNames[mark.mark]}: ${markWords(mark)}`),
				...cells(mark),
			]),
		],
	});
}

const remarks = (point: SweepPoint): string =>
	[
		...(point.current ? [markNames.current] : []),
		...(point.usual ? [markNames.usual] : []),
		...(point.kept ? [] : ["breaks a limit"]),
		...(point.outside.length > 0 ? ["outside common practice"] : []),
	].join("; ");
