import { JSDOM } from "jsdom";
import { spaced } from "./holes.ts";

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

const inline = new Set([
	"strong",
	"em",
	"span",
	"code",
	"wbr",
	"abbr",
	"b",
	"i",
	"small",
	"time",
]);
const unread = new Set(["style", "script", "head"]);

/** A span of places to write by hand, or a link, is read by itself. */
const standsAlone = (element: Element): boolean =>
	element.parentElement?.classList.contains("sign") === true ||
	element.matches("nav li > span");

const isInline = (element: Element): boolean =>
	inline.has(element.localName) && !standsAlone(element);

const isUnseen = (element: Element): boolean =>
	element.getAttribute("aria-hidden") === "true";

/** The text of an element without that of the blocks inside it and of what nobody sees. */
function ownText(element: Element): string {
	let text = "";
	for (const node of element.childNodes) {
		if (node.nodeType === node.TEXT_NODE) text += node.nodeValue ?? "";
		else if (isElement(node) && isInline(node) && !isUnseen(node)) {
			// Spans beside each other stand apart.
			const apart =
				node.localName === "span" &&
				node.previousSibling !== null &&
				isElement(node.previousSibling);
			text += `${apart ? " " : ""}${ownText(node)}`;
		}
	}
	return text;
}

const isElement = (node: Node): node is Element =>
	node.nodeType === node.ELEMENT_NODE;

/** All of what a reader sees of an element. */
const seen = (element: Element): string => spaced(ownText(element));

function dressingOf(element: Element): number | null {
	const section =
		element.closest("section.dressing")?.id ??
		element
			.closest("nav li")
			?.querySelector("a[href]")
			?.getAttribute("href")
			?.slice(1);
	const number = /^dressing-(\d+)$/u.exec(section ?? "")?.[1];
	return number === undefined ? null : Number(number) - 1;
}

function whereOf(element: Element): string {
	const around = element.closest("[id], section, nav, header, footer");
	const name =
		around === null ? "" : around.id || around.className || around.localName;
	return `${name} ${element.localName}`.trim();
}

/** A page of HTML, taken apart into what a reader reads. */
export function readHtml(html: string): Page {
	// Style sheets and the points of curves take longer to parse than all the rest, and nobody reads them.
	const { document } = new JSDOM(
		html.replaceAll(/<style>.*?<\/style>| d="[^"]*"/gsu, ""),
	).window;
	return readElement(document.documentElement);
}

/** The same of an element of a page. */
export function readElement(root: Element): Page {
	const blocks: Block[] = [];
	const tables: Table[] = [];
	const charts: Chart[] = [];
	const visit = (element: Element): void => {
		const name = element.localName;
		if (name === "head") {
			const title = element.querySelector("title");
			if (title !== null)
				blocks.push({
					text: spaced(title.textContent ?? ""),
					dressing: null,
					where: "title",
				});
		}
		if (unread.has(name)) return;
		if (name === "svg") {
			charts.push(chartOf(element));
			return;
		}
		if (name === "table") {
			tables.push(tableOf(element));
			const caption = element.querySelector("caption");
			if (caption !== null) visit(caption);
			for (const chart of element.querySelectorAll("svg"))
				charts.push(chartOf(chart));
			return;
		}
		const text = seen(element);
		if (text !== "")
			blocks.push({
				text,
				dressing: dressingOf(element),
				where: whereOf(element),
			});
		const label = element.getAttribute("aria-label");
		if (label !== null)
			blocks.push({
				text: spaced(label),
				dressing: dressingOf(element),
				where: `${whereOf(element)} label`,
			});
		for (const child of element.children)
			if (!isInline(child) && !isUnseen(child)) visit(child);
	};
	visit(root);
	return { blocks, tables, charts };
}

function tableOf(element: Element): Table {
	const cells = (row: Element): string[] =>
		[...row.children].map((cell) => seen(cell));
	const [head] = element.querySelectorAll("thead tr");
	return {
		id: (element.querySelector("caption")?.id ?? "").replace(/-caption$/u, ""),
		dressing: dressingOf(element),
		columns: head === undefined ? [] : cells(head),
		rows: [...element.querySelectorAll("tbody tr")].map(cells),
	};
}

/** A chart out of a page or a file. */
export function chartOf(svg: Element): Chart {
	const own = (name: string): string =>
		spaced(
			[...svg.children].find((child) => child.localName === name)
				?.textContent ?? "",
		);
	const number = (element: Element, name: string): number =>
		Number(element.getAttribute(name) ?? Number.NaN);
	return {
		id: svg.querySelector("[id]")?.id ?? "",
		dressing: dressingOf(svg),
		title: own("title"),
		description: own("desc"),
		marks: [...svg.querySelectorAll("* > title")]
			.filter((title) => title.parentElement !== svg)
			.map((title) => spaced(title.textContent ?? "")),
		labels: joined(
			[...svg.querySelectorAll("text")].map((text) => ({
				text: spaced(text.textContent ?? ""),
				x: number(text, "x"),
				y: number(text, "y"),
				anchor: text.getAttribute("text-anchor") ?? "start",
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
			texts[texts.length - 1] = {
				...before,
				text: `${before.text} ${line.text}`,
			};
		else texts.push(line);
		lastY = line.y;
	}
	return texts;
}
