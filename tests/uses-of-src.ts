import { existsSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { transformSync } from "esbuild";
import { parseAst } from "vitest/node";
import { root } from "./source.ts";

/** A block of a test file, and whether anything in it comes from `src`, by however many steps. */
export interface Block {
	readonly title: string;
	readonly usesSrc: boolean;
}

/** A node of a syntax tree, looked at, not trusted. */
interface Node {
	readonly type: string;
	readonly [key: string]: unknown;
}
const isNode = (value: unknown): value is Node =>
	typeof value === "object" && value !== null && typeof (value as { type?: unknown }).type === "string";

const partsOf = (node: Node): Node[] =>
	Object.values(node).flatMap((part) => (Array.isArray(part) ? part.filter(isNode) : isNode(part) ? [part] : []));

function* within(node: Node): Generator<Node> {
	yield node;
	for (const part of partsOf(node)) yield* within(part);
}

const isFunction = ({ type }: Node) =>
	type === "ArrowFunctionExpression" || type === "FunctionExpression" || type === "FunctionDeclaration";

/** Names that are declared in a function itself, or in a module, but not in the functions within. */
function* declaredIn(node: Node): Generator<string> {
	for (const part of partsOf(node)) {
		if (part.type === "FunctionDeclaration" || part.type === "ClassDeclaration") yield String((part.id as Node).name);
		if (part.type === "VariableDeclarator") yield* plainNames(part.id as Node);
		if (!isFunction(part)) yield* declaredIn(part);
	}
}

/** Names that a pattern binds, or that an expression reads; keys of objects and members are none. */
function* plainNames(node: Node): Generator<string> {
	for (const one of identifiersIn(node)) yield String(one.name);
}

function* identifiersIn(node: Node): Generator<Node> {
	if (node.type === "Identifier") yield node;
	for (const [key, part] of Object.entries(node)) {
		const isKey = key === "property" || key === "key";
		if (isKey && node.computed !== true) continue;
		for (const one of Array.isArray(part) ? part : [part]) if (isNode(one)) yield* identifiersIn(one);
	}
}

/** Gives every name in a tree the number of the function that declares it, so that two of one name are two. */
function tellApart(tree: Node): void {
	let scopes = 0;
	const own = new Map<Node, string>();
	const visit = (node: Node, outer: ReadonlyMap<string, number>): void => {
		let names = outer;
		if (isFunction(node) || node.type === "Program") {
			const scope = ++scopes;
			const params = ((node.params as Node[] | undefined) ?? []).flatMap((param) => [...plainNames(param)]);
			names = new Map([...outer, ...[...params, ...declaredIn(node)].map((name) => [name, scope] as const)]);
		}
		if (node.type === "Identifier" && !own.has(node))
			own.set(node, `${node.name}:${names.get(String(node.name)) ?? 0}`);
		for (const [key, part] of Object.entries(node))
			for (const one of Array.isArray(part) ? part : [part])
				if (isNode(one))
					// A function's own name is its parent's.
					visit(one, key === "id" && isFunction(node) ? outer : names);
	};
	visit(tree, new Map());
	for (const [node, name] of own) Object.assign(node, { name });
}

/** Stands for a file of `src` that is read as a file. */
const aFileOfSrc = "a file of src";

/** Names that are read or bound in a node, and files of `src` that are named in it. */
function* namesIn(node: Node): Generator<string> {
	yield* plainNames(node);
	for (const { type, value } of within(node))
		if (type === "Literal" && /^(?:\.\.\/)+src\//u.test(String(value))) yield aFileOfSrc;
}

function parsed(text: string): Node {
	const { code } = transformSync(text, { loader: "ts", format: "esm" });
	const tree = parseAst(code) as unknown as Node; // a tree of such nodes
	tellApart(tree);
	return tree;
}

/** The name in the text of one that was told apart. */
const textName = (name: unknown) => String(name).split(":")[0] ?? "";

/** Names of a module that hold something of `src`: imported from it, or made with something that is. */
function namesOfSrc(tree: Node, file: string): Set<string> {
	const names = new Set([aFileOfSrc]);
	const made: { readonly names: string[]; readonly from: Node }[] = [];
	for (const node of within(tree)) {
		if (node.type === "ImportDeclaration") {
			const source = String((node.source as Node).value);
			const path = join(dirname(file), source);
			for (const one of node.specifiers as Node[]) {
				const imported = isNode(one.imported) ? textName(one.imported.name) : "default";
				if (isOfSrc(source, path, imported)) names.add(String((one.local as Node).name));
			}
		} else if (node.type === "VariableDeclarator" && isNode(node.init))
			made.push({ names: [...namesIn(node.id as Node)], from: node.init });
		else if (node.type === "FunctionDeclaration" || node.type === "ClassDeclaration")
			made.push({ names: [String((node.id as Node).name)], from: node.body as Node });
		else if (node.type === "AssignmentExpression")
			made.push({ names: [...namesIn(node.left as Node)], from: node.right as Node });
	}
	for (let before = -1; before !== names.size; ) {
		before = names.size;
		for (const { names: own, from } of made)
			if ([...namesIn(from)].some((name) => names.has(name))) for (const name of own) names.add(name);
	}
	return names;
}

function isOfSrc(source: string, path: string, name: string): boolean {
	if (!source.startsWith(".")) return false;
	if (relative(join(root, "src"), path).split(sep)[0] !== "..") return true;
	return /\.[cm]?tsx?$/u.test(path) && existsSync(path) ? exportsOfSrc(path).has(name) : false;
}

const known = new Map<string, ReadonlySet<string>>();

/** Names that a module of the tests has from `src` or makes with it. */
function exportsOfSrc(path: string): ReadonlySet<string> {
	const before = known.get(path);
	if (before !== undefined) return before;
	known.set(path, new Set()); // a circle ends here
	const names = namesOfSrc(parsed(readFileSync(path, "utf8")), path);
	const plain = new Set([...names].map(textName));
	known.set(path, plain);
	return plain;
}

/** The blocks of a test file's text: each call of `test`, with its table where it has one. */
export function blocksOf(text: string, file: string): Block[] {
	const tree = parsed(text);
	const names = namesOfSrc(tree, file);
	const blocks: Block[] = [];
	const look = (node: Node): void => {
		if (node.type === "CallExpression" && isTest(node.callee as Node)) {
			const [title] = node.arguments as Node[];
			blocks.push({
				title: isNode(title) ? String(title.value ?? "") : "",
				usesSrc: [...namesIn(node)].some((name) => names.has(name)),
			});
			return;
		}
		for (const part of partsOf(node)) look(part);
	};
	look(tree);
	return blocks;
}

/** `test`, `test.each(…)`, `test.skipIf(…)` and their like, called with a title; not the first call of `test.each`. */
function isTest(callee: Node): boolean {
	if (callee.type === "Identifier") return ["test", "it"].includes(textName(callee.name));
	if (callee.type !== "CallExpression") return false;
	const inner = callee.callee as Node;
	return inner.type === "MemberExpression" && isTest(inner.object as Node);
}
