import type { ScaleLinear } from "d3-scale";
import { figureWords } from "./figures.ts";
import { svgElement } from "./svg-element.ts";
import type { TornadoData, TornadoRow } from "./tornado.ts";

type Setting = "half" | "twice";

const thickPx = 11;
const signs: { readonly [S in Setting]: string } = { half: "½", twice: "2×" };

/** Half is an outline, twice is full. */
const bar = (
	document: Document,
	setting: Setting,
	x: number,
	y: number,
	widthPx: number,
): SVGRectElement =>
	svgElement(document, "rect", {
		class: setting === "half" ? "found-edge hollow" : "found",
		x,
		y: setting === "half" ? y + 0.75 : y,
		width: Math.max(1.5, widthPx),
		height: setting === "half" ? thickPx - 1.5 : thickPx,
		...(setting === "half" ? { style: "stroke-width:1.5" } : {}),
	});

/** For the key. */
export const tornadoSample = (
	document: Document,
	setting: Setting,
	x: number,
	y: number,
): SVGRectElement => bar(document, setting, x - 10, y - 6, 20);

/** Both bars of an assumption under each other, each from the base to where its setting leads, sign and number at its end. */
export function tornadoBar(
	document: Document,
	data: TornadoData,
	row: TornadoRow,
	place: {
		readonly x: ScaleLinear<number, number>;
		readonly topPx: number;
		readonly decimals: number;
	},
): SVGGElement {
	const { x, topPx, decimals } = place;
	const group = svgElement(document, "g", {});
	const settings = [
		["half", topPx + 3],
		["twice", topPx + 20],
	] as const;
	const [first = 0, last = 0] = x.range();
	const roomLeft = x(data.base) > (first + last) / 2;
	for (const [setting, y] of settings) {
		const value = row[setting];
		if (value === null || !Number.isFinite(value)) {
			group.append(
				svgElement(
					document,
					"text",
					{
						class: "small muted halo",
						x: x(data.base) + (roomLeft ? -5 : 5),
						y: y + 10,
						"text-anchor": roomLeft ? "end" : "start",
					},
					`${signs[setting]} cannot be run`,
				),
			);
			continue;
		}
		const [from, to] = [x(data.base), x(value)];
		const right = to >= from;
		group.append(
			bar(document, setting, Math.min(from, to), y, Math.abs(to - from)),
			svgElement(
				document,
				"text",
				{
					class: "small halo",
					x: right ? Math.max(to, from + 2) + 5 : to - 5,
					y: y + 10,
					"text-anchor": right ? "start" : "end",
				},
				`${signs[setting]} ${figureWords(value, decimals, "")}`,
			),
		);
	}
	return group;
}
