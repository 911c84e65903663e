import { counted, figureWords, numberWord, threeFigures } from "../../words/index.ts";
import type { ChartOptions } from "../kit/chart.ts";
import { ComparisonChart, type ComparisonWords, sideWords } from "../kit/comparison-chart.ts";
import { textBlock, textWidth, widestText } from "../kit/fitted-text.ts";
import { centred } from "../kit/label-places.ts";
import { markLine } from "../kit/marks.ts";
import { group, levelLine, rect, type Shape, shape, text } from "../kit/shape.ts";
import { labelledTicks, type Scale, tickLines, tickNumbers, valueScale } from "../kit/value-axis.ts";
import { smallLetters, smallPx, textLetters, textPx } from "../theme/letters.ts";

export interface TornadoData {
	/** 'Washes a day, short − long: what the difference rests on'. */
	readonly title: string;
	/** Names of the regimens; the difference is a − b. */
	readonly a: string;
	readonly b: string;
	/** 'mL', 'a day'; '' for a bare count. */
	readonly unit: string;
	/** Most digits after the point of its numbers; by default three figures of the largest. */
	readonly decimals?: number;
	/** The difference with every assumption as it is. */
	readonly base: number;
	/** Any order; they are sorted by reach, the widest at the top. */
	readonly rows: readonly TornadoRow[];
	/** How many are drawn at most, those that turn the verdict first kept; 12 by default. The rest are counted in words. */
	readonly top?: number;
}

interface TornadoRow {
	/** What is assumed: 'rate of breaches of a dry seal'. */
	readonly label: string;
	/** Its value in words: '0.004 /h'. */
	readonly value: string;
	/** The difference at half and at twice the value; null where that setting cannot be run. */
	readonly half: number | null;
	readonly twice: number | null;
	/** The verdict is another one at half or at twice. */
	readonly turns: boolean;
}

/** One measure's difference under each assumption at half and at twice its value: bars from the base, widest first. */
export function tornado(data: TornadoData, document: Document, options: ChartOptions): SVGSVGElement {
	const { base, unit } = data;
	const { rows, left: leftOut } = drawnRows(data);
	const ends = rows.flatMap((row) => [row.half, row.twice]).filter((value) => value !== null);
	const decimals = data.decimals ?? threeFigures([base, ...ends]);
	const chart = new ComparisonChart(options, tornadoWords(data, decimals));
	const { widthPx, isNarrow, headPx } = chart;
	const key = (["half", "twice"] as const).map((setting) => ({
		words: `${signs[setting]}: at ${setting} the value`,
		sample: (x: number, y: number) => bar(setting, x - 10, y - 6, 20),
	}));
	const keyPx = chart.appendKey(key, headPx);
	const labelPx = isNarrow ? null : Math.min(300, widthPx * 0.34);
	const left = labelPx === null ? 2 : labelPx + 14;
	const right = widthPx - 2 - (isNarrow ? 0 : textWidth("turns", textPx) + 14);
	// Room at both ends for '½' and '2×' with their numbers.
	const endWords = ends.map((value) => `${signs.twice} ${figureWords(value, decimals, "")}`);
	const endPx = widestText(endWords, smallPx);
	const x = valueScale([0, base, ...ends], 5, { fromZero: false }).range([left + endPx + 12, right - endPx - 12]);
	let y = headPx + keyPx + 16;
	chart.append(...sideWords(data, { left, right, y }));
	const baseWords = `as assumed: ${figureWords(base, decimals, unit)}`;
	const baseAt = centred(x(base), textWidth(baseWords, smallPx), { left, right }).middle;
	y += 20;
	const ground = group();
	chart.append(text({ class: "small strong", x: baseAt, y, "text-anchor": "middle" }, baseWords), ground);
	y += 6;
	const firstY = y;
	/** Where lines may run down: all the way, or on a narrow page behind the bars only. */
	const spans: (readonly [number, number])[] = [];
	for (const row of rows) {
		const drawn = tornadoRow(row, base, decimals, x, { topPx: y, widthPx, labelPx });
		chart.append(drawn.group);
		if (isNarrow) spans.push([drawn.barTopPx, drawn.bottomPx]);
		y = drawn.bottomPx;
	}
	if (rows.length === 0) {
		chart.append(text({ class: "muted", x: 0, y: y + 18 }, "no assumption was varied"));
		y += 26;
	}
	if (!isNarrow) spans.push([firstY, y]);
	const ticks = labelledTicks(x, isNarrow ? 4 : 6);
	for (const [from, to] of spans)
		ground.append(...tickLines(x, ticks, from, to), markLine(x(0), from, to, true), markLine(x(base), from, to, false));
	chart.append(...tickNumbers(x, ticks, y));
	y += 20;
	if (unit !== "") {
		y += 14;
		chart.append(text({ class: "small muted", x: right, y, "text-anchor": "end" }, unit));
	}
	const rest = textBlock(leftOut, smallLetters, widthPx - 4, 3);
	chart.append(...rest.at({ class: "small muted", x: 0, y: y + 16 }));
	return chart.drawnIn(document, y + rest.heightPx + 6);
}

const defaultTop = 12;

/** How far a row moves the difference, at the most, to nine figures: rounding sorts nothing. */
function reachOf({ half, twice }: TornadoRow, base: number): number {
	const moves = [half, twice].map((value) => (Number.isFinite(value) ? Math.abs(Number(value) - base) : 0));
	return Number(Math.max(...moves).toPrecision(9));
}

