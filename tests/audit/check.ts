import { axesOf } from "./axes.ts";
import type { Clock } from "./clock.ts";
import { beginnings, everRead, looksLike, pattern, reaches, type Said, shown, type Values } from "./pattern.ts";
import type { Block, Page, Table } from "./read-html.ts";

/** What is wrong on a paper. */
export interface Fault {
	readonly document: string;
	readonly where: string;
	readonly said: string;
	readonly derived: string;
}

/** A sentence that a paper may hold, with what it says: a list of values for each time that it is said. */
export interface Entry<Scope> {
	readonly text: string;
	readonly says: (scope: Scope) => readonly Values[];
	/** True where a paper may leave it out. */
	readonly optional: boolean;
}

export const entry = <Scope>(
	text: string,
	says: (scope: Scope) => readonly Values[],
	optional = false,
): Entry<Scope> => ({ text, says, optional });

/** A sentence without numbers that a paper says, or says where something holds. */
export const fixedWords = <Scope>(text: string, holds: (scope: Scope) => boolean = () => true): Entry<Scope> =>
	entry(text, (scope) => (holds(scope) ? [[]] : []));

/** What a cell says: words, or a pattern with the values of its holes. */
export type CellSaid = string | Said;

/** A table that a paper holds, derived cell by cell; null where it holds none. */
export interface TableEntry<Scope> {
	readonly id: RegExp;
	readonly columns: (scope: Scope) => readonly string[];
	/** Of each table, where several of one kind have columns of their own. */
	readonly columnsOf?: (scope: Scope) => readonly (readonly string[])[];
	readonly rows: (scope: Scope) => readonly (readonly CellSaid[])[];
	/** True where room may let only the first rows stand. */
	readonly firstOnly?: boolean;
}

/** Everything that a kind of paper may say: about all of it, and about each of its dressings. */
export interface Catalogue<Whole, Part> {
	readonly whole: readonly Entry<Whole>[];
	readonly part: readonly Entry<Part>[];
	/** Labels and marks of charts, any of which a chart may leave out. */
	readonly labels: readonly Entry<Whole>[];
	readonly partLabels: readonly Entry<Part>[];
	readonly tables: readonly TableEntry<Whole>[];
	readonly partTables: readonly TableEntry<Part>[];
}

/** The words of a pattern without its holes. */
const bare = (text: string): string => text.replaceAll(/\{[^}]*\}|[[\]]/gu, "");

interface Saying {
	readonly text: string;
	readonly values: Values;
	readonly optional: boolean;
	used: boolean;
}

/** The sayings of one scope, worked out once. */
class Sayings {
	readonly #all: readonly Saying[];
	/** Those that can begin with a sign, by that sign; `''` for those that may begin with any. */
	readonly #by = new Map<string, Saying[]>();
	/** Texts that were read already. */
	readonly #known = new Map<string, { at: number; nearest: string } | null>();

	constructor(all: readonly Saying[]) {
		this.#all = all;
		for (const saying of all) {
			const signs = beginnings(pattern(saying.text), saying.values);
			for (const sign of signs === null ? [""] : new Set(signs)) {
				const some = this.#by.get(sign) ?? [];
				some.push(saying);
				this.#by.set(sign, some);
			}
		}
	}

	static of<Scope>(entries: readonly Entry<Scope>[], scope: Scope): Sayings {
		const all = new Map<string, Saying>();
		for (const { text, says, optional } of entries)
			for (const values of says(scope)) {
				const key = JSON.stringify([text, values]);
				if (!all.has(key)) all.set(key, { text, values, optional, used: false });
			}
		return new Sayings([...all.values()]);
	}

