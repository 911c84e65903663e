import { type Clock, percentWords, timeRange, volumeWords } from "../../words/index.ts";
import type { ChartOptions, ChartWords } from "../kit/chart.ts";
import { group } from "../kit/shape.ts";
import { type CanisterData, canisterPanel } from "../time/canister-panel.ts";
import { TimeChart } from "../time/time-chart.ts";
import { timeGround } from "../time/time-plot.ts";

interface CanisterChartData extends CanisterData {
	readonly title: string;
	readonly clock: Clock;
}

/** Projected canister content with its band and change windows, on its own. */
export function canisterChart(data: CanisterChartData, document: Document, options: ChartOptions): SVGSVGElement {
	const { title, clock } = data;
	const chart = new TimeChart(options, { clock, toMin: clock.horizonMin, heading: title, words: words(data) });
	const { plot, headPx } = chart;
	const panel = canisterPanel(plot, data, headPx + 30, 110);
	const bottomPx = headPx + 30 + panel.heightPx + 6;
	chart.append(group(timeGround(plot, headPx + 18, bottomPx)), panel.group);
	return chart.drawnToAxis(document, bottomPx, 4);
}

function words(data: CanisterChartData): ChartWords {
	const changes = data.changes.map(
		(change) =>
			`Change ${change.ordinal} ${timeRange(change.p10Min, change.p90Min, data.clock)}, in ${percentWords(change.probabilityWithinHorizon)} of the days.`,
	);
	const found = changes.length === 0 ? ["No change within the time shown."] : changes.slice(0, 8);
	return {
		title: `Canister: ${data.title}`,
		description: [`Content of a canister of ${volumeWords(data.canisterMl)} over time.`, ...found].join(" "),
	};
}
