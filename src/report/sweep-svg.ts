import type { SweepResult } from "../analysis/sweep-result.ts";
import { designMap } from "../charts/index.ts";
import { designMapData } from "./design-map-section.ts";
import { svgFile } from "./svg-file.ts";

/** `design-map.svg`: the map of every measure asked for, as a file of its own. */
export const sweepSvg = (result: SweepResult, document: Document): string =>
	svgFile(
		designMap(designMapData(result), document, {
			idPrefix: "map",
		}),
		document,
	);
