import { exponential, meanOneFactor, normal } from "./chance.ts";
import { addDebris, startChange } from "./cycle.ts";
import { changeCanister, closeBreaches, refresh, renewSource } from "./mend.ts";
import type { SecondHappening } from "./shape.ts";
import { closePause, EPS, openPause, type State, type Ward } from "./state.ts";

/** What befalls a dressing from outside: exudate, moves, faults, rounds, and whatever a scenario lists. */

/** A new corner of the broken line by which the hourly output is read. */
function markOutput(s: State, now: number) {
	s.window.timeMin.push(now);
	s.window.ml.push(s.exudateMl);
	s.window.rate.push(s.exudateRate);
}

/** Exudate of the last hour. */
export function hourlyOutputMl(s: State, ward: Ward): number {
	const { timeMin, ml, rate } = s.window;
	const from = ward.nowMin - ward.k.outputWindowMin;
	while (timeMin[s.window.first + 1] <= from + EPS) s.window.first++;
	const i = s.window.first;
	return s.exudateMl - (ml[i] + rate[i] * Math.max(0, from - timeMin[i]));
}

export function setExudateRate(s: State, ward: Ward) {
	s.exudateRate = (s.given.exudateMlPerDay / 1440) * s.patientFactor * s.blockFactor;
	for (const bleed of s.bleeds) s.exudateRate += bleed.rate;
	markOutput(s, ward.nowMin);
	ward.stirred = true;
}

/** Exudate that comes at once. */
function pour(s: State, ward: Ward, volumeMl: number) {
	s.exudateMl += volumeMl;
	if (s.phase === "change") s.discardedMl += volumeMl;
	else {
		s.liquidMl += volumeMl;
		s.exudateInMl += volumeMl;
	}
	markOutput(s, ward.nowMin);
	ward.stirred = true;
}

export function nextBlock(s: State, ward: Ward) {
	const k = ward.k;
	const draw = normal(ward.random);
	const kept = k.blockCorrelation;
	s.blockZ = s.blockCount === 0 ? draw : kept * s.blockZ + Math.sqrt(1 - kept * kept) * draw;
	s.blockFactor = meanOneFactor(s.blockZ, k.blockCv);
	s.blockCount++;
	setExudateRate(s, ward);
}

export function burst(s: State, ward: Ward) {
	const outflow = s.given.outflow;
	if (outflow === null) return;
	const mean = outflow.totalMlPerDay / outflow.burstsPerDay;
	const gap = 1440 / outflow.burstsPerDay;
	const { chance } = ward.input;
	s.nextBurstMin += gap * (chance ? exponential(ward.random) : 1);
	pour(s, ward, mean * (chance ? exponential(ward.random) : 1));
}

export function breach(s: State, ward: Ward, size?: number) {
	if (s.phase === "change") return;
	const { k, random } = ward;
	const drawn = ward.input.chance ? k.breachMedian * Math.exp(k.breachSigma * normal(random)) : k.breachMedian;
	s.leak += size ?? drawn;
	s.breaches++;
	ward.stirred = true;
}

export function move(s: State, ward: Ward, kind: "turn" | "transfer") {
	if (!ward.input.chance || s.phase === "change") return;
	const chances = ward.k[kind];
	const atDepth = s.p >= s.regimen.depthMmHg - EPS;
	const wet = s.phase === "fill" || s.phase === "dwell";
	const held = s.pumpOn && s.pathOpen && atDepth;
	const chance = wet ? chances.wet : held ? chances.held : chances.between;
	if (ward.random() < chance) breach(s, ward);
}

export function nextTurn(s: State, ward: Ward) {
	const every = ward.input.care.turningMin;
	if (every === null) return;
	s.turnCount++;
	const jitter = (2 * ward.random() - 1) * ward.k.turnJitterMin;
	s.nextTurnMin = Math.max(ward.nowMin, s.turnCount * every + jitter);
}

export function kink(s: State, ward: Ward, line: "suction" | "fill") {
	if (s.phase === "change") return;
	if (line === "suction") s.suctionKinked = true;
	else s.fillKinked = true;
	refresh(s, ward);
	ward.stirred = true;
}

export function holdRound(s: State, ward: Ward) {
	const k = ward.k;
	if (s.canisterMl >= k.roundCanisterShare * s.given.canisterMl - EPS) changeCanister(s, ward, "round");
	if (s.sourceMl < s.regimen.fillMl - EPS) {
		s.nurseMin += k.handsSourceMin;
		renewSource(s, ward, "round");
	}
	if (s.leak * s.regimen.depthMmHg > k.roundLeakLimit) {
		s.nurseMin += k.handsPatchMin;
		closeBreaches(s, ward);
	}
}

const needed = (value: number | undefined, what: string): number => {
	if (value === undefined) throw new Error(`${what} is missing`);
	return value;
};

export function script(s: State, ward: Ward, item: SecondHappening) {
	ward.stirred = true;
	switch (item.what) {
		case "transfer":
		case "turn":
			move(s, ward, item.what);
			return;
		case "breach":
			breach(s, ward, item.size);
			return;
		case "clog":
			if (s.phase !== "change") addDebris(s, ward, needed(item.share, "share of a clog"));
			return;
		case "kink-fill":
			kink(s, ward, "fill");
			return;
		case "kink-suction":
			kink(s, ward, "suction");
			return;
		case "off":
			s.offUntilMin = Math.max(s.offUntilMin, ward.nowMin + needed(item.forMin, "length of an off"));
			s.off = true;
			openPause(s, "off", ward.nowMin);
			refresh(s, ward);
			return;
		case "canister-change":
			changeCanister(s, ward, "scripted");
			return;
		case "source-change":
			s.nurseMin += ward.k.handsSourceMin;
			renewSource(s, ward, "scripted");
			return;
		case "dressing-change":
			if (s.phase !== "change") startChange(s, ward);
			return;
		case "bleed": {
			const volume = needed(item.volumeMl, "volume of a bleed");
			const length = needed(item.forMin, "length of a bleed");
			if (length <= 0) pour(s, ward, volume);
			else {
				s.bleeds.push({ endMin: ward.nowMin + length, rate: volume / length });
				setExudateRate(s, ward);
			}
			return;
		}
		default:
			item.what satisfies never;
	}
}

/** Ends what has lasted its time: an off, a bleed. */
export function endScripted(s: State, ward: Ward) {
	const now = ward.nowMin;
	if (s.off && now >= s.offUntilMin - EPS) {
		s.off = false;
		closePause(s, "off", now);
		refresh(s, ward);
		ward.stirred = true;
	}
	if (s.bleeds.some((bleed) => now >= bleed.endMin - EPS)) {
		s.bleeds = s.bleeds.filter((bleed) => now < bleed.endMin - EPS);
		setExudateRate(s, ward);
	}
}
