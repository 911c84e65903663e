import type * as z from "zod";
import { nearestKey } from "./leaf.ts";
import { nearest } from "./nearest.ts";
import { goneConstants } from "./older-files.ts";
import { type Found, found, type Keys, received, valueAt } from "./problem.ts";

type Issue = z.core.$ZodIssue;

/** zod's issues as problems: the message of every issue of the schema is what was expected. */
export function problemsOf(issues: readonly Issue[], data: unknown, under: Keys = []): Found[] {
	return issues.flatMap((issue) => {
		const keys = [...under, ...issue.path.filter((key) => typeof key !== "symbol")];
		if (issue.code === "unrecognized_keys")
			return issue.keys.map((key) => {
				const came = `the key ${received(key)}`;
				const whole = partedByComma(key, valueAt(data, keys));
				const parted = "a number with a point: a comma between braces ends the value";
				if (whole !== undefined) return found([...keys, key], parted, came, `"${whole}"`);
				const isGone = keys.at(-1) === "assumptions" && Object.hasOwn(goneConstants, key);
				const meant = isGone ? goneConstants[key] : nearestKey(key, issue.message);
				return found([...keys, key], shortKeys(issue.message), came, meant);
			});
		if (issue.code === "invalid_union") return ofUnion(issue, data, keys);
		if (issue.code === "invalid_key")
			return [found(keys, issue.issues[0]?.message ?? issue.message, received(keys.at(-1)))];
		const value = valueAt(data, keys);
		const near =
			issue.code === "invalid_value" && typeof value === "string"
				? nearest(value, issue.values.map(String))
				: undefined;
		const given = issue.code === "custom" ? issue.params : undefined;
		return [found(keys, issue.message, text(given?.received) ?? received(value), near ?? text(given?.suggestion))];
	});
}

/** '0.9 mL' where `{ fill: 0,9 mL }` was read as the number 0 and a key '9 mL' after it; undefined for any other key. */
function partedByComma(key: string, map: unknown): string | undefined {
	if (!/^\d+ ?[a-zA-Z%]/u.test(key) || typeof map !== "object" || map === null) return undefined;
	const entries = Object.entries(map);
	const before = entries[entries.findIndex(([name]) => name === key) - 1]?.[1];
	return typeof before === "number" && Number.isInteger(before) ? `${before}.${key}` : undefined;
}

/** The branch that fits the shape of the value speaks; where none does, the union itself. */
function ofUnion(issue: Extract<Issue, { code: "invalid_union" }>, data: unknown, keys: Keys): Found[] {
	const shaped = issue.errors.find(
		(errors) =>
			errors.length > 0 &&
			!errors.some(({ path, code }) => path.length === 0 && code !== "unrecognized_keys" && code !== "custom"),
	);
	if (shaped !== undefined) return problemsOf(shaped, data, keys);
	const value = valueAt(data, keys);
	const words = issue.errors.flat().flatMap((error) => (error.code === "invalid_value" ? error.values : []));
	const near = typeof value === "string" ? nearest(value, words.map(String)) : undefined;
	return [found(keys, issue.message, received(value), near)];
}

const longestList = 250;

/** A list of keys that nobody would read is not printed. */
const shortKeys = (message: string) =>
	message.length <= longestList ? message : `one of the ${message.split(", ").length} keys that are known here`;

const text = (value: unknown) => (typeof value === "string" ? value : undefined);
