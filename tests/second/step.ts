import type { Laws } from "./laws.ts";
import { endAlarm } from "./mend.ts";
import { ABSENT, EPS, FILL_PATH, LOW_DEPTH, SEAL_LEAK, type State, SUCTION_PATH, shareOf, type Ward } from "./state.ts";

/*
 * A step is short. `shorten` cuts it where a clock runs out or a level is about to be met; `advance` then carries the
 * dressing over it, with everything that is switched (phase, pump, path, leak, rate of exudate) taken as it stands.
 */

const vented = (s: State): boolean => s.phase === "fill" || s.phase === "dwell" || s.phase === "change";

const fillRuns = (s: State): boolean => s.phase === "fill" && !s.off && !s.fillKinked && s.sourceMl > EPS;

/** Sets where the depth is heading and how fast: dp/dt = (Patm/V)·(f·Q0·(1 − p/pmax) − C·p), or held. */
function aim(s: State, k: Laws, now: number) {
	s.pTarget = 0;
	s.tauMin = Number.POSITIVE_INFINITY;
	if (vented(s)) return;
	if (!s.pumpOn || !s.pathOpen) {
		const voidL = s.pathOpen ? s.airL : s.capMl / 1000;
		if (s.leak > 0) s.tauMin = voidL / (k.ambientMmHg * s.leak);
		return;
	}
	const set = s.regimen.depthMmHg;
	const whole = s.reached || now >= s.pumpStartMin + k.drawdownLimitMin - EPS;
	const share = whole ? 1 : s.regimen.drawdown;
	const supported = k.freeFlow * (1 - set / k.maxDepthMmHg) >= s.leak * set;
	if (whole && supported && s.p >= set - EPS) return;
	const slope = (share * k.freeFlow) / k.maxDepthMmHg + s.leak;
	s.pTarget = (share * k.freeFlow) / slope;
	s.tauMin = s.airL / (k.ambientMmHg * slope);
}

/** The depth after `min` more minutes. */
const depthAfter = (s: State, min: number): number =>
	s.tauMin === Number.POSITIVE_INFINITY ? s.p : s.pTarget + (s.p - s.pTarget) * Math.exp(-min / s.tauMin);

/** The step, cut where the depth would cross `level`. */
function untilDepth(s: State, level: number, h: number): number {
	const from = s.pTarget - s.p;
	const to = s.pTarget - level;
	if (from * to <= 0 || Math.abs(to) >= Math.abs(from)) return h;
	const min = s.tauMin * Math.log(from / to);
	return min > EPS && min < h ? min : h;
}

const until = (mark: number, now: number, h: number): number => (mark > now + EPS && mark - now < h ? mark - now : h);

/** What the drain or a weeping breach would take in `h` minutes if there were liquid enough. */
function pullMl(s: State, k: Laws, h: number): number {
	if (s.pumpOn && s.pathOpen) {
		const mean = (s.p + 4 * depthAfter(s, h / 2) + depthAfter(s, h)) / 6; /* Simpson */
		return s.conductance * mean * h;
	}
	if (s.phase === "fill" || s.phase === "dwell" || s.phase === "drain")
		return k.weepPerLeak * (s.leak - k.soundLeak) * h;
	return 0;
}

const isLow = (s: State, k: Laws, p: number): boolean => p < k.lowShare * s.regimen.depthMmHg;

function isOffSuction(s: State, k: Laws, atMin: number, p: number): boolean {
	if (s.phase === "change") return true;
	if (vented(s)) return atMin > s.overdueMin;
	if (!s.pumpOn) return true;
	return isLow(s, k, p) && atMin > s.pumpStartMin + k.drawdownLimitMin;
}

/** max(6, 2·(1 + (L0 − Lret)/(G0·p_set))) min */
export const drainLimit = (s: State, k: Laws): number =>
	Math.max(
		k.drainLimitMin,
		k.drainFactor * (1 + (s.startLiquidMl - s.retainedMl) / (k.conductance * s.regimen.depthMmHg)),
	);

