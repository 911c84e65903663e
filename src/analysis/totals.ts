import type { DressingProcess } from "../therapy/index.ts";
import type { TotalName, Totals } from "./day-result.ts";

/** Every total, and how wide the bins of its histogram are: 1 mL, 0.1 min, 0.001 of a share, counts exact. */
export const totalBins: { readonly [N in TotalName]: number } = {
	fills: 1,
	washes: 1,
	instilledMl: 1,
	exudateMl: 1,
	toCanisterMl: 1,
	weptMl: 1,
	discardedMl: 1,
	inDressingMl: 1,
	solutionWastedMl: 1,
	woundOutputMl: 1,
	notReturnedMl: 1,
	offSuctionMin: 0.1,
	underSuctionMin: 0.1,
	wetMin: 0.1,
	breaches: 1,
	meanExudateShare: 0.001,
	canisterChanges: 1,
	sourceChanges: 1,
	dressingChanges: 1,
	portsReplaced: 1,
	alarms: 1,
	nightCalls: 1,
	nurseMin: 0.1,
};

export const totalNames = Object.keys(totalBins) as readonly TotalName[];

/** The totals of a dressing at the end of its day. */
export function totalsOf(process: DressingProcess, horizonMin: number): Totals {
	const { liquid, alarms } = process;
	return {
		fills: process.fills,
		washes: process.washes,
		instilledMl: liquid.instilled,
		exudateMl: liquid.exudate,
		toCanisterMl: liquid.toCanister,
		weptMl: liquid.wept,
		discardedMl: liquid.discarded,
		inDressingMl: liquid.level,
		solutionWastedMl: process.source.wasted,
		woundOutputMl: liquid.toCanister - liquid.returned,
		notReturnedMl: liquid.instilled - liquid.returned,
		offSuctionMin: process.off.minutes,
		underSuctionMin:
			horizonMin -
			process.wetMin -
			(process.off.minutes - process.off.wetMinutes),
		wetMin: process.wetMin,
		breaches: process.breaches,
		meanExudateShare: liquid.shareIntegral / horizonMin,
		canisterChanges: process.canister.changes,
		sourceChanges: process.source.changes,
		dressingChanges: process.dressingChanges,
		portsReplaced: process.portsReplaced,
		alarms: alarms.raised,
		nightCalls: alarms.nightCalls,
		nurseMin: alarms.nurseMin,
	};
}
