import type { Clock } from "./clock.ts";
import { countHole, type Hole, holes } from "./holes.ts";
import { capital } from "./vocabulary.ts";

/**
 * The pattern of a sentence: words with holes in braces, each of a kind (`{clock}`, `{ml}`, `{count:fill/fills}`), and pieces
 * in double brackets that may be left out. What a sentence says is a value a hole, in order; `undefined` where a piece is
 * left out; `true` for `{?}`, which marks a piece without a hole.
 */
export interface Pattern {
	readonly text: string;
	readonly pieces: readonly Piece[];
}

type Piece =
	| { readonly words: string }
	| { readonly hole: Hole; readonly name: string }
	| { readonly flag: true }
	| { readonly inner: true }
	| { readonly tail: true }
	| { readonly maybe: readonly Piece[] };

export type Values = readonly unknown[];

/** Something that is said inside of a sentence: a pattern with the values of its holes. */
export type Said = readonly [pattern: string, ...values: unknown[]];

/** Several of them, one after the other, with what stands between them. */
export interface Listed {
	readonly items: readonly Said[];
	readonly between: string;
	readonly last: string;
}

export const listed = (items: readonly Said[], between = ", ", last = between): Listed => ({ items, between, last });

const isListed = (value: unknown): value is Listed => typeof value === "object" && value !== null && "items" in value;

const isSaid = (value: unknown): value is Said => Array.isArray(value) && typeof value[0] === "string";

/** Patterns that were ever read. */
export const everRead = new Set<string>();

const made = new Map<string, Pattern>();

export function pattern(text: string): Pattern {
	const known = made.get(text);
	if (known !== undefined) return known;
	const pieces = piecesOf(text);
	const one = { text, pieces };
	made.set(text, one);
	return one;
}

const holeOf = (name: string): Hole => {
	if (name.startsWith("count:")) {
		const [one = "", many = `${one}s`] = name.slice(6).split("/");
		return countHole(one, many);
	}
	const hole = holes[name];
	if (hole === undefined) throw new Error(`no hole is called ${name}`);
	return hole;
};

function piecesOf(text: string): Piece[] {
	return text
		.split(/(\[\[.*?\]\]|\{[^}]*\})/u)
		.filter((part) => part !== "")
		.map((part): Piece => {
			if (part.startsWith("[[")) return { maybe: piecesOf(part.slice(2, -2)) };
			if (part === "{?}") return { flag: true };
			if (part === "{said}") return { inner: true };
			if (part === "{tail}") return { tail: true };
			if (part.startsWith("{")) {
				const name = part.slice(1, -1);
				return { hole: holeOf(name), name };
			}
			return { words: part };
		});
}

/** Whether a text looks like a sentence of this pattern, whatever its holes say: its words stand there one after the other. */
export function looksLike({ pieces }: Pattern, text: string): boolean {
	let at = 0;
	for (const [place, piece] of pieces.entries()) {
		if (!("words" in piece)) continue;
		const found = text.indexOf(piece.words, at);
		if (found === -1 || (place === 0 && found > 0)) return false;
		at = found + piece.words.length;
	}
	return true;
}

/** Holes of a pattern, flags too: as many values a sentence of it has. */
const holesIn = (pieces: readonly Piece[]): number =>
	pieces.reduce((sum, piece) => sum + ("words" in piece ? 0 : "maybe" in piece ? holesIn(piece.maybe) : 1), 0);

/** How far a sentence of this pattern that says these values reaches from `from` on, or −1 where it does not stand there. */
export function reaches(
	{ pieces, text: name }: Pattern,
	text: string,
	from: number,
	values: Values,
	clock: Clock,
): number {
	if (holesIn(pieces) !== values.length)
		throw new Error(`${holesIn(pieces)} values wanted, ${values.length} given: ${name}`);
	return walk(pieces, text, from, values, 0, clock)[0];
}

/** The same of something said inside of a sentence, or of several. */
function saidReaches(text: string, from: number, said: unknown, clock: Clock): number {
	if (isSaid(said)) {
		const [words, ...values] = said;
		const to = reaches(pattern(words), text, from, values, clock);
		if (to !== -1) everRead.add(words);
		return to;
	}
	if (!isListed(said)) throw new TypeError(`nothing is said by ${String(said)}`);
	let at = from;
	for (const [place, item] of said.items.entries()) {
		const before = place === 0 ? "" : place === said.items.length - 1 ? said.last : said.between;
		if (!text.startsWith(before, at)) return -1;
		at = saidReaches(text, at + before.length, item, clock);
		if (at === -1) return -1;
	}
	return at;
}

