import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import studentQuantile from "@stdlib/stats-base-dists-t-quantile";
import { describe, expect, test } from "vitest";

// Guards quantiles of a package that the program uses and other tests reckon with. Nothing here looks at the program.

describe("Student's t", () => {
	// Soong, Fundamentals of Probability and Statistics for Engineers, table A.4, digilib.universitaspertamina.ac.id (read)
	test.each([
		[0.05, 1.812],
		[0.005, 3.169],
	])("upper %d, 10 degrees of freedom: %d", (upper, printed) => {
		expect(Math.abs(studentQuantile(1 - upper, 10) - printed)).toBeLessThan(5e-4);
	});
});

describe("the normal quantile", () => {
	// Last row of a table of Student's t: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2 (from memory)
	test.each([
		[0.9, 1.282],
		[0.95, 1.645],
		[0.975, 1.96],
		[0.99, 2.326],
		[0.995, 2.576],
		[0.999, 3.09],
	])("at %d is %d", (p, printed) => {
		expect(Math.abs(normalQuantile(p, 0, 1) - printed)).toBeLessThan(5e-4);
	});

	// calcfxc.com/documentation/formulaCalculators/NewsvendorNormal.html (read): 38.68, exactly 38.68102
	test("at 2/7 of N(50, 20) is 38.68, a newsvendor's order at price 7 and cost 5", () => {
		expect(normalQuantile((7 - 5) / 7, 50, 20)).toBeCloseTo(38.68102, 4);
	});
});
