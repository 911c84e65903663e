/**
 * A second implementation of the model of a therapy day, written from its text alone: small fixed steps, all dressings
 * of a patient side by side, nothing shared with the event-driven one but the list of constants. It exists to disagree.
 *
 * Settled beforehand: the period clock counts minutes with the pump on; large output withholds a fill and suction
 * absent does not; expiry acts only while the regimen in force has a fill; turns are moved per dressing; alarm timers,
 * hourly output and off-suction spell start anew at a dressing change; debris of suction alone counts from the start of
 * the dressing; in a change exudate is discarded and its share is 1; a mended canister cancels a round's minute; the
 * 3 min without off suction after a pump start are those of the drawdown.
 *
 * Read as, where the text leaves a choice:
 *
 * Phases and regimens
 *  1. A day (or a dressing after its change) that begins in fill is for no time at all in suction with the period over:
 *     its first fill is a start of a fill like any other, last in the order, and withheld like any other.
 *  2. A phase of no length (of any kind) is not listed. A suction period that starts anew at a take-over does not split
 *     the listed suction phase.
 *  3. Which item of the plan is the latest is asked at a start of a suction period, at the take-over of an item without
 *     fill, and at the end of a dressing change, which the latest item begins; `begin` matters there and at time 0 only.
 *     Before the first `from` the first item is in force.
 *  4. An item without fill that is relieved during a drain restarts the period and leaves the drain a drain; with the
 *     pump stopped or in a change the new depth is in force at once, and there is no pump start before the pump is on.
 *  5. A drain ends at Lret by whatever way the liquid went, weeping included, and is then a wash.
 *  6. Debris of a dwell is laid down at its end even if no drain follows.
 *  7. A fill that a dressing change cuts short stays counted as started; a drain that it cuts short is no wash.
 *
 * Air and liquid
 *  8. `p` at the set depth that `f = 1` no longer supports relaxes with `f = 1`.
 *  9. As a fill runs into an empty dressing the exudate share drops at once from 1 to e/(e + q_fill).
 * 10. Exudate factors do not touch the outflow of a fistula or a bleed. Mean burst = total per day / bursts per day.
 *
 * Faults
 * 11. With chance off a breach without `size` has the median; with chance on it is drawn.
 * 12. Kinks come by their process whether or not one stands already (then nothing changes); `kink-fill` under a regimen
 *     without fill stands unnoticed.
 * 13. "Keeps the draws of E": both the draw and the hazard gathered so far are carried over a dressing change.
 * 14. `off` counts by the clock on the wall, overlapping ones are one, and it runs on through a dressing change.
 * 15. A dressing change that falls into another one lapses; one by script or list restarts the age like any.
 * 16. Transfer, turn, breach, clog and kink by script do nothing in a change; off, bleed and changes of canister and
 *     source act.
 *
 * Alarms
 * 17. "Stalled by its line": in a fill, line kinked, unit not off, whether or not the source is empty too.
 * 18. A source that ends with the last drop of a fill is noticed as empty when the next fill starts.
 * 19. The kink is "known when the alarm started" if the suction line is kinked at that moment, whichever way the alarm
 *     came about; freeing it leaves debris as it is, so that the condition can come again.
 * 20. The clock of `depth not held` starts anew at each pump start. A timer whose condition ceases at the very moment
 *     of its limit, earlier in the order, raises nothing (an off of just 20 min).
 * 21. The minutes after a pump start are a break in an off-suction spell; so is the end of an overdue fill.
 * 22. Hourly output is summed anew from the end of a dressing change: exudate of the change reaches no dressing.
 * 23. Path, seal, depth, absent and output alarms end when a dressing change begins, fill path too.
 *
 * Care
 * 24. Hands-on minutes of a round count when it is held, those of a scripted change of canister or source likewise, of a
 *     dressing change at its start, whole; of an expiry none, of a job that is cut short none.
 * 25. A change of canister that is asked for while the minute of another one runs is none. That minute runs on through
 *     a dressing change. Content of exactly 80 % is changed; a leak of exactly 0.5 L/min is not patched.
 * 26. A round patches in every phase but a change.
 * 27. Calls queue by the end of their delay; all that call are medium.
 * 28. In the order at equal times: capacity of the canister and take-over are phase boundaries; the end of a round's
 *     minute and the pump stop of a new port are repairs; end of off or bleed and every start of a dressing change are
 *     scripted happenings; debris of suction alone comes with kinks and bursts.
 *
 * Output
 * 29. Pauses are listed by cause and may overlap; off is one in every phase, canister one also during a change.
 * 30. Both notices come once for each canister or source, at `content > 0.9·size` and `source < fill of the regimen in
 *     force`; the latter during the fill in which it comes to pass.
 */
