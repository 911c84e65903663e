import {
	type Constants,
	constantNames,
	constantsWith,
} from "../physics/index.ts";
import { assumptionRule } from "./assumptions.ts";
import { defaults } from "./defaults.ts";
import { type Found, found } from "./issues.ts";
import { asList, asMap, idOf, read } from "./lenient.ts";
import { type Keys, received } from "./path.ts";
import { judge } from "./quantity.ts";
import {
	canisterHolds,
	canisterSize,
	depth,
	from,
	sourceLeft,
	sourceSize,
} from "./schema-regimen.ts";
import { unknownDressing } from "./unknown-dressing.ts";
import { deepestHeld } from "./vary.ts";

/** Dressings, their regimens and the partial regimens of `compare:` and `usual:`. */
export function crossDressings(data: unknown): Found[] {
	const root = asMap(data);
	const dressings = asList(root.dressings);
	const constants = readableConstants(root.assumptions);
	return [
		...repeatedIds(dressings),
		...dressings.flatMap((dressing, i) =>
			ofDressing(asMap(dressing), ["dressings", i], constants),
		),
		...Object.entries(asMap(root.compare)).flatMap(([name, patch]) =>
			ofPatch(patch, ["compare", name], dressings, constants),
		),
		...ofPatch(root.usual, ["usual"], dressings, constants),
	];
}

function repeatedIds(dressings: readonly unknown[]): Found[] {
	const first = new Map<string, number>();
	return dressings.flatMap((dressing, i) => {
		const id = idOf(asMap(dressing).id);
		if (id === undefined) return [];
		if (id === "all" && dressings.length > 1)
			return [
				found(
					["dressings", i, "id"],
					"an id of its own: all stands for the dressings together",
					received(id),
				),
			];
		const before = first.get(id);
		if (before === undefined) first.set(id, i);
		return before === undefined
			? []
			: [
					found(
						["dressings", i, "id"],
						"an id unlike any other",
						`${received(id)} again (dressings[${before}] has it)`,
					),
				];
	});
}

/** What joins the values of one dressing. */
export function ofDressing(
	dressing: Readonly<Record<string, unknown>>,
	at: Keys,
	constants: Constants,
): Found[] {
	const wound = asMap(dressing.wound);
	const perArea =
		typeof wound.exudate === "string" &&
		/\/\s*[cmd]*m[2²]/u.test(wound.exudate);
	const noArea =
		perArea && wound.area === undefined
			? [
					found(
						[...at, "wound", "area"],
						"the area of the wound, since exudate is given per area",
						"nothing",
					),
				]
			: [];
	const alone = [
		...noArea,
		...ofContent(asMap(dressing.unit), [...at, "unit"]),
	];
	const regimen = dressing.regimen;
	if (!Array.isArray(regimen))
		return [
			...alone,
			...ofRegimen(asMap(regimen), [...at, "regimen"], constants),
		];
	return [
		...alone,
		...order(regimen, [...at, "regimen"]),
		...regimen.flatMap((item, i) =>
			ofRegimen(asMap(item), [...at, "regimen", i], constants),
		),
	];
}

/** A canister that hangs at the start has room, and no more is left in a source than it takes. */
function ofContent(unit: Readonly<Record<string, unknown>>, at: Keys): Found[] {
	const canister = read(canisterSize, unit.canister ?? sizes.canister);
	const source = read(sourceSize, unit.source ?? sizes.source);
	const holds = read(canisterHolds, unit.holds);
	const left = read(sourceLeft, unit.left);
	return [
		...(canister !== undefined && holds !== undefined && holds >= canister
			? [
					found(
						[...at, "holds"],
						`less than the canister takes (${canister} mL): a full one stops the pump before the day begins, so change it first`,
						received(unit.holds),
					),
				]
			: []),
		...(source !== undefined && left !== undefined && left > source
			? [
					found(
						[...at, "left"],
						`at most what the source takes (${source} mL)`,
						received(unit.left),
					),
				]
			: []),
	];
}

const sizes = {
	canister: defaults["dressings[].unit.canister"].write,
	source: defaults["dressings[].unit.source"].write,
};

