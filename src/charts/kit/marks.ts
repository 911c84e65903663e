import { type Attributes, circle, group, path, type Shape, type Sides, shape, text, uprightLine } from "./shape.ts";

/** Names of the two regimens that are marked wherever many are shown. */
export const markWords = { current: "the current regimen", usual: "the site's usual regimen" } as const;

/** The regimen that the reader has now: a dot in a heavy square. */
export const currentMark = (x: number, y: number): Shape =>
	group(...heavyOutline({ x: x - 8, y: y - 8, width: 16, height: 16 }, 5, 2.5), circle("ink", x, y, 3.5));

/** A rectangle in ink with a paper rim. */
export const heavyOutline = (box: Sides, rimPx: number, inkPx: number): Shape[] => [
	shape("rect", { class: "paper-edge", ...box, style: `stroke-width:${rimPx}` }),
	shape("rect", { class: "ink-edge", ...box, style: `stroke-width:${inkPx}` }),
];

/** The site's usual regimen: a diamond with a paper rim. */
export const usualMark = (x: number, y: number): Shape =>
	group(path("paper-edge", diamondPath(x, y, 8), { style: "stroke-width:3" }), path("ink", diamondPath(x, y, 7)));

/** A line down at a value that is marked; dashed at one that is only compared with. */
export function markLine(x: number, topPx: number, bottomPx: number, isDashed: boolean): Shape {
	const [className, widthPx] = isDashed ? ["ink-edge dashed", 1] : ["ink-edge", 1.8];
	return uprightLine(className, x, topPx, bottomPx, { style: `stroke-width:${widthPx}` });
}

export const diamondPath = (x: number, y: number, half: number): string =>
	`M${x.toFixed(2)},${(y - half).toFixed(2)}l${half},${half}l${-half},${half}l${-half},${-half}Z`;

/** A bar across with a tick at both ends, as a path. */
export const barPath = (leftPx: number, rightPx: number, y: number, half: number): string =>
	`M${leftPx.toFixed(2)},${y - half}v${2 * half}m0,${-half}H${rightPx.toFixed(2)}m0,${-half}v${2 * half}`;

/** Hatching to fill with (`url(#id)`): what is drawn every `stepPx`, turned by half a right angle. */
export function hatchPattern(id: string, stepPx: number, ...drawn: readonly Shape[]): Shape {
	const turned = { patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" };
	return shape("pattern", { id, width: stepPx, height: stepPx, ...turned }, ...drawn);
}

export const hatchStroke = (className: string, stepPx: number): Shape =>
	shape("line", { class: className, x1: 0, y1: 0, x2: 0, y2: stepPx });

/** A number in the middle of a cell. */
export function cellNumber(words: string, className: string, x: number, y: number, sizePx: number, more?: Attributes) {
	const at = { class: className, x, y: y + sizePx * 0.36, "text-anchor": "middle", style: `font-size:${sizePx}px` };
	return text({ ...at, ...more }, words);
}
