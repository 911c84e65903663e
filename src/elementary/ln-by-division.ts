import { bits, highWord, ln2High, ln2Low, words } from "./number-words.ts";
import { powerOfTwo } from "./power-of-two.ts";

const twoTo54 = 1.8014398509481984e16;

/**
 * Natural logarithm, within one unit of the last place, the same bits in every engine.
 *
 * After `e_log.c` of fdlibm (Copyright (C) 1993 by Sun Microsystems, Inc.; developed at SunPro; permission to use,
 * copy, modify, and distribute this software is freely granted, provided that this notice is preserved), evaluated in
 * the order of `@stdlib/math-base-special-ln`, whose bits it gives (a test compares) in less than half the time: the
 * significand comes by an exact multiplication instead of being put together from words.
 *
 * x = 2^k·(1 + f) with √½ < 1 + f < √2, and ln(1 + f) = f − f²/2 + s·(f²/2 + R(s²)), s = f/(2 + f).
 */
export function lnByDivision(x: number): number {
	bits[0] = x;
	let high = words[highWord];
	let k = 0;
	if (high < 0x00100000) {
		if (!(x > 0)) return x === 0 ? Number.NEGATIVE_INFINITY : Number.NaN;
		// Below the least normal number: scaled up.
		k = -54;
		x *= twoTo54;
		bits[0] = x;
		high = words[highWord];
	}
	if (high >= 0x7ff00000) return x + x;
	const significand = high & 0xfffff;
	const exponent = (high >> 20) - 1023 + (((significand + 0x95f64) & 0x100000) >> 20);
	k += exponent;
	const f = x * powerOfTwo(0 - exponent) - 1;
	if ((0xfffff & (2 + significand)) < 3) {
		// |f| < 2^-20
		if (f === 0) return k === 0 ? 0 : k * ln2High + k * ln2Low;
		const small = f * f * (0.5 - 0.3333333333333333 * f);
		return k === 0 ? f - small : k * ln2High - (small - k * ln2Low - f);
	}
	const s = f / (2 + f);
	const z = s * s;
	const w = z * z;
	const odd = w * (0.3999999999940942 + w * (0.22222198432149784 + w * 0.15313837699209373));
	const even = z * (0.6666666666666735 + w * (0.2857142874366239 + w * (0.1818357216161805 + w * 0.14798198605116586)));
	const rest = even + odd;
	if (((significand - 0x6147a) | (0x6b851 - significand)) > 0) {
		const half = 0.5 * f * f;
		return k * ln2High - (half - (s * (half + rest) + k * ln2Low) - f);
	}
	return k * ln2High - (s * (f - rest) - k * ln2Low - f);
}
