import type { DressingSummary } from "../analysis/day-result.ts";
import { depthWords, durationWords } from "../charts/index.ts";

type RegimenSummary = DressingSummary["regimens"][number];

/** '15 %'. */
export const drawdownShare = (share: number): string =>
	`${Number((share * 100).toPrecision(3))} %`;

/** 'drawdown 15 % (about 4 s to −125 mmHg)'. */
export function drawdownWords(regimen: RegimenSummary): string {
	const depth = depthWords(regimen.depthMmHg);
	const time =
		regimen.drawdownSec === null
			? `${depth} is not reached before the pump is let work freely`
			: `${seconds(regimen.drawdownSec)} to ${depth}`;
	return `drawdown ${drawdownShare(regimen.drawdown)} (${time})`;
}

/** Where several regimens share a drawdown: 'drawdown 15 % (about 3 s to about 5 s to the set depth)'. */
export function sharedDrawdownWords(
	regimens: readonly RegimenSummary[],
): string {
	const share = regimens[0]?.drawdown ?? 0;
	const times = regimens.flatMap(({ drawdownSec }) =>
		drawdownSec === null ? [] : [drawdownSec],
	);
	const lead = `drawdown ${drawdownShare(share)}`;
	if (times.length === 0)
		return `${lead} (the set depth is not reached before the pump is let work freely)`;
	const [least, most] = [
		seconds(Math.min(...times)),
		seconds(Math.max(...times)),
	];
	const span = least === most ? least : `${least} to ${most}`;
	const some =
		times.length < regimens.length
			? ", or not before the pump is let work freely"
			: "";
	return `${lead} (${span} to the set depth${some})`;
}

const seconds = (value: number): string =>
	value < 0.95 ? "less than 1 s" : `about ${durationWords(value / 60)}`;