/** Whether words stand at a place; at the start of a sentence with a capital, too. */
const begins = (text: string, at: number, words: string): boolean =>
	text.startsWith(words, at) ||
	((at === 0 || /[.?!:] $/u.test(text.slice(0, at))) && text.startsWith(capital(words), at));

/** The last items of a list, from whichever on, one after the other; or the first of these and how many are left. */
function tailReaches(text: string, from: number, all: unknown, clock: Clock): number {
	if (!isListed(all)) throw new TypeError("a tail needs a list");
	for (let first = 0; first < all.items.length; first++) {
		let [at, next] = [from, first];
		for (; next < all.items.length; next++) {
			const start = next === first || text.startsWith(all.between, at);
			const to = start ? saidReaches(text, next === first ? at : at + all.between.length, all.items[next], clock) : -1;
			if (to === -1) break;
			at = to;
		}
		if (next === first) continue;
		const left = all.items.length - next;
		const more = `${all.between}and ${left} more${all.last}`;
		if (left === 0) return at;
		if (text.startsWith(more, at)) return at + more.length;
	}
	return -1;
}

function walk(
	pieces: readonly Piece[],
	text: string,
	from: number,
	values: Values,
	first: number,
	clock: Clock,
): readonly [at: number, used: number] {
	let [at, used] = [from, first];
	for (const piece of pieces) {
		if ("words" in piece) {
			if (!begins(text, at, piece.words)) return [-1, used];
			at += piece.words.length;
		} else if ("flag" in piece) used++;
		else if ("inner" in piece) {
			at = saidReaches(text, at, values[used], clock);
			if (at === -1) return [-1, used];
			used++;
		} else if ("tail" in piece) {
			at = tailReaches(text, at, values[used], clock);
			if (at === -1) return [-1, used];
			used++;
		} else if ("maybe" in piece) {
			const many = holesIn(piece.maybe);
			const own = values.slice(used, used + many);
			if (own.some((value) => value !== undefined)) {
				[at] = walk(piece.maybe, text, at, values, used, clock);
				if (at === -1) return [-1, used];
			}
			used += many;
		} else {
			const expected = values[used];
			used++;
			const written = piece.hole.reach(text.slice(at), expected);
			if (written === null || piece.hole.check(written, expected, clock) !== null) return [-1, used];
			at += written.length;
		}
	}
	return [at, used];
}

/** Whether a text is what was said, from end to end. */
export const isSaidBy = (text: string, said: Said, clock: Clock): boolean =>
	saidReaches(text, 0, said, clock) === text.length;

/** The values in words, for a failure. */
export const shown = (values: Values): string => values.map(shownValue).join(" | ");

function shownValue(value: unknown): string {
	if (isSaid(value)) return `${value[0]} (${shown(value.slice(1))})`;
	if (isListed(value)) return value.items.map(shownValue).join(value.between);
	if (Array.isArray(value)) return value.map(shownValue).join(" … ");
	if (typeof value !== "object" || value === null) return String(value);
	return "value" in value ? String(value.value) : JSON.stringify(value);
}

/**
 * The signs with which something said can begin, so that it need not be tried elsewhere; null where it may be any.
 */
export function beginnings({ pieces }: Pattern, values: Values): string | null {
	const [first] = pieces;
	if (first === undefined || !("words" in first || "inner" in first || "hole" in first)) return null;
	const head = values[0];
	if ("words" in first) return eitherCase(first.words);
	if ("inner" in first) {
		if (isSaid(head)) return beginnings(pattern(head[0]), head.slice(1));
		const one = isListed(head) ? head.items[0] : undefined;
		return one === undefined ? null : beginnings(pattern(one[0]), one.slice(1));
	}
	if (first.name === "text") return String(head).trim().slice(0, 1);
	return numeric.has(first.name) ? "0123456789−<>" : null;
}

const numeric = new Set(["n", "within", "upto", "money", "ml", "bareml", "duration", "percent", "mmHg"]);

const eitherCase = (text: string): string => text.slice(0, 1) + capital(text).slice(0, 1);
