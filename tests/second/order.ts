import { exponential } from "./chance.ts";
import { addSuctionDebris, beginFill, fillIsDue, passBoundaries, sourceIsOut, startChange } from "./cycle.ts";
import {
	breach,
	burst,
	endScripted,
	holdRound,
	hourlyOutputMl,
	kink,
	move,
	nextBlock,
	nextTurn,
	script,
} from "./happen.ts";
import type { Laws } from "./laws.ts";
import { emptyCanister, endAlarm, finishJob, raiseAlarm, renewSource, serveCalls, stopForPort } from "./mend.ts";
import {
	ABSENT,
	CALL_DELAY,
	CALL_QUEUED,
	CALL_WORK,
	EPS,
	FILL_PATH,
	LOW_DEPTH,
	OUTPUT,
	SEAL_LEAK,
	SOURCE,
	type State,
	SUCTION_PATH,
	type Ward,
} from "./state.ts";
import { drainLimit } from "./step.ts";

/** What is due at one time, in the model's order of happenings at equal times. */

const blockEnd = (s: State, ward: Ward): number =>
	ward.input.chance ? s.blockCount * ward.k.blockMin : Number.POSITIVE_INFINITY;

const debrisDue = (s: State, ward: Ward): number =>
	ward.input.chance && s.phase !== "change" ? s.debrisAddedMin + ward.k.debrisEveryMin : Number.POSITIVE_INFINITY;

const expiry = (s: State, k: Laws): number =>
	s.regimen.fillMl > 0 && s.phase !== "fill" ? s.sourceHungMin + k.hangMin : Number.POSITIVE_INFINITY;

const changeDue = (s: State, ward: Ward): number =>
	s.phase === "change" || ward.input.care.changeEveryMin === null
		? Number.POSITIVE_INFINITY
		: s.dressedMin + ward.input.care.changeEveryMin;

/** The next time at which a clock on the wall, rather than a level, calls for something. */
function nextTime(s: State, ward: Ward): number {
	let next = Math.min(
		blockEnd(s, ward),
		debrisDue(s, ward),
		expiry(s, ward.k),
		changeDue(s, ward),
		s.changeAtMin[s.changeIndex] ?? Number.POSITIVE_INFINITY,
		s.happenings[s.happeningIndex]?.atMin ?? Number.POSITIVE_INFINITY,
		ward.roundsMin[s.roundIndex] ?? Number.POSITIVE_INFINITY,
		s.nextKinkMin,
		s.nextBurstMin,
		s.nextTurnMin,
		s.changeEndMin,
		s.roundUntilMin,
		s.portStopMin,
		s.off ? s.offUntilMin : Number.POSITIVE_INFINITY,
	);
	const leaves = s.window.timeMin[s.window.first + 1];
	if (leaves !== undefined && s.phase !== "change") next = Math.min(next, leaves + ward.k.outputWindowMin);
	for (const bleed of s.bleeds) next = Math.min(next, bleed.endMin);
	for (let i = 0; i < s.callStage.length; i++)
		if (s.callStage[i] === CALL_DELAY || s.callStage[i] === CALL_WORK) next = Math.min(next, s.callDueMin[i]);
	if (s.regimen.fillMl === 0)
		for (const item of s.regimens) if (item.fromMin > ward.nowMin + EPS) next = Math.min(next, item.fromMin);
	return next;
}

/** A condition that has just ceased, earlier in the order of this very moment, has no timer any more. */
function forgetTimers(s: State) {
	const driven = s.pumpOn && s.pathOpen;
	if (!driven) {
		s.leakMin = 0;
		s.lowMin = 0;
	}
	if (!s.pumpOn || s.pathOpen) s.closedMin = 0;
	if (s.phase !== "fill" || s.off || !s.fillKinked) s.stallMin = 0;
}

