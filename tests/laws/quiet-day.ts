import { retainedMl, type SteadyDay } from "./steady-day.ts";

/**
 * A steady day worked out apart from the simulation, from the equations of the model alone: text-book pump-down of the
 * air, inflow less outflow of the liquid, the balance of a perfectly mixed tank. It ends early where the canister is full.
 */
export interface QuietDay {
	/** Liquid that left through the port until the end, mL. */
	readonly drainedMl: number;
	/** Time-mean of the share of exudate in the dressing. */
	readonly meanShare: number;
	/** When the canister is full, min; null: it is not. */
	readonly fullAtMin: number | null;
	/** What the day ends in; `held`: at the level that suction leaves or below it. */
	readonly endsIn: "fill" | "dwell" | "drain" | "held";
}

/** Depth p∞ + (p0 − p∞)·e^(−t/τ) in a span after a pump start, mmHg; τ = Infinity: it stands at p0. */
interface DepthPiece {
	readonly startMin: number;
	readonly endMin: number;
	readonly from: number;
	readonly towards: number;
	readonly tau: number;
	/** ∫p dt from the pump start to the start of the piece, mmHg·min. */
	readonly before: number;
}

const ambient = 760;
const freeFlow = 8;
const deepest = 250;
const soundLeak = 0.0002;
const drawdownLimitMin = 3;
const conductance = 1; // mL/min/mmHg
const fillFlow = 60;

/** Depth from a pump start on: free air is thinned by the share f of the pump's flow until the set depth is reached or 3 min are over, then by all of it; then the depth stands. */
class Air {
	readonly #pieces: readonly DepthPiece[];

	constructor(day: SteadyDay, contentMl: number) {
		const airL = 0.15 + (0.34 * day.foamVolumeMl + day.canisterMl - contentMl) / 1000;
		const piece = (startMin: number, from: number, before: number, share: number, latest: number): DepthPiece => {
			const slope = (share * freeFlow) / deepest + soundLeak;
			const towards = (share * freeFlow) / slope;
			const tau = airL / (ambient * slope);
			const rise = tau * Math.log((towards - from) / (towards - day.depthMmHg));
			const endMin = Math.min(startMin + rise, latest); // every drawdown of 5 % or more can reach 175 mmHg: p∞ is 222 at the least
			return { startMin, endMin, from, towards, tau, before };
		};
		const pieces = [piece(0, 0, 0, day.drawdown, drawdownLimitMin)];
		const after = () => {
			const last = pieces[pieces.length - 1];
			const { endMin } = last;
			return [endMin, depthIn(last, endMin), suckedIn(last, endMin)] as const;
		};
		if (pieces[0].endMin === drawdownLimitMin) pieces.push(piece(...after(), 1, Infinity));
		const [startMin, , before] = after();
		const set = { from: day.depthMmHg, towards: day.depthMmHg };
		pieces.push({ startMin, endMin: Infinity, ...set, tau: Infinity, before });
		this.#pieces = pieces;
	}

