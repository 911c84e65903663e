import { figureWords, threeFigures } from "./figures.ts";
import { counted, numberWord } from "./quantity.ts";
import type { TornadoData, TornadoRow } from "./tornado.ts";

const defaultTop = 12;

/** How far a row moves the difference, at the most, to nine figures: rounding sorts nothing. */
const reachOf = (row: TornadoRow, base: number): number =>
	Number(
		Math.max(
			...[row.half, row.twice].map((value) =>
				value === null || !Number.isFinite(value) ? 0 : Math.abs(value - base),
			),
		).toPrecision(9),
	);

/** Rows that are drawn, widest first; rows that turn the verdict are the last to be left out. And what is said of the rest. */
export function drawnRows(data: TornadoData): {
	readonly rows: TornadoRow[];
	readonly left: string;
} {
	const byReach = (a: TornadoRow, b: TornadoRow): number =>
		reachOf(b, data.base) - reachOf(a, data.base);
	const chosen = [...data.rows].sort(
		(a, b) => Number(b.turns) - Number(a.turns) || byReach(a, b),
	);
	const top = data.top ?? defaultTop;
	const rest = chosen.slice(top);
	const widest = rest.reduce(
		(most, row) => Math.max(most, reachOf(row, data.base)),
		0,
	);
	const turning = rest.filter((row) => row.turns).length;
	const left =
		rest.length === 0
			? ""
			: `${counted(rest.length, "assumption")} more ${rest.length === 1 ? "is" : "are"} not drawn: ${widest === 0 ? "none of them moves the difference" : `none of them moves it by more than ${figureWords(widest, threeFigures([widest]), data.unit)}`}${turning === 0 ? "" : `, but ${numberWord(turning)} of them would turn the verdict`}.`;
	return { rows: chosen.slice(0, top).sort(byReach), left };
}

/** Title, how to read, and what a reader would see in the bars. */
export function tornadoWords(
	data: TornadoData,
	decimals: number,
): {
	readonly title: string;
	readonly legend: string;
	readonly description: string;
} {
	const { rows, left } = drawnRows(data);
	const number = (value: number | null): string =>
		value === null ? "cannot be run" : figureWords(value, decimals, data.unit);
	const named = rows.map(
		(row) =>
			`${row.label} (${row.value}): ${number(row.half)} at half, ${number(row.twice)} at twice${row.turns ? "; the verdict turns" : ""}.`,
	);
	const turning = data.rows.filter((row) => row.turns).length;
	const found =
		data.rows.length === 0
			? "No assumption was varied."
			: `The difference, ${data.a} less ${data.b}, is ${number(data.base)} as assumed. ${turning === 0 ? "No assumption at half or twice its value would turn the verdict." : `${counted(turning, "assumption")} would turn the verdict.`}`;
	return {
		title: data.title,
		legend: `Mean difference, ${data.a} less ${data.b}, with one assumption at a time at half and at twice its value. Dashed: no difference.${turning > 0 ? " 'turns': the verdict would be another one." : ""}`,
		description: [found, ...named, left]
			.filter((sentence) => sentence !== "")
			.join(" "),
	};
}
