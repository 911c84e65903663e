/** Draws by their laws alone, from one uniform generator on [0, 1). */
export type Uniform = () => number;

/** Unit exponential, by inverse transform. */
export const exponential = (u: Uniform): number => -Math.log(1 - u());

/** Standard normal, by Box and Muller's transform. */
export const normal = (u: Uniform): number => Math.sqrt(2 * exponential(u)) * Math.cos(2 * Math.PI * u());

/** Gamma of shape 2 and a stated mean: the sum of two exponentials. */
export const gammaOfTwo = (u: Uniform, mean: number): number => (mean / 2) * (exponential(u) + exponential(u));

/** A factor of mean 1 whose coefficient of variation is `cv`, from a standard normal. */
export function meanOneFactor(z: number, cv: number): number {
	const variance = Math.log(1 + cv * cv);
	return Math.exp(Math.sqrt(variance) * z - variance / 2);
}
