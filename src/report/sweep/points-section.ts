import type { SweepAxis, SweepMark, SweepPoint, SweepResult, SweepValue } from "../../results/index.ts";
import type { MeasureName } from "../../vocabulary/index.ts";
import {
	counted,
	decimalsFor,
	measureHeading,
	measureWords,
	plainNumber,
	scaleOf,
	unitWords,
} from "../../words/index.ts";
import { chapter, details, type HtmlMaker, plainList, unbroken } from "../kit/html-element.ts";
import { type Column, htmlTable, shownNumber } from "../kit/table.ts";
import {
	axisValueWords,
	axisWords,
	countedPoints,
	markNames,
	markValueWords,
	markWords,
	namedPoints,
} from "./sweep-words.ts";

const mostNamed = 6;
const mostPoints = 200;

/** Why points lie outside common practice, each reason once with the regimens it concerns. */
export function outsideSection(html: HtmlMaker, result: SweepResult): HTMLElement | null {
	const reasons = [...new Set(result.points.flatMap(({ outside }) => outside))];
	if (reasons.length === 0) return null;
	const items = reasons.map((reason) => {
		const points = result.points.filter(({ outside }) => outside.includes(reason));
		return `${reason} (${countedPoints(result, points.length)}: ${namedPoints(result.axes, points, mostNamed)})`;
	});
	const words =
		"These were run all the same, so that the map has no holes. That they are drawn is no advice to use them: check the prescription, the maker's instructions and local policy.";
	return chapter(html, "outside", "Outside common practice", words, plainList(html, items));
}

/** All points in a table that is folded away; the first of them where the grid is large. */
export function pointsSection(html: HtmlMaker, result: SweepResult): HTMLElement {
	const { points } = result;
	const shown = points.slice(0, mostPoints);
	const first = ` The first ${mostPoints} of ${points.length}; points.csv and values.csv hold all.`;
	const cut = shown.length < points.length ? first : "";
	const summary = `${countedPoints(result, shown.length)} in ${counted(result.measures.length, "measure")}`;
	const caption = `Means with their 95 % half-width (±), and the difference from the current regimen with its 95 % interval.${cut}`;
	const of = { id: "all-points", caption, points: shown, measures: result.measures, marks: true };
	return chapter(html, "points", "Every point of the grid", details(html, summary, pointsTable(html, result, of)));
}

type Row = SweepPoint | SweepMark;

const isMark = (row: Row): row is SweepMark => "mark" in row;

interface PointsTable {
	readonly id: string;
	readonly caption: string;
	readonly points: readonly SweepPoint[];
	readonly measures: readonly MeasureName[];
	/** Whether the marked regimens follow, on the grid or not. */
	readonly marks?: boolean;
}

/** Some points of the grid with what they come to, and how far that is from the current regimen. */
export function pointsTable(html: HtmlMaker, result: SweepResult, table: PointsTable): HTMLElement {
	const { measures, points } = table;
	const isApart = ({ point }: SweepMark) => point === null || !points.includes(result.points[point]);
	const marks = table.marks ? result.marks.filter(isApart) : [];
	const columns: Column<Row>[] = [
		...result.axes.map((axis, index) => axisColumn(axis, index)),
		{ head: "Remarks", written: (row, make) => remark(row, make) },
		...measures.flatMap((measure) => measureColumns(measure, unitWords(measure, scaleOf(result)))),
	];
	return htmlTable<Row>(html, table, columns, [...points, ...marks]);
}

const axisColumn = (axis: SweepAxis, index: number): Column<Row> => ({
	head: axisWords[axis.name].label,
	written: (row) => unbroken(isMark(row) ? markValueWords(row, axis) : axisValueWords(axis.name, row.at[index] ?? 0)),
});

/** A measure as it is, and against the current regimen. */
function measureColumns(measure: MeasureName, unit: string): Column<Row>[] {
	const column = (head: string, words: (measure: MeasureName, value: SweepValue) => string): Column<Row> =>
		shownNumber(head, ({ measures: { [measure]: value } }) => (value === undefined ? "" : words(measure, value)));
	const heading = measureHeading(measureWords[measure].label, unit);
	return [column(heading, valueWords), column("against now", differenceWords)];
}

function remark(row: Row, html: HtmlMaker): Node | string {
	const text = isMark(row) ? `${markNames[row.mark]}: ${markWords(row)}` : pointRemarks(row);
	return text === "" ? "" : html("span", { class: "remark" }, text);
}

const pointRemarks = (point: SweepPoint): string =>
	[
		...(point.current ? [markNames.current] : []),
		...(point.usual ? [markNames.usual] : []),
		...(point.kept ? [] : ["breaks a limit"]),
		...(point.outside.length > 0 ? ["outside common practice"] : []),
	].join("; ");

/** '11.4 ± 0.1'. */
function valueWords(measure: MeasureName, value: SweepValue): string {
	const { halfWidth95: half } = value;
	const decimals = decimalsFor(measure, half);
	const mean = plainNumber(value.mean, decimals);
	return half === null || half === 0 ? mean : `${mean} ± ${plainNumber(half, decimals)}`;
}

/** '+1.2 (1.1 to 1.3)': how far from the current regimen. */
function differenceWords(measure: MeasureName, value: SweepValue): string {
	const { difference, differenceHalfWidth95: half } = value;
	const decimals = decimalsFor(measure, half);
	const number = (one: number): string => plainNumber(one, decimals);
	const text = number(difference);
	const signed = difference > 0 && text !== "0" ? `+${text}` : text;
	if (half === null || half === 0) return signed;
	return `${signed} (${number(difference - half)} to ${number(difference + half)})`;
}
