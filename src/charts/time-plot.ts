import { type ScaleLinear, scaleLinear } from "d3-scale";
import type { Clock } from "./clock.ts";
import { shiftsBetween } from "./shifts.ts";
import { svgElement } from "./svg-element.ts";
import { fittedText, textWidth } from "./text-width.ts";
import { timeTicks } from "./time-ticks.ts";

/** Panels that stand on one time axis share this. */
export interface TimePlot {
	readonly document: Document;
	readonly idPrefix: string;
	readonly clock: Clock;
	readonly fromMin: number;
	readonly toMin: number;
	readonly leftPx: number;
	readonly rightPx: number;
	/** Minutes to px. */
	readonly x: ScaleLinear<number, number>;
}

export function timePlot(
	document: Document,
	idPrefix: string,
	clock: Clock,
	span: { readonly fromMin: number; readonly toMin: number },
	edges: { readonly leftPx: number; readonly rightPx: number },
): TimePlot {
	const x = scaleLinear(
		[span.fromMin, span.toMin],
		[edges.leftPx, edges.rightPx],
	);
	return { document, idPrefix, clock, ...span, ...edges, x };
}

const ticksOf = (plot: TimePlot) =>
	timeTicks(
		plot.fromMin,
		plot.toMin,
		plot.clock,
		Math.floor((plot.rightPx - plot.leftPx) / 56),
	);

/** Night, hour lines and shift boundaries behind the panels; where `named`, 'day' and 'night' are written along the top. */
export function timeGround(
	plot: TimePlot,
	topPx: number,
	bottomPx: number,
	named = true,
): SVGGElement {
	const { document, x } = plot;
	const group = svgElement(document, "g", {});
	const shifts = shiftsBetween(plot.fromMin, plot.toMin, plot.clock);
	for (const shift of shifts) {
		const [left, right] = [x(shift.startMin), x(shift.endMin)];
		if (shift.shift === "night")
			group.append(
				svgElement(document, "rect", {
					class: "night",
					x: left,
					y: topPx,
					width: right - left,
					height: bottomPx - topPx,
				}),
			);
	}
	for (const tick of ticksOf(plot))
		group.append(
			svgElement(document, "line", {
				class: "rule",
				x1: x(tick.atMin),
				x2: x(tick.atMin),
				y1: topPx,
				y2: bottomPx,
			}),
		);
	for (const shift of shifts) {
		const [left, right] = [x(shift.startMin), x(shift.endMin)];
		if (right - left > 24 && shift.startMin > plot.fromMin)
			group.append(
				svgElement(document, "line", {
					class: "boundary",
					x1: left,
					x2: left,
					y1: named ? topPx - 14 : topPx,
					y2: bottomPx,
				}),
			);
		if (!named) continue;
		const words = `${shift.shift} shift`;
		const short =
			right - left > textWidth(words, 11.5) + 8 ? words : shift.shift;
		if (right - left > textWidth(short, 11.5) + 8)
			group.append(
				svgElement(
					document,
					"text",
					{ class: "small muted", x: left + 5, y: topPx - 4 },
					short,
				),
			);
	}
	return group;
}

/** Labels of the time axis under `topPx`; returns the px they take downwards, too. */
export function timeAxis(
	plot: TimePlot,
	topPx: number,
): { readonly group: SVGGElement; readonly heightPx: number } {
	const { document, x } = plot;
	const group = svgElement(document, "g", {});
	let heightPx = 20;
	for (const tick of ticksOf(plot)) {
		group.append(
			svgElement(
				document,
				"text",
				{ x: x(tick.atMin), y: topPx + 16, "text-anchor": "middle" },
				tick.label,
			),
		);
		if (tick.date === "") continue;
		const half = textWidth(tick.date, 11.5) / 2;
		const at = Math.min(x(tick.atMin), plot.rightPx + 20 - half);
		group.append(
			svgElement(
				document,
				"text",
				{ class: "small muted", x: at, y: topPx + 33, "text-anchor": "middle" },
				tick.date,
			),
		);
		heightPx = 38;
	}
	return { group, heightPx };
}

/** A label in the left margin, on two lines where it says so. */
export function rowLabel(
	plot: TimePlot,
	yPx: number,
	text: string,
	second = "",
): SVGGElement {
	const { document } = plot;
	const room = plot.leftPx - 14;
	const attributes = { x: plot.leftPx - 8, "text-anchor": "end" };
	if (second === "")
		return svgElement(
			document,
			"g",
			{},
			svgElement(
				document,
				"text",
				{ ...attributes, y: yPx + 4.5 },
				fittedText(text, 13, room),
			),
		);
	return svgElement(
		document,
		"g",
		{},
		svgElement(
			document,
			"text",
			{ ...attributes, y: yPx - 4.5 },
			fittedText(text, 13, room),
		),
		svgElement(
			document,
			"text",
			{ ...attributes, y: yPx + 14 },
			fittedText(second, 13, room),
		),
	);
}
