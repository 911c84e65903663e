import {
	type Clock,
	clockTime,
	svgElement,
	waterLineEdges,
} from "../charts/index.ts";
import { htmlElement } from "../report/html-element.ts";
import type { Reading } from "./reading.ts";

/** What was read at the cursor, under a heading where several days are read. */
export interface Read {
	readonly heading: string;
	readonly readings: readonly Reading[];
}

/** Room of the time axis between the lanes and the heading of the lens, px. */
const lensGapPx = 62;
const emptyWords =
	"Point at the chart, or move along this slider with the arrow keys, to read every lane at a minute.";

/** A cursor over time: over charts by mouse and touch, along a slider by keyboard; what all lanes read there stands in words. */
export class Cursor {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #slider: HTMLInputElement;
	readonly #list: HTMLElement;
	#charts: readonly SVGSVGElement[] = [];
	#clock: Clock | null = null;
	#atMin: number | null = null;
	readonly #moved: () => void;

	/** `moved` is told when the cursor has come to another minute. */
	constructor(document: Document, id: string, moved: () => void) {
		this.#document = document;
		this.#moved = moved;
		this.#slider = htmlElement(document, "input", {
			type: "range",
			id,
			min: "0",
			step: "1",
			value: "0",
		});
		this.#list = htmlElement(
			document,
			"div",
			{ class: "readings" },
			htmlElement(document, "p", { class: "help" }, emptyWords),
		);
		this.#slider.addEventListener("input", () =>
			this.#move(Number(this.#slider.value)),
		);
		this.element = htmlElement(
			document,
			"div",
			{ class: "cursor" },
			htmlElement(document, "label", { for: id }, "Cursor"),
			this.#slider,
			this.#list,
		);
	}

	/** null until the reader has put it somewhere. */
	get atMin(): number | null {
		return this.#atMin;
	}

	/** Follows the pointer over an element in which charts are drawn. */
	watch(figure: HTMLElement): void {
		const follow = (event: PointerEvent) => {
			const chart = (event.target as Element).closest<SVGSVGElement>("svg"); // pointer events come from elements
			const drawn = this.#charts.find((one) => one === chart);
			if (drawn === undefined || this.#clock === null) return;
			const frame = drawn.getBoundingClientRect();
			const widthPx = drawn.viewBox.baseVal.width;
			const x = ((event.clientX - frame.left) / frame.width) * widthPx;
			const { leftPx, rightPx } = waterLineEdges(widthPx);
			const share = (x - leftPx) / (rightPx - leftPx);
			if (share < 0 || share > 1) return;
			this.#move(Math.round(share * this.#clock.horizonMin));
		};
		figure.addEventListener("pointermove", (event) => {
			if (event.pointerType === "mouse" || event.buttons > 0) follow(event);
		});
		figure.addEventListener("pointerdown", follow);
	}

	/** Nothing is read any more. */
	clear(): void {
		this.#charts = [];
		this.#clock = null;
		this.#atMin = null;
		this.#slider.value = "0";
		this.#slider.removeAttribute("aria-valuetext");
		this.#list.replaceChildren(
			htmlElement(this.#document, "p", { class: "help" }, emptyWords),
		);
	}

	/** The charts that were drawn, all on one time axis. */
	over(charts: readonly SVGSVGElement[], clock: Clock): void {
		this.#charts = charts;
		this.#clock = clock;
		this.#slider.max = String(Math.floor(clock.horizonMin));
		this.#say();
		if (this.#atMin !== null && this.#atMin > clock.horizonMin)
			this.#atMin = clock.horizonMin;
		this.#draw();
	}

	/** Writes what the lanes read at the cursor. */
	read(reads: readonly Read[]): void {
		const element = htmlElement.bind(null, this.#document);
		this.#list.replaceChildren(
			...reads.map(({ heading, readings }) =>
				element(
					"div",
					{},
					heading === "" ? null : element("h4", {}, heading),
					element(
						"dl",
						{},
						...readings.map(({ lane, words }) =>
							element(
								"div",
								{},
								element("dt", {}, lane),
								element("dd", {}, words),
							),
						),
					),
				),
			),
		);
	}

	#move(atMin: number): void {
		if (atMin === this.#atMin) return;
		this.#atMin = atMin;
		this.#slider.value = String(atMin);
		this.#say();
		this.#draw();
		this.#moved();
	}

	#say(): void {
		if (this.#clock === null) return;
		this.#slider.setAttribute(
			"aria-valuetext",
			clockTime(Number(this.#slider.value), this.#clock),
		);
	}

	#draw(): void {
		for (const chart of this.#charts) {
			chart.querySelector(".page-cursor")?.remove();
			if (this.#atMin === null || this.#clock === null) continue;
			const { width, height } = chart.viewBox.baseVal;
			const { leftPx, rightPx } = waterLineEdges(width);
			const x =
				leftPx + ((rightPx - leftPx) * this.#atMin) / this.#clock.horizonMin;
			// The lens below has an axis of its own.
			const lens = chart.querySelector(".lens text.heading")?.getAttribute("y");
			chart.append(
				svgElement(this.#document, "line", {
					class: "page-cursor",
					x1: x,
					x2: x,
					y1: 8,
					y2:
						lens === null || lens === undefined
							? height
							: Number(lens) - lensGapPx,
				}),
			);
		}
	}
}
