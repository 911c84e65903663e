import { assumptionRule } from "./keys/assumptions.ts";
import { percent } from "./keys/dressing/drawdown.ts";
import { type Default, type DefaultPath, defaults } from "./meaning/defaults.ts";
import { type Keys, valueAt } from "./reading/problem.ts";
import { judge } from "./reading/quantity.ts";

/** Which defaults stand in for values that a file leaves out, and where, in the order of `defaults`. Reads the raw file, sound or not. */
export function filledDefaults(data: unknown): { readonly keys: Keys; readonly default: Default }[] {
	const pathOf = valueAt(data, ["ward"]) === undefined ? ofDay : ofWard;
	return (Object.keys(defaults) as DefaultPath[]).flatMap((path) => {
		// keys forgets the names it lists
		const there = pathOf(path);
		if (there === null) return [];
		return placesOf(data, there.split(".")).flatMap((keys) =>
			valueAt(data, keys) === undefined && !isReference(data, keys)
				? [{ keys, default: defaultAt(path, data, keys) }]
				: [],
		);
	});
}

/** A default; that of the drawdown is a constant, which the file may have set, and a source is full, whatever its size. */
function defaultAt(path: DefaultPath, data: unknown, keys: Keys): Default {
	if (path === "dressings[].unit.left") {
		const size = valueAt(data, [...keys.slice(0, -1), "source"]);
		return typeof size === "string" ? { ...defaults[path], write: size } : defaults[path];
	}
	if (path !== "dressings[].regimen.drawdown") return defaults[path];
	const judged = judge(valueAt(data, ["assumptions", "pump.drawdown"]), assumptionRule("pump.drawdown"));
	return judged.ok ? { ...defaults[path], write: percent(judged.value) } : defaults[path];
}

/** Where a default stands in the file of a day; null where it has no place there. */
const ofDay = (path: DefaultPath): string | null => (/^(?:ward\.|stores\[\])/u.test(path) ? null : path);

/** The same in the file of a ward: its kinds are dressings, and it has a horizon and replications of its own. */
function ofWard(path: DefaultPath): string | null {
	if (path === "horizon" || path === "replications") return null;
	if (path === "ward.horizon" || path === "ward.replications") return path.slice("ward.".length);
	if (path === "dressings[].patient") return null;
	// Every therapy of a ward begins with a new canister and a new source.
	if (/\.unit\.(?:holds|left)$/u.test(path)) return null;
	return path.replace(/^dressings\[\]/u, "ward.kinds[]");
}

/** A dressing that is taken from another file has its defaults there. */
const isReference = (data: unknown, [ward, kinds, at, key]: Keys) =>
	ward === "ward" &&
	kinds === "kinds" &&
	at !== undefined &&
	key !== "share" &&
	valueAt(data, [ward, kinds, at, "file"]) !== undefined;

/** `dressings[].regimen.begin` once for every dressing, and for every item where the regimen is a list. */
function placesOf(data: unknown, parts: readonly string[], before: Keys = []): Keys[] {
	const [part, ...rest] = parts;
	if (part === undefined) return [before];
	const keys = [...before, part.replace("[]", "")];
	const value = valueAt(data, keys);
	if (part.endsWith("[]") || Array.isArray(value)) {
		if (rest.length === 0) return [keys];
		return (Array.isArray(value) ? value : []).flatMap((_, i) => placesOf(data, rest, [...keys, i]));
	}
	return placesOf(data, rest, keys);
}

/** A default as it would be written in a file. */
export function writtenDefault({ write }: Default): string {
	return Array.isArray(write) ? `[ ${write.map((item) => JSON.stringify(item)).join(", ")} ]` : String(write);
}
