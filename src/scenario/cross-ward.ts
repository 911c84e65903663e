import {
	ofDressing,
	ofRegimen,
	reachable,
	readableConstants,
} from "./cross-dressings.ts";
import { crossStores } from "./cross-stores.ts";
import { type Found, found } from "./issues.ts";
import { asList, asMap, idOf, read } from "./lenient.ts";
import { nearest } from "./nearest.ts";
import { type Keys, received } from "./path.ts";
import { duration } from "./schema-regimen.ts";
import { instant } from "./schema-ward.ts";

type Fields = Readonly<Record<string, unknown>>;

/** Rules that join several values of a ward's file. */
export function crossWard(data: unknown): Found[] {
	const root = asMap(data);
	const ward = asMap(root.ward);
	const kinds = asList(ward.kinds).map(asMap);
	return [
		...ofKinds(kinds, root),
		...ofPatients(ward, kinds),
		...wholeDays(root, ward),
		...crossStores(root, kinds),
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

function ofKinds(kinds: readonly Fields[], root: Fields): Found[] {
	const constants = readableConstants(root.assumptions);
	const needed = (kind: Fields, at: Keys) =>
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

function ofPatients(ward: Fields, kinds: readonly Fields[]): Found[] {
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

function wholeDays(root: Fields, ward: Fields): Found[] {
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

function ofPolicies(root: Fields, kinds: readonly Fields[]): Found[] {
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
