import { ln2High, ln2Low } from "./number-words.ts";
import { powerOfTwo } from "./power-of-two.ts";

const log2e = Math.LOG2E;
const overflow = 709.782712893384;
const underflow = -745.1332191019411;

/**
 * e^x, within one unit of the last place, the same bits in every engine.
 *
 * After `e_exp.c` of fdlibm (Copyright (C) 1993 by Sun Microsystems, Inc.; developed at SunPro; permission to use,
 * copy, modify, and distribute this software is freely granted, provided that this notice is preserved), evaluated in
 * the order of `@stdlib/math-base-special-exp`, whose bits it gives (a test compares) in a third of the time: the last
 * step multiplies by a power of two from a table instead of taking the number apart.
 *
 * x = k·ln 2 + r with |r| ≤ ln 2/2, and e^r from the rational function r·(e^r + 1)/(e^r − 1) ≈ 2 + P(r²).
 */
export function exp(x: number): number {
	if (x > overflow) return Number.POSITIVE_INFINITY;
	if (x < underflow) return 0;
	if (x > -3.725290298461914e-9 && x < 3.725290298461914e-9) return 1 + x;
	const k = (log2e * x + (x < 0 ? -0.5 : 0.5)) | 0; // towards 0
	const high = x - k * ln2High;
	const low = k * ln2Low;
	const r = high - low;
	const t = r * r;
	const c =
		r -
		t *
			(0.16666666666666602 +
				t *
					(-0.0027777777777015593 +
						t * (0.00006613756321437934 + t * (-0.0000016533902205465252 + t * 4.1381367970572385e-8))));
	const y = 1 - (low - (r * c) / (2 - c) - high);
	if (k > -1021 && k < 1024) return y * powerOfTwo(k);
	// The first product is exact; the second rounds once, into a number below the least normal one or past the greatest.
	return k > 0 ? y * powerOfTwo(k - 1) * 2 : y * powerOfTwo(k + 64) * powerOfTwo(-64);
}