/** The longest step, up to `h`, in which nothing of note happens to this dressing before its end. */
export function shorten(s: State, k: Laws, now: number, longest: number): number {
	let h = until(s.nextMin, now, longest);
	aim(s, k, now);
	if (fillRuns(s)) h = Math.min(h, s.fillLeftMl / k.fillMlPerMin, s.sourceMl / k.fillMlPerMin);
	if (s.phase === "dwell" && !s.off) h = Math.min(h, s.dwellLeftMin);
	if (vented(s)) h = until(s.overdueMin, now, h);
	if (s.pumpOn) {
		h = until(s.pumpStartMin + k.drawdownLimitMin, now, h);
		const left = s.regimen.suctionMin - s.periodMin;
		if (s.regimen.fillMl > 0 && left > EPS) h = Math.min(h, left);
	}
	if (s.tauMin !== Number.POSITIVE_INFINITY) {
		h = untilDepth(s, k.lowShare * s.regimen.depthMmHg, h);
		if (s.pumpOn && s.pathOpen) {
			h = untilDepth(s, s.regimen.depthMmHg, h);
			h = untilDepth(s, k.leakLimit / s.leak, h);
		}
	}

	const above = s.liquidMl - s.retainedMl;
	const pull = pullMl(s, k, h);
	const inflow = s.exudateRate * h;
	if (s.phase === "drain" && above > EPS && pull - inflow > above) h *= above / (pull - inflow);
	if (s.pumpOn && s.pathOpen) {
		const taken = Math.max(0, Math.min(pull, above + inflow));
		const room = s.given.canisterMl - s.canisterMl;
		if (taken > room) h *= room / taken;
	}

	const p = depthAfter(s, h / 2);
	const low = isLow(s, k, p);
	const stands = s.standing;
	if (s.pumpOn && s.pathOpen) {
		if (stands[SEAL_LEAK] < 0 && s.leak * p > k.leakLimit) h = Math.min(h, k.leakDelayMin - s.leakMin);
		if (stands[LOW_DEPTH] < 0 && low) h = Math.min(h, k.lowDelayMin - s.lowMin);
		if (stands[SUCTION_PATH] < 0 && s.phase === "drain" && !low) h = Math.min(h, drainLimit(s, k) - s.drainMin);
	}
	if (s.pumpOn && !s.pathOpen && stands[SUCTION_PATH] < 0) h = Math.min(h, k.closedLimitMin - s.closedMin);
	if (s.phase === "fill" && s.fillKinked && !s.off && stands[FILL_PATH] < 0)
		h = Math.min(h, k.stallLimitMin - s.stallMin);
	if (s.phase !== "change" && stands[ABSENT] < 0 && isOffSuction(s, k, now + h / 2, p))
		h = Math.min(h, k.absentLimitMin - s.absentMin);
	return Math.max(h, EPS);
}

/** Carries one dressing over `h` minutes. */
export function advance(s: State, ward: Ward, now: number, h: number) {
	const k = ward.k;
	const middle = now + h / 2;
	const exudate = s.exudateRate * h;
	s.exudateMl += exudate;
	if (s.phase === "change") {
		s.discardedMl += exudate;
		s.shareMin += h;
		s.offSuctionMin += h;
		s.offDryMin += h;
		return;
	}
	aim(s, k, now);
	const pMiddle = depthAfter(s, h / 2);
	const driven = s.pumpOn && s.pathOpen;

	// in
	let fill = 0;
	if (fillRuns(s)) {
		fill = Math.min(k.fillMlPerMin * h, s.fillLeftMl, s.sourceMl);
		if (s.fillLeftMl - fill < EPS) fill = s.fillLeftMl;
		s.fillLeftMl -= fill;
		s.sourceMl = Math.max(0, s.sourceMl - fill);
		s.instilledMl += fill;
	}

	// out, never below what suction leaves in the foam
	const inflow = exudate + fill;
	let out = Math.min(
		pullMl(s, k, h),
		s.liquidMl + inflow - s.retainedMl,
		driven ? s.given.canisterMl - s.canisterMl : Number.POSITIVE_INFINITY,
	);
	if (out < 0) out = 0;

	// mixing, by the midpoint
	const share = shareOf(s.exudateInMl, s.liquidMl);
	const middleLiquid = s.liquidMl + (inflow - out) / 2;
	const middleShare = shareOf(s.exudateInMl + (exudate - share * out) / 2, middleLiquid);
	s.exudateInMl += exudate - middleShare * out;
	s.liquidMl += inflow - out;
	s.shareMin += ((share + 4 * middleShare + shareOf(s.exudateInMl, s.liquidMl)) / 6) * h;
	if (driven) {
		s.toCanisterMl += out;
		s.canisterMl += out;
		s.woundOutputMl += middleShare * out;
	} else s.weptMl += out;

	// air
	s.p = depthAfter(s, h);
	if (driven && s.p >= s.regimen.depthMmHg - EPS) {
		s.p = s.regimen.depthMmHg;
		s.reached = true;
	}

	// clocks
	if (s.phase === "dwell" && !s.off) s.dwellLeftMin -= h;
	if (s.pumpOn) s.periodMin += h;
	const low = isLow(s, k, pMiddle);
	s.leakMin = driven && s.leak * pMiddle > k.leakLimit ? s.leakMin + h : 0;
	s.lowMin = driven && low ? s.lowMin + h : 0;
	s.closedMin = s.pumpOn && !s.pathOpen ? s.closedMin + h : 0;
	if (s.phase !== "drain") s.drainMin = 0;
	else if (driven && !low) s.drainMin += h;
	s.stallMin = s.phase === "fill" && s.fillKinked && !s.off ? s.stallMin + h : 0;
	const wet = s.phase === "fill" || s.phase === "dwell";
	if (wet) s.wetMin += h;
	if (isOffSuction(s, k, middle, pMiddle)) {
		s.absentMin += h;
		s.offSuctionMin += h;
		if (!wet) s.offDryMin += h;
	} else {
		s.absentMin = 0;
		endAlarm(s, ward, ABSENT, now);
	}

	// hazards of the seal
	if (!ward.input.chance) return;
	const stress = s.given.difficulty * (1 + k.agePerMin * (middle - s.dressedMin));
	if (s.phase === "suction") s.dryHazard += k.dryBreachPerMin * stress * h;
	else {
		const since = Math.min(k.wetHeldMin, middle - s.fillStartMin);
		const over = Math.max(0, middleLiquid - s.capMl) / s.capMl;
		s.wetHazard +=
			(k.wetShape / k.wetScaleMin) *
			(since / k.wetScaleMin) ** (k.wetShape - 1) *
			Math.exp(k.overfill * Math.min(1, over)) *
			stress *
			h;
	}
}
