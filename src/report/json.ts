import type { DayResult } from "../analysis/day-result.ts";
import { dayJsonSchema } from "./day-schema.ts";

/** `day.json`. */
export const dayJson = (result: DayResult): string =>
	canonicalJson(result, dayJsonSchema);

/**
 * The canonical text of a result: keys in the order of the schema (others after them by name), numbers at full precision, rows
 * of plain values on one line, a newline at the end. The same result gives the same bytes, however its keys were ordered.
 */
export function canonicalJson(result: object, schema: Shape): string {
	return `${written(result, schema, "", "result")}\n`;
}

export interface Shape {
	readonly properties?: { readonly [key: string]: Shape };
	readonly items?: Shape;
	readonly additionalProperties?: Shape | boolean;
}

function written(
	value: unknown,
	shape: Shape,
	indent: string,
	path: string,
): string {
	if (typeof value === "number" && !Number.isFinite(value))
		throw new RangeError(`no JSON for ${value} at ${path}`);
	if (typeof value !== "object" || value === null) return JSON.stringify(value);
	const deeper = `${indent}  `;
	if (Array.isArray(value)) {
		const items = value.map((item, index) =>
			written(item, shape.items ?? {}, deeper, `${path}[${index}]`),
		);
		return enclosed("[", "]", items, value, indent);
	}
	const entries = orderedEntries(value, shape);
	const items = entries.map(([key, item]) => {
		const inner =
			shape.properties?.[key] ??
			(typeof shape.additionalProperties === "object"
				? shape.additionalProperties
				: {});
		return `${JSON.stringify(key)}: ${written(item, inner, deeper, `${path}.${key}`)}`;
	});
	return enclosed(
		"{",
		"}",
		items,
		entries.map(([, item]) => item),
		indent,
	);
}

function orderedEntries(value: object, shape: Shape): [string, unknown][] {
	const order = Object.keys(shape.properties ?? {});
	const rank = (key: string): number =>
		order.includes(key) ? order.indexOf(key) : order.length;
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
	const isPlain = values.every(
		(value) => typeof value !== "object" || value === null,
	);
	if (isPlain)
		return open === "{" ? `{ ${items.join(", ")} }` : `[${items.join(", ")}]`;
	return `${open}\n${indent}  ${items.join(`,\n${indent}  `)}\n${indent}${close}`;
}
