/** Keys from the root of a file to a value in it. */
export type Keys = readonly (string | number)[];

/** `["dressings", 0, "regimen", "dwell"]` as `dressings[0].regimen.dwell`; a key that would be misread is quoted. */
export function pathText(keys: Keys): string {
	let text = "";
	for (const key of keys) {
		if (typeof key === "number") text += `[${key}]`;
		else if (/^[\p{L}_][\p{L}\p{N}_.-]*$/u.test(key))
			text += text === "" ? key : `.${key}`;
		else text += `[${JSON.stringify(shorten(key))}]`;
	}
	return text;
}

/** What stands at `keys`; undefined where nothing does. */
export function valueAt(data: unknown, keys: Keys): unknown {
	let value = data;
	for (const key of keys) {
		if (
			typeof value !== "object" ||
			value === null ||
			!Object.hasOwn(value, key)
		)
			return undefined;
		value = (value as Record<string | number, unknown>)[key]; // an object that has the key
	}
	return value;
}

const longestShown = 60;

/** A text short enough to stand in a sentence. */
export function shorten(text: string): string {
	const points = [...text];
	return points.length <= longestShown
		? text
		: `${points.slice(0, longestShown - 1).join("")}…`;
}

/** A value of the file in the words of a sentence. */
export function received(value: unknown): string {
	if (value === undefined || value === null) return "nothing";
	if (typeof value === "string") return JSON.stringify(shorten(value));
	if (Array.isArray(value))
		return value.length === 0 ? "an empty list" : "a list";
	if (typeof value === "object") return "a map";
	return shorten(String(value));
}
