import { scaleLinear } from "d3-scale";
import { beginKey } from "./begin-key.ts";
import { beginRow } from "./begin-row.ts";
import { beginTimesWords } from "./begin-words.ts";
import { chartKey } from "./chart-key.ts";
import { type ChartOptions, setSize } from "./chart-root.ts";
import { clearWindows } from "./clear-windows.ts";
import { clockWords } from "./clock-round.ts";
import { comparisonRoot, narrowBelowPx } from "./comparison-root.ts";
import { levelRule } from "./level-rule.ts";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";
import { smallLinePx, wrappedText } from "./wrapped-text.ts";

export interface BeginTimesData {
	readonly title: string;
	/** Left end of the clock of 24 h, in minutes after midnight; midnight by default. */
	readonly fromClockMin?: number;
	/** Times of day to be kept clear; one may pass midnight (its end is then the smaller). */
	readonly windows: readonly {
		/** 'hand-over'; windows of one label share it. */
		readonly label: string;
		readonly startClockMin: number;
		readonly endClockMin: number;
	}[];
	readonly rows: readonly BeginTimesRow[];
}

/** A day that begins at one clock time; its other times count from there, and the first 24 h are drawn. */
export interface BeginTimesRow {
	/** Minutes after midnight at which the first phase begins. */
	readonly startClockMin: number;
	/** Beside the time: 'now', 'in step', '30 min apart'. */
	readonly note?: string;
	/** The reader's own time. */
	readonly current?: boolean;
	readonly canisterChanges: readonly {
		readonly p10Min: number;
		readonly p50Min: number;
		readonly p90Min: number;
		readonly probabilityWithinHorizon: number;
	}[];
	/** Chance that an alarm starts, in each half-hour from the row's start. */
	readonly alarmBins: readonly number[];
}

const rowPx = 42;

/** When to begin: a row a clock time on one clock of 24 h, with likely canister changes and likely alarms, and the windows to be kept clear. */
export function beginTimes(
	data: BeginTimesData,
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? 900;
	const narrow = widthPx < narrowBelowPx;
	const { root, headPx } = comparisonRoot(
		document,
		options,
		widthPx,
		beginTimesWords(data),
	);
	const key = chartKey(document, beginKey(data, document), {
		leftPx: 0,
		topPx: headPx + 2,
		roomPx: widthPx,
	});
	root.append(key.group);
	const labelPx = narrow ? 0 : labelRoom(data, widthPx);
	const [leftPx, rightPx] = [
		narrow ? 4 : labelPx + 12,
		widthPx - (narrow ? 4 : 20),
	];
	const fromMin = data.fromClockMin ?? 0;
	const x = scaleLinear([0, 1440], [leftPx, rightPx]);
	const windows = clearWindows(document, data.windows, {
		x,
		fromMin,
		topPx: headPx + key.heightPx + 8,
		widthPx,
	});
	const topPx = headPx + key.heightPx + 8 + windows.heightPx;
	const ground = svgElement(document, "g", {});
	root.append(ground, windows.names);
	let y = topPx;
	if (data.rows.length === 0) {
		root.append(
			svgElement(
				document,
				"text",
				{ class: "muted on-band", x: leftPx + 6, y: y + 22 },
				"no time was tried",
			),
		);
		y += rowPx;
	}
	for (const row of data.rows) {
		const words = [
			clockWords(row.startClockMin),
			...(row.note === undefined || row.note === "" ? [] : [row.note]),
		];
		const lines = narrow
			? wrappedText(words.join(": "), 13, widthPx - 8, 3)
			: words.flatMap((one, index) =>
					wrappedText(one, index === 0 ? 13 : 11.5, labelPx, 3),
				);
		root.append(
			levelRule(document, 0, widthPx, y),
			...lines.map((line, index) =>
				svgElement(
					document,
					"text",
					{
						class:
							`${index === 0 ? (row.current ? "heading" : "") : "small muted"}${narrow ? " on-band" : ""}`.trim(),
						x: narrow ? leftPx : 0,
						y: y + 17 + index * smallLinePx,
					},
					line,
				),
			),
		);
		const rowTop = narrow ? y + 6 + lines.length * smallLinePx : y;
		root.append(beginRow(document, row, { x, fromMin, topPx: rowTop }));
		y = narrow
			? rowTop + rowPx
			: y + Math.max(rowPx, 8 + lines.length * smallLinePx);
	}
	ground.append(...windows.bands(topPx, y));
	const stepMin = narrow ? 360 : 120;
	for (let atMin = 0; atMin <= 1440; atMin += 60) {
		const clockMin = (fromMin + atMin) % 1440;
		if (clockMin % stepMin !== 0) continue;
		ground.append(
			svgElement(document, "line", {
				class: "rule",
				x1: x(atMin),
				x2: x(atMin),
				y1: topPx,
				y2: y,
			}),
		);
		const edge = narrow && (atMin === 0 || atMin === 1440);
		root.append(
			svgElement(
				document,
				"text",
				{
					class: "small",
					x: x(atMin),
					y: y + 16,
					"text-anchor": edge ? (atMin === 0 ? "start" : "end") : "middle",
				},
				atMin === 1440 && clockMin === 0 ? "24:00" : clockWords(clockMin),
			),
		);
	}
	setSize(root, widthPx, y + 24);
	return root;
}

/** Room for the times and their notes. */
const labelRoom = (data: BeginTimesData, widthPx: number): number =>
	Math.min(
		widthPx * 0.22,
		data.rows.reduce(
			(most, row) => Math.max(most, textWidth(row.note ?? "", 11.5)),
			textWidth("00:00", 14),
		),
	);
