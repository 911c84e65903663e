import { normal } from "./chance.ts";
import {
	ABSENT,
	CALL_DELAY,
	CALL_NONE,
	CALL_QUEUED,
	CALL_WORK,
	CANISTER,
	closePause,
	conditionNames,
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

/** Alarms, the calls that they make, and the mending of their causes. */

/** Takes the air anew and starts the drawdown and the drain limit; the depth goes on from where it is. */
export function startPump(s: State, ward: Ward) {
	s.airL = ward.k.lineL + (s.capMl + s.given.canisterMl - s.canisterMl) / 1000;
	s.pumpStartMin = ward.nowMin;
	s.reached = s.p >= s.regimen.depthMmHg - EPS;
	s.startLiquidMl = s.liquidMl;
	s.drainMin = 0;
	s.lowMin = 0;
	s.absentMin = 0; // the first minutes after a pump start are not off suction
}

/** Works out path and pump from their causes; a pump that comes on is a pump start. */
export function refresh(s: State, ward: Ward) {
	const open = Math.max(0, 1 - s.debris);
	s.conductance = ward.k.conductance * open * open;
	s.pathOpen = !s.suctionKinked && open > 0;
	const on =
		(s.phase === "suction" || s.phase === "drain") && !s.off && !s.canisterFull && !s.roundBusy && !s.portStopped;
	if (on && !s.pumpOn) startPump(s, ward);
	s.pumpOn = on;
}

function isNight(ward: Ward): boolean {
	const clock = (ward.input.startClockMin + ward.nowMin) % 1440;
	return clock < 7 * 60 - EPS || clock >= 19 * 60 - EPS;
}

function handsMin(s: State, ward: Ward, condition: number): number {
	const k = ward.k;
	if (condition === CANISTER) return k.handsCanisterMin;
	if (condition === SOURCE) return k.handsSourceMin;
	if (condition === FILL_PATH) return k.handsKinkMin;
	if (condition === SUCTION_PATH) return s.suctionKinked ? k.handsKinkMin : k.handsPortMin;
	return k.handsPatchMin;
}

export function raiseAlarm(s: State, ward: Ward, condition: number) {
	if (s.standing[condition] >= 0) return;
	const now = ward.nowMin;
	s.standing[condition] =
		s.alarms.push({
			condition: conditionNames[condition],
			priority: condition === OUTPUT ? "high" : "medium",
			startMin: now,
			endMin: Number.NaN,
		}) - 1;
	ward.stirred = true;
	if (condition === ABSENT || condition === OUTPUT) return;
	const night = isNight(ward);
	if (night) s.nightCalls++;
	const median = night ? ward.input.care.nightMin : ward.input.care.dayMin;
	const spread = ward.input.chance ? ward.input.care.spread : 0;
	s.callStage[condition] = CALL_DELAY;
	s.callDueMin[condition] = now + median * Math.exp(spread * normal(ward.random));
	s.callHandsMin[condition] = handsMin(s, ward, condition);
	if (condition === SUCTION_PATH) s.newPort = !s.suctionKinked;
}

/** Ends the alarm, if it stands, and its call with it. */
export function endAlarm(s: State, ward: Ward, condition: number, now: number) {
	const alarm = s.alarms[s.standing[condition]];
	if (alarm === undefined) return;
	alarm.endMin = now;
	s.standing[condition] = -1;
	if (s.callStage[condition] === CALL_WORK) ward.freeNurses++;
	s.callStage[condition] = CALL_NONE;
	if (condition === SUCTION_PATH) {
		s.portStopMin = Number.POSITIVE_INFINITY;
		s.portStopped = false;
		closePause(s, "port", now);
	}
	ward.stirred = true;
}

/** Gives free nurses to calls whose delay is over, in the order of their arrival. */
export function serveCalls(ward: Ward) {
	while (ward.freeNurses > 0) {
		let first: State | undefined;
		let firstCondition = -1;
		for (const s of ward.states)
			for (let i = 0; i < 6; i++)
				if (
					s.callStage[i] === CALL_QUEUED &&
					(first === undefined || s.callDueMin[i] < first.callDueMin[firstCondition])
				) {
					first = s;
					firstCondition = i;
				}
		if (first === undefined) return;
		const hands = first.callHandsMin[firstCondition];
		ward.freeNurses--;
		first.callStage[firstCondition] = CALL_WORK;
		first.callDueMin[firstCondition] = ward.nowMin + hands;
		if (firstCondition === SUCTION_PATH && first.newPort)
			first.portStopMin = ward.nowMin + Math.max(0, hands - ward.k.portOffMin);
		ward.stirred = true;
	}
}

/** The last minutes of a new port stop the pump. */
export function stopForPort(s: State, ward: Ward) {
	s.portStopMin = Number.POSITIVE_INFINITY;
	s.portStopped = true;
	openPause(s, "port", ward.nowMin);
	refresh(s, ward);
	ward.stirred = true;
}

/** A nurse's job is over: its minutes count and its cause is mended. */
export function finishJob(s: State, ward: Ward, condition: number) {
	s.nurseMin += s.callHandsMin[condition];
	if (condition === CANISTER) emptyCanister(s, ward, "at-capacity");
	else if (condition === SOURCE) renewSource(s, ward, "empty");
	else if (condition === SUCTION_PATH) freeSuctionPath(s, ward, s.newPort);
	else if (condition === FILL_PATH) {
		s.fillKinked = false;
		s.stallMin = 0;
		endAlarm(s, ward, FILL_PATH, ward.nowMin);
	} else closeBreaches(s, ward);
}

export function emptyCanister(s: State, ward: Ward, reason: "at-capacity" | "round" | "scripted") {
	s.canisterChanges.push({ atMin: ward.nowMin, reason });
	s.canisterMl = 0;
	s.canisterFull = false;
	s.canisterNoticed = false;
	s.roundBusy = false;
	s.roundUntilMin = Number.POSITIVE_INFINITY;
	closePause(s, "canister", ward.nowMin);
	closePause(s, "round", ward.nowMin);
	endAlarm(s, ward, CANISTER, ward.nowMin);
	refresh(s, ward);
	ward.stirred = true;
}

/** A change of canister at a round or by script: with the pump at work it costs the dressing a minute. */
export function changeCanister(s: State, ward: Ward, reason: "round" | "scripted") {
	if (s.roundBusy) return;
	s.nurseMin += ward.k.handsCanisterMin;
	if (s.phase !== "suction" && s.phase !== "drain") {
		emptyCanister(s, ward, reason);
		return;
	}
	s.roundBusy = true;
	s.roundReason = reason;
	s.roundUntilMin = ward.nowMin + ward.k.roundStopMin;
	openPause(s, "round", ward.nowMin);
	refresh(s, ward);
	ward.stirred = true;
}

export function renewSource(s: State, ward: Ward, reason: "empty" | "round" | "expired" | "scripted") {
	s.sourceChanges.push({ atMin: ward.nowMin, reason, wastedMl: s.sourceMl });
	s.solutionWastedMl += s.sourceMl;
	s.sourceMl = s.given.sourceMl;
	s.sourceHungMin = ward.nowMin;
	s.sourceNoticed = false;
	endAlarm(s, ward, SOURCE, ward.nowMin);
	ward.stirred = true;
}

export function closeBreaches(s: State, ward: Ward) {
	s.leak = ward.k.soundLeak;
	s.leakMin = 0;
	s.lowMin = 0;
	endAlarm(s, ward, SEAL_LEAK, ward.nowMin);
	endAlarm(s, ward, LOW_DEPTH, ward.nowMin);
	ward.stirred = true;
}

/** Frees the suction line and, with a new port, clears the port; a pump start if the pump is on after it. */
function freeSuctionPath(s: State, ward: Ward, newPort: boolean) {
	s.suctionKinked = false;
	if (newPort) s.debris = 0;
	s.closedMin = 0;
	s.drainMin = 0;
	const wasOn = s.pumpOn;
	endAlarm(s, ward, SUCTION_PATH, ward.nowMin);
	refresh(s, ward);
	if (wasOn && s.pumpOn) startPump(s, ward);
}
