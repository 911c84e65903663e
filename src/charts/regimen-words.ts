import type { DressingSummary } from "../analysis/day-result.ts";
import { durationWords } from "./duration.ts";
import { depthWords, volumeWords } from "./quantity.ts";

type Regimen = DressingSummary["regimens"][number];

/** '50 mL for 5 min, then 2 h of suction at −125 mmHg', or 'continuous suction at −125 mmHg, no fill'. */
export function regimenWords(regimen: Regimen): string {
	const depth = depthWords(regimen.depthMmHg);
	if (
		regimen.fillMl === 0 ||
		regimen.dwellMin === null ||
		regimen.suctionMin === null
	)
		return `continuous suction at ${depth}, no fill`;
	const dwell =
		regimen.dwellMin === 0
			? "drained at once"
			: `for ${durationWords(regimen.dwellMin)}`;
	return `${volumeWords(regimen.fillMl)} ${dwell}, then ${durationWords(regimen.suctionMin)} of suction at ${depth}`;
}
