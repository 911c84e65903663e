import { type Default, type DefaultPath, defaults } from "./defaults.ts";
import { type Keys, valueAt } from "./path.ts";

/** A default that stands in for a value that the file leaves out. */
export interface Filled {
	readonly keys: Keys;
	readonly default: Default;
}

/** Which defaults a file takes, in the order of `defaults`. Reads the raw file, sound or not. */
export function filledDefaults(data: unknown): Filled[] {
	return (Object.keys(defaults) as DefaultPath[]).flatMap(
		(
			path, // keys forgets the names it lists
		) =>
			spread(data, path.split(".")).flatMap((keys) =>
				valueAt(data, keys) === undefined
					? [{ keys, default: defaults[path] }]
					: [],
			),
	);
}

/** `dressings[].regimen.begin` once for every dressing, and for every item where the regimen is a list. */
function spread(
	data: unknown,
	parts: readonly string[],
	before: Keys = [],
): Keys[] {
	const [part, ...rest] = parts;
	if (part === undefined) return [before];
	const keys = [...before, part.replace("[]", "")];
	const value = valueAt(data, keys);
	if (part.endsWith("[]") || Array.isArray(value)) {
		if (rest.length === 0) return [keys];
		return (Array.isArray(value) ? value : []).flatMap((_, i) =>
			spread(data, rest, [...keys, i]),
		);
	}
	return spread(data, rest, keys);
}

/** A default as it would be written in a file. */
export function writtenDefault({ write }: Default): string {
	return Array.isArray(write)
		? `[ ${write.map((item) => JSON.stringify(item)).join(", ")} ]`
		: String(write);
}
