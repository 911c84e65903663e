import { exp, ln } from "../elementary/index.ts";
import { depthAfter } from "./air.ts";
import { type Draining, levelAfter } from "./liquid.ts";
import { gaussNodes4, gaussRunning4, gaussWeights4 } from "./quadrature.ts";

/**
 * The balance of a perfectly mixed tank (chemical-engineering text-books): every outflow carries the share x of exudate,
 *
 *     dx/dt = (e/L)·(1 − x) − (q/L)·x          x* = e/(e + q)
 *
 * with e the inflow of exudate and q of solution, mL/min.
 */
export interface Mixed {
	/** Share of exudate at the end. */
	share: number;
	/** ∫x dt over the span, min. */
	integral: number;
}

/** Inflow over level at the nodes of a panel. In one loop, so that a compiler at run time takes the exponential into it. */
const flows = new Float64Array(4);

const result: Mixed = { share: 1, integral: 0 };

function answer(share: number, integral: number): Mixed {
	result.share = share;
	result.integral = integral;
	return result;
}

/** A level that counts as none, mL: ratios to a smaller one could not be reckoned with. */
const empty = 1e-12;

/**
 * Share and its integral after `minutes` of a level that runs in a straight line from `level` to `levelEnd`, mL, while
 * `out` mL/min leave. An empty dressing counts as all exudate. The object returned is the same one at every call.
 *
 * With g = (L1 − L0)/L0 and ℓ = ln(1 + g)/g the solution x = x* + (x0 − x*)·(L/L0)^(−(e+q)/r) becomes
 * x* + (x0 − x*)·exp(−(e+q)·t·ℓ/L0), and its integral x*·t + (x0 − x*)·t·ℓ·φ(−out·t·ℓ/L0), φ(z) = (e^z − 1)/z:
 * both hold for a level that stands still as well.
 */
export function mixLinear(
	minutes: number,
	level: number,
	levelEnd: number,
	share: number,
	exudate: number,
	solution: number,
	out: number,
): Mixed {
	const inflow = exudate + solution;
	if (inflow === 0 || minutes === 0) return answer(share, share * minutes);
	const settled = exudate / inflow;
	const gap = level > empty ? share - settled : 0; // into an empty dressing the mixture comes as it is
	if (gap === 0) return answer(settled, settled * minutes);
	const grown = (levelEnd - level) / level;
	const log = grown === 0 ? 1 : Math.abs(grown) < 1e-3 ? logSeries(grown) : ln(levelEnd / level) / grown;
	const scaled = (minutes * log) / level;
	const left = decay(inflow * scaled);
	// At a held level what flows out is what flows in, and one exponential serves both.
	const mean = out === inflow && scaled * out > 0.02 ? (1 - left) / (out * scaled) : meanExp(-out * scaled);
	return answer(settled + gap * left, settled * minutes + gap * minutes * log * mean);
}

/** ln(1 + g)/g for small g; error below 1e-18 at 1e-3. */
function logSeries(g: number): number {
	return 1 - g * (1 / 2 - g * (1 / 3 - g * (1 / 4 - g * (1 / 5 - g / 6))));
}

/** φ(z) = (e^z − 1)/z. */
function meanExp(z: number): number {
	if (Math.abs(z) < 1e-2) return 1 + (z / 2) * (1 + (z / 3) * (1 + (z / 4) * (1 + (z / 5) * (1 + z / 6))));
	return (exp(z) - 1) / z;
}

/** e^(−z) for z ≥ 0; the series below 0.02 is good to 1e-15. */
function decay(z: number): number {
	if (z > 0.02) return exp(-z);
	return 1 - z * (1 - (z / 2) * (1 - (z / 3) * (1 - (z / 4) * (1 - (z / 5) * (1 - z / 6)))));
}

/**
 * The same while a dressing drains under a changing depth: 1 − x = (1 − x0)·exp(−e·∫dt/L), by 4-point Gauss–Legendre
 * panels. A panel spans about a time constant (later ones more, the curve being flatter there), and so little that the
 * level changes by a third or so at the most; less where much exudate comes;
 * error below 1e-9 at the edges of what may come, below 1e-10 in an ordinary drain (a test compares with a fine integration).
 */
export function mixDraining(minutes: number, d: Draining, levelEnd: number, share: number): Mixed {
	const rinsed = 1 - share;
	if (rinsed === 0 || minutes === 0) return answer(share, share * minutes);
	const settled = 40 * d.tau;
	if (minutes > 2 * settled) {
		// Depth has long come to rest: the rest of the span runs in a straight line.
		const level = levelAfter(settled, d);
		const curved = mixDraining(settled, d, level, share);
		const before = curved.integral;
		const rest = minutes - settled;
		const out = d.inflow - (levelEnd - level) / rest;
		const straight = mixLinear(rest, level, levelEnd, curved.share, d.inflow, 0, out);
		return answer(straight.share, before + straight.integral);
	}
	const deepest = Math.max(d.from, depthAfter(minutes, d.from, d.towards, d.tau));
	const fastest = Math.max(d.conductance * deepest, d.inflow);
	const flushed = Math.min(0.25, (d.inflow * minutes) / Math.min(d.level, levelEnd));
	const finer = 1 / (1 + 32 * flushed);
	let exponent = 0;
	let integral = 0;
	let start = 0;
	while (start < minutes) {
		const level = start === 0 ? d.level : levelAfter(start, d);
		let wide = finer * Math.min(d.tau + start / 9, (0.35 * level) / fastest);
		const left = minutes - start;
		// No sliver at the end.
		if (wide > 0.75 * left) wide = wide < left ? 0.5 * left : left;
		const flow = d.inflow * wide;
		for (let i = 0; i < 4; i++) flows[i] = flow / levelAfter(start + wide * gaussNodes4[i], d);
		for (let i = 0; i < 4; i++) {
			const row = 4 * i;
			const running =
				exponent +
				gaussRunning4[row] * flows[0] +
				gaussRunning4[row + 1] * flows[1] +
				gaussRunning4[row + 2] * flows[2] +
				gaussRunning4[row + 3] * flows[3];
			integral += wide * gaussWeights4[i] * decay(running);
		}
		exponent += gaussWeights4[0] * (flows[0] + flows[3]) + gaussWeights4[1] * (flows[1] + flows[2]);
		start = wide < left ? start + wide : minutes;
	}
	return answer(1 - rinsed * decay(exponent), minutes - rinsed * integral);
}
