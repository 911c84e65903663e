import * as z from "zod";
import type { Constants } from "../../../physics/index.ts";
import { byDefault } from "../../meaning/defaults.ts";
import type { Dressing } from "../../meaning/scenario.ts";
import type { Policy, WardKind } from "../../meaning/ward.ts";
import { list, name, record, text } from "../../reading/leaf.ts";
import { type Found, found, type Keys } from "../../reading/problem.ts";
import { quantity, rule } from "../../reading/quantity.ts";
import { again, asMap, type Fields, idsOf, stranger } from "../../reading/raw.ts";
import { partialShape } from "../compare.ts";
import { crossDressing, type DressingFile, dressing, foamVolumeMl, resolveDressing } from "../dressing/dressing.ts";
import { crossRegimen, reachable, resolveRegimens } from "../dressing/regimen.ts";
import { size } from "../dressing/unit.ts";

/** Weight of a row or a kind among the others: any number above 0. */
export const weight = quantity(rule("", "a share, beside the other shares", "above 0 and up to 1000000", "1"));

const { wound, foam, regimen, unit, age } = dressing.shape;

const kind = record("a kind of dressing", {
	id: name("an id", "short name of the kind, unlike any other"),
	share: byDefault(weight, "ward.kinds[].share"),
	file: text(
		"a file",
		300,
		"scenario file that the dressing is taken from, beside this one; its care, happenings and assumptions play no part",
	).optional(),
	dressing: name("the id of a dressing", "which dressing of that file, where it has several").optional(),
	solution: text("a name", 200, "the solution of this kind, where it is another").optional(),
	wound: wound.optional(),
	foam: foam.optional(),
	regimen: regimen.optional(),
	unit: unit.unwrap().optional().describe("what the therapy unit takes"),
	age: age.unwrap().optional(),
}).describe("a kind of dressing: from a file, or written out with wound, foam, regimen");

const some = "a list of one or more kinds of dressings";

export const kinds = list(kind, some, 50, "kinds", { least: some }).describe("kinds of dressings, each with its share");

/** Policies to set against today's mix. Every therapy of a ward begins with a new canister and a new source. */
export const policies = z
	.record(
		name("a name", "name of the policy"),
		record("a policy", {
			...partialShape,
			canister: size("another size of canister").optional(),
			source: size("another size of source").optional(),
		}),
		{ error: "a map of names and policies" },
	)
	.prefault({})
	.describe(
		"policies to set against today's mix: each is laid over the first regimen of every kind that has a fill, or of the one it names",
	);

/** Each kind is written out, or named in a file that has been read, and is like no other. */
export function crossKinds(kinds: readonly Fields[], constants: Constants): Found[] {
	return [
		...again(idsOf(kinds), "an id unlike any other", (i) => ["ward", "kinds", i, "id"]),
		...kinds.flatMap((kind, i) => {
			if (kind.file !== undefined) return [];
			const at = ["ward", "kinds", i];
			const missing = ["wound", "foam", "regimen"]
				.filter((key) => kind[key] === undefined)
				.map((key) => found([...at, key], `${key}, where no file is named`, "nothing"));
			return kind.regimen === undefined ? missing : [...missing, ...crossDressing(kind, at, constants)];
		}),
	];
}

/** A kind that the ward does not have. */
export const strangerKind = (named: unknown, kinds: readonly Fields[], keys: Keys): Found[] =>
	stranger(named, kinds, keys, { of: "a kind", longest: Number.POSITIVE_INFINITY });

/** A policy names a kind that is there, and is a complete regimen where it says how much is filled. */
export const crossPolicies = (compare: unknown, kinds: readonly Fields[], constants: Constants): Found[] =>
	Object.entries(asMap(compare)).flatMap(([name, value]) => {
		const { dressing: named, ...patch } = asMap(value);
		const keys = ["compare", name];
		const faults = strangerKind(named, kinds, [...keys, "dressing"]);
		if (patch.fill !== undefined && patch.fill !== "none")
			faults.push(...crossRegimen({ dwell: "", suction: "", ...patch }, keys, constants));
		return [...faults, ...reachable(patch.depth, [...keys, "depth"], constants)];
	});

/** The kinds of a sound file, in which the dressing of each is written out. */
export function writtenDressings(rawKinds: readonly unknown[]): DressingFile[] {
	return rawKinds.map((raw) => {
		const { share: _, solution: __, ...worn } = asMap(raw);
		return dressing.parse(worn);
	});
}

export const resolveKinds = (
	file: z.output<typeof kinds>,
	written: readonly DressingFile[],
	solution: string,
	constants: Constants,
): WardKind[] =>
	file.map((kind, i) => ({
		id: kind.id,
		share: kind.share,
		dressing: { ...resolveDressing(written[i], constants), canisterHoldsMl: 0, sourceLeftMl: null },
		solution: kind.solution ?? solution,
	}));

/** Each policy laid over every kind that has a fill, or over the one that it names. */
export const resolvePolicies = (
	file: z.output<typeof policies>,
	kinds: readonly WardKind[],
	written: readonly DressingFile[],
	constants: Constants,
): Policy[] =>
	Object.entries(file).map(([name, policy]) => ({
		name,
		dressings: kinds.map(({ id, dressing }, i): Dressing => {
			if (policy.dressing !== undefined && policy.dressing !== id) return dressing;
			const fills = dressing.regimens.some(({ fillMl }) => fillMl > 0);
			return {
				...dressing,
				canisterMl: policy.canister ?? dressing.canisterMl,
				sourceMl: policy.source ?? dressing.sourceMl,
				regimens: resolveRegimens(written[i].regimen, fills ? policy : {}, foamVolumeMl(written[i]), constants),
			};
		}),
	}));
