import { legalText } from "../../words/index.ts";

const svgNamespace = "http://www.w3.org/2000/svg";

export type Attributes = { readonly [name: string]: string | number };

/** An SVG element with its attributes and children; numbers are kept to hundredths, strings become text, never markup. */
export function svgElement<N extends keyof SVGElementTagNameMap>(
	document: Document,
	name: N,
	attributes: Attributes = {},
	...children: readonly (Node | string)[]
): SVGElementTagNameMap[N] {
	const element = document.createElementNS(svgNamespace, name);
	for (const [key, value] of Object.entries(attributes))
		element.setAttribute(key, typeof value === "number" ? String(hundredths(value)) : legalText(value));
	for (const child of children)
		element.append(typeof child === "string" ? document.createTextNode(legalText(child)) : child);
	return element;
}

const hundredths = (value: number): number => Math.round(value * 100) / 100 + 0;

/** What a shape holds: shapes and text. Null holds a place for nothing, where a mark is only drawn if there is reason to. */
export type Child = Shape | string | null;

/** An element of SVG that belongs to no document yet, so that only a finished chart need know a document. */
export interface Shape {
	readonly append: (...children: readonly Child[]) => void;
	readonly drawnIn: (document: Document) => SVGElement;
}

export function shape(name: keyof SVGElementTagNameMap, attributes: Attributes, ...children: Child[]): Shape {
	return {
		append: (...more) => {
			children.push(...more);
		},
		drawnIn: (document) => svgElement(document, name, attributes, ...drawn(document, children)),
	};
}

/** Shapes as elements of a document. */
export const drawn = (document: Document, children: readonly Child[]): (SVGElement | string)[] =>
	children
		.filter((child) => child !== null)
		.map((child) => (typeof child === "string" ? child : child.drawnIn(document)));

export const group = (...children: readonly Child[]): Shape => shape("g", {}, ...children);

/** What a viewer shows where the pointer rests on the shape that holds it. */
export const tooltip = (words: string): Shape => shape("title", {}, words);

/** A path by its commands; none where a curve has no points. */
export const path = (className: string, commands: string | null, more: Attributes = {}): Shape =>
	shape("path", { class: className, d: commands ?? "", ...more });

export const circle = (className: string, x: number, y: number, r: number, ...children: readonly Child[]): Shape =>
	shape("circle", { class: className, cx: x, cy: y, r }, ...children);

/** The upper left corner of a rectangle and its size, px. */
export type Sides = { readonly [side in "x" | "y" | "width" | "height"]: number };

export const rect = (className: string, sides: Sides, ...children: readonly Child[]): Shape =>
	shape("rect", { class: className, ...sides }, ...children);

export const levelLine = (className: string, leftPx: number, rightPx: number, y: number, more: Attributes = {}) =>
	shape("line", { class: className, x1: leftPx, x2: rightPx, y1: y, y2: y, ...more });

export const uprightLine = (className: string, x: number, topPx: number, bottomPx: number, more: Attributes = {}) =>
	shape("line", { class: className, x1: x, x2: x, y1: topPx, y2: bottomPx, ...more });

/** Text that begins, has its middle or ends (`text-anchor`) at x, on the base line y. */
export const text = (attributes: Attributes, words: string): Shape => shape("text", attributes, words);
