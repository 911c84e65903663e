import { crossCare } from "./cross-care.ts";
import { crossDressings } from "./cross-dressings.ts";
import { crossHappenings } from "./cross-happenings.ts";
import { crossRehearsal } from "./cross-rehearsal.ts";
import { crossSweep } from "./cross-sweep.ts";
import type { Found } from "./issues.ts";

/**
 * Rules that join several values of a file. They read the raw data with an eye that skips what is broken, so that a
 * fault of form in one place hides no fault of sense in another.
 */
export function crossProblems(data: unknown): Found[] {
	return [
		...crossDressings(data),
		...crossHappenings(data),
		...crossCare(data),
		...crossSweep(data),
		...crossRehearsal(data),
	];
}
