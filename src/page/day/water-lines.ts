import { type WaterLineData, waterLineChart } from "../../charts/index.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { Frames } from "../kit/frames.ts";
import { onPage } from "../kit/on-page.ts";
import { timeCursor } from "./cursor.ts";
import { readingsAt } from "./reading.ts";

/** A day to be drawn, and where. */
export interface DrawnLine {
	readonly place: HTMLElement;
	readonly idPrefix: string;
	/** Stands over what the cursor reads of it, where it reads several. */
	readonly heading: string;
	readonly data: WaterLineData;
}

/** Half the width of the lens around the cursor, min. */
const halfLensMin = 20;

/** What the lens enlarges: the cursor's surroundings; what the chart thinks best until there is a cursor. */
const lensAround = (atMin: number | null, horizonMin: number): Pick<WaterLineData, "lens"> =>
	atMin === null
		? {}
		: {
				lens: {
					heading: "Around the cursor, enlarged",
					fromMin: Math.max(0, atMin - halfLensMin),
					toMin: Math.min(horizonMin, atMin + halfLensMin),
				},
			};

/**
 * Water lines on one time axis, under one cursor that reads all of them and around which each is enlarged. `place` holds
 * them all; `line` says what a place in their order is to show now, null: nothing; `drawn` is told of each.
 */
export function waterLines(
	html: HtmlMaker,
	frames: Frames,
	of: {
		readonly id: string;
		readonly place: HTMLElement;
		readonly count: number;
		line(index: number): DrawnLine | null;
		drawn?(data: WaterLineData): void;
	},
) {
	const indices = [...Array(of.count).keys()];
	const cursor = timeCursor(html, of.id, () => {
		read();
		plan();
	});
	cursor.watch(of.place);
	const read = () => {
		const atMin = cursor.atMin();
		if (atMin === null) return;
		const lines = indices.map(of.line).filter((line) => line !== null);
		cursor.read(lines.map(({ heading, data }) => ({ heading, readings: readingsAt(atMin, data) })));
	};
	const draw = (index: number) => {
		const line = of.line(index);
		if (line === null) return;
		const { place, idPrefix, data } = line;
		const { clock } = data;
		const enlarged = { ...data, ...lensAround(cursor.atMin(), clock.horizonMin) };
		place.replaceChildren(waterLineChart(enlarged, html.document, onPage(place, idPrefix)));
		cursor.over([...of.place.querySelectorAll<SVGSVGElement>("svg.sw-chart")], clock);
		of.drawn?.(enlarged);
		read();
	};
	/** Draws them in the frames that come. */
	const plan = () => {
		for (const index of indices) frames.plan(`${of.id}, line ${index}`, () => draw(index));
	};
	return { cursor: cursor.element, plan, clear: cursor.clear };
}
