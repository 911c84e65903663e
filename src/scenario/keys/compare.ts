import * as z from "zod";
import type { Constants } from "../../physics/index.ts";
import type { RegimenPatch } from "../meaning/scenario.ts";
import { name, record } from "../reading/leaf.ts";
import type { Found, Keys } from "../reading/problem.ts";
import { asMap, type Fields, idOf, stranger } from "../reading/raw.ts";
import { type DressingFile, foamVolumeMl } from "./dressing/dressing.ts";
import { crossRegimen, itemsOf, reachable, resolveRegimens, someSettings } from "./dressing/regimen.ts";
import { crossUnit, unitParts } from "./dressing/unit.ts";

const what = "a partial regimen";

/** The regimen that a site runs most: what it leaves out is as in the scenario. */
export const usual = record(what, someSettings)
	.optional()
	.describe(
		"the regimen that the site runs most, laid over the scenario's own: maps of `sweep` mark it; where it is left out they mark none",
	);

/** A regimen of `compare:`: what it leaves out stays as it is. */
export const partialShape = {
	dressing: name("the id of a dressing", "the dressing it is laid over; all of them where it is left out").optional(),
	...someSettings,
};
const partialRegimen = record(what, { ...partialShape, ...z.strictObject(unitParts).partial().shape });

export const compare = z
	.record(name("a name", "name of the regimen"), partialRegimen, { error: "a map of names and partial regimens" })
	.prefault({})
	.describe(
		"regimens to set against each other: each is laid over the first regimen of every dressing, or of the one it names",
	);

/** The regimens that are laid over others. */
export const crossPatches = (root: Fields, dressings: readonly Fields[], constants: Constants): Found[] => [
	...Object.entries(asMap(root.compare)).flatMap(([name, patch]) =>
		crossPatch(asMap(patch), ["compare", name], dressings, constants),
	),
	...crossPatch(asMap(root.usual), ["usual"], dressings, constants),
];

/** It names a dressing that is there, and leaves each regimen and unit that it is laid over complete. */
function crossPatch(
	{ dressing: named, ...patch }: Fields,
	keys: Keys,
	dressings: readonly Fields[],
	constants: Constants,
): Found[] {
	const unknown = stranger(named, dressings, [...keys, "dressing"]);
	if (unknown.length > 0) return unknown;
	const meant = dressings.filter(({ id }) => idOf(named) === undefined || idOf(id) === idOf(named));
	const incomplete = meant.flatMap(({ regimen }) => {
		const first = asMap(itemsOf(regimen)[0]);
		return "fill" in patch && first.fill === "none" ? crossRegimen({ ...first, ...patch }, keys, constants) : [];
	});
	const parts = Object.entries(patch).filter(([key, value]) => key in unitParts && value !== undefined);
	// The first unit that does not fit speaks.
	const [unfit = []] = meant
		.map(({ unit }) => (parts.length === 0 ? [] : crossUnit({ ...asMap(unit), ...Object.fromEntries(parts) }, keys)))
		.filter((faults) => faults.length > 0);
	return [...incomplete, ...reachable(patch.depth, [...keys, "depth"], constants), ...unfit];
}

/** What `compare:` and `usual:` of a sound file come to, laid over its dressings. */
export function resolvePatches(
	file: { readonly compare: z.output<typeof compare>; readonly usual?: z.output<typeof usual> },
	dressings: readonly DressingFile[],
	constants: Constants,
): { readonly compare: RegimenPatch[]; readonly usual: RegimenPatch["regimens"] | null } {
	/** The regimens of every dressing by its id, `over` laid over those of one dressing or of all. */
	const regimensBy = (over: z.output<typeof partialRegimen>): RegimenPatch["regimens"] =>
		Object.fromEntries(
			dressings.map((dressing) => {
				const meant = over.dressing === undefined || over.dressing === dressing.id;
				const regimens = resolveRegimens(dressing.regimen, meant ? over : {}, foamVolumeMl(dressing), constants);
				return [dressing.id, regimens];
			}),
		);
	const patches = Object.entries(file.compare).map(([name, patch]) => ({
		name,
		dressing: patch.dressing ?? null,
		canisterMl: patch.canister ?? null,
		sourceMl: patch.source ?? null,
		canisterHoldsMl: patch.holds ?? null,
		sourceLeftMl: patch.left ?? null,
		regimens: regimensBy(patch),
	}));
	return { compare: patches, usual: file.usual === undefined ? null : regimensBy(file.usual) };
}
