import * as z from "zod";

/** A result is read, never written to. */
export type Frozen<T> = T extends object ? { readonly [K in keyof T]: Frozen<T[K]> } : T;

/** An object that has the same under each of some names, in their order. */
export const each = <N extends string, S extends z.ZodType>(names: readonly N[], schema: S) =>
	z.object(Object.fromEntries(names.map((name) => [name, schema])) as Record<N, S>); // fromEntries forgets the names

/**
 * The canonical text of a result: keys in the order of its format (others after them by name, and so all that a union
 * holds), numbers at full precision, rows of plain values on one line, a newline at the end. The same result gives the same
 * bytes, however its keys were ordered.
 */
export const canonicalJson = (result: object, format: z.ZodType): string =>
	`${written(result, orderOf(format), "", "result")}\n`;

/** What the text needs of a schema: the places of an object's keys and what is under each, what a list is made of. */
interface Order {
	readonly places: ReadonlyMap<string, number>;
	readonly under: ReadonlyMap<string, Order>;
	readonly item: Order | undefined;
}

const unordered: Order = { places: new Map(), under: new Map(), item: undefined };
/** Of schemas that have been looked at: to ask one what it is takes longer than to write a value. */
const orders = new WeakMap<object, Order>();

function orderOf(schema: unknown): Order {
	if (typeof schema !== "object" || schema === null) return unordered;
	const before = orders.get(schema);
	if (before !== undefined) return before;
	const order = orderIn(schema);
	orders.set(schema, order);
	return order;
}

function orderIn(schema: object): Order {
	if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) return orderOf(schema.unwrap());
	if (schema instanceof z.ZodArray) return { ...unordered, item: orderOf(schema.element) };
	if (!(schema instanceof z.ZodObject)) return unordered;
	const shape: z.ZodRawShape = schema.shape;
	const keys = Object.keys(shape);
	return {
		places: new Map(keys.map((key, place) => [key, place])),
		under: new Map(keys.map((key) => [key, orderOf(shape[key])])),
		item: undefined,
	};
}

function written(value: unknown, order: Order, indent: string, path: string): string {
	if (typeof value === "number" && !Number.isFinite(value)) throw new RangeError(`no JSON for ${value} at ${path}`);
	if (typeof value !== "object" || value === null) return JSON.stringify(value);
	const deeper = `${indent}  `;
	if (Array.isArray(value)) {
		const items = value.map((item, index) => written(item, order.item ?? unordered, deeper, `${path}[${index}]`));
		return enclosed("[", "]", items, value, indent);
	}
	const entries = orderedEntries(value, order.places);
	const items = entries.map(
		([key, item]) =>
			`${JSON.stringify(key)}: ${written(item, order.under.get(key) ?? unordered, deeper, `${path}.${key}`)}`,
	);
	const values = entries.map(([, item]) => item);
	return enclosed("{", "}", items, values, indent);
}

function orderedEntries(value: object, places: ReadonlyMap<string, number>): [string, unknown][] {
	const rank = (key: string): number => places.get(key) ?? places.size;
	return Object.entries(value)
		.filter(([, item]) => item !== undefined)
		.sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0));
}

/** On one line where all values inside are plain, else one a line. */
function enclosed(
	open: string,
	close: string,
	items: readonly string[],
	values: readonly unknown[],
	indent: string,
): string {
	if (items.length === 0) return `${open}${close}`;
	const isPlain = values.every((value) => typeof value !== "object" || value === null);
	if (isPlain) return open === "{" ? `{ ${items.join(", ")} }` : `[${items.join(", ")}]`;
	return `${open}\n${indent}  ${items.join(`,\n${indent}  `)}\n${indent}${close}`;
}
