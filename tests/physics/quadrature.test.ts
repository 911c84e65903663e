import { describe, expect, test } from "vitest";
import { gaussLegendre8 } from "../../src/physics/index.ts";
import { gaussNodes4, gaussRunning4, gaussWeights4 } from "../../src/physics/quadrature.ts";

describe("the 8-point rule", () => {
	test.each(Array.from({ length: 16 }, (_, degree) => degree))("is exact for a polynomial of degree %d", (degree) => {
		const exact = (2 ** (degree + 1) - (-1) ** (degree + 1)) / (degree + 1);
		const sum = gaussLegendre8((x) => x ** degree, -1, 2);
		expect(Math.abs(sum / exact - 1)).toBeLessThan(1e-14);
	});

	test("is not exact for degree 16: it is this rule and no better one", () => {
		// (8!)⁴·2¹⁷/(17·(16!)²), the error term of Gauss (text-books, from memory)
		const error = gaussLegendre8((x) => x ** 16, -1, 1) - 2 / 17;
		const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
		const term = (2 ** 17 * factorial(8) ** 4) / (17 * factorial(16) ** 2);
		expect(Math.abs(error / -term - 1)).toBeLessThan(1e-6);
	});

	test("does smooth functions to the last digits, and a reversed span with the other sign", () => {
		expect(gaussLegendre8(Math.exp, 0, 1)).toBeCloseTo(Math.E - 1, 14);
		expect(gaussLegendre8(Math.exp, 1, 0)).toBeCloseTo(1 - Math.E, 14);
		expect(gaussLegendre8(Math.exp, 3, 3)).toBe(0);
	});
});

describe("the 4-point rule on 0…1 and its running integral", () => {
	test("weights come to 1, nodes are symmetric", () => {
		expect(gaussWeights4.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 15);
		for (let i = 0; i < 4; i++) {
			expect(gaussNodes4[i] + gaussNodes4[3 - i]).toBeCloseTo(1, 15);
			expect(gaussWeights4[i]).toBe(gaussWeights4[3 - i]);
		}
	});

	test.each(Array.from({ length: 8 }, (_, degree) => degree))("is exact for degree %d", (degree) => {
		const sum = gaussNodes4.reduce((total, node, i) => total + gaussWeights4[i] * node ** degree, 0);
		expect(sum).toBeCloseTo(1 / (degree + 1), 15);
	});

	test.each([0, 1, 2, 3])("gives ∫ from 0 to each node of a polynomial of degree %d", (degree) => {
		for (let i = 0; i < 4; i++) {
			let sum = 0;
			for (let j = 0; j < 4; j++) sum += gaussRunning4[4 * i + j] * gaussNodes4[j] ** degree;
			expect(sum).toBeCloseTo(gaussNodes4[i] ** (degree + 1) / (degree + 1), 15);
		}
	});
});
