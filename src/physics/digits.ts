/** Half-widths up to this are rounding of the machine, not doubt: no volume, time or count is known to its millionth part. */
const noDoubt = 1e-6;

/**
 * Digits after the point that an interval of this half-width supports: the half-width shows one significant digit, or two
 * where it begins with 1, and so does whatever it is the doubt of; from 20 on two, so that the last may be tens (−1) or
 * hundreds (−2), never more. Two ends of such an interval are four steps apart, and never print alike. Null where there is no
 * doubt that would limit them.
 *
 * An uncertainty of at most two significant digits, and the number to the same place: JCGM 100:2008, 7.2.6.
 */
export function supportedDigits(halfWidth: number | null): number | null {
	if (halfWidth === null || !(halfWidth > noDoubt)) return null;
	let [digits, scaled] = [0, halfWidth];
	for (; scaled < 2; digits++) scaled *= 10;
	for (; scaled >= 100; digits--) scaled /= 10;
	return digits;
}
