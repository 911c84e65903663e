import { afterAll, test } from "vitest";
import { auditComparison } from "./audit.ts";
import { compareCatalogue } from "./catalogue/compare.ts";
import { expectTrue, isLong, samples, tellUnused } from "./many.ts";

const comparisons = samples("compare", 60, 1000);

afterAll(() => tellUnused("comparison", compareCatalogue));

test("every number and name on the papers of a comparison is true", () => {
	expectTrue(comparisons, ({ text, number }) => auditComparison(text, number % 4 === 0));
});

// A hundred variations of a scenario take as long as thirty scenarios: few of them, of few replications.
test("and so is what its answer is said to rest on", () => {
	const few = comparisons.filter(({ text }) => /^replications: 3$/mu.test(text));
	expectTrue(few.slice(0, isLong ? 60 : 4), ({ text }) => auditComparison(text, false, true));
});
