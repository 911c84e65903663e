import type { DressingSummary } from "../analysis/day-result.ts";
import {
	type Clock,
	clockTime,
	regimenWords,
	volumeWords,
} from "../charts/index.ts";
import { drawdownWords } from "./drawdown-words.ts";

const tissueWords: { readonly [tissue: string]: string } = {
	"soft-tissue": "soft tissue",
	"necrotic-soft-tissue": "necrotic soft tissue",
	"open-abdomen": "open abdomen",
	"exposed-organ": "exposed organ",
};

/** The regimen, or the list of regimens with the time from which each holds, in one line; with the drawdown unless that is told elsewhere. */
export function regimenLine(
	dressing: Pick<DressingSummary, "regimens">,
	clock: Clock,
	withDrawdown = true,
): string {
	const [first, ...later] = dressing.regimens;
	if (first === undefined) return "no regimen";
	const begin = first.begin === "fill" ? ", beginning with a fill" : "";
	const takeovers = later.map((regimen, i) => {
		const before = dressing.regimens[i];
		// Told again where it is another, or leads to another depth.
		const again =
			withDrawdown &&
			before !== undefined &&
			(before.drawdown !== regimen.drawdown ||
				before.depthMmHg !== regimen.depthMmHg);
		return `; from ${clockTime(regimen.fromMin, clock)} ${regimenWords(regimen)}${again ? `; ${drawdownWords(regimen)}` : ""}`;
	});
	return `${regimenWords(first)}${begin}${withDrawdown ? `; ${drawdownWords(first)}` : ""}${takeovers.join("")}`;
}

/** Wound, foam and unit in one line. */
export function dressingLine(dressing: DressingSummary): string {
	const tissue = tissueWords[dressing.tissue] ?? dressing.tissue;
	const hasFill = dressing.regimens.some((regimen) => regimen.fillMl > 0);
	return [
		`${tissue}, about ${volumeWords(dressing.exudateMlPerDay)} of exudate a day, ${dressing.slough === "clean" ? "clean" : `${dressing.slough} slough`}, ${dressing.difficulty} seal`,
		`foam ${volumeWords(dressing.foamVolumeMl)}, takes ${volumeWords(dressing.capacityMl)} before it pools`,
		hasFill
			? `canister ${volumeWords(dressing.canisterMl)}, solution ${volumeWords(dressing.sourceMl)}`
			: `canister ${volumeWords(dressing.canisterMl)}`,
	].join("; ");
}
