import type { Uniform } from "./chance.ts";
import type { Laws } from "./laws.ts";
import type { SecondDay, SecondDressing, SecondInput, SecondPauseReason, SecondPhase, SecondRegimen } from "./shape.ts";

/** Times and volumes nearer than this are equal. */
export const EPS = 1e-9;

export const CANISTER = 0;
export const SUCTION_PATH = 1;
export const FILL_PATH = 2;
export const SEAL_LEAK = 3;
export const LOW_DEPTH = 4;
export const SOURCE = 5;
export const ABSENT = 6;
export const OUTPUT = 7;

export const conditionNames = [
	"canister at capacity",
	"suction path obstructed",
	"fill path obstructed",
	"seal leak",
	"depth not held",
	"source empty",
	"suction absent",
	"large output",
] as const;

/** Where the call of an alarm stands. */
export const CALL_NONE = 0;
export const CALL_DELAY = 1;
export const CALL_QUEUED = 2;
export const CALL_WORK = 3;

/** Everything that a day's dressings share. */
export interface Ward {
	input: SecondInput;
	k: Laws;
	random: Uniform;
	states: State[];
	roundsMin: number[];
	freeNurses: number;
	nowMin: number;
	/** Something happened in this pass, so that another pass at the same time is due. */
	stirred: boolean;
}

/** A dressing with its unit before anything has begun. */
export function newState(given: SecondDressing, input: SecondInput, k: Laws) {
	const ids = input.happenings.filter((item) => item.dressing === given.id);
	const capMl = k.capacityShare * given.foamVolumeMl;
	const regimens = [...given.regimens].sort((a, b) => a.fromMin - b.fromMin);
	return {
		given,
		regimens,
		regimen: regimens[0] as SecondRegimen, // checked by `second` not to be empty
		capMl,
		retainedMl: k.retainedShare * capMl,

		// liquid and air
		phase: "suction" as SecondPhase,
		phaseStartMin: 0,
		p: 0,
		liquidMl: 0,
		exudateInMl: 0,
		airL: k.lineL + (capMl + given.canisterMl - given.holdsMl) / 1000,
		leak: k.soundLeak,
		debris: 0,
		suctionKinked: false,
		fillKinked: false,
		pathOpen: true,
		conductance: k.conductance,
		canisterMl: given.holdsMl,
		canisterFull: false,
		sourceMl: given.leftMl,
		sourceHungMin: 0,
		exudateRate: 0,

		// the pump
		pumpOn: false,
		pumpStartMin: 0,
		reached: false,
		startLiquidMl: 0,
		off: false,
		offUntilMin: 0,
		roundUntilMin: Number.POSITIVE_INFINITY,
		roundReason: "round" as "round" | "scripted",
		roundBusy: false,
		portStopped: false,
		portStopMin: Number.POSITIVE_INFINITY,

		// clocks of the cycle
		fillLeftMl: 0,
		dwellLeftMin: 0,
		periodMin: 0,
		overdueMin: 0,
		fillStartMin: 0,
		changeEndMin: Number.POSITIVE_INFINITY,
		dressedMin: -given.ageMin,

		// clocks of the alarms
		leakMin: 0,
		lowMin: 0,
		closedMin: 0,
		drainMin: 0,
		stallMin: 0,
		absentMin: 0,
		standing: new Int32Array(8).fill(-1),
		callStage: new Uint8Array(8),
		callDueMin: new Float64Array(8),
		callHandsMin: new Float64Array(8),
		newPort: false,

		// exudate as a broken line: from timeMin[i] on, ml[i] + rate[i]·(t − timeMin[i]) had come
		window: { timeMin: [0], ml: [0], rate: [0], first: 0 },

		// chance
		patientFactor: 1,
		blockZ: 0,
		blockFactor: 1,
		blockCount: 0,
		dryHazard: 0,
		dryLimit: Number.POSITIVE_INFINITY,
		wetHazard: 0,
		wetLimit: Number.POSITIVE_INFINITY,
		nextKinkMin: Number.POSITIVE_INFINITY,
		nextBurstMin: Number.POSITIVE_INFINITY,
		nextTurnMin: Number.POSITIVE_INFINITY,
		turnCount: 0,
		debrisAddedMin: 0,

		// what is listed
		happenings: ids.sort((a, b) => a.atMin - b.atMin),
		happeningIndex: 0,
		changeAtMin: [...input.care.changeAtMin].sort((a, b) => a - b),
		changeIndex: 0,
		roundIndex: 0,
		bleeds: [] as { endMin: number; rate: number }[],
		nextMin: 0,

		// scratch of the step
		pTarget: 0,
		tauMin: Number.POSITIVE_INFINITY,

		// what comes out
		phases: [] as SecondDay["phases"],
		pauses: [] as SecondDay["pauses"],
		openPause: { off: -1, canister: -1, round: -1, port: -1 } as Record<SecondPauseReason, number>,
		notices: [] as SecondDay["notices"],
		canisterNoticed: false,
		sourceNoticed: false,
		alarms: [] as SecondDay["alarms"],
		canisterChanges: [] as SecondDay["canisterChanges"],
		sourceChanges: [] as SecondDay["sourceChanges"],
		fills: 0,
		washes: 0,
		instilledMl: 0,
		exudateMl: 0,
		toCanisterMl: 0,
		woundOutputMl: 0,
		weptMl: 0,
		discardedMl: 0,
		solutionWastedMl: 0,
		offSuctionMin: 0,
		offDryMin: 0,
		wetMin: 0,
		breaches: 0,
		shareMin: 0,
		nurseMin: 0,
		nightCalls: 0,
	};
}

export type State = ReturnType<typeof newState>;

/** Exudate's share of the liquid; 1 in an empty dressing. */
export const shareOf = (exudateMl: number, liquidMl: number): number =>
	liquidMl > 1e-12 ? Math.min(1, exudateMl / liquidMl) : 1;

export function openPause(s: State, reason: SecondPauseReason, now: number) {
	if (s.openPause[reason] >= 0) return;
	s.openPause[reason] = s.pauses.push({ reason, startMin: now, endMin: Number.NaN }) - 1;
}

export function closePause(s: State, reason: SecondPauseReason, now: number) {
	const pause = s.pauses[s.openPause[reason]];
	if (pause !== undefined) pause.endMin = now;
	s.openPause[reason] = -1;
}
