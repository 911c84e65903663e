/** As much of JSON Schema as the scenario's schema uses. */
export interface Shape {
	readonly type?: string;
	readonly properties?: { readonly [key: string]: Shape };
	readonly required?: readonly string[];
	readonly items?: Shape;
	readonly anyOf?: readonly Shape[];
	readonly enum?: readonly unknown[];
	readonly const?: unknown;
	readonly pattern?: string;
	readonly additionalProperties?: Shape | boolean;
	readonly description?: string;
	readonly examples?: readonly unknown[];
	readonly default?: unknown;
}

/** What a value of a shape is edited with. */
export type Editor =
	| { readonly kind: "group"; readonly shape: Shape }
	/** A map whose keys the author chooses. */
	| { readonly kind: "names"; readonly item: Shape }
	| { readonly kind: "list"; readonly item: Shape }
	| { readonly kind: "leaf" };

const isMap = (value: unknown): value is { readonly [key: string]: unknown } =>
	typeof value === "object" && value !== null && !Array.isArray(value);

const branchesOf = (shape: Shape): readonly Shape[] => shape.anyOf ?? [shape];

/** The branch that a map has, if one may stand there: of several the one that knows the keys of the value. */
export function groupIn(shape: Shape, value?: unknown): Shape | undefined {
	const groups = branchesOf(shape).filter(({ properties }) => properties !== undefined);
	const keys = isMap(value) ? Object.keys(value) : [];
	return groups.find(({ properties = {} }) => keys.every((key) => Object.hasOwn(properties, key))) ?? groups[0];
}

/** What the items of a list of maps look like, if one may stand there. */
export const recordIn = (shape: Shape): Shape | undefined =>
	branchesOf(shape).find(({ items }) => items?.properties !== undefined)?.items;

/** What suits the value that stands there, or, where none does, the shape. */
export function editorFor(shape: Shape, value: unknown): Editor {
	const [group, record] = [groupIn(shape, value), recordIn(shape)];
	const { additionalProperties: named } = shape;
	if (record !== undefined && (Array.isArray(value) || !others(shape, "items"))) return { kind: "list", item: record };
	if (group !== undefined && (isMap(value) || !others(shape, "properties"))) return { kind: "group", shape: group };
	if (typeof named === "object" && shape.properties === undefined) return { kind: "names", item: named };
	return { kind: "leaf" };
}

/** Whether something else may stand there than the branch that has `key`. */
const others = (shape: Shape, key: "items" | "properties"): boolean =>
	branchesOf(shape).some((branch) =>
		key === "items"
			? branch.items?.properties === undefined
			: branch.properties === undefined && branch.items === undefined,
	);

/** The words that may stand there. */
export const wordsOf = (shape: Shape): readonly string[] =>
	branchesOf(shape)
		.flatMap((branch) => branch.enum ?? [branch.const])
		.filter((word) => typeof word === "string");

/** Whether nothing but one of the words may stand there. */
export const onlyWords = (shape: Shape): boolean =>
	wordsOf(shape).length > 0 &&
	branchesOf(shape).every((branch) => branch.enum !== undefined || branch.const !== undefined);

const isList = (shape: Shape) => branchesOf(shape).some(({ type }) => type === "array");

/** A value of the file as it stands in a field: a list with commas, `none` for an empty one. */
export function fieldText(value: unknown): string {
	if (value === undefined || value === null) return "";
	if (Array.isArray(value)) return value.length === 0 ? "none" : value.map(fieldText).join(", ");
	return typeof value === "object" ? JSON.stringify(value) : String(value);
}

/** What was typed in a field as a value of the file; undefined for an empty field. */
export function fieldValue(text: string, shape: Shape): unknown {
	const typed = text.trim();
	if (typed === "") return undefined;
	if (isList(shape)) {
		const alone = branchesOf(shape).some(({ type }) => type === "string");
		if (typed === "none" && !alone) return [];
		if (typed.includes(",") || !alone) return typed.split(",").map((part) => scalar(part.trim(), shape));
	}
	return scalar(typed, shape);
}

/** A number where no free text may stand: what is wrong with it, where a unit is missing, `check` says. */
function scalar(typed: string, shape: Shape): unknown {
	const free = branchesOf(shape)
		.flatMap((branch) => [branch, ...(branch.items === undefined ? [] : branchesOf(branch.items))])
		.some(
			({ type, pattern, enum: words, const: word }) =>
				type === "string" && pattern === undefined && words === undefined && word === undefined,
		);
	return !free && /^-?(?:\d+\.?\d*|\.\d+)$/u.test(typed) ? Number(typed) : typed;
}

/** 'dressingChange' as 'dressing change'. */
export const plainKey = (key: string): string =>
	key.replace(/([a-z])([A-Z])/gu, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);

/** What a description says, without the units that the field shows by its example. */
export const helpOf = (shape: Shape): string => (shape.description ?? "").split("; units:")[0] ?? "";
