import * as z from "zod";
import { nearest } from "./nearest.ts";
import { received } from "./problem.ts";

// Without this zod tries to compile code from text, which a page under a strict content policy must refuse.
z.config({ jitless: true });

/** What JSON Schema says of a value as it is written: its form, what it is for, examples. */
type Form = Readonly<Record<string, unknown>>;

/** Files a problem: what was expected, what was probably meant, and what came where the value itself does not say it well. */
type Refuse = (expected: string, suggestion?: string, inWords?: string) => never;

/** Files a problem in zod's list; `params.suggestion` is read by `issues.ts`. */
export function refuse(
	context: z.core.$RefinementCtx,
	input: unknown,
	expected: string,
	suggestion?: string,
	inWords?: string,
): never {
	context.issues.push({
		code: "custom",
		input,
		message: expected,
		params: { suggestion, received: inWords ?? received(input) },
	});
	return z.NEVER;
}

/** A value of the file that `read` makes something of or refuses. */
export const leaf = <T>(form: Form, read: (raw: unknown, refuse: Refuse) => T) =>
	z
		.unknown()
		.transform((raw, context): T => read(raw, (...problem) => refuse(context, raw, ...problem)))
		.meta(form);

// Control characters, and the marks that turn or break a line of text on its way to a reader.
const unprintable = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069]/u;

/** Short text; a whole number is taken as the text that it is, so that `id: 1` works. */
export function text(what: string, longest: number, description: string) {
	const expected = `${what} of 1 to ${longest} characters, none of them a control character`;
	const form = { anyOf: [{ type: "string", minLength: 1, maxLength: longest }, { type: "integer" }], description };
	return leaf(form, (raw, refuse): string => {
		const value = Number.isSafeInteger(raw) ? String(raw) : raw;
		if (typeof value !== "string") return refuse(expected);
		if (unprintable.test(value)) return refuse(expected, undefined, "text with a control character");
		if (value.trim() !== value || value === "") return refuse(`${expected}, without spaces around them`);
		const characters = [...value].length;
		return characters > longest ? refuse(expected, undefined, `${characters} characters`) : value;
	});
}

/** A name that others refer to. */
export const name = (what: string, description: string) =>
	text(what, 64, description).refine((value) => value !== "__proto__", { error: "another name" });

/** One of a few words; the nearest is suggested. */
export const choice = <const W extends readonly [string, ...string[]]>(words: W, description: string) =>
	z.enum(words, { error: `one of ${words.join(", ")}` }).describe(description);

/** A whole number within bounds. */
export function count(what: string, from: number, to: number, description: string) {
	const error = `${what}, a whole number from ${from} to ${to}`;
	return z.int({ error }).min(from, { error }).max(to, { error }).describe(description);
}

/** A whole number within bounds, or `unlimited`. */
export const countOrUnlimited = (what: string, from: number, to: number, description: string) =>
	z.union([z.literal("unlimited"), count(`unlimited, or ${what}`, from, to, description)], {
		error: `unlimited, or a whole number from ${from} to ${to}`,
	});

/**
 * Zod counts whatever has a `length`, a map with such a key, too: of one that holds a map it fails, so it is told not to. Its
 * types leave `when` out.
 */
const counted: object = {
	when: ({ value }: { readonly value?: { readonly length?: unknown } | null }) =>
		value?.length === null || !["object", "undefined"].includes(typeof value?.length),
};

/** A list of at most so many things; where `least` is said, it may not be empty. */
export function list<T extends z.ZodType>(
	item: T,
	expected: string,
	most: number,
	things: string,
	{ least, inWords = String(most) }: { readonly least?: string; readonly inWords?: string } = {},
) {
	const any = z.array(item, { error: expected }).max(most, { error: `at most ${inWords} ${things}`, ...counted });
	return least === undefined ? any : any.min(1, { error: least, ...counted });
}

const keysLead = "one of the keys ";

/** A map with known keys. An unknown one is refused; the sentence carries the known ones, `issues.ts` suggests the nearest. */
export const record = <S extends z.core.$ZodShape>(what: string, shape: S) => {
	const keys = Object.keys(shape).join(", ");
	return z.strictObject(shape, {
		error: (issue) =>
			issue.code === "unrecognized_keys" ? `${keysLead}${keys}` : `${what}, a map with the keys ${keys}`,
	});
};

/** The known key nearest to an unknown one, from the sentence that `record` wrote. */
export const nearestKey = (unknown: string, sentence: string) =>
	sentence.startsWith(keysLead) ? nearest(unknown, sentence.slice(keysLead.length).split(", ")) : undefined;
