import { legalText } from "./legal-text.ts";

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
		element.setAttribute(
			key,
			typeof value === "number" ? String(hundredths(value)) : legalText(value),
		);
	for (const child of children)
		element.append(
			typeof child === "string"
				? document.createTextNode(legalText(child))
				: child,
		);
	return element;
}

const hundredths = (value: number): number => Math.round(value * 100) / 100 + 0;
