import { type WaterLineData, waterLineChart, waterLineLegend } from "../../../charts/index.ts";
import type { CompareResult, DayResult } from "../../../results/index.ts";
import { counted, roundShare } from "../../../words/index.ts";
import { chartFigure, onPage } from "../../kit/chart-figure.ts";
import type { HtmlMaker } from "../../kit/html-element.ts";
import type { DressingParts } from "./dressing-parts.ts";

export function waterLineData(parts: DressingParts, title = parts.dressing.id): WaterLineData {
	const { clock, dressing, day, projection, replications, result } = parts;
	return { title, clock, dressing, day, projection, replications, roundShare: roundShare(result) };
}

/** The water line of a dressing, or of a stretch of its day, with how to read it; and its height. */
export function waterLineFigure(
	html: HtmlMaker,
	parts: DressingParts,
	idPrefix: string,
	of: {
		/** All of the day by default. */
		readonly stretch?: { readonly fromMin: number; readonly spanMin: number };
		/** False where there is no room for an enlarged cycle. */
		readonly lens?: boolean;
		/** True where there is no room for the care that was given, nor to say how the chart is read. */
		readonly brief?: boolean;
	} = {},
) {
	const data: WaterLineData = {
		...waterLineData(parts),
		...of.stretch,
		...(of.lens === false ? { lens: null } : {}),
		withCare: of.brief !== true,
	};
	const legend = of.brief === true ? "" : waterLineLegend(data);
	const caption = [legend, drawnAmongWords(parts.result)].filter((words) => words !== "").join(" ");
	const chart = waterLineChart(data, html.document, onPage(idPrefix));
	const element = chartFigure(html, chart, `Water-line chart of ${data.title}`, caption);
	return { element, heightPx: Number(chart.getAttribute("height")), caption };
}

/** Which day is drawn, and how it was chosen, in a sentence. */
export const drawnWords = ({ trace: { replication, typicalOf } }: Pick<DayResult | CompareResult, "trace">): string =>
	typicalOf === null
		? `Drawn is replication ${replication}, as asked for.`
		: `Drawn is replication ${replication}, of the first ${counted(typicalOf, "replication")} the one whose courses of canister content, exudate and alarms, all taken together, lie nearest the median.`;

/** The same with where band and change times come from; '' where the one day is all there is. */
export const drawnAmongWords = (result: DayResult): string =>
	result.projection.replications > 1
		? `${drawnWords(result)} The band and the change times come from all ${result.projection.replications}.`
		: "";