/** What is due now in one dressing, in one place of the order at equal times. */
function due(s: State, ward: Ward, order: number) {
	const now = ward.nowMin;
	const late = now + EPS;
	const { k, random } = ward;
	switch (order) {
		case 1:
			passBoundaries(s, ward);
			return;
		case 2:
			for (let i = 0; i < s.callStage.length; i++)
				if (s.callStage[i] === CALL_WORK && s.callDueMin[i] <= late) finishJob(s, ward, i);
			if (s.roundUntilMin <= late) emptyCanister(s, ward, s.roundReason);
			if (s.portStopMin <= late) stopForPort(s, ward);
			return;
		case 3:
			for (; ward.roundsMin[s.roundIndex] <= late; s.roundIndex++) holdRound(s, ward);
			if (expiry(s, k) <= late) renewSource(s, ward, "expired");
			return;
		case 4:
			if (blockEnd(s, ward) <= late) nextBlock(s, ward);
			return;
		case 5:
			endScripted(s, ward);
			for (; s.happenings[s.happeningIndex]?.atMin <= late; ) script(s, ward, s.happenings[s.happeningIndex++]);
			for (; s.changeAtMin[s.changeIndex] <= late; s.changeIndex++) if (s.phase !== "change") startChange(s, ward);
			if (changeDue(s, ward) <= late) startChange(s, ward);
			return;
		case 6:
			if (s.nextKinkMin <= late) {
				s.nextKinkMin += exponential(random) / k.kinkPerMin;
				kink(s, ward, random() < k.kinkSuctionShare ? "suction" : "fill");
			}
			if (s.nextBurstMin <= late) burst(s, ward);
			if (debrisDue(s, ward) <= late) addSuctionDebris(s, ward);
			return;
		case 7:
			if (s.nextTurnMin <= late) {
				move(s, ward, "turn");
				nextTurn(s, ward);
				ward.stirred = true;
			}
			return;
		case 8:
			if (s.dryHazard >= s.dryLimit) {
				s.dryHazard -= s.dryLimit;
				s.dryLimit = exponential(random);
				breach(s, ward);
			}
			if (s.wetHazard >= s.wetLimit) {
				s.wetHazard -= s.wetLimit;
				s.wetLimit = exponential(random);
				breach(s, ward);
			}
			return;
		case 9:
			if (s.phase === "change") return;
			forgetTimers(s);
			if (sourceIsOut(s)) raiseAlarm(s, ward, SOURCE);
			if (s.leakMin >= k.leakDelayMin - EPS) raiseAlarm(s, ward, SEAL_LEAK);
			if (s.lowMin >= k.lowDelayMin - EPS) raiseAlarm(s, ward, LOW_DEPTH);
			if (s.closedMin >= k.closedLimitMin - EPS || (s.phase === "drain" && s.drainMin >= drainLimit(s, k) - EPS))
				raiseAlarm(s, ward, SUCTION_PATH);
			if (s.stallMin >= k.stallLimitMin - EPS) raiseAlarm(s, ward, FILL_PATH);
			if (s.absentMin >= k.absentLimitMin - EPS) raiseAlarm(s, ward, ABSENT);
			if (hourlyOutputMl(s, ward) > k.outputLimitMl + EPS) raiseAlarm(s, ward, OUTPUT);
			else endAlarm(s, ward, OUTPUT, now);
			return;
		case 10:
			for (let i = 0; i < s.callStage.length; i++)
				if (s.callStage[i] === CALL_DELAY && s.callDueMin[i] <= late) {
					s.callStage[i] = CALL_QUEUED;
					ward.stirred = true;
				}
			return;
		case 11:
			if (fillIsDue(s)) beginFill(s, ward);
			return;
		case 12:
			if (!s.canisterNoticed && s.canisterMl > k.noticeShare * s.given.canisterMl + EPS) {
				s.canisterNoticed = true;
				s.notices.push({ notice: "canister above 90 %", atMin: now });
			}
			if (!s.sourceNoticed && s.sourceMl < s.regimen.fillMl - EPS) {
				s.sourceNoticed = true;
				s.notices.push({ notice: "source below one fill", atMin: now });
			}
			return;
		default:
			throw new Error(`order ${order}`);
	}
}

/** Orders that only a clock on the wall brings about; the others watch levels and timers at every step. */
const isTimed = (order: number): boolean => (order >= 2 && order <= 7) || order === 10;

/** Everything that is due now, in order, until nothing more comes of it. */
export function settle(ward: Ward) {
	const { states } = ward;
	let timed = false;
	for (let i = 0; i < states.length; i++) if (ward.nowMin >= states[i].nextMin - EPS) timed = true;
	for (let pass = 0; ; pass++) {
		if (pass > 100) throw new Error(`no end of happenings at ${ward.nowMin} min`);
		ward.stirred = false;
		for (let order = 1; order <= 12; order++) {
			if (ward.stirred) timed = true;
			if (isTimed(order) && !timed) continue;
			for (let i = 0; i < states.length; i++) due(states[i], ward, order);
			if (order === 10) serveCalls(ward);
		}
		if (!ward.stirred) break;
	}
	if (timed) for (const s of states) s.nextMin = nextTime(s, ward);
}
