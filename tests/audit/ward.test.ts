import { afterAll, test } from "vitest";
import { auditWard } from "./audit.ts";
import { supplyCatalogue } from "./catalogue/supply.ts";
import { expectTrue, samples, tellUnused } from "./many.ts";

const wards = samples("ward", 20, 300);

afterAll(() => tellUnused("ward", supplyCatalogue));

test("every number, date and name on the papers of a ward is true", () => {
	expectTrue(wards, ({ text }) => auditWard(text));
});
