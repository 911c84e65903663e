import { readQuantity } from "../physics/index.ts";
import {
	ofDressing,
	ofRegimen,
	reachable,
	readableConstants,
} from "./cross-dressings.ts";
import { defaults } from "./defaults.ts";
import { type Found, found } from "./issues.ts";
import { asList, asMap, idOf, read } from "./lenient.ts";
import { nearest } from "./nearest.ts";
import { type Keys, received } from "./path.ts";
import { duration } from "./schema-dressing.ts";
import { instant } from "./schema-ward.ts";

type Map = Readonly<Record<string, unknown>>;

/** Rules that join several values of a ward's file. */
export function crossWard(data: unknown): Found[] {
	const root = asMap(data);
	const ward = asMap(root.ward);
	const kinds = asList(ward.kinds).map(asMap);
	return [
		...ofKinds(kinds, root),
		...ofPatients(ward, kinds),
		...wholeDays(root, ward),
		...ofStores(root, kinds),
		...ofPolicies(root, kinds),
		...ofShifts(asMap(root.care).nurses),
	];
}

/** Each id once. */
function repeated(
	ids: readonly (string | undefined)[],
	keys: (i: number) => Keys,
): Found[] {
	return ids.flatMap((id, i) =>
		id !== undefined && ids.indexOf(id) < i
			? [found(keys(i), "an id unlike any other", `${received(id)} again`)]
			: [],
	);
}

function ofKinds(kinds: readonly Map[], root: Map): Found[] {
	const constants = readableConstants(root.assumptions);
	const needed = (kind: Map, at: Keys) =>
		["wound", "foam", "regimen"].flatMap((key) =>
			kind.file === undefined && kind[key] === undefined
				? [found([...at, key], `${key}, where no file is named`, "nothing")]
				: [],
		);
	return [
		...repeated(
			kinds.map(({ id }) => idOf(id)),
			(i) => ["ward", "kinds", i, "id"],
		),
		...kinds.flatMap((kind, i) => {
			const at = ["ward", "kinds", i];
			const missing = needed(kind, at);
			return kind.file === undefined && kind.regimen !== undefined
				? [...missing, ...ofDressing(kind, at, constants)]
				: missing;
		}),
	];
}

function ofPatients(ward: Map, kinds: readonly Map[]): Found[] {
	const ids = kinds.flatMap(({ id }) => idOf(id) ?? []);
	const unknown = (id: string | undefined, keys: Keys) =>
		id === undefined || ids.includes(id)
			? []
			: [
					found(
						keys,
						`the id of a kind: ${ids.join(", ")}`,
						received(id),
						nearest(id, ids),
					),
				];
	const census = asMap(ward.census);
	const beds = asList(ward.beds).map(asMap);
	const patients = Object.values(census).reduce(
		(sum: number, count) => sum + (typeof count === "number" ? count : 0),
		0,
	);
	const { units } = ward;
	const found_ = [
		...Object.keys(census).flatMap((id) => unknown(id, ["ward", "census", id])),
		...repeated(
			beds.map(({ id }) => idOf(id)),
			(i) => ["ward", "beds", i, "id"],
		),
		...beds.flatMap((bed, i) =>
			unknown(idOf(bed.kind), ["ward", "beds", i, "kind"]),
		),
		...beds.flatMap((bed, i) => {
			const [start, end] = [read(instant, bed.start), read(instant, bed.end)];
			return start !== undefined && end !== undefined && end <= start
				? [
						found(
							["ward", "beds", i, "end"],
							`a time after the start, ${received(bed.start)}`,
							received(bed.end),
						),
					]
				: [];
		}),
	];
	if (typeof units === "number" && patients > units)
		found_.push(
			found(
				["ward", "census"],
				`at most ${units} patients, one a unit`,
				`${patients} of them`,
			),
		);
	const drawn = ward.arrivals !== undefined || patients > 0;
	if (drawn && ward.length === undefined)
		found_.push(
			found(
				["ward", "length"],
				"how long a therapy lasts, since patients come by chance or are there",
				"nothing",
			),
		);
	if (!drawn && beds.length === 0)
		found_.push(found(["ward"], "arrivals, a census or beds", "none of them"));
	return found_;
}

const days = duration("days", "0 d", "364 d", "7 d");

function wholeDays(root: Map, ward: Map): Found[] {
	return (
		[
			[["horizon"], root.horizon],
			[["ward", "warmUp"], ward.warmUp],
		] as const
	).flatMap(([keys, written]) => {
		const minutes = read(days, written);
		return minutes !== undefined && minutes % 1440 !== 0
			? [found(keys, "whole days", received(written))]
			: [];
	});
}

/** The volume in mL; NaN where it cannot be read. */
function volume(written: unknown): number {
	const reading =
		typeof written === "string" ? readQuantity(written, "mL") : null;
	return reading?.ok === true ? reading.value : Number.NaN;
}

const standardSolution = (root: Map) =>
	idOf(asMap(root.solution).name) ?? defaults["solution.name"].write;

interface Used {
	readonly kind: string;
	readonly size: number | null;
	readonly solution: string | null;
	readonly by: string;
}

