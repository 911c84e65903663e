/** Oracle: exponent and factor of Q = C·Δpⁿ by least squares in logarithms. */
export function powerLaw(drops: readonly number[], flows: readonly number[]) {
	const xs = drops.map(Math.log);
	const ys = flows.map(Math.log);
	const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
	const [mx, my] = [mean(xs), mean(ys)];
	const exponent =
		xs.reduce((sum, x, i) => sum + (x - mx) * (ys[i] - my), 0) / xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
	return { exponent, factor: Math.exp(my - exponent * mx) };
}
