/** The 8-point Gauss–Legendre rule on −1…1: positive nodes and their weights. From memory; a test holds the rule to exactness on every polynomial up to degree 15. */
const half8 = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const halfWeights8 = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

/** ∫f over [a, b] by the 8-point rule: exact for polynomials up to degree 15. */
export function gaussLegendre8(f: (x: number) => number, a: number, b: number): number {
	const middle = (a + b) / 2;
	const half = (b - a) / 2;
	let sum = 0;
	for (let i = 0; i < 4; i++) sum += halfWeights8[i] * (f(middle - half * half8[i]) + f(middle + half * half8[i]));
	return half * sum;
}

/** Nodes and weights of the 4-point rule on 0…1, in closed form: x² = 3/7 ∓ (2/7)·√(6/5), w = (18 ± √30)/36. */
const inner = Math.sqrt(3 / 7 - (2 / 7) * Math.sqrt(6 / 5));
const outer = Math.sqrt(3 / 7 + (2 / 7) * Math.sqrt(6 / 5));
export const gaussNodes4 = Float64Array.of((1 - outer) / 2, (1 - inner) / 2, (1 + inner) / 2, (1 + outer) / 2);
const heavy = (18 + Math.sqrt(30)) / 72;
const light = (18 - Math.sqrt(30)) / 72;
export const gaussWeights4 = Float64Array.of(light, heavy, heavy, light);

/**
 * Row by row, ∫ from 0 to node i as a weighted sum of the values at the four nodes (the collocation matrix of the
 * Gauss method of order 8): the running integral at the nodes without a further value of the function.
 */
export const gaussRunning4 = Float64Array.from({ length: 16 }, (_, at) =>
	gaussLegendre8((x) => lagrange(at % 4, x), 0, gaussNodes4[at >> 2]),
);

function lagrange(j: number, x: number): number {
	let product = 1;
	for (let k = 0; k < 4; k++) if (k !== j) product *= (x - gaussNodes4[k]) / (gaussNodes4[j] - gaussNodes4[k]);
	return product;
}
