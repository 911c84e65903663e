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

type Content = Pick<
	DressingSummary,
	"canisterMl" | "canisterHoldsMl" | "sourceMl" | "sourceLeftMl"
>;

/** 'canister 1000 mL', with what it holds at the start where that is something. */
export const canisterWords = (of: Content): string =>
	of.canisterHoldsMl === 0
		? `canister ${volumeWords(of.canisterMl)}`
		: `canister ${volumeWords(of.canisterMl)} that holds ${volumeWords(of.canisterHoldsMl)}`;

/** 'solution 1000 mL', with what is left at the start where it is not full. */
export const sourceWords = (of: Content): string =>
	of.sourceLeftMl >= of.sourceMl
		? `solution ${volumeWords(of.sourceMl)}`
		: `solution ${volumeWords(of.sourceMl)} with ${volumeWords(of.sourceLeftMl)} left`;

/** Wound, foam and unit in one line. */
export function dressingLine(dressing: DressingSummary): string {
	const tissue = tissueWords[dressing.tissue] ?? dressing.tissue;
	const hasFill = dressing.regimens.some((regimen) => regimen.fillMl > 0);
	return [
		`${tissue}, about ${volumeWords(dressing.exudateMlPerDay)} of exudate a day, ${dressing.slough === "clean" ? "clean" : `${dressing.slough} slough`}, ${dressing.difficulty} seal`,
		`foam ${volumeWords(dressing.foamVolumeMl)}, takes ${volumeWords(dressing.capacityMl)} before it pools`,
		hasFill
			? `${canisterWords(dressing)}, ${sourceWords(dressing)}`
			: canisterWords(dressing),
	].join("; ");
}
