import type * as z from "zod";
import { readQuantity } from "../../physics/index.ts";
import { nearest } from "./nearest.ts";
import { type Found, found, type Keys, received } from "./problem.ts";

/** A map of the raw file, whatever stands in it. */
export type Fields = Readonly<Record<string, unknown>>;

/** The value as a map; an empty one where it is none. */
export function asMap(value: unknown): Fields {
	return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Fields) : {}; // an object that is no list
}

export function asList(value: unknown): readonly unknown[] {
	return Array.isArray(value) ? value : [];
}

/** What a leaf of the schema makes of a value; undefined where it refuses it. */
export function read<T>(leaf: z.ZodType<T>, value: unknown): T | undefined {
	if (value === undefined) return undefined;
	const parsed = leaf.safeParse(value);
	return parsed.success ? parsed.data : undefined;
}

/** A volume in mL, within any bounds; NaN where it cannot be read. */
export function readMl(written: unknown): number {
	const reading = typeof written === "string" ? readQuantity(written, "mL") : null;
	return reading?.ok === true ? reading.value : Number.NaN;
}

/** An id as the schema takes it: text, or a whole number. */
export function idOf(value: unknown): string | undefined {
	return typeof value === "string" ? value : Number.isSafeInteger(value) ? String(value) : undefined;
}

/** What is wrong with values that are each sound but do not go together. All of it reads the raw file. */

type Owners = readonly { readonly id?: unknown }[];

export const idsOf = (owners: Owners) => owners.map(({ id }) => idOf(id));

/** An id that nothing has: the dressing, or the kind of dressing, that another part of the file names. */
export function stranger(named: unknown, all: Owners, keys: Keys, { of = "a dressing", longest = 10 } = {}): Found[] {
	const [id, ids] = [idOf(named), idsOf(all)];
	if (id === undefined || ids.includes(id)) return [];
	const known = ids.filter((other) => other !== undefined);
	const listed = known.length <= longest ? `: ${known.join(", ")}` : "";
	return [found(keys, `the id of ${of}${listed}`, received(id), nearest(id, known))];
}

/** Every value that stands in the list before; undefined is none. */
export const again = (values: readonly unknown[], expected: string, keysOf: (i: number) => Keys): Found[] =>
	values.flatMap((value, i) =>
		value !== undefined && values.indexOf(value) < i ? [found(keysOf(i), expected, `${received(value)} again`)] : [],
	);

/** The keys that a kind of thing needs and may have beside those of all kinds, no others; `samples` says what is missing. */
export function wrongDetails(
	item: Fields,
	kind: string,
	{ needs, may }: { readonly needs: readonly string[]; readonly may: readonly string[] },
	samples: { readonly [key: string]: string },
	keys: Keys,
): Found[] {
	return Object.entries(samples).flatMap(([key, sample]) => {
		const given = item[key] !== undefined;
		if (given && !needs.includes(key) && !may.includes(key))
			return [found([...keys, key], `no ${key} with ${kind}`, received(item[key]))];
		return !given && needs.includes(key) ? [found([...keys, key], sample, "nothing")] : [];
	});
}
