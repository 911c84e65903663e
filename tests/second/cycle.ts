import { exponential, gammaOfTwo } from "./chance.ts";
import { endAlarm, raiseAlarm, refresh, serveCalls, startPump } from "./mend.ts";
import type { SecondPhase } from "./shape.ts";
import {
	ABSENT,
	CANISTER,
	EPS,
	FILL_PATH,
	LOW_DEPTH,
	OUTPUT,
	openPause,
	SEAL_LEAK,
	SOURCE,
	type State,
	SUCTION_PATH,
	type Ward,
} from "./state.ts";

/** The phases of a dressing and what takes it from one to the next. */

function closePhase(s: State, now: number) {
	if (now - s.phaseStartMin > EPS) s.phases.push({ phase: s.phase, startMin: s.phaseStartMin, endMin: now });
}

function enter(s: State, ward: Ward, phase: SecondPhase) {
	closePhase(s, ward.nowMin);
	s.phase = phase;
	s.phaseStartMin = ward.nowMin;
	ward.stirred = true;
}

export const closeLastPhase = closePhase;

function zeroTimers(s: State) {
	s.leakMin = 0;
	s.lowMin = 0;
	s.closedMin = 0;
	s.drainMin = 0;
	s.stallMin = 0;
	s.absentMin = 0;
}

/** The latest item of the plan whose time has passed. */
function latestRegimen(s: State, now: number) {
	let latest = s.regimen;
	for (const item of s.regimens) if (item.fromMin <= now + EPS) latest = item;
	return latest;
}

function takeOver(s: State, ward: Ward): boolean {
	const latest = latestRegimen(s, ward.nowMin);
	if (latest === s.regimen) return false;
	s.regimen = latest;
	s.p = Math.min(s.p, latest.depthMmHg);
	ward.stirred = true;
	return true;
}

export function beginFill(s: State, ward: Ward) {
	const now = ward.nowMin;
	enter(s, ward, "fill");
	s.p = 0;
	s.fills++;
	s.fillLeftMl = s.regimen.fillMl;
	s.fillStartMin = now;
	s.overdueMin = now + s.regimen.fillMl / ward.k.fillMlPerMin;
	zeroTimers(s);
	refresh(s, ward);
}

/** What withholds a fill, but for an unfinished drain: an alarm, or a reason for which the pump would stand. */
function isHindered(s: State): boolean {
	for (let i = 0; i < s.standing.length; i++) if (i !== ABSENT && s.standing[i] >= 0) return true;
	return s.off || s.canisterFull || s.roundBusy || s.portStopped;
}

export const fillIsDue = (s: State): boolean =>
	s.phase === "suction" &&
	s.regimen.fillMl > 0 &&
	s.periodMin >= s.regimen.suctionMin - EPS &&
	s.pumpOn &&
	!isHindered(s);

/**
 * The start of a day, and of the therapy after a dressing change. One that begins in fill is in suction with the period
 * over, so that its fill starts in its own place of the order, or when nothing withholds it any more.
 */
export function beginTherapy(s: State, ward: Ward) {
	s.regimen = latestRegimen(s, ward.nowMin);
	const fills = s.regimen.fillMl > 0 && s.regimen.begin === "fill";
	enter(s, ward, "suction");
	s.periodMin = fills ? s.regimen.suctionMin : 0;
	refresh(s, ward);
}

export function addDebris(s: State, ward: Ward, share: number) {
	s.debris += share;
	refresh(s, ward);
	ward.stirred = true;
}

/** Suction alone clogs the port a little; added up to now. */
export function addSuctionDebris(s: State, ward: Ward) {
	const min = ward.nowMin - s.debrisAddedMin;
	s.debrisAddedMin = ward.nowMin;
	addDebris(s, ward, ward.k.debrisPerMin * s.given.slough * min);
}

function endDwell(s: State, ward: Ward) {
	const { k, random } = ward;
	if (ward.input.chance) {
		const loosened = 1 - Math.exp(-s.regimen.dwellMin / k.debrisDwellMin);
		const slough = s.given.slough;
		s.debris += gammaOfTwo(random, k.debrisPerDrain * slough * loosened);
		if (random() < k.clumpChance * slough) s.debris += k.clumpMean * exponential(random);
		addSuctionDebris(s, ward);
	}
	enter(s, ward, s.liquidMl > s.retainedMl + EPS ? "drain" : "suction");
	s.periodMin = 0;
	takeOver(s, ward);
	refresh(s, ward);
}

/** The dressing comes off, in any phase. */
export function startChange(s: State, ward: Ward) {
	const now = ward.nowMin;
	enter(s, ward, "change");
	s.changeEndMin = now + ward.k.changeMin;
	s.nurseMin += ward.k.changeMin;
	s.discardedMl += s.liquidMl;
	s.liquidMl = 0;
	s.exudateInMl = 0;
	s.p = 0;
	s.leak = ward.k.soundLeak;
	s.debris = 0;
	s.suctionKinked = false;
	s.fillKinked = false;
	zeroTimers(s);
	for (const condition of [SUCTION_PATH, FILL_PATH, SEAL_LEAK, LOW_DEPTH, ABSENT, OUTPUT])
		endAlarm(s, ward, condition, now);
	refresh(s, ward);
	serveCalls(ward);
}

function endChange(s: State, ward: Ward) {
	const now = ward.nowMin;
	s.changeEndMin = Number.POSITIVE_INFINITY;
	s.dressedMin = now;
	s.debrisAddedMin = now;
	s.window.timeMin = [now];
	s.window.ml = [s.exudateMl];
	s.window.rate = [s.exudateRate];
	s.window.first = 0;
	zeroTimers(s);
	beginTherapy(s, ward);
}

/** Every phase boundary that is due now. */
export function passBoundaries(s: State, ward: Ward) {
	const now = ward.nowMin;
	if (s.phase === "fill") {
		if (s.fillLeftMl > EPS) return;
		enter(s, ward, "dwell");
		s.dwellLeftMin = s.regimen.dwellMin;
		s.overdueMin = now + s.regimen.dwellMin;
		zeroTimers(s);
	} else if (s.phase === "dwell") {
		if (s.dwellLeftMin <= EPS && !s.off) endDwell(s, ward);
	} else if (s.phase === "change") {
		if (now >= s.changeEndMin - EPS) endChange(s, ward);
	} else if (s.phase === "drain" && s.liquidMl <= s.retainedMl + EPS) {
		enter(s, ward, "suction");
		s.washes++;
	}
	if (s.regimen.fillMl === 0 && takeOver(s, ward)) {
		s.periodMin = 0;
		if (s.pumpOn) startPump(s, ward);
	}
	if (!s.canisterFull && s.canisterMl >= s.given.canisterMl - EPS) {
		s.canisterFull = true;
		openPause(s, "canister", now);
		refresh(s, ward);
		raiseAlarm(s, ward, CANISTER);
	}
}

/** The source has run out in a fill. */
export const sourceIsOut = (s: State): boolean =>
	s.phase === "fill" && s.standing[SOURCE] < 0 && s.sourceMl <= EPS && s.fillLeftMl > EPS;
