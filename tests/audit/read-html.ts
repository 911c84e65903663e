import { spaced } from "./holes.ts";
import { around, elementsOf, htmlTree, isOfClass, type Tree, textOf, within } from "./html-tree.ts";

/** A piece of text that a reader sees in one: a paragraph, a list item, a heading, a caption. */
export interface Block {
	readonly text: string;
	/** Number of the dressing it is about, from 0; null where it is about all of it. */
	readonly dressing: number | null;
	/** Where it stands, for a failure. */
	readonly where: string;
}

export interface Table {
	readonly id: string;
	readonly dressing: number | null;
	readonly columns: readonly string[];
	readonly rows: readonly (readonly string[])[];
}

export interface ChartText {
	readonly text: string;
	readonly x: number;
	readonly y: number;
	readonly anchor: string;
}

/** A chart as it reads: its title, its text alternative, what its marks are called, its labels with their places. */
export interface Chart {
	readonly id: string;
	readonly dressing: number | null;
	readonly title: string;
	readonly description: string;
	readonly marks: readonly string[];
	readonly labels: readonly ChartText[];
}

export interface Page {
	readonly blocks: readonly Block[];
	readonly tables: readonly Table[];
	readonly charts: readonly Chart[];
}

const inline = new Set(["strong", "em", "span", "code", "wbr", "abbr", "b", "i", "small", "time"]);
const unread = new Set(["style", "script", "head"]);

/** A span of places to write by hand, or a link, is read by itself. */
const standsAlone = ({ name, parent }: Tree): boolean =>
	parent !== null &&
	(isOfClass(parent, "sign") ||
		(name === "span" && parent.name === "li" && [...around(parent)].some((one) => one.name === "nav")));

const isInline = (element: Tree): boolean => inline.has(element.name) && !standsAlone(element);

const isUnseen = ({ attributes }: Tree): boolean => attributes.get("aria-hidden") === "true";

/** The text of an element without that of the blocks inside it and of what nobody sees. */
const ownText = ({ children }: Tree): string =>
	children
		.map((child, place) => {
			if (typeof child === "string") return child;
			if (!isInline(child) || isUnseen(child)) return "";
			// Spans beside each other stand apart.
			const before = children[place - 1];
			const apart = child.name === "span" && before !== undefined && typeof before !== "string";
			return `${apart ? " " : ""}${ownText(child)}`;
		})
		.join("");

/** All of what a reader sees of an element. */
const seen = (element: Tree): string => spaced(ownText(element));

/** The dressing whose section or place in the list of contents an element is; undefined for any other. */
function dressingOf(element: Tree): number | undefined {
	const target =
		element.name === "section" && isOfClass(element, "dressing")
			? element.attributes.get("id")
			: element.name === "li" && [...around(element)].some(({ name }) => name === "nav")
				? within(element)
						.find(({ name, attributes }) => name === "a" && attributes.has("href"))
						?.attributes.get("href")
						?.slice(1)
				: undefined;
	const number = /^dressing-(\d+)$/u.exec(target ?? "")?.[1];
	return number === undefined ? undefined : Number(number) - 1;
}

const regions = new Set(["section", "nav", "header", "footer"]);

function whereOf(element: Tree): string {
	const region = [...around(element)].find(({ name, attributes }) => attributes.has("id") || regions.has(name));
	const name = region === undefined ? "" : region.attributes.get("id") || region.attributes.get("class") || region.name;
	return `${name} ${element.name}`.trim();
}

/** A page of HTML, taken apart into what a reader reads. */
export function readHtml(html: string): Page {
	const blocks: Block[] = [];
	const tables: Table[] = [];
	const charts: Chart[] = [];
	const visit = (element: Tree, outside: number | null): void => {
		const { name } = element;
		const dressing = dressingOf(element) ?? outside;
		if (name === "head") {
			const title = within(element).find((one) => one.name === "title");
			if (title !== undefined) blocks.push({ text: spaced(textOf(title)), dressing: null, where: "title" });
		}
		if (unread.has(name)) return;
		if (name === "svg") {
			charts.push(chartOf(element, dressing));
			return;
		}
		if (name === "table") {
			tables.push(tableOf(element, dressing));
			const inside = within(element);
			const caption = inside.find((one) => one.name === "caption");
			if (caption !== undefined) visit(caption, dressing);
			for (const chart of inside.filter((one) => one.name === "svg")) charts.push(chartOf(chart, dressing));
			return;
		}
		const text = seen(element);
		if (text !== "") blocks.push({ text, dressing, where: whereOf(element) });
		const label = element.attributes.get("aria-label");
		if (label !== undefined) blocks.push({ text: spaced(label), dressing, where: `${whereOf(element)} label` });
		for (const child of elementsOf(element)) if (!isInline(child) && !isUnseen(child)) visit(child, dressing);
	};
	for (const element of elementsOf(htmlTree(html))) visit(element, null);
	return { blocks, tables, charts };
}

function tableOf(element: Tree, dressing: number | null): Table {
	const cells = (row: Tree): string[] => elementsOf(row).map(seen);
	const rowsIn = (part: string): Tree[] =>
		elementsOf(element)
			.filter(({ name }) => name === part)
			.flatMap((one) => elementsOf(one).filter(({ name }) => name === "tr"));
	const [head] = rowsIn("thead");
	const caption = within(element).find(({ name }) => name === "caption");
	return {
		id: (caption?.attributes.get("id") ?? "").replace(/-caption$/u, ""),
		dressing,
		columns: head === undefined ? [] : cells(head),
		rows: rowsIn("tbody").map(cells),
	};
}

/** A chart out of a page or a file. */
function chartOf(svg: Tree, dressing: number | null): Chart {
	const inside = within(svg);
	const own = (wanted: string): string => {
		const one = elementsOf(svg).find(({ name }) => name === wanted);
		return one === undefined ? "" : spaced(textOf(one));
	};
	const number = ({ attributes }: Tree, name: string): number => Number(attributes.get(name) ?? Number.NaN);
	return {
		id: inside.find(({ attributes }) => attributes.has("id"))?.attributes.get("id") ?? "",
		dressing,
		title: own("title"),
		description: own("desc"),
		marks: inside
			.filter(({ name, parent }) => name === "title" && parent !== svg)
			.map((title) => spaced(textOf(title))),
		labels: joined(
			inside
				.filter(({ name }) => name === "text")
				.map((text) => ({
					text: spaced(textOf(text)),
					x: number(text, "x"),
					y: number(text, "y"),
					anchor: text.attributes.get("text-anchor") ?? "start",
				})),
		),
	};
}

/** From line to line of a text that is broken, px. */
const linesPx = [17, 18, 19, 23];

/** Lines right under each other are one text. */
function joined(lines: readonly ChartText[]): ChartText[] {
	const texts: ChartText[] = [];
	let lastY = Number.NaN;
	for (const line of lines) {
		const before = texts.at(-1);
		if (
			before !== undefined &&
			!/^(?:\d\d:\d\d|[A-Z][a-z]{2} \d{1,2})$/u.test(before.text) &&
			before.x === line.x &&
			before.anchor === line.anchor &&
			linesPx.includes(Math.round(10 * (line.y - lastY)) / 10)
		)
			texts[texts.length - 1] = { ...before, text: `${before.text} ${line.text}` };
		else texts.push(line);
		lastY = line.y;
	}
	return texts;
}
