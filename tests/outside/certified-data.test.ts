import { describe, expect, test } from "vitest";
import { variance } from "../../src/statistics/index.ts";
import { momentsOf } from "../statistics/moments-of.ts";
import { lew, lottery, mavro, michelso } from "./certified-values.ts";

// NIST StRD, univariate summary statistics: certified to 15 digits in Lew.dat, Lottery.dat, Mavro.dat, Michelso.dat
// (itl.nist.gov/div898/strd/univ, quoted copy). NumAcc1 to NumAcc4 are in reference-data.test.ts. One pass in doubles may
// lose a digit or two for every power of ten in mean/deviation (4.7e3 in Mavro, 3.8e3 in Michelso): the bound is 2.2e-16
// times that, 1e-14 at the least.
describe.each([
	["in one go", 1000],
	["in blocks of 50", 50],
	["in blocks of 7", 7],
])("NIST's observed data, %s", (_, size) => {
	test.each([
		{ name: "Lew", values: lew, n: 200, mean: -177.435, sd: 277.332168044316 },
		{ name: "Lottery", values: lottery, n: 218, mean: 518.95871559633, sd: 291.699727470969 },
		{ name: "Mavro", values: mavro, n: 50, mean: 2.001856, sd: 0.000429123454003053 },
		{ name: "Michelso", values: michelso, n: 100, mean: 299.8524, sd: 0.0790105478190518 },
	])("$name: mean $mean, standard deviation $sd", (data) => {
		const moments = momentsOf(data.values, size);
		expect(moments.count).toBe(data.n);
		expect(Math.abs(moments.mean / data.mean - 1)).toBeLessThan(5e-15);
		const sd = Math.sqrt(variance(moments));
		expect(Math.abs(sd / data.sd - 1)).toBeLessThan(Math.max(1e-14, Number.EPSILON * (data.mean / data.sd)));
	});
});
