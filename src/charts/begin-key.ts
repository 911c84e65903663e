import { beginMark } from "./begin-row.ts";
import type { BeginTimesData } from "./begin-times.ts";
import type { KeyItem } from "./chart-key.ts";
import { heatEdges } from "./heat-strip.ts";
import { currentMark } from "./regimen-mark.ts";
import { svgElement } from "./svg-element.ts";

/** What the marks of a row mean. */
export function beginKey(data: BeginTimesData, document: Document): KeyItem[] {
	const bar = (x: number, y: number): SVGGElement =>
		svgElement(
			document,
			"g",
			{},
			svgElement(document, "path", {
				class: "canister-edge",
				d: `M${x - 10},${y - 4}v8m0,-4h20m0,-4v8`,
			}),
			svgElement(document, "circle", {
				class: "canister-mark",
				cx: x,
				cy: y,
				r: 3.5,
			}),
		);
	const items: KeyItem[] = [
		{
			words: "the day begins",
			sample: (x, y) => beginMark(document, x - 4, y),
		},
		{
			words:
				"canister change: half of the days before the dot, 8 days in 10 within the bar (dashed: in fewer than half of the days)",
			sample: bar,
		},
		{
			words: `chance that an alarm starts in a half-hour: from ${heatEdges[0] * 100} %, stronger for more; in % from 5 % on, where there is room`,
			sample: (x, y) =>
				svgElement(
					document,
					"g",
					{},
					...[1, 3, 5].map((step, index) =>
						svgElement(document, "rect", {
							class: `heat${step}`,
							x: x - 10 + index * 7,
							y: y - 7,
							width: 6.5,
							height: 14,
						}),
					),
				),
		},
	];
	if (data.rows.some((row) => row.current))
		items.splice(1, 0, {
			words: "the current time",
			sample: (x, y) => currentMark(document, x, y),
		});
	if (data.windows.length > 0)
		items.push({
			words: "to be kept clear",
			sample: (x, y) =>
				svgElement(
					document,
					"g",
					{},
					svgElement(document, "rect", {
						class: "clear",
						x: x - 9,
						y: y - 8,
						width: 18,
						height: 16,
					}),
					...[x - 9, x + 9].map((at) =>
						svgElement(document, "line", {
							class: "boundary",
							x1: at,
							x2: at,
							y1: y - 8,
							y2: y + 8,
						}),
					),
				),
		});
	return items;
}
