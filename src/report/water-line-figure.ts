import type { DayResult } from "../analysis/day-result.ts";
import { waterLineChart, waterLineLegend } from "../charts/index.ts";
import { drawnWords } from "./drawn-words.ts";
import type { DressingParts } from "./dressing-parts.ts";
import { htmlElement } from "./html-element.ts";
import { roundShare } from "./round-share.ts";

/** The water line of a dressing, or of a stretch of its day, with how to read it; and the height of its grid. */
export function waterLineFigure(
	of: {
		readonly result: DayResult;
		readonly parts: DressingParts;
		readonly idPrefix: string;
		/** All of the day by default. */
		readonly stretch?: { readonly fromMin: number; readonly spanMin: number };
		/** False where there is no room for an enlarged cycle. */
		readonly lens?: boolean;
		/** True where there is no room for the care that was given, nor to say how the chart is read. */
		readonly brief?: boolean;
	},
	document: Document,
): {
	readonly element: HTMLElement;
	readonly heightPx: number;
	readonly caption: string;
} {
	const { result, parts } = of;
	const { scenario, projection } = result;
	const chart = waterLineChart(
		{
			title: parts.summary.id,
			clock: scenario,
			dressing: parts.summary,
			day: parts.day,
			projection: parts.projection,
			replications: projection.replications,
			roundShare: roundShare(result),
			...of.stretch,
			...(of.lens === false ? { lens: null } : {}),
			withCare: of.brief !== true,
		},
		document,
		{ idPrefix: of.idPrefix, styled: false, titled: false },
	);
	const region = {
		class: "scroll",
		role: "region",
		tabindex: "0",
		"aria-label": `Water-line chart of ${parts.summary.id}`,
	};
	const legend = waterLineLegend({
		...projection,
		projection: parts.projection,
	});
	const drawn =
		projection.replications > 1
			? ` ${drawnWords(result)} The band and the change times come from all ${projection.replications}.`
			: "";
	const caption = of.brief === true ? drawn.trim() : `${legend}${drawn}`;
	return {
		element: htmlElement(
			document,
			"figure",
			{},
			htmlElement(document, "div", region, chart),
			htmlElement(document, "figcaption", {}, caption),
		),
		heightPx: Number(chart.getAttribute("height")),
		caption,
	};
}
