/** Whole numbers stand for fractions here: bits behind the point. */
const point = 120n;
/** A high part has 33 bits behind the point, so few that k·ln 2 + high is exact for every exponent k; these are the others. */
const below = 87n;

/** ln x of a double between ½ and 2, times 2^120, by 2·artanh((x − 1)/(x + 1)) in whole numbers: below 2^-110 off. */
function wholeLn(x: number): bigint {
	const scaled = BigInt(x * 2 ** 52) << (point - 52n);
	const unit = 1n << point;
	const s = ((scaled - unit) << point) / (scaled + unit);
	const square = (s * s) >> point;
	let sum = 0n;
	let power = s;
	for (let odd = 1n; power / odd !== 0n; odd += 2n) {
		sum += power / odd;
		power = (power * square) / unit;
	}
	return 2n * sum;
}

/**
 * For each of 128 intervals of the upper word of a significand, from 0.6875 to 1.375: its middle c, 1/c, and ln c as a
 * high part and the rest. In whole numbers, so that no engine's rounding comes into it.
 */
export const lnTable = new Float64Array(4 * 128);
for (let i = 0; i < 128; i++) {
	const upper = i / 128;
	// The first 80 intervals lie below 1, where a step is half as wide.
	const c = upper < 0.625 ? 0.6875 + (upper + 1 / 256) / 2 : 1 + (upper - 0.625) + 1 / 256;
	const whole = wholeLn(c);
	const high = whole >> below;
	lnTable.set([c, 1 / c, Number(high) / 2 ** 33, Number(whole - (high << below)) / 2 ** 120], 4 * i);
}