import { exponential, meanOneFactor, normal } from "./chance.ts";
import { beginTherapy, closeLastPhase } from "./cycle.ts";
import { nextBlock, nextTurn, setExudateRate } from "./happen.ts";
import { lawsOf } from "./laws.ts";
import { settle } from "./order.ts";
import type { SecondDay, SecondInput } from "./shape.ts";
import { EPS, newState, type State, type Ward } from "./state.ts";
import { advance, shorten } from "./step.ts";

export type { SecondDay, SecondInput } from "./shape.ts";

/** The times at which rounds are held, from the start on. */
function roundTimes(input: SecondInput): number[] {
	const times: number[] = [];
	for (const clock of input.care.roundsClockMin) {
		let at = (clock - input.startClockMin) % 1440;
		if (at < -EPS) at += 1440;
		for (; at < input.horizonMin; at += 1440) times.push(Math.max(0, at));
	}
	return times.sort((a, b) => a - b);
}

/** The first draws of a dressing, and its first phase. */
function begin(s: State, ward: Ward) {
	const { input, k, random } = ward;
	if (input.chance) {
		s.patientFactor = meanOneFactor(normal(random), k.patientCv);
		s.dryLimit = exponential(random);
		s.wetLimit = exponential(random);
		s.nextKinkMin = exponential(random) / k.kinkPerMin;
		nextBlock(s, ward);
		nextTurn(s, ward);
	} else setExudateRate(s, ward);
	const outflow = s.given.outflow;
	if (outflow !== null && outflow.burstsPerDay > 0)
		s.nextBurstMin = (1440 / outflow.burstsPerDay) * (input.chance ? exponential(random) : 0.5);
	beginTherapy(s, ward);
}

/** Closes what is open at the horizon. */
function dayOf(s: State, horizonMin: number): SecondDay {
	closeLastPhase(s, horizonMin);
	for (const item of [...s.pauses, ...s.alarms]) if (Number.isNaN(item.endMin)) item.endMin = horizonMin;
	return {
		id: s.given.id,
		phases: s.phases,
		pauses: s.pauses,
		notices: s.notices,
		alarms: s.alarms,
		canisterChanges: s.canisterChanges,
		sourceChanges: s.sourceChanges,
		totals: {
			fills: s.fills,
			washes: s.washes,
			instilledMl: s.instilledMl,
			exudateMl: s.exudateMl,
			toCanisterMl: s.toCanisterMl,
			weptMl: s.weptMl,
			discardedMl: s.discardedMl,
			inDressingMl: s.liquidMl,
			solutionWastedMl: s.solutionWastedMl,
			woundOutputMl: s.woundOutputMl,
			notReturnedMl: s.instilledMl - (s.toCanisterMl - s.woundOutputMl),
			offSuctionMin: s.offSuctionMin,
			underSuctionMin: horizonMin - s.wetMin - s.offDryMin,
			wetMin: s.wetMin,
			breaches: s.breaches,
			meanExudateShare: s.shareMin / horizonMin,
			nurseMin: s.nurseMin,
			nightCalls: s.nightCalls,
		},
	};
}

function checkInput(input: SecondInput) {
	for (const dressing of input.dressings)
		if (dressing.regimens.length === 0) throw new Error(`dressing ${dressing.id} has no regimen`);
	for (const item of input.happenings)
		if (!input.dressings.some((dressing) => dressing.id === item.dressing))
			throw new Error(`no dressing ${item.dressing}`);
}

/** Runs the day of every dressing in steps of at most `dtMin` minutes; `random` is uniform on [0, 1). */
export function second(input: SecondInput, options: { dtMin: number; random: () => number }): SecondDay[] {
	checkInput(input);
	const k = lawsOf(input.constants);
	const ward: Ward = {
		input,
		k,
		random: options.random,
		states: input.dressings.map((dressing) => newState(dressing, input, k)),
		roundsMin: roundTimes(input),
		freeNurses: input.care.nurses ?? Number.POSITIVE_INFINITY,
		nowMin: 0,
		stirred: false,
	};
	for (const s of ward.states) begin(s, ward);
	const end = input.horizonMin - EPS;
	while (ward.nowMin < end) {
		settle(ward);
		const now = ward.nowMin;
		let h = Math.min(options.dtMin, input.horizonMin - now);
		for (const s of ward.states) h = shorten(s, k, now, h);
		for (const s of ward.states) advance(s, ward, now, h);
		ward.nowMin = now + h;
	}
	return ward.states.map((s) => dayOf(s, input.horizonMin));
}
