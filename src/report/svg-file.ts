import { legalText, svgElement } from "../charts/index.ts";

const svgNamespace = "http://www.w3.org/2000/svg";

/** A chart as a file that opens by itself. */
export function svgFile(root: SVGSVGElement, document: Document): string {
	paperUnder(root, document);
	return `<?xml version="1.0" encoding="UTF-8"?>\n${serialised(root, document)}\n`;
}

/** A file of its own has no page behind it: paper in the colour of the theme. */
function paperUnder(root: SVGSVGElement, document: Document): void {
	const paper = svgElement(document, "rect", {
		class: "paper",
		width: "100%",
		height: "100%",
	});
	const behind = [...root.children].find(
		(child) => !["title", "desc", "style"].includes(child.localName),
	);
	root.insertBefore(paper, behind ?? null);
}

/** An XML document writes its elements as XML, namespaces and empty tags included. */
function serialised(root: SVGSVGElement, document: Document): string {
	const file = document.implementation.createDocument(svgNamespace, "svg");
	file.documentElement.replaceWith(file.adoptNode(root));
	return legalText(file.documentElement.outerHTML);
}
