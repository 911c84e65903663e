import type { DressingSummary, Schedule } from "../analysis/day-result.ts";
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

/** Whether a regimen takes over later than its own time: the running cycle is finished first. */
export const waits = ({
	fromMin,
	atMin,
}: Schedule["takeovers"][number]): boolean => atMin - fromMin >= 0.5;

/**
 * The regimen, or the list of regimens with the time from which each holds, in one line; with the drawdown unless that is
 * told elsewhere, and with the times at which later ones really take over where those are known.
 */
export function regimenLine(
	dressing: Pick<DressingSummary, "regimens">,
	clock: Clock,
	withDrawdown = true,
	takeovers: Schedule["takeovers"] = [],
): string {
	const [first, ...later] = dressing.regimens;
	if (first === undefined) return "no regimen";
	const begin = first.begin === "fill" ? ", beginning with a fill" : "";
	const next = later.map((regimen, i) => {
		const before = dressing.regimens[i];
		// Told again where it is another, or leads to another depth.
		const again =
			withDrawdown &&
			before !== undefined &&
			(before.drawdown !== regimen.drawdown ||
				before.depthMmHg !== regimen.depthMmHg);
		const takeover = takeovers.find((one) => one.regimen === i + 1);
		const waited =
			takeover !== undefined && waits(takeover)
				? ` (set for ${clockTime(regimen.fromMin, clock)})`
				: "";
		return `; from ${clockTime(takeover?.atMin ?? regimen.fromMin, clock)}${waited} ${regimenWords(regimen)}${again ? `; ${drawdownWords(regimen)}` : ""}`;
	});
	return `${regimenWords(first)}${begin}${withDrawdown ? `; ${drawdownWords(first)}` : ""}${next.join("")}`;
}

type Content = Pick<
	DressingSummary,
	"canisterMl" | "canisterHoldsMl" | "sourceMl" | "sourceLeftMl"
>;

/** 'canister 1000 mL', with what it holds at the start where that is something. */
export const canisterWords = (
	of: Pick<Content, "canisterMl" | "canisterHoldsMl">,
): string =>
	of.canisterHoldsMl === 0
		? `canister ${volumeWords(of.canisterMl)}`
		: `canister ${volumeWords(of.canisterMl)} that holds ${volumeWords(of.canisterHoldsMl)}`;

/** 'solution 1000 mL', with what is left at the start where it is not full. */
export const sourceWords = (
	of: Pick<Content, "sourceMl" | "sourceLeftMl">,
): string =>
	of.sourceLeftMl >= of.sourceMl
		? `solution ${volumeWords(of.sourceMl)}`
		: `solution ${volumeWords(of.sourceMl)} with ${volumeWords(of.sourceLeftMl)} left`;

/** Wound, foam and unit in one line; without the unit where regimens come with units of their own. */
export function dressingLine(
	dressing: DressingSummary,
	withUnit = true,
): string {
	const tissue = tissueWords[dressing.tissue] ?? dressing.tissue;
	const hasFill = dressing.regimens.some((regimen) => regimen.fillMl > 0);
	const unit = hasFill
		? `${canisterWords(dressing)}, ${sourceWords(dressing)}`
		: canisterWords(dressing);
	return [
		`${tissue}, about ${volumeWords(dressing.exudateMlPerDay)} of exudate a day, ${dressing.slough === "clean" ? "clean" : `${dressing.slough} slough`}, ${dressing.difficulty} seal`,
		`foam ${volumeWords(dressing.foamVolumeMl)}, takes ${volumeWords(dressing.capacityMl)} before it pools`,
		...(withUnit ? [unit] : []),
	].join("; ");
}
