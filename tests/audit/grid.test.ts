import { afterAll, test } from "vitest";
import { readScenario } from "../../src/scenario/index.ts";
import type { AxisName } from "../../src/vocabulary/index.ts";
import { auditSweep } from "./audit.ts";
import { sweepCatalogue } from "./catalogue/sweep.ts";
import { expectTrue, samples, tellUnused } from "./many.ts";

const grids = samples("sweep", 30, 400);

afterAll(() => tellUnused("grid", sweepCatalogue));

/** Every other grid is drawn as a curve along its first axis, too. */
function axisOf(text: string, number: number): AxisName | null {
	const axes = readScenario(text).sweep?.axes ?? {};
	const [first] = Object.keys(axes) as AxisName[]; // the keys of the axes are their names
	return number % 2 === 0 ? (first ?? null) : null;
}

test("every number and name on the papers of a grid of regimens is true", () => {
	expectTrue(grids, ({ text, number }) => auditSweep(text, axisOf(text, number)));
});
