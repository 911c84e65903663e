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

/** What the text needs of a schema: what is under each of an object's keys, in their order, or what a list is made of. */
interface Order {
	readonly under: ReadonlyMap<string, Order>;
	readonly item?: Order;
}

const unordered: Order = { under: new Map() };
/** Of schemas that have been looked at: to ask one what it is takes longer than to write a value. */
const orders = new WeakMap<object, Order>();

function orderOf(schema: unknown): Order {
	if (typeof schema !== "object" || schema === null) return unordered;
	const order = orders.get(schema) ?? orderIn(schema);
	orders.set(schema, order);
	return order;
}

function orderIn(schema: object): Order {
	if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) return orderOf(schema.unwrap());
	if (schema instanceof z.ZodArray) return { ...unordered, item: orderOf(schema.element) };
	if (!(schema instanceof z.ZodObject)) return unordered;
	const shape: z.ZodRawShape = schema.shape;
	return { under: new Map(Object.entries(shape).map(([key, value]) => [key, orderOf(value)])) };
}

function written(value: unknown, order: Order, indent: string, path: string): string {
	if (typeof value === "number" && !Number.isFinite(value)) throw new RangeError(`no JSON for ${value} at ${path}`);
	if (typeof value !== "object" || value === null) return JSON.stringify(value);
	const deeper = `${indent}  `;
	if (Array.isArray(value)) {
		const items = value.map((item, index) => written(item, order.item ?? unordered, deeper, `${path}[${index}]`));
		return value.every(isPlain) ? `[${items.join(", ")}]` : lines("[", items, "]", indent);
	}
	const entries = orderedEntries(value, order);
	const items = entries.map(
		([key, item]) =>
			`${JSON.stringify(key)}: ${written(item, order.under.get(key) ?? unordered, deeper, `${path}.${key}`)}`,
	);
	if (items.length === 0) return "{}";
	return entries.every(([, item]) => isPlain(item)) ? `{ ${items.join(", ")} }` : lines("{", items, "}", indent);
}

function orderedEntries(value: object, { under }: Order): (readonly [string, unknown])[] {
	const given: Record<string, unknown> = { ...value };
	const others = Object.keys(given).filter((key) => !under.has(key));
	const entries = [...under.keys(), ...others.sort()].map((key) => [key, given[key]] as const);
	return entries.filter(([, item]) => item !== undefined);
}

const isPlain = (value: unknown): boolean => typeof value !== "object" || value === null;

const lines = (open: string, items: readonly string[], close: string, indent: string): string =>
	`${open}\n${indent}  ${items.join(`,\n${indent}  `)}\n${indent}${close}`;
