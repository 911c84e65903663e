import { scaleLinear } from "d3-scale";
import { minutesADay } from "../../vocabulary/index.ts";
import { clockWords, counted, percentWords } from "../../words/index.ts";
import type { ChartOptions } from "../kit/chart.ts";
import { ComparisonChart, type ComparisonWords } from "../kit/comparison-chart.ts";
import { textWidth, widestText, wrappedText } from "../kit/fitted-text.ts";
import { group, levelLine, text, uprightLine } from "../kit/shape.ts";
import { smallLetters, smallPx, textPx } from "../theme/letters.ts";
import { type BeginTimesData, type BeginTimesRow, clearWindows } from "./clock-face.ts";
import { beginKey, beginRow } from "./row.ts";

const rowPx = 42;

/** When to begin: a row a clock time on one clock of 24 h, with likely canister changes and likely alarms, and the windows to be kept clear. */
export function beginTimes(data: BeginTimesData, document: Document, options: ChartOptions): SVGSVGElement {
	const chart = new ComparisonChart(options, beginTimesWords(data));
	const { widthPx, isNarrow, headPx } = chart;
	const keyPx = chart.appendKey(beginKey(data), headPx + 2);
	const labelPx = isNarrow ? 0 : labelRoom(data, widthPx);
	const [leftPx, rightPx] = [isNarrow ? 4 : labelPx + 12, widthPx - (isNarrow ? 4 : 20)];
	const fromMin = data.fromClockMin ?? 0;
	const x = scaleLinear([0, minutesADay], [leftPx, rightPx]);
	const windows = clearWindows(data.windows, { x, fromMin, topPx: headPx + keyPx + 8 }, widthPx);
	const topPx = headPx + keyPx + 8 + windows.heightPx;
	const ground = group();
	chart.append(ground, windows.names);
	let y = topPx;
	if (data.rows.length === 0) {
		chart.append(text({ class: "muted on-band", x: leftPx + 6, y: y + 22 }, "no time was tried"));
		y += rowPx;
	}
	for (const row of data.rows) {
		const words = [clockWords(row.startClockMin), ...(row.note ? [row.note] : [])];
		const lines = isNarrow
			? wrappedText(words.join(": "), textPx, widthPx - 8, 3)
			: words.flatMap((one, index) => wrappedText(one, index === 0 ? textPx : smallPx, labelPx, 3));
		const linesPx = lines.length * smallLetters.linePx;
		const first = row.current === true ? "heading" : "";
		chart.append(
			levelLine("rule", 0, widthPx, y),
			...lines.map((line, index) => {
				const className = `${index === 0 ? first : "small muted"}${isNarrow ? " on-band" : ""}`.trim();
				return text({ class: className, x: isNarrow ? leftPx : 0, y: y + 17 + index * smallLetters.linePx }, line);
			}),
		);
		const rowTop = isNarrow ? y + 6 + linesPx : y;
		chart.append(beginRow(row, { x, fromMin, topPx: rowTop }));
		y = isNarrow ? rowTop + rowPx : y + Math.max(rowPx, 8 + linesPx);
	}
	ground.append(...windows.bands(topPx, y));
	const stepMin = isNarrow ? 360 : 120;
	for (let atMin = 0; atMin <= minutesADay; atMin += 60) {
		const clockMin = (fromMin + atMin) % minutesADay;
		if (clockMin % stepMin !== 0) continue;
		ground.append(uprightLine("rule", x(atMin), topPx, y));
		const anchor = isNarrow && atMin === 0 ? "start" : isNarrow && atMin === minutesADay ? "end" : "middle";
		const words = atMin === minutesADay && clockMin === 0 ? "24:00" : clockWords(clockMin);
		chart.append(text({ class: "small", x: x(atMin), y: y + 16, "text-anchor": anchor }, words));
	}
	return chart.drawnIn(document, y + 24);
}

function labelRoom({ rows }: BeginTimesData, widthPx: number): number {
	const notes = rows.map((row) => row.note ?? "");
	return Math.min(widthPx * 0.22, Math.max(widestText(notes, smallPx), textWidth("00:00", 14)));
}

const mostNamed = 12;

/** Title, how to read, and what a reader would see in the rows. */
function beginTimesWords({ title, rows, windows }: BeginTimesData): ComparisonWords {
	const legend = "One row for each time at which the day could begin; its first 24 h on the clock.";
	if (rows.length === 0) return { title, legend, description: "No time was tried." };
	const more = rows.length > mostNamed ? ` And ${rows.length - mostNamed} more.` : "";
	const spans = windows.map(
		({ label, startClockMin, endClockMin }) => `${label} ${clockWords(startClockMin)} to ${clockWords(endClockMin)}`,
	);
	const clear = spans.length === 0 ? "" : ` To be kept clear: ${spans.join(", ")}.`;
	const named = rows.slice(0, mostNamed).map(rowWords).join(" ");
	return { title, legend, description: `${counted(rows.length, "time")} tried.${clear} ${named}${more}` };
}

function rowWords(row: BeginTimesRow): string {
	const at = (atMin: number): string => clockWords(row.startClockMin + atMin);
	const [change] = row.canisterChanges;
	const canister =
		change === undefined || change.p10Min >= minutesADay
			? "no canister change"
			: `first canister change between ${at(change.p10Min)} and ${at(change.p90Min)}`;
	const highest = row.alarmBins.slice(0, 48).reduce((most, chance) => Math.max(most, chance), 0);
	const place = row.alarmBins.indexOf(highest);
	const alarms =
		highest > 0 ? `alarms likeliest from ${at(place * 30)}, ${percentWords(highest)} in a half-hour` : "no alarm";
	const name = row.current === true ? "(current) " : "";
	const note = row.note ? ` (${row.note})` : "";
	return `${name}Begin ${clockWords(row.startClockMin)}${note}: ${canister}; ${alarms}.`;
}
