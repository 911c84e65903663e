import { type CanisterData, canisterPanel } from "./canister-panel.ts";
import {
	type ChartOptions,
	chartRoot,
	chartTitle,
	setSize,
} from "./chart-root.ts";
import { type Clock, timeRange } from "./clock.ts";
import { dayWidthPx } from "./day-root.ts";
import { percentWords } from "./probability.ts";
import { volumeWords } from "./quantity.ts";
import { svgElement } from "./svg-element.ts";
import { timeAxis, timeGround, timePlot } from "./time-plot.ts";

/** Projected canister content with its band and change windows, on its own. */
export function canisterChart(
	data: CanisterData & { readonly title: string; readonly clock: Clock },
	document: Document,
	options: ChartOptions,
): SVGSVGElement {
	const widthPx = options.widthPx ?? dayWidthPx;
	const root = chartRoot(
		document,
		options,
		{ widthPx, heightPx: 0 },
		words(data),
	);
	const span = { fromMin: 0, toMin: data.clock.horizonMin };
	const plot = timePlot(document, options.idPrefix, data.clock, span, {
		leftPx: 112,
		rightPx: widthPx - 34,
	});
	const headPx = chartTitle(root, document, options, {
		title: data.title,
		leftPx: plot.leftPx,
		roomPx: plot.rightPx - plot.leftPx,
	});
	const ground = svgElement(document, "g", {});
	const panel = canisterPanel(plot, data, headPx + 30, 110);
	const bottom = headPx + 30 + panel.heightPx + 6;
	const axis = timeAxis(plot, bottom);
	ground.append(timeGround(plot, headPx + 18, bottom));
	root.append(ground, panel.group, axis.group);
	setSize(root, widthPx, bottom + axis.heightPx + 4);
	return root;
}

function words(
	data: CanisterData & { readonly title: string; readonly clock: Clock },
) {
	const changes = data.changes.map(
		(change) =>
			`Change ${change.ordinal} ${timeRange(change.p10Min, change.p90Min, data.clock)}, in ${percentWords(change.probabilityWithinHorizon)} of the days.`,
	);
	const none =
		changes.length === 0
			? ["No change within the time shown."]
			: changes.slice(0, 8);
	return {
		title: `Canister: ${data.title}`,
		description: [
			`Content of a canister of ${volumeWords(data.canisterMl)} over time.`,
			...none,
		].join(" "),
	};
}
