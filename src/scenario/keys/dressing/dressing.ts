import type * as z from "zod";
import type { Constants } from "../../../physics/index.ts";
import { byDefault } from "../../meaning/defaults.ts";
import type { Dressing } from "../../meaning/scenario.ts";
import { list, name, record } from "../../reading/leaf.ts";
import { type Found, found, type Keys, received } from "../../reading/problem.ts";
import { duration, quantity, rule } from "../../reading/quantity.ts";
import { asMap, type Fields, idOf } from "../../reading/raw.ts";
import { crossRegimens, regimen, resolveRegimens } from "./regimen.ts";
import { crossUnit, unit } from "./unit.ts";
import { areaOf, crossWound, resolveWound, wound } from "./wound.ts";

const pieces = "a list of one or more pieces of foam";

const foam = list(
	record("a piece of foam", {
		area: areaOf("piece"),
		thickness: quantity(rule("cm", "a thickness", "above 0 cm and up to 30 cm", "1.0 cm", "thickness of the piece")),
	}),
	pieces,
	50,
	"pieces of foam",
	{ least: pieces },
).describe("pieces of foam in the dressing; their volume is area × thickness");

const some = "a list of one or more dressings";
export const dressing = record("a dressing", {
	id: name("an id", "short name of the dressing, unlike any other"),
	patient: byDefault(
		name("an id", "who wears it; dressings of one patient are turned together"),
		"dressings[].patient",
	),
	wound,
	foam,
	regimen,
	unit,
	age: byDefault(duration("age of the dressing at the start", "from 0 h to 28 d", "12 h"), "dressings[].age"),
});

export type DressingFile = z.output<typeof dressing>;

export const dressings = list(dressing, some, 100, "dressings", { least: some }).describe(
	"the dressings, one therapy unit each",
);

/** What joins the values of all dressings. */
export const crossDressings = (dressings: readonly unknown[], constants: Constants): Found[] => [
	...repeatedIds(dressings),
	...dressings.flatMap((dressing, i) => crossDressing(asMap(dressing), ["dressings", i], constants)),
];

function repeatedIds(dressings: readonly unknown[]): Found[] {
	const ids = dressings.map((dressing) => idOf(asMap(dressing).id));
	return ids.flatMap((id, i) => {
		const keys = ["dressings", i, "id"];
		if (id === "all" && dressings.length > 1)
			return [found(keys, "an id of its own: all stands for the dressings together", received(id))];
		const first = ids.indexOf(id);
		return id === undefined || first === i
			? []
			: [found(keys, "an id unlike any other", `${received(id)} again (dressings[${first}] has it)`)];
	});
}

/** What joins the values of one. */
export const crossDressing = (dressing: Fields, at: Keys, constants: Constants): Found[] => [
	...crossWound(asMap(dressing.wound), [...at, "wound"]),
	...crossUnit(asMap(dressing.unit), [...at, "unit"]),
	...crossRegimens(dressing.regimen, [...at, "regimen"], constants),
];

/** Sum of area × thickness: cm² · cm = mL. */
export const foamVolumeMl = ({ foam }: Pick<DressingFile, "foam">) =>
	foam.reduce((sum, { area, thickness }) => sum + area * thickness, 0);

export function resolveDressing(file: DressingFile, constants: Constants): Dressing {
	const { unit } = file;
	const volumeMl = foamVolumeMl(file);
	return {
		id: file.id,
		patient: file.patient,
		...resolveWound(file.wound),
		foam: file.foam.map(({ area, thickness }) => ({ areaCm2: area, thicknessCm: thickness })),
		foamVolumeMl: volumeMl,
		regimens: resolveRegimens(file.regimen, {}, volumeMl, constants),
		canisterMl: unit.canister,
		sourceMl: unit.source,
		canisterHoldsMl: unit.holds,
		sourceLeftMl: unit.left !== undefined && unit.left < unit.source ? unit.left : null,
		ageMin: file.age,
	};
}
