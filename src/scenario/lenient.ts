import type * as z from "zod";

/** The value as a map; an empty one where it is none. */
export function asMap(value: unknown): Readonly<Record<string, unknown>> {
	return typeof value === "object" && value !== null && !Array.isArray(value)
		? (value as Record<string, unknown>)
		: {}; // an object that is no list
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

/** An id as the schema takes it: text, or a whole number. */
export function idOf(value: unknown): string | undefined {
	return typeof value === "string"
		? value
		: Number.isSafeInteger(value)
			? String(value)
			: undefined;
}
