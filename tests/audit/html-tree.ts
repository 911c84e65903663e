/** An element of a page as it was written, with what stands inside it; an element without a name is the page itself. */
export interface Tree {
	readonly name: string;
	readonly attributes: ReadonlyMap<string, string>;
	readonly parent: Tree | null;
	readonly children: readonly (Tree | string)[];
}

interface Growing extends Tree {
	readonly children: (Tree | string)[];
}

const voids = new Set(["br", "col", "hr", "img", "input", "link", "meta", "wbr"]);
const marks: { readonly [name: string]: string } = { amp: "&", lt: "<", gt: ">", quot: '"', nbsp: "\u00A0" };

const plain = (text: string): string =>
	text.includes("&")
		? text.replaceAll(/&(#?\w+);/gu, (whole, name: string) => {
				if (name.startsWith("#")) return String.fromCodePoint(Number(name.slice(1)));
				const mark = marks[name];
				if (mark === undefined) throw new Error(`no mark is called ${whole}`);
				return mark;
			})
		: text;

const token =
	/<!--.*?-->|<!doctype[^>]*>|<(style|script)\b[^>]*>.*?<\/\1>|<\/([a-zA-Z][\w:-]*)>|<([a-zA-Z][\w:-]*)((?:\s+[^\s=>/]+(?:="[^"]*")?)*)\s*(\/?)>|[^<]+/gisuy;
const attribute = /([^\s=>/]+)(?:="([^"]*)")?/gu;

/**
 * The tree of a page that was written out by a serializer, in which every element is closed. A browser's own parser takes
 * ten times as long, most of it for what makes pages live; where a page is not closed as it should be, this throws.
 */
export function htmlTree(html: string): Tree {
	const root: Growing = { name: "", attributes: new Map(), parent: null, children: [] };
	const open = [root];
	const top = (): Growing => open.at(-1) ?? root;
	let at = 0;
	for (const found of html.matchAll(token)) {
		at += found[0].length;
		const [text, unread, closed, opened, given = "", slash] = found;
		if (unread !== undefined) continue;
		if (closed !== undefined) {
			if (open.length === 1 || top().name !== closed) throw new Error(`${closed} is closed, not ${top().name}`);
			open.pop();
		} else if (opened !== undefined) {
			const element: Growing = {
				name: opened,
				attributes: new Map([...given.matchAll(attribute)].map(([, name = "", value = ""]) => [name, plain(value)])),
				parent: top(),
				children: [],
			};
			top().children.push(element);
			if (slash === "" && !voids.has(opened)) open.push(element);
		} else if (!text.startsWith("<!")) top().children.push(plain(text));
	}
	if (at !== html.length) throw new Error(`not read: ${html.slice(at, at + 60)}`);
	if (open.length !== 1) throw new Error(`${top().name} is not closed`);
	return root;
}

export const elementsOf = ({ children }: Tree): readonly Tree[] =>
	children.filter((child) => typeof child !== "string");

/** Every element inside, in the order of the page. */
export const within = (tree: Tree): readonly Tree[] => elementsOf(tree).flatMap((child) => [child, ...within(child)]);

export const isOfClass = ({ attributes }: Tree, name: string): boolean =>
	(attributes.get("class") ?? "").split(" ").includes(name);

/** The text inside of an element, whatever stands around it. */
export const textOf = (tree: Tree): string =>
	tree.children.map((child) => (typeof child === "string" ? child : textOf(child))).join("");

/** An element and those that it stands in, from inside out. */
export function* around(tree: Tree): Generator<Tree> {
	for (let at: Tree | null = tree; at !== null; at = at.parent) yield at;
}
