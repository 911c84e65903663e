import type { CompareResult } from "../analysis/compare-result.ts";
import { differenceRows, svgElement } from "../charts/index.ts";
import { askedFor, pairsOf, rowOf } from "./compare-parts.ts";
import { svgFile } from "./svg-file.ts";

/** `differences.svg`: the first pair in every measure asked for, as a file of its own. */
export function compareSvg(result: CompareResult, document: Document): string {
	const [pair] = pairsOf(result);
	const [owner = "all"] = pair?.owners ?? [];
	if (pair === undefined || askedFor(result, pair, owner).length === 0)
		return svgFile(
			svgElement(document, "svg", { class: "sw-chart" }),
			document,
		);
	const chart = differenceRows(
		{
			title: `${result.scenario.title}: ${pair.a} against ${pair.b}`,
			a: pair.a,
			b: pair.b,
			rows: askedFor(result, pair, owner).map((one) => rowOf(one, result)),
		},
		document,
		{ idPrefix: "differences" },
	);
	return svgFile(chart, document);
}
