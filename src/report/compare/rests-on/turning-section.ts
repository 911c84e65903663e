import type { RestsOn, RestsOnRow } from "../../../results/index.ts";
import {
	differenceDecimals,
	inSentence,
	isFound,
	measured,
	measureWords,
	numberWord,
	plainNumber,
	sentenceStart,
} from "../../../words/index.ts";
import { type Child, details, type HtmlMaker, plainList, section } from "../../kit/html-element.ts";
import type { Pair } from "../pairs/pairs.ts";

type Effect = RestsOnRow["effects"][number];

/** An assumption with those of its effects that turn a verdict. */
interface Turning {
	readonly row: RestsOnRow;
	readonly effects: readonly Effect[];
}

/**
 * The assumptions that turn a verdict at half or at twice their value, as plain lists: first those under which a difference
 * that was found is lost or turned round, the turned ones before those that are only no longer found; then the causes
 * without which one that stands at both is not found; then, folded away, those under which one shows that was not found.
 */
export function turningSection(html: HtmlMaker, restsOn: RestsOn, pair: Pair): HTMLElement {
	const wasFound = ({ dressing, measure }: Effect): boolean => {
		const difference = pair.of(dressing, measure);
		return difference !== undefined && isFound(difference);
	};
	const turnings = (keeps: (effect: Effect) => boolean): Turning[] =>
		restsOn.rows.flatMap((row) => {
			const effects = row.effects.filter((one) => pair.result.measures.includes(one.measure) && keeps(one));
			return effects.length === 0 ? [] : [{ row, effects }];
		});
	const lost = reversedFirst(turnings((effect) => effect.turns && wasFound(effect)));
	const hung = turnings((effect) => effect.hangs && !effect.turns && wasFound(effect));
	const shown = turnings((effect) => effect.appears && !wasFound(effect));
	const parts: Child[] = [];
	const tell = (words: string, some: readonly Turning[], says: EffectWords) =>
		parts.push(words, turningList(html, pair, some, says));
	const these = lost.length === 1 ? "this assumption" : `each of these ${lost.length} assumptions`;
	if (lost.length === 0)
		parts.push("No difference that was found is lost or turned round at half or at twice any of these values.");
	else
		tell(
			`With ${these} at half or at twice its value, a difference between ${restsOn.a} and ${restsOn.b} that was found is lost or turned round. It is worth knowing the value on your own ward before a decision rests on that measure.`,
			lost,
			lostWords,
		);
	const causes = hung.length === 1 ? "cause carries" : "causes carry";
	if (hung.length > 0)
		tell(
			`${sentenceStart(numberWord(hung.length))} assumed ${causes} a difference that stands at half and at twice its value: without that cause it is not found, or turned round. Nobody has measured how often it comes.`,
			hung,
			withoutWords,
		);
	const under = `${shown.length} under which a difference shows that was not found`;
	if (shown.length > 0) parts.push(details(html, under, turningList(html, pair, shown, endsWords)));
	return section(html, "turning", "What would turn a verdict", null, ...parts);
}

const ends = ["half", "twice"] as const;

/** Where the difference lies on the other side of nought than as it stands. */
const reversedAt = (effect: Effect): (typeof ends)[number][] =>
	ends.filter((end) => (effect[end] ?? 0) * effect.base < 0);

/** Assumptions, and the effects of each, by whether anything is reversed; else in their order. */
function reversedFirst(turnings: readonly Turning[]): Turning[] {
	const kept = (effect: Effect): number => (reversedAt(effect).length > 0 ? 0 : 1);
	const least = ({ effects }: Turning): number => Math.min(...effects.map(kept));
	return turnings
		.map(({ row, effects }) => ({ row, effects: effects.toSorted((a, b) => kept(a) - kept(b)) }))
		.toSorted((a, b) => least(a) - least(b));
}

type EffectWords = (effect: Effect, pair: Pair) => string;

function turningList(html: HtmlMaker, pair: Pair, turnings: readonly Turning[], says: EffectWords): HTMLElement {
	const items = turnings.map(({ row, effects }) => {
		const inner = effects.map((effect) => `${inSentence(effect.measure)}${whose(effect, pair)}: ${says(effect, pair)}`);
		const assumption = `${row.meaning} (${row.name}, ${valueWords(row)}, ${row.provenance})`;
		return html("li", {}, assumption, plainList(html, inner));
	});
	return html("ul", { class: "plain turning-list" }, ...items);
}

/** '0.004 /h'. */
export const valueWords = ({ value, unit }: RestsOnRow): string => (unit === "" ? String(value) : `${value} ${unit}`);

function whose({ dressing }: Effect, { owners }: Pair): string {
	if (owners.length === 1) return "";
	return dressing === "all" ? ", all dressings" : `, ${dressing}`;
}

/**
 * What became of a difference that was found: '−0.4 a day as it stands, …: changes sign at twice', '…: no longer found at
 * half'. Where both ends moved on the side of nought where it was, the result does not hold which of them lost it: '…: no
 * longer found, nearest to nought at half'.
 */
function lostWords(effect: Effect, pair: Pair): string {
	const values = endsWords(effect, pair);
	const reversed = reversedAt(effect);
	if (reversed.length > 0) return `${values}: changes sign at ${reversed.join(" and at ")}`;
	const [one, other] = ends.filter((end) => effect[end] !== null && effect[end] !== effect.base);
	if (one === undefined) return values;
	if (other === undefined) return `${values}: no longer found at ${one}`;
	const nearest = Math.abs(effect[one] ?? 0) <= Math.abs(effect[other] ?? 0) ? one : other;
	return `${values}: no longer found, nearest to nought at ${nearest}`;
}

/** '−0.4 a day as it stands, −0.2 at half, 0.1 at twice'. */
function endsWords(effect: Effect, pair: Pair): string {
	const at = (end: (typeof ends)[number]): string => {
		const value = effect[end];
		return value === null ? `cannot be run at ${end}` : `${numberOf(value, effect, pair)} at ${end}`;
	};
	return `${asItStands(effect, pair)}, ${ends.map(at).join(", ")}`;
}

/** '0.08 a day as it stands, 0 without it'. */
const withoutWords = (effect: Effect, pair: Pair): string =>
	`${asItStands(effect, pair)}, ${numberOf(effect.without ?? 0, effect, pair)} without it`;

const asItStands = (effect: Effect, pair: Pair): string =>
	`${measured(effect.base, effect.measure, pair.scale, decimalsOf(effect, pair))} as it stands`;

const numberOf = (value: number, effect: Effect, pair: Pair): string => plainNumber(value, decimalsOf(effect, pair));

function decimalsOf({ dressing, measure }: Effect, pair: Pair): number {
	const difference = pair.of(dressing, measure);
	return difference === undefined ? measureWords[measure].decimals : differenceDecimals(difference);
}
