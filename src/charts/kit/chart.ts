import { chartStyle } from "../theme/style-sheet.ts";
import { type Child, drawn, shape, svgElement } from "./shape.ts";

/** What every chart is told: unique ids begin with `idPrefix` (letters, digits and hyphens), width in px of its own grid. */
export interface ChartOptions {
	readonly idPrefix: string;
	readonly widthPx?: number;
	/** False for a chart beside others of the same page that already carry the style sheet. */
	readonly styled?: boolean;
	/** False where the words around it name the chart already; its title then stands in the text alternative only. */
	readonly titled?: boolean;
}

/** What a chart says of itself in words. */
export interface ChartWords {
	readonly title: string;
	/** What a reader would see in it. */
	readonly description: string;
}

/** A chart under way: it gathers shapes, and becomes an element of a document when all is drawn. */
export class Chart {
	readonly widthPx: number;
	readonly #labelledBy: string;
	readonly #shapes: Child[];

	constructor(options: ChartOptions, widthPx: number, words: ChartWords, styles: readonly string[] = [chartStyle]) {
		this.widthPx = widthPx;
		const [titleId, descriptionId] = [`${options.idPrefix}-title`, `${options.idPrefix}-desc`];
		this.#labelledBy = `${titleId} ${descriptionId}`;
		this.#shapes = [
			shape("title", { id: titleId }, words.title),
			shape("desc", { id: descriptionId }, words.description),
		];
		if (options.styled !== false) this.append(...styles.map((style) => shape("style", {}, style)));
	}

	append(...shapes: readonly Child[]): void {
		this.#shapes.push(...shapes);
	}

	drawnIn(document: Document, heightPx: number): SVGSVGElement {
		const [width, height] = [String(this.widthPx), String(Math.ceil(heightPx))];
		const size = { viewBox: `0 0 ${width} ${height}`, width, height };
		const attributes = { class: "sw-chart", role: "img", "aria-labelledby": this.#labelledBy, ...size };
		return svgElement(document, "svg", attributes, ...drawn(document, this.#shapes));
	}
}
