import type * as z from "zod";
import { resolveFrame } from "./frame.ts";
import { assumptions, crossAssumptions, crossHang, readableConstants, resolveConstants } from "./keys/assumptions.ts";
import { crossCare, crossShifts, resolveCare, resolveShifts, wardCare } from "./keys/care.ts";
import { head } from "./keys/head.ts";
import { solution, wardPrices } from "./keys/supplies.ts";
import {
	crossKinds,
	crossPolicies,
	policies,
	resolveKinds,
	resolvePolicies,
	writtenDressings,
} from "./keys/ward/kinds.ts";
import { crossPatients, resolvePatients, ward, wholeDays } from "./keys/ward/patients.ts";
import { crossStores } from "./keys/ward/stock.ts";
import { resolveStores, stores } from "./keys/ward/stores.ts";
import { byDefault } from "./meaning/defaults.ts";
import type { WardScenario } from "./meaning/ward.ts";
import { count, record } from "./reading/leaf.ts";
import { type Found, valueAt } from "./reading/problem.ts";
import { duration } from "./reading/quantity.ts";
import { asList, asMap } from "./reading/raw.ts";

/** The file of a ward over weeks. */
export const wardFile = record("a ward scenario", {
	...head(
		byDefault(duration("how long is simulated, in whole days", "from 1 d to 52 w", "8 w"), "ward.horizon"),
		byDefault(count("replications", 1, 100_000, "how often the weeks are simulated"), "ward.replications"),
	),
	ward,
	stores,
	care: wardCare,
	compare: policies,
	assumptions,
	prices: wardPrices,
	solution,
});

const kindsOf = (data: unknown) => asList(valueAt(data, ["ward", "kinds"]));

/** What is wrong with values that are each sound but do not go together, as of a day. */
export function crossWard(data: unknown): Found[] {
	const root = asMap(data);
	const kinds = kindsOf(data).map(asMap);
	const constants = readableConstants(root.assumptions);
	return [
		...crossKinds(kinds, constants),
		...crossPatients(asMap(root.ward), kinds),
		...wholeDays(root),
		...crossStores(root, kinds),
		...crossPolicies(root.compare, kinds, constants),
		...crossShifts(asMap(root.care).nurses),
		...crossCare(root.care),
		...crossAssumptions(root.assumptions),
		...crossHang(root),
	];
}

/** A sound file as the ward that it means. `data` is the file with every dressing written out. */
export function resolveWard(file: z.output<typeof wardFile>, data: unknown): WardScenario {
	const constants = resolveConstants(file.assumptions, file.solution.hang);
	const dressings = writtenDressings(kindsOf(data));
	const kinds = resolveKinds(file.ward.kinds, dressings, file.solution.name, constants);
	return {
		...resolveFrame(file, constants, data),
		constants,
		startWeekday: weekdayOf(file.start),
		kinds,
		...resolvePatients(file.ward),
		care: resolveCare(file.care, null),
		shifts: resolveShifts(file.care.nurses),
		stores: resolveStores(file.stores, file.solution.name),
		policies: resolvePolicies(file.compare, kinds, dressings, constants),
		prices: file.prices ?? null,
	};
}

/** 0 is Monday. */
const weekdayOf = (start: string) => (new Date(`${start.slice(0, 10)}T00:00:00Z`).getUTCDay() + 6) % 7;