/** What the kinds and the policies use. */
function usedBy(root: Map, kinds: readonly Map[]): Used[] {
	const standard = standardSolution(root);
	const policies = Object.entries(asMap(root.compare)).map(
		([name, policy]) => ({ name, policy: asMap(policy) }),
	);
	return kinds.flatMap((kind) => {
		if (kind.regimen === undefined) return [];
		const by = `the kind ${idOf(kind.id) ?? "?"}`;
		const unit = asMap(kind.unit);
		const regimens = (
			Array.isArray(kind.regimen) ? kind.regimen : [kind.regimen]
		).map(asMap);
		const fills = regimens.some(
			({ fill }) => fill !== undefined && fill !== "none",
		);
		const sizes = (key: "canister" | "source") => [
			{
				size: unit[key] ?? defaults[`dressings[].unit.${key}`].write,
				by,
			},
			...policies
				.filter(
					({ policy }) =>
						policy[key] !== undefined &&
						[undefined, idOf(kind.id)].includes(idOf(policy.dressing)),
				)
				.map(({ name, policy }) => ({
					size: policy[key],
					by: `the policy ${name}`,
				})),
		];
		const solution = idOf(kind.solution) ?? standard;
		return [
			...sizes("canister").map(({ size, by: user }) => ({
				kind: "canister",
				size: volume(size),
				solution: null,
				by: user,
			})),
			...(fills
				? [
						...sizes("source").map(({ size, by: user }) => ({
							kind: "solution",
							size: volume(size),
							solution,
							by: user,
						})),
						{ kind: "line", size: null, solution: null, by },
					]
				: []),
			{ kind: "kit", size: null, solution: null, by },
			{ kind: "port", size: null, solution: null, by },
		];
	});
}

const nameOf = ({ kind, size, solution }: Omit<Used, "by">) =>
	`${kind === "solution" ? solution : kind}${size === null ? "" : ` ${size} mL`}`;

function ofStores(root: Map, kinds: readonly Map[]): Found[] {
	const standard = standardSolution(root);
	const items = asList(root.stores).map(asMap);
	const keyed = items.map((item) => ({
		kind: String(item.item),
		size:
			item.item === "canister" || item.item === "solution"
				? volume(item.size)
				: null,
		solution:
			item.item === "solution" ? (idOf(item.solution) ?? standard) : null,
	}));
	const names = keyed.map(nameOf);
	const lacking = new Map(
		usedBy(root, kinds)
			.filter((used) => used.size === null || !Number.isNaN(used.size))
			.filter((used) => !names.includes(nameOf(used)))
			.map((used) => [nameOf(used), used.by] as const),
	);
	return [
		...[...lacking].map(([name, by]) =>
			found(
				["stores"],
				`every item that is used, among them ${name} (${by})`,
				"none of it",
			),
		),
		...items.flatMap((item, i) => {
			const at = (key: string): Keys => ["stores", i, key];
			const sized = item.item === "canister" || item.item === "solution";
			const faults: Found[] = [];
			if (sized && item.size === undefined)
				faults.push(found(at("size"), 'a size such as "1000 mL"', "nothing"));
			if (!sized)
				for (const key of ["size", "solution", "substitute"])
					if (item[key] !== undefined)
						faults.push(
							found(
								at(key),
								`no ${key} with ${String(item.item)}`,
								received(item[key]),
							),
						);
			if (item.item === "canister" && item.solution !== undefined)
				faults.push(
					found(
						at("solution"),
						"no solution with canister",
						received(item.solution),
					),
				);
			if (names.indexOf(names[i] ?? "") < i)
				faults.push(
					found(["stores", i], "each item once", `${names[i]} again`),
				);
			if (item.price !== undefined && asMap(root.prices).currency === undefined)
				faults.push(
					found(at("price"), "a currency for it, under prices:", "none"),
				);
			const { reorder, upTo } = item;
			if (typeof upTo === "number" && typeof reorder !== "number")
				faults.push(found(at("upTo"), "a reorder point beside it", "none"));
			if (
				typeof upTo === "number" &&
				typeof reorder === "number" &&
				upTo <= reorder
			)
				faults.push(
					found(
						at("upTo"),
						`more than the reorder point, ${reorder}`,
						String(upTo),
					),
				);
			if (item.substitute !== undefined && sized) {
				const other = nameOf({
					kind: keyed[i]?.kind ?? "",
					size: volume(item.substitute),
					solution: keyed[i]?.solution ?? null,
				});
				const there = names.indexOf(other);
				if (there < 0 || there === i)
					faults.push(
						found(
							at("substitute"),
							"the size of another item of the stores",
							received(item.substitute),
						),
					);
			}
			return faults;
		}),
	];
}

function ofPolicies(root: Map, kinds: readonly Map[]): Found[] {
	const constants = readableConstants(root.assumptions);
	const ids = kinds.flatMap(({ id }) => idOf(id) ?? []);
	return Object.entries(asMap(root.compare)).flatMap(([name, value]) => {
		const { dressing: named, canister: _, source: __, ...patch } = asMap(value);
		const keys = ["compare", name];
		const meant = idOf(named);
		const faults =
			meant !== undefined && !ids.includes(meant)
				? [
						found(
							[...keys, "dressing"],
							`the id of a kind: ${ids.join(", ")}`,
							received(meant),
							nearest(meant, ids),
						),
					]
				: [];
		if (patch.fill !== undefined && patch.fill !== "none")
			faults.push(
				...ofRegimen({ dwell: "", suction: "", ...patch }, keys, constants),
			);
		return [
			...faults,
			...reachable(patch.depth, [...keys, "depth"], constants),
		];
	});
}

function ofShifts(nurses: unknown): Found[] {
	const begins = asList(nurses).map((shift) => asMap(shift).from);
	return begins.flatMap((from, i) =>
		begins.indexOf(from) < i
			? [
					found(
						["care", "nurses", i, "from"],
						"each time once",
						`${received(from)} again`,
					),
				]
			: [],
	);
}
