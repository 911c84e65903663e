import type { DayResult } from "../analysis/day-result.ts";
import { svgElement, waterLineChart } from "../charts/index.ts";
import { dressingParts } from "./dressing-parts.ts";
import { roundShare } from "./round-share.ts";
import { svgFile } from "./svg-file.ts";

/** `day.svg`: the water line of every dressing, one under the other, as a file of its own. */
export function daySvg(result: DayResult, document: Document): string {
	const { scenario, projection } = result;
	const charts = dressingParts(result).map((parts, index) =>
		waterLineChart(
			{
				title:
					scenario.dressings.length > 1
						? `${scenario.title}: ${parts.summary.id}`
						: scenario.title,
				clock: scenario,
				dressing: parts.summary,
				day: parts.day,
				projection: parts.projection,
				replications: projection.replications,
				roundShare: roundShare(result),
			},
			document,
			{ idPrefix: `day-${index + 1}`, styled: index === 0 },
		),
	);
	const [only] = charts;
	const root =
		charts.length === 1 && only !== undefined
			? only
			: stacked(charts, document);
	return svgFile(root, document);
}

const gapPx = 28;

/** One picture that holds all charts, each under the one before. */
function stacked(
	charts: readonly SVGSVGElement[],
	document: Document,
): SVGSVGElement {
	const root = svgElement(document, "svg", {
		class: "sw-chart",
		role: "group",
	});
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
