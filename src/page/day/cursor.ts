import { svgElement, waterLineEdges } from "../../charts/index.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { type Clock, clockTime } from "../../words/index.ts";
import type { Reading } from "./reading.ts";

/** What was read at the cursor, under a heading where several days are read. */
interface Read {
	readonly heading: string;
	readonly readings: readonly Reading[];
}

/** Room of the time axis between the lanes and the heading of the lens, px. */
const lensGapPx = 62;
const emptyWords = "Point at the chart, or move along this slider with the arrow keys, to read every lane at a minute.";

/**
 * A cursor over time: over charts by mouse and touch, along a slider by keyboard; what all lanes read there stands in
 * words. `moved` is told when it has come to another minute.
 */
export function timeCursor(html: HtmlMaker, id: string, moved: () => void) {
	let charts: readonly SVGSVGElement[] = [];
	let clock: Clock | null = null;
	let atMin: number | null = null;
	const slider = html("input", { type: "range", id, min: "0", step: "1", value: "0" });
	const list = html("div", { class: "readings" });
	const readNothing = () => list.replaceChildren(html("p", { class: "help" }, emptyWords));
	readNothing();
	slider.addEventListener("input", () => move(Number(slider.value)));

	function move(toMin: number): void {
		if (toMin === atMin) return;
		atMin = toMin;
		slider.value = String(toMin);
		say();
		draw();
		moved();
	}

	function follow(event: PointerEvent): void {
		const pointed = (event.target as Element).closest<SVGSVGElement>("svg"); // pointer events come from elements
		const chart = charts.find((one) => one === pointed);
		if (chart === undefined || clock === null) return;
		const frame = chart.getBoundingClientRect();
		const widthPx = chart.viewBox.baseVal.width;
		const x = ((event.clientX - frame.left) / frame.width) * widthPx;
		const { leftPx, rightPx } = waterLineEdges(widthPx);
		const share = (x - leftPx) / (rightPx - leftPx);
		if (share >= 0 && share <= 1) move(Math.round(share * clock.horizonMin));
	}

	function say(): void {
		if (clock !== null) slider.setAttribute("aria-valuetext", clockTime(Number(slider.value), clock));
	}

	function draw(): void {
		for (const chart of charts) {
			chart.querySelector(".page-cursor")?.remove();
			if (atMin === null || clock === null) continue;
			const { width, height } = chart.viewBox.baseVal;
			const { leftPx, rightPx } = waterLineEdges(width);
			const x = leftPx + ((rightPx - leftPx) * atMin) / clock.horizonMin;
			// The lens below has an axis of its own.
			const lens = chart.querySelector(".lens text.heading")?.getAttribute("y") ?? null;
			const y2 = lens === null ? height : Number(lens) - lensGapPx;
			chart.append(svgElement(html.document, "line", { class: "page-cursor", x1: x, x2: x, y1: 8, y2 }));
		}
	}

	return {
		element: html("div", { class: "cursor" }, html("label", { for: id }, "Cursor"), slider, list),
		/** null until the reader has put it somewhere. */
		atMin: () => atMin,
		/** Follows the pointer over an element in which charts are drawn. */
		watch(figure: HTMLElement): void {
			figure.addEventListener("pointermove", (event) => {
				if (event.pointerType === "mouse" || event.buttons > 0) follow(event);
			});
			figure.addEventListener("pointerdown", follow);
		},
		/** Nothing is read any more. */
		clear(): void {
			charts = [];
			clock = null;
			atMin = null;
			slider.value = "0";
			slider.removeAttribute("aria-valuetext");
			readNothing();
		},
		/** The charts that were drawn, all on one time axis. */
		over(drawn: readonly SVGSVGElement[], axis: Clock): void {
			charts = drawn;
			clock = axis;
			slider.max = String(Math.floor(axis.horizonMin));
			say();
			if (atMin !== null && atMin > axis.horizonMin) atMin = axis.horizonMin;
			draw();
		},
		/** Writes what the lanes read at the cursor. */
		read(reads: readonly Read[]): void {
			const row = ({ lane, words }: Reading) => html("div", {}, html("dt", {}, lane), html("dd", {}, words));
			list.replaceChildren(
				...reads.map(({ heading, readings }) =>
					html("div", {}, heading === "" ? null : html("h4", {}, heading), html("dl", {}, ...readings.map(row))),
				),
			);
		},
	};
}
