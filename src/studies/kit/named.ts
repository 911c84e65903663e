/** One value for each of some names. */
export const keyed = <N extends string, V>(names: readonly N[], of: (name: N, place: number) => V) =>
	Object.fromEntries(names.map((name, place) => [name, of(name, place)])) as { readonly [K in N]: V }; // fromEntries forgets the names

/** What an object holds under some of its names. */
export const picked = <T extends object, K extends keyof T>(from: T, ...names: readonly K[]) =>
	Object.fromEntries(names.map((name) => [name, from[name]])) as Pick<T, K>; // fromEntries forgets the names
