/**
 * The root of a continuous `f` bracketed by `low` and `high`, where f(low) ≥ 0 > f(high) or f(low) ≤ 0 < f(high).
 *
 * Newton's step where it stays inside the bracket and halves it fast enough, bisection otherwise
 * (the safeguarded Newton method of the text-books). Ends when the step is below `tolerance`: no step is longer than
 * the bracket.
 * Throws RangeError where the ends do not bracket a root.
 */
export function bracketedRoot(
	f: (x: number) => number,
	slope: (x: number) => number,
	low: number,
	high: number,
	tolerance: number,
): number {
	const atLow = f(low);
	if (atLow === 0) return low;
	const atHigh = f(high);
	if (atHigh === 0) return high;
	if (atLow > 0 === atHigh > 0) throw new RangeError(`no root between ${low} and ${high}: ${atLow}, ${atHigh}`);
	let x = 0.5 * (low + high);
	let lastStep = high - low;
	for (let i = 0; i < 200; i++) {
		const value = f(x);
		if (value === 0) return x;
		if (value > 0 === atLow > 0) low = x;
		else high = x;
		let next = x - value / slope(x);
		if (!(next > low && next < high) || Math.abs(next - x) > 0.5 * lastStep) next = 0.5 * (low + high);
		lastStep = Math.abs(next - x);
		x = next;
		if (lastStep < tolerance) return x;
	}
	return x;
}
