import { lnByDivision } from "./ln-by-division.ts";
import { lnTable } from "./ln-table.ts";
import { bits, highWord, ln2High, ln2Low, words } from "./number-words.ts";
import { powerOfTwo } from "./power-of-two.ts";

/**
 * Natural logarithm, within 0.6 units of the last place away from 1 and within one near it, the same bits in every engine.
 *
 * x = 2^k·z with z from 0.6875 to 1.375; in the interval of z with the middle c, r = (z − c)/c is 2^-8 at the most, and
 * ln x = k·ln 2 + ln c + ln(1 + r) with seven terms of the series. `z − c` and `k·ln 2 + ln c` (its high part) are exact.
 * Without a division what waits for the result waits half as long. Near 1, where the sum would cancel, and for what
 * is no normal number, fdlibm's way.
 */
export function ln(x: number): number {
	bits[0] = x;
	const high = words[highWord];
	if (high < 0x00100000 || high >= 0x7ff00000 || (high >= 0x3fee0000 && high < 0x3ff10000)) return lnByDivision(x);
	const above = high - 0x3fe60000;
	const k = above >> 20;
	const at = (above >> 11) & 0x1fc;
	const r = (x * powerOfTwo(0 - k) - lnTable[at]) * lnTable[at + 1];
	const square = r * r;
	const curved =
		square * (-1 / 2 + r * (1 / 3)) + square * square * (-1 / 4 + r * (1 / 5) + square * (-1 / 6 + r * (1 / 7)));
	return k * ln2High + lnTable[at + 2] + (r + (k * ln2Low + lnTable[at + 3] + curved));
}