	pieceAt(t: number): DepthPiece {
		let i = 0;
		while (t >= this.#pieces[i].endMin) i++;
		return this.#pieces[i];
	}

	/** `t` min after the pump start, mmHg. */
	depth(t: number): number {
		return depthIn(this.pieceAt(t), t);
	}

	/** ∫p dt from the pump start to `t`, mmHg·min. */
	sucked(t: number): number {
		return suckedIn(this.pieceAt(t), t);
	}
}

const depthIn = (p: DepthPiece, t: number) => p.towards + (p.from - p.towards) * Math.exp(-(t - p.startMin) / p.tau);

/** p∞·t + (p0 − p∞)·τ·(1 − e^(−t/τ)), on top of what was before. */
const suckedIn = (p: DepthPiece, t: number) =>
	p.tau === Infinity
		? p.before + p.from * (t - p.startMin)
		: p.before + p.towards * (t - p.startMin) - (p.from - p.towards) * p.tau * Math.expm1(-(t - p.startMin) / p.tau);

/** Root of a rising function between two ends, by halving to the last bit. */
function rootOf(f: (t: number) => number, low: number, high: number): number {
	let [a, b] = [low, high];
	for (let i = 0; i < 200; i++) {
		const middle = (a + b) / 2;
		if (middle <= a || middle >= b) break;
		if (f(middle) < 0) a = middle;
		else b = middle;
	}
	return b;
}

export function quietDay(day: SteadyDay): QuietDay {
	const e = day.exudateMlPerDay / 1440;
	const retained = retainedMl(day);
	const horizon = day.horizonMin;
	let t = 0;
	let level = 0;
	let solution = 0; // of the level
	let drained = 0;
	let shareMin = 0;
	let fullAt: number | null = null;
	let endsIn: QuietDay["endsIn"] = "held";

	/** Nothing leaves: X grows by e·t in a level that grows by r·t, so that ∫x dt has a logarithm. */
	const stands = (minutes: number, inflow: number) => {
		const rate = e + inflow;
		if (level === 0)
			shareMin += (minutes * e) / rate; // both grow from nothing
		else {
			const solutionShare = inflow / rate;
			shareMin += minutes * (1 - solutionShare);
			shareMin -= ((solution - solutionShare * level) / rate) * Math.log1p((rate * minutes) / level);
		}
		solution += inflow * minutes;
		level += rate * minutes;
		t += minutes;
	};
	/** What comes leaves: 1 − x falls as e^(−e·t/L). */
	const held = (minutes: number) => {
		const spent = -Math.expm1((-e * minutes) / level);
		shareMin += minutes - (solution / e) * spent;
		solution -= solution * spent;
		drained += e * minutes;
		t += minutes;
	};
	/** 1 − x = y falls by dy/dt = −(e/L)·y while the level drains: a quadrature (Runge and Kutta, fourth order), in steps in which the level falls by a fiftieth at most. */
	const drains = (start: number, air: Air, from: number, to: number) => {
		const level0 = level;
		const before = air.sucked(from);
		const levelAt = (at: number) => level0 + e * (at - from) - conductance * (air.sucked(at) - before);
		let y = solution / level;
		let at = from;
		while (at < to) {
			const piece = air.pieceAt(at);
			const l0 = levelAt(at);
			const fastest = l0 / (50 * (conductance * day.depthMmHg + e));
			let h = Math.min(fastest, piece.tau / 10, piece.endMin - at, to - at);
			if (to - at - h < 1e-12) h = to - at;
			const [a, b, c] = [e / l0, e / levelAt(at + h / 2), e / levelAt(at + h)];
			const k1 = -a * y;
			const k2 = -b * (y + (h / 2) * k1);
			const k3 = -b * (y + (h / 2) * k2);
			const k4 = -c * (y + h * k3);
			const [y2, y3, y4] = [y + (h / 2) * k1, y + (h / 2) * k2, y + h * k3];
			shareMin += h - (h / 6) * (y + 2 * y2 + 2 * y3 + y4);
			y += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
			at = h === to - at ? to : at + h;
		}
		drained += conductance * (air.sucked(to) - before);
		level = levelAt(to);
		solution = y * level;
		t = start + to;
	};

	/** From a pump start on, for the suction period or until the day ends. */
	const suction = () => {
		const start = t;
		const air = new Air(day, drained);
		const end = Math.min(day.suctionMin, horizon - start);
		let from = 0;
		endsIn = "held";
		if (level < retained) {
			from = (retained - level) / e;
			stands(Math.min(end, from), 0);
			if (from >= end) return;
			level = retained;
		}
		let to = from;
		if (level > retained || conductance * air.depth(from) < e) {
			endsIn = "drain";
			const before = air.sucked(from);
			const left = (at: number) => conductance * (air.sucked(at) - before);
			const falls = rootOf((at) => conductance * air.depth(at) - e, from, 60);
			const lacking = (at: number) => retained - (level + e * (at - from) - left(at));
			to = rootOf(lacking, falls, 60);
			const cut = Math.min(to, end);
			if (drained + left(cut) >= day.canisterMl) {
				const over = (at: number) => drained + left(at) - day.canisterMl;
				fullAt = start + rootOf(over, from, cut);
				return;
			}
			drains(start, air, from, cut);
			if (to >= end) return;
			level = retained;
		}
		endsIn = "held";
		const room = (day.canisterMl - drained) / e;
		if (room <= end - to) fullAt = t + room;
		else held(end - to);
	};

	if (day.begin === "suction") suction();
	while (t < horizon && fullAt === null) {
		endsIn = "fill";
		stands(Math.min(day.fillMl / fillFlow, horizon - t), fillFlow);
		if (t >= horizon) break;
		endsIn = "dwell";
		stands(Math.min(day.dwellMin, horizon - t), 0);
		if (t >= horizon) break;
		suction();
	}
	return { drainedMl: drained, meanShare: shareMin / horizon, fullAtMin: fullAt, endsIn };
}
