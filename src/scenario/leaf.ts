import * as z from "zod";
import { nearest } from "./nearest.ts";
import { refuse } from "./quantity.ts";

// Without this zod tries to compile code from text, which a page under a strict content policy must refuse.
z.config({ jitless: true });

// Control characters, and the marks that turn or break a line of text on its way to a reader.
const unprintable = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069]/u;

/** Short text; a whole number is taken as the text that it is, so that `id: 1` works. */
export function text(what: string, longest: number, description: string) {
	const expected = `${what} of 1 to ${longest} characters, none of them a control character`;
	return z
		.unknown()
		.transform((raw, context): string => {
			const value = Number.isSafeInteger(raw) ? String(raw) : raw;
			if (typeof value !== "string") return refuse(context, raw, expected);
			if (unprintable.test(value))
				return refuse(
					context,
					raw,
					expected,
					undefined,
					"text with a control character",
				);
			if (value.trim() !== value || value === "")
				return refuse(context, raw, `${expected}, without spaces around them`);
			if ([...value].length > longest)
				return refuse(
					context,
					raw,
					expected,
					undefined,
					`${[...value].length} characters`,
				);
			return value;
		})
		.meta({
			anyOf: [
				{ type: "string", minLength: 1, maxLength: longest },
				{ type: "integer" },
			],
			description,
		});
}

/** A name that others refer to. */
export const name = (what: string, description: string) =>
	text(what, 64, description).refine((value) => value !== "__proto__", {
		error: "another name",
	});

/** One of a few words; the nearest is suggested. */
export const choice = <const W extends readonly [string, ...string[]]>(
	words: W,
	description: string,
) =>
	z.enum(words, { error: `one of ${words.join(", ")}` }).meta({ description });

/** A whole number within bounds. */
export const count = (
	what: string,
	from: number,
	to: number,
	description: string,
) =>
	z
		.int({ error: `${what}, a whole number from ${from} to ${to}` })
		.min(from, { error: `${what}, a whole number from ${from} to ${to}` })
		.max(to, { error: `${what}, a whole number from ${from} to ${to}` })
		.meta({ description });

const keysLead = "one of the keys ";

/** A map with known keys. An unknown one is refused; the sentence carries the known ones, `issues.ts` suggests the nearest. */
export const record = <S extends z.core.$ZodShape>(what: string, shape: S) => {
	const keys = Object.keys(shape).join(", ");
	return z.strictObject(shape, {
		error: (issue) =>
			issue.code === "unrecognized_keys"
				? `${keysLead}${keys}`
				: `${what}, a map with the keys ${keys}`,
	});
};

/** The known key nearest to an unknown one, from the sentence that `record` wrote. */
export const nearestKey = (unknown: string, sentence: string) =>
	sentence.startsWith(keysLead)
		? nearest(unknown, sentence.slice(keysLead.length).split(", "))
		: undefined;
