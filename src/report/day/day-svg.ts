import { svgElement, waterLineChart } from "../../charts/index.ts";
import type { DayResult } from "../../results/index.ts";
import { svgFile } from "../kit/chart-figure.ts";
import { dressingParts } from "./dressing/dressing-parts.ts";
import { waterLineData } from "./dressing/water-line-figure.ts";

/** `day.svg`: the water line of every dressing, one under the other, as a file of its own. */
export function daySvg(result: DayResult, document: Document): string {
	const { title, dressings } = result.scenario;
	const charts = dressingParts(result).map((parts, index) => {
		const data = waterLineData(parts, dressings.length > 1 ? `${title}: ${parts.dressing.id}` : title);
		return waterLineChart(data, document, { idPrefix: `day-${index + 1}`, styled: index === 0 });
	});
	return svgFile(charts.length === 1 ? charts[0] : stacked(charts, document), document);
}

const gapPx = 28;

/** One picture that holds all charts, each under the one before. */
function stacked(charts: readonly SVGSVGElement[], document: Document): SVGSVGElement {
	const root = svgElement(document, "svg", { class: "sw-chart", role: "group" });
	let [top, widest] = [0, 0];
	for (const chart of charts) {
		chart.setAttribute("y", String(top));
		top += Number(chart.getAttribute("height")) + gapPx;
		widest = Math.max(widest, Number(chart.getAttribute("width")));
		root.append(chart);
	}
	const height = Math.max(1, top - gapPx);
	root.setAttribute("viewBox", `0 0 ${widest} ${height}`);
	root.setAttribute("width", String(widest));
	root.setAttribute("height", String(height));
	return root;
}
