import type { Totals } from "../../results/index.ts";
import type { DressingProcess } from "../../therapy/index.ts";

/** The totals of a dressing at the end of its day. */
export function totalsOf(process: DressingProcess, horizonMin: number): Totals {
	const { liquid, alarms } = process;
	return {
		fills: process.cycle.fills,
		washes: process.cycle.washes,
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
		underSuctionMin: horizonMin - process.cycle.wetMin - (process.off.minutes - process.off.wetMinutes),
		wetMin: process.cycle.wetMin,
		breaches: process.seal.count,
		meanExudateShare: liquid.shareIntegral / horizonMin,
		canisterChanges: process.canister.changes,
		sourceChanges: process.source.changes,
		dressingChanges: process.change.count,
		portsReplaced: process.port.replaced,
		alarms: alarms.raised,
		nightCalls: alarms.nightCalls,
		nurseMin: alarms.nurseMin,
	};
}