/** Rows that are drawn, widest first; rows that turn the verdict are the last to be left out. And what is said of the rest. */
function drawnRows(data: TornadoData): { readonly rows: TornadoRow[]; readonly left: string } {
	const byReach = (a: TornadoRow, b: TornadoRow): number => reachOf(b, data.base) - reachOf(a, data.base);
	const chosen = [...data.rows].sort((a, b) => Number(b.turns) - Number(a.turns) || byReach(a, b));
	const top = data.top ?? defaultTop;
	const rest = chosen.slice(top);
	const rows = chosen.slice(0, top).sort(byReach);
	if (rest.length === 0) return { rows, left: "" };
	const widest = Math.max(...rest.map((row) => reachOf(row, data.base)));
	const moves =
		widest === 0
			? "none of them moves the difference"
			: `none of them moves it by more than ${figureWords(widest, threeFigures([widest]), data.unit)}`;
	const turning = rest.filter((row) => row.turns).length;
	const turn = turning === 0 ? "" : `, but ${numberWord(turning)} of them would turn the verdict`;
	const are = `${counted(rest.length, "assumption")} more ${rest.length === 1 ? "is" : "are"}`;
	return { rows, left: `${are} not drawn: ${moves}${turn}.` };
}

const barsPx = 36;

type RowPlace = { readonly topPx: number; readonly widthPx: number; readonly labelPx: number | null };

/** What is assumed, its bars beside it, and 'turns' at the end; on a narrow page (`labelPx` null) the words stand over the bars. */
function tornadoRow(row: TornadoRow, base: number, decimals: number, x: Scale, place: RowPlace) {
	const { topPx, widthPx, labelPx } = place;
	const isNarrow = labelPx === null;
	const room = labelPx ?? widthPx - 4;
	const turnsInWords = row.turns && isNarrow;
	const label = textBlock(row.label, textLetters, room, 4);
	const value = textBlock(turnsInWords ? `${row.value}; the verdict turns` : row.value, smallLetters, room, 2);
	const textPx = label.heightPx + value.heightPx;
	const barTopPx = isNarrow ? topPx + textPx + 6 : topPx + 2;
	const turns = text({ class: "strong", x: widthPx - 2, y: topPx + 23, "text-anchor": "end" }, "turns");
	const whole = group(
		levelLine("rule", 0, widthPx, topPx),
		...label.at({ x: 0, y: topPx + 16 }),
		...value.at({ class: turnsInWords ? "small strong" : "small muted", x: 0, y: topPx + 15 + label.heightPx }),
		tornadoBars(row, base, x, barTopPx, decimals),
		row.turns && !isNarrow ? turns : null,
	);
	const bottomPx = isNarrow ? barTopPx + barsPx : topPx + Math.max(barsPx + 4, textPx + 10);
	return { group: whole, barTopPx, bottomPx };
}

/** The settings of an assumption, and by which sign each is told from the other. */
const signs = { half: "½", twice: "2×" } as const;

type Setting = keyof typeof signs;

const thickPx = 11;

/** Half is an outline, twice is full. */
function bar(setting: Setting, x: number, y: number, widthPx: number): Shape {
	const width = Math.max(1.5, widthPx);
	if (setting === "twice") return rect("found", { x, y, width, height: thickPx });
	const inner = { x, y: y + 0.75, width, height: thickPx - 1.5 };
	return shape("rect", { class: "found-edge hollow", ...inner, style: "stroke-width:1.5" });
}

/** Both bars of an assumption under each other, each from the base to where its setting leads, sign and number at its end. */
function tornadoBars(row: TornadoRow, base: number, x: Scale, topPx: number, decimals: number): Shape {
	const bars = group();
	const from = x(base);
	const [first = 0, last = 0] = x.range();
	const side = from > (first + last) / 2 ? -1 : 1;
	const label = (className: string, at: number, direction: number, y: number, words: string): Shape => {
		const anchor = direction > 0 ? "start" : "end";
		return text({ class: className, x: at + 5 * direction, y: y + 10, "text-anchor": anchor }, words);
	};
	for (const [setting, y] of [["half", topPx + 3] as const, ["twice", topPx + 20] as const]) {
		const value = row[setting];
		if (value === null || !Number.isFinite(value)) {
			bars.append(label("small muted halo", from, side, y, `${signs[setting]} cannot be run`));
			continue;
		}
		const to = x(value);
		const words = `${signs[setting]} ${figureWords(value, decimals, "")}`;
		bars.append(
			bar(setting, Math.min(from, to), y, Math.abs(to - from)),
			to >= from ? label("small halo", Math.max(to, from + 2), 1, y, words) : label("small halo", to, -1, y, words),
		);
	}
	return bars;
}

/** Title, how to read, and what a reader would see in the bars. */
function tornadoWords(data: TornadoData, decimals: number): ComparisonWords {
	const { rows, left } = drawnRows(data);
	const { a, b } = data;
	const number = (value: number | null): string =>
		value === null ? "cannot be run" : figureWords(value, decimals, data.unit);
	const named = rows.map(
		({ label, value, half, twice, turns }) =>
			`${label} (${value}): ${number(half)} at half, ${number(twice)} at twice${turns ? "; the verdict turns" : ""}.`,
	);
	const turning = data.rows.filter((row) => row.turns).length;
	const found =
		data.rows.length === 0
			? "No assumption was varied."
			: `The difference, ${a} less ${b}, is ${number(data.base)} as assumed. ${turning === 0 ? "No assumption at half or twice its value would turn the verdict." : `${counted(turning, "assumption")} would turn the verdict.`}`;
	return {
		title: data.title,
		legend: `Mean difference, ${a} less ${b}, with one assumption at a time at half and at twice its value. Dashed: no difference.${turning > 0 ? " 'turns': the verdict would be another one." : ""}`,
		description: [found, ...named, left].filter((sentence) => sentence !== "").join(" "),
	};
}