	with(other: Sayings): Sayings {
		return new Sayings([...this.#all, ...other.#all]);
	}

	/** null where the text is made of sayings from end to end; else from where on it is not, and what was nearest. */
	read(text: string, clock: Clock): { at: number; nearest: string } | null {
		const known = this.#known.get(text);
		if (known !== undefined) return known;
		const read = this.#readAnew(text, clock);
		this.#known.set(text, read);
		return read;
	}

	#readAnew(text: string, clock: Clock): { at: number; nearest: string } | null {
		let farthest = 0;
		const dead = new Set<number>();
		const follow = (from: number): (readonly [number, number])[] | null => {
			if (from >= text.length) return [];
			if (dead.has(from)) return null;
			farthest = Math.max(farthest, from);
			for (const saying of this.#at(text, from)) {
				const to = reaches(pattern(saying.text), text, from, saying.values, clock);
				if (to <= from || (to < text.length && text[to] !== " ")) continue;
				const rest = follow(to + 1);
				if (rest !== null) return [[from, to], ...rest];
			}
			dead.add(from);
			return null;
		};
		const path = follow(0);
		if (path === null) return { at: farthest, nearest: this.#nearest(text.slice(farthest)) };
		// What is said once may be what two entries want.
		for (const [from, to] of path)
			for (const saying of this.#at(text, from))
				if (reaches(pattern(saying.text), text, from, saying.values, clock) === to) {
					saying.used = true;
					everRead.add(saying.text);
				}
		return null;
	}

	/** Those that may begin at a place. */
	#at(text: string, from: number): readonly Saying[] {
		return [...(this.#by.get(text[from] ?? "") ?? []), ...(this.#by.get("") ?? [])];
	}

	#nearest(rest: string): string {
		const like = this.#all.filter(({ text }) => bare(text).length > 5 && looksLike(pattern(text), rest));
		const best = like.toSorted((a, b) => bare(b.text).length - bare(a.text).length);
		return best.length === 0
			? "no sentence of the catalogue"
			: best
					.slice(0, 2)
					.map(({ text, values }) => `${text} ⟵ ${shown(values)}`)
					.join(" or ");
	}

	leftOut(): readonly Saying[] {
		return this.#all.filter(({ used, optional }) => !used && !optional);
	}
}

/** Holds every block, table and chart title of a page against what was derived. */
export function checkPage<Whole, Part>(
	document: string,
	page: Page,
	catalogue: Catalogue<Whole, Part>,
	whole: Whole,
	parts: readonly Part[],
	clock: Clock,
): Fault[] {
	const faults: Fault[] = [];
	const all = Sayings.of(catalogue.whole, whole);
	const own = parts.map((part) => Sayings.of(catalogue.part, part));
	const joint = own.map((part) => part.with(all));
	const labels = Sayings.of(catalogue.labels, whole);
	const ownLabels = parts.map((part) => Sayings.of(catalogue.partLabels, part).with(labels));
	const readText = (text: string, dressing: number | null, where: string, [general, special] = [all, joint]) => {
		if (text === "") return;
		const sayings = dressing === null ? general : (special[dressing] ?? general);
		const wrong = sayings.read(text, clock);
		if (wrong !== null) faults.push({ document, where, said: text.slice(wrong.at), derived: wrong.nearest });
	};
	for (const { text, dressing, where } of page.blocks as readonly Block[]) readText(text, dressing, where);
	for (const chart of page.charts) {
		readText(chart.title, chart.dressing, `${chart.id} title`);
		readText(chart.description, chart.dressing, `${chart.id} description`);
		const { ticks, others, faults: wrong } = axesOf(chart, clock);
		faults.push(
			...wrong.map((said) => ({ document, where: `${chart.id} axis`, said, derived: `${ticks} ticks in even steps` })),
		);
		for (const mark of chart.marks) readText(mark, chart.dressing, `${chart.id} mark`, [labels, ownLabels]);
		// What is cut is for those who look at the layout.
		for (const { text } of others)
			if (!text.includes("…")) readText(text, chart.dressing, `${chart.id} label`, [labels, ownLabels]);
	}
	const found = new Set<Table>();
	const hold = <Scope>(entries: readonly TableEntry<Scope>[], scope: Scope, dressing: number | null) => {
		for (const one of entries) {
			const tables = page.tables.filter(
				(table) => (dressing === null || table.dressing === dressing) && one.id.test(table.id),
			);
			for (const table of tables) found.add(table);
			faults.push(...checkTable(document, tables, one, scope, clock));
		}
	};
	hold(catalogue.tables, whole, null);
	for (const [index, part] of parts.entries()) hold(catalogue.partTables, part, index);
	for (const table of page.tables)
		if (!found.has(table))
			faults.push({ document, where: table.id, said: table.columns.join(" | "), derived: "no table of the catalogue" });
	for (const sayings of [all, ...own])
		for (const { text, values } of sayings.leftOut())
			faults.push({ document, where: "nowhere", said: "nothing", derived: `left out: ${text} ⟵ ${shown(values)}` });
	return faults;
}

/** A cell against what was derived for it; null where it is right. */
function cellFault(written: string, said: CellSaid, clock: Clock): string | null {
	if (typeof said === "string") return written === said.replaceAll("\u00A0", " ").trim() ? null : `'${said}'`;
	const [text, ...values] = said;
	everRead.add(text);
	return reaches(pattern(text), written, 0, values, clock) === written.length ? null : `${text} ⟵ ${shown(values)}`;
}

function checkTable<Scope>(
	document: string,
	tables: readonly Table[],
	one: TableEntry<Scope>,
	scope: Scope,
	clock: Clock,
): Fault[] {
	const rows = one.rows(scope);
	const fault = (where: string, said: string, derived: string): Fault => ({
		document,
		where: `table ${one.id.source}: ${where}`,
		said,
		derived,
	});
	if (tables.length === 0) return rows.length === 0 ? [] : [fault("the table", "nothing", `${rows.length} rows`)];
	const columns = one.columns(scope);
	const columnsOf = one.columnsOf?.(scope);
	const written = tables.flatMap((table) => table.rows);
	const faults: Fault[] = [];
	for (const [index, table] of tables.entries()) {
		const wanted = (columnsOf?.[index] ?? columns).join(" | ");
		const headed = table.columns.join(" | ");
		if (headed !== wanted) faults.push(fault("columns", headed, wanted));
	}
	const short = one.firstOnly === true && written.length < rows.length;
	if (written.length !== rows.length && !short) faults.push(fault("rows", String(written.length), String(rows.length)));
	for (const [index, row] of rows.slice(0, written.length).entries()) {
		const cells = written[index] ?? [];
		for (const [place, said] of row.entries()) {
			const wrong = cellFault(cells[place] ?? "", said, clock);
			if (wrong !== null)
				faults.push(
					fault(`row ${index + 1} (${cells[0] ?? ""}), ${columns[place] ?? place}`, cells[place] ?? "nothing", wrong),
				);
		}
		if (cells.length !== row.length) faults.push(fault(`row ${index + 1}`, `${cells.length} cells`, `${row.length}`));
	}
	return faults;
}