/** The first from the start, each later than the one before. */
function order(regimens: readonly unknown[], at: Keys): Found[] {
	let latest = 0;
	return regimens.flatMap((item, i) => {
		const written = asMap(item).from;
		const keys = [...at, i, "from"];
		if (written === undefined)
			return i === 0
				? []
				: [found(keys, 'when it takes over, such as "24 h"', "nothing")];
		const fromMin = read(from, written);
		if (fromMin === undefined) return [];
		if (i === 0)
			return fromMin === 0
				? []
				: [found(keys, "0 h for the first regimen", received(written))];
		const late = fromMin > latest;
		latest = Math.max(latest, fromMin);
		return late
			? []
			: [
					found(
						keys,
						"a later time than that of the regimen before",
						received(written),
					),
				];
	});
}

export function ofRegimen(
	regimen: Readonly<Record<string, unknown>>,
	at: Keys,
	constants: Constants,
): Found[] {
	const fill = regimen.fill;
	const fills = fill !== undefined && fill !== null && fill !== "none";
	const missing = (key: string, what: string) =>
		fills && regimen[key] === undefined
			? [found([...at, key], `${what}, since there is a fill`, "nothing")]
			: [];
	return [
		...missing("dwell", 'a dwell such as "5 min"'),
		...missing("suction", 'a suction period such as "2 h"'),
		...reachable(regimen.depth, [...at, "depth"], constants),
	];
}

/** A sound seal must let the pump hold the set depth. */
export function reachable(
	written: unknown,
	keys: Keys,
	constants: Constants,
): Found[] {
	const depthMmHg = read(depth, written);
	if (depthMmHg === undefined || depthMmHg < deepestHeld(constants)) return [];
	return [
		found(
			keys,
			`a depth that the pump holds with a sound seal (it reaches -${constants["pump.maxDepth"]} mmHg with no flow at all)`,
			received(written),
		),
	];
}

/** What a partial regimen says of canister and source, laid over each unit that it is meant for; the first that does not fit speaks. */
function contentOf(
	patch: Readonly<Record<string, unknown>>,
	dressings: readonly unknown[],
	meant: string | undefined,
	keys: Keys,
): Found[] {
	const own = ["canister", "holds", "source", "left"].filter(
		(key) => patch[key] !== undefined,
	);
	if (own.length === 0) return [];
	const given = Object.fromEntries(own.map((key) => [key, patch[key]]));
	const [first] = dressings
		.filter((raw) => meant === undefined || idOf(asMap(raw).id) === meant)
		.map((raw) => ofContent({ ...asMap(asMap(raw).unit), ...given }, keys))
		.filter((faults) => faults.length > 0);
	return first ?? [];
}

/** Every partial regimen names a dressing that is there, and leaves each regimen that it is laid over complete. */
function ofPatch(
	value: unknown,
	keys: Keys,
	dressings: readonly unknown[],
	constants: Constants,
): Found[] {
	const ids = dressings.map((dressing) => idOf(asMap(dressing).id));
	const { dressing: named, ...patch } = asMap(value);
	const meant = idOf(named);
	if (meant !== undefined && !ids.includes(meant))
		return [unknownDressing([...keys, "dressing"], meant, ids)];
	const bases = dressings
		.filter((_, i) => meant === undefined || ids[i] === meant)
		.map((dressing) => {
			const { regimen } = asMap(dressing);
			return asMap(Array.isArray(regimen) ? regimen[0] : regimen);
		});
	const incomplete = bases.flatMap((base) =>
		"fill" in patch && base.fill === "none"
			? ofRegimen({ ...base, ...patch }, keys, constants)
			: [],
	);
	return [
		...incomplete,
		...reachable(patch.depth, [...keys, "depth"], constants),
		...contentOf(patch, dressings, meant, keys),
	];
}

/** The constants with those overrides that can be read. */
export function readableConstants(assumptions: unknown): Constants {
	const given = asMap(assumptions);
	const readable = constantNames.flatMap((name) => {
		const judged =
			given[name] === undefined
				? null
				: judge(given[name], assumptionRule(name));
		return judged?.ok === true ? [[name, judged.value] as const] : [];
	});
	return constantsWith(Object.fromEntries(readable));
}
