/** Any value of JSON that is looked at, not trusted. */
type Json = unknown;
const isObject = (value: Json): value is Readonly<Record<string, Json>> =>
	typeof value === "object" && value !== null && !Array.isArray(value);

/** The schema with every object closed that names its keys: what it does not know is an error then, where readers would pass it over. */
export function closedThroughout(schema: object): object {
	const close = (value: Json): Json => {
		if (Array.isArray(value)) return value.map(close);
		if (!isObject(value)) return value;
		const closed = Object.fromEntries(
			Object.entries(value).map(([keyword, part]) => [
				keyword,
				keyword === "properties" && isObject(part)
					? Object.fromEntries(Object.entries(part).map(([key, one]) => [key, close(one)]))
					: close(part),
			]),
		);
		return isObject(value.properties) && !("additionalProperties" in value)
			? { ...closed, additionalProperties: false }
			: closed;
	};
	return close(schema) as object; // an object stays one
}

/** The data with a key that nobody knows in one of its objects, once for each place that has one; items of a list are one place. */
export function withStrangers(data: Json): { readonly place: string; readonly data: Json }[] {
	const seen = new Set<string>();
	const visit = (value: Json, place: string, within: (changed: Json) => Json): { place: string; data: Json }[] => {
		if (Array.isArray(value))
			return value.flatMap((item, at) => visit(item, `${place}[]`, (changed) => within(value.with(at, changed))));
		if (!isObject(value)) return [];
		const here = seen.has(place) ? [] : [{ place, data: within({ ...value, stranger: 1 }) }];
		seen.add(place);
		return [
			...here,
			...Object.entries(value).flatMap(([key, part]) =>
				visit(part, `${place}.${key}`, (changed) => within({ ...value, [key]: changed })),
			),
		];
	};
	return visit(data, "", (changed) => changed);
}
