import { expect, test } from "vitest";
import { powerLaw } from "./power-law.ts";

// Guards the fit that the program's leak is looked at with. Nothing here looks at the program.
test("a fit of measured leaks has n between the two ends", () => {
	// Data of cghiaus.github.io/dm4bem_book, A06Blow_door (read); the fit is recomputed (derived)
	const fit = powerLaw([10, 20, 30, 40, 50, 60], [237, 364, 444, 625, 688, 704]);
	expect(Math.abs(fit.exponent - 0.64345)).toBeLessThan(1e-4);
	expect(Math.abs(fit.factor - 53.3956)).toBeLessThan(1e-4);
});
