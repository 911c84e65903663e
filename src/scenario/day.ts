import type * as z from "zod";
import { resolveFrame } from "./frame.ts";
import { assumptions, crossAssumptions, crossHang, readableConstants, resolveConstants } from "./keys/assumptions.ts";
import { care, crossCare, resolveCare, resolveNurses } from "./keys/care.ts";
import { compare, crossPatches, resolvePatches, usual } from "./keys/compare.ts";
import { crossDressings, dressings, resolveDressing } from "./keys/dressing/dressing.ts";
import { crossHappenings, happenings, resolveHappening } from "./keys/happenings.ts";
import { head } from "./keys/head.ts";
import { crossHome, home, resolveHome } from "./keys/home.ts";
import { crossRehearsal, rehearsal, resolveRehearsal } from "./keys/rehearsal.ts";
import { packs, prices, resolvePacks, resolvePrices, solution } from "./keys/supplies.ts";
import { crossSweep, resolveSweep, sweep } from "./keys/sweep.ts";
import { byDefault } from "./meaning/defaults.ts";
import type { Scenario } from "./meaning/scenario.ts";
import { count, record } from "./reading/leaf.ts";
import type { Found } from "./reading/problem.ts";
import { duration } from "./reading/quantity.ts";
import { asList, asMap } from "./reading/raw.ts";

/** The file of a day: what stands in it and what may be left out. */
export const dayFile = record("a scenario", {
	...head(
		byDefault(duration("how long is simulated", "from 1 min to 28 d", "24 h"), "horizon"),
		byDefault(count("replications", 1, 1_000_000, "how often the day is simulated"), "replications"),
	),
	dressings,
	care,
	happenings,
	rehearsal: rehearsal.optional().describe("a shift to rehearse, in which something is hidden"),
	compare,
	usual,
	sweep: sweep
		.optional()
		.describe("the grid that `sweep` runs: values of one setting or more, every one with every other"),
	home,
	assumptions,
	prices,
	solution,
	packs,
});

/**
 * What is wrong with values that are each sound but do not go together. It reads the raw data with an eye that skips what
 * is broken, so that a fault of form in one place hides no fault of sense in another.
 */
export function crossDay(data: unknown): Found[] {
	const root = asMap(data);
	const dressings = asList(root.dressings).map(asMap);
	const constants = readableConstants(root.assumptions);
	return [
		...crossDressings(dressings, constants),
		...crossPatches(root, dressings, constants),
		...crossHappenings(root.happenings, dressings),
		...crossCare(root.care),
		...crossAssumptions(root.assumptions),
		...crossHang(root),
		...crossSweep(root.sweep, dressings),
		...crossHome(root),
		...crossRehearsal(root),
	];
}

/** A sound file as the scenario that it means. `data` is the raw file, for the list of what was left to the defaults. */
export function resolveDay(file: z.output<typeof dayFile>, data: unknown): Scenario {
	const constants = resolveConstants(file.assumptions, file.solution.hang);
	const { solution, defaulted, overridden, ...frame } = resolveFrame(file, constants, data);
	// The order is that of what the library prints.
	return {
		...frame,
		dressings: file.dressings.map((dressing) => resolveDressing(dressing, constants)),
		care: resolveCare(file.care, resolveNurses(file.care.nurses)),
		happenings: file.happenings.map(resolveHappening),
		...(file.rehearsal === undefined ? {} : { rehearsal: resolveRehearsal(file.rehearsal, file.dressings) }),
		...resolvePatches(file, file.dressings, constants),
		sweep: file.sweep === undefined ? null : resolveSweep(file.sweep),
		home: resolveHome(file.home),
		constants,
		solution,
		prices: resolvePrices(file.prices),
		packs: resolvePacks(file.packs),
		defaulted,
		overridden,
	};
}
