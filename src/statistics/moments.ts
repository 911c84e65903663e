/** Count, mean and sum of squared deviations: enough for a mean and its interval. */
export interface Moments {
	count: number;
	mean: number;
	squares: number;
}

export function noMoments(): Moments {
	return { count: 0, mean: 0, squares: 0 };
}

/** Takes in one value. Welford 1962: mean += δ/n, S += δ·(x − mean). */
export function addTo(moments: Moments, value: number): void {
	moments.count++;
	const delta = value - moments.mean;
	moments.mean += delta / moments.count;
	moments.squares += delta * (value - moments.mean);
}

/**
 * Takes in the moments of a block. Chan, Golub, LeVeque 1979: S = Sa + Sb + δ²·na·nb/n. The result depends on the order
 * of the blocks in its last bits: they are merged by index, whoever worked them out.
 */
export function mergeInto(moments: Moments, block: Moments): void {
	if (block.count === 0) return;
	const count = moments.count + block.count;
	const delta = block.mean - moments.mean;
	moments.mean += (delta * block.count) / count;
	moments.squares += block.squares + (delta * delta * moments.count * block.count) / count;
	moments.count = count;
}

/** Variance of the values, n − 1 in the divisor; NaN below two. */
export function variance(moments: Moments): number {
	return moments.count < 2 ? Number.NaN : moments.squares / (moments.count - 1);
}
