import type { DressingSummary, Schedule } from "../results/index.ts";
import { type Clock, clockTime } from "./clock.ts";
import { depthWords, durationWords, volumeWords } from "./numbers.ts";

type Regimen = DressingSummary["regimens"][number];

/** '50 mL for 5 min, then 2 h of suction at −125 mmHg', or 'continuous suction at −125 mmHg, no fill'. */
export function regimenWords(regimen: Regimen): string {
	const depth = depthWords(regimen.depthMmHg);
	if (regimen.fillMl === 0 || regimen.dwellMin === null || regimen.suctionMin === null)
		return `continuous suction at ${depth}, no fill`;
	const dwell = regimen.dwellMin === 0 ? "drained at once" : `for ${durationWords(regimen.dwellMin)}`;
	return `${volumeWords(regimen.fillMl)} ${dwell}, then ${durationWords(regimen.suctionMin)} of suction at ${depth}`;
}

/** '15 %'. */
export const drawdownShare = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;

/** 'drawdown 15 % (about 4 s to −125 mmHg)'. */
export function drawdownWords(regimen: Regimen): string {
	const depth = depthWords(regimen.depthMmHg);
	const time =
		regimen.drawdownSec === null
			? `${depth} is not reached before the pump is let work freely`
			: `${seconds(regimen.drawdownSec)} to ${depth}`;
	return `drawdown ${drawdownShare(regimen.drawdown)} (${time})`;
}

/** Where several regimens share a drawdown: 'drawdown 15 % (about 3 s to about 5 s to the set depth)'. */
export function sharedDrawdownWords(regimens: readonly Regimen[]): string {
	const share = regimens[0]?.drawdown ?? 0;
	const times = regimens.flatMap(({ drawdownSec }) => (drawdownSec === null ? [] : [drawdownSec]));
	const lead = `drawdown ${drawdownShare(share)}`;
	if (times.length === 0) return `${lead} (the set depth is not reached before the pump is let work freely)`;
	const [least, most] = [seconds(Math.min(...times)), seconds(Math.max(...times))];
	const span = least === most ? least : `${least} to ${most}`;
	const some = times.length < regimens.length ? ", or not before the pump is let work freely" : "";
	return `${lead} (${span} to the set depth${some})`;
}

const seconds = (value: number): string => (value < 0.95 ? "less than 1 s" : `about ${durationWords(value / 60)}`);

const tissueWords: { readonly [tissue: string]: string } = {
	"soft-tissue": "soft tissue",
	"necrotic-soft-tissue": "necrotic soft tissue",
	"open-abdomen": "open abdomen",
	"exposed-organ": "exposed organ",
};

/** Whether a regimen takes over later than its own time: the running cycle is finished first. */
export const waits = ({ fromMin, atMin }: Schedule["takeovers"][number]): boolean => atMin - fromMin >= 0.5;

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
		const isOther = before.drawdown !== regimen.drawdown || before.depthMmHg !== regimen.depthMmHg;
		const again = withDrawdown && isOther;
		const takeover = takeovers.find((one) => one.regimen === i + 1);
		const waited = takeover !== undefined && waits(takeover) ? ` (set for ${clockTime(regimen.fromMin, clock)})` : "";
		return `; from ${clockTime(takeover?.atMin ?? regimen.fromMin, clock)}${waited} ${regimenWords(regimen)}${again ? `; ${drawdownWords(regimen)}` : ""}`;
	});
	return `${regimenWords(first)}${begin}${withDrawdown ? `; ${drawdownWords(first)}` : ""}${next.join("")}`;
}

type Content = Pick<DressingSummary, "canisterMl" | "canisterHoldsMl" | "sourceMl" | "sourceLeftMl">;

/** 'canister 1000 mL', with what it holds at the start where that is something. */
export const canisterWords = (of: Pick<Content, "canisterMl" | "canisterHoldsMl">): string =>
	of.canisterHoldsMl === 0
		? `canister ${volumeWords(of.canisterMl)}`
		: `canister ${volumeWords(of.canisterMl)} that holds ${volumeWords(of.canisterHoldsMl)}`;

/** 'solution 1000 mL', with what is left at the start where it is not full. */
export const sourceWords = (of: Pick<Content, "sourceMl" | "sourceLeftMl">): string =>
	of.sourceLeftMl >= of.sourceMl
		? `solution ${volumeWords(of.sourceMl)}`
		: `solution ${volumeWords(of.sourceMl)} with ${volumeWords(of.sourceLeftMl)} left`;

/** Wound, foam and unit in one line; without the unit where regimens come with units of their own. */
export function dressingLine(dressing: DressingSummary, withUnit = true): string {
	const tissue = tissueWords[dressing.tissue] ?? dressing.tissue;
	const hasFill = dressing.regimens.some((regimen) => regimen.fillMl > 0);
	const unit = hasFill ? `${canisterWords(dressing)}, ${sourceWords(dressing)}` : canisterWords(dressing);
	return [
		`${tissue}, about ${volumeWords(dressing.exudateMlPerDay)} of exudate a day, ${dressing.slough === "clean" ? "clean" : `${dressing.slough} slough`}, ${dressing.difficulty} seal`,
		`foam ${volumeWords(dressing.foamVolumeMl)}, takes ${volumeWords(dressing.capacityMl)} before it pools`,
		...(withUnit ? [unit] : []),
	].join("; ");
}
