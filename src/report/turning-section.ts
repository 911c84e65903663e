import type {
	CompareResult,
	RestsOn,
	RestsOnRow,
} from "../analysis/compare-result.ts";
import { numberWord, plainNumber } from "../charts/index.ts";
import { compareScale, type Pair } from "./compare-parts.ts";
import { htmlElement } from "./html-element.ts";
import { type MeasureScale, measured } from "./measure-number.ts";
import { inSentence, measureWords } from "./measure-words.ts";
import { paragraph } from "./paragraph.ts";
import { section } from "./section.ts";
import { sentenceStart } from "./sentence.ts";
import { differenceDecimals, isFound } from "./verdict-words.ts";

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
export function turningSection(
	result: CompareResult,
	restsOn: RestsOn,
	pair: Pair,
	document: Document,
): HTMLElement {
	const wasFound = (effect: Effect): boolean => {
		const difference = pair.of(effect.dressing, effect.measure);
		return difference !== undefined && isFound(difference);
	};
	const turnings = (keeps: (effect: Effect) => boolean): Turning[] =>
		restsOn.rows
			.map((row) => ({
				row,
				effects: row.effects.filter(
					(effect) => result.measures.includes(effect.measure) && keeps(effect),
				),
			}))
			.filter(({ effects }) => effects.length > 0);
	const lost = reversedFirst(
		turnings((effect) => effect.turns && wasFound(effect)),
	);
	const hung = turnings(
		(effect) => effect.hangs && !effect.turns && wasFound(effect),
	);
	const shown = turnings((effect) => effect.appears && !wasFound(effect));
	const listed = (
		some: readonly Turning[],
		says: (effect: Effect) => string,
	): HTMLElement => list(some, says, result, pair, document);
	return section(
		document,
		"turning",
		"What would turn a verdict",
		null,
		paragraph(
			document,
			lost.length === 0
				? "No difference that was found is lost or turned round at half or at twice any of these values."
				: `With ${lost.length === 1 ? "this assumption" : `each of these ${lost.length} assumptions`} at half or at twice its value, a difference between ${restsOn.a} and ${restsOn.b} that was found is lost or turned round. It is worth knowing the value on your own ward before a decision rests on that measure.`,
		),
		lost.length === 0 ? null : listed(lost, lostWords),
		hung.length === 0
			? null
			: paragraph(
					document,
					`${hung.length === 1 ? "One assumed cause carries" : `${sentenceStart(numberWord(hung.length))} assumed causes carry`} a difference that stands at half and at twice its value: without that cause it is not found, or turned round. Nobody has measured how often it comes.`,
				),
		hung.length === 0
			? null
			: list(hung, () => "", result, pair, document, withoutWords),
		shown.length === 0
			? null
			: htmlElement(
					document,
					"details",
					{},
					htmlElement(
						document,
						"summary",
						{},
						`${shown.length} under which a difference shows that was not found`,
					),
					listed(shown, () => ""),
				),
	);
}

const ends = ["half", "twice"] as const;

/** Where the difference lies on the other side of nought than as it stands. */
const reversedAt = (effect: Effect): (typeof ends)[number][] =>
	ends.filter((end) => (effect[end] ?? 0) * effect.base < 0);

/** Assumptions, and the effects of each, by whether anything is reversed; else in their order. */
function reversedFirst(turnings: readonly Turning[]): Turning[] {
	const kept = (effect: Effect): number =>
		reversedAt(effect).length > 0 ? 0 : 1;
	const least = ({ effects }: Turning): number =>
		Math.min(...effects.map(kept));
	return turnings
		.map(({ row, effects }) => ({
			row,
			effects: effects.toSorted((a, b) => kept(a) - kept(b)),
		}))
		.toSorted((a, b) => least(a) - least(b));
}

/**
 * What became of a difference that was found: ': changes sign at twice', ': no longer found at half'. Where both
 * ends moved on the side of nought where it was, the result does not hold which of them lost it: ': no longer found,
 * nearest to nought at half'.
 */
function lostWords(effect: Effect): string {
	const reversed = reversedAt(effect);
	if (reversed.length > 0)
		return `: changes sign at ${reversed.join(" and at ")}`;
	const moved = ends.filter(
		(end) => effect[end] !== null && effect[end] !== effect.base,
	);
	const [one, other] = moved;
	if (one === undefined) return "";
	if (other === undefined) return `: no longer found at ${one}`;
	const nearest =
		Math.abs(effect[one] ?? 0) <= Math.abs(effect[other] ?? 0) ? one : other;
	return `: no longer found, nearest to nought at ${nearest}`;
}

function list(
	turnings: readonly Turning[],
	says: (effect: Effect) => string,
	result: CompareResult,
	pair: Pair,
	document: Document,
	values = effectWords,
): HTMLElement {
	const scale = compareScale(result);
	const items = turnings.map(({ row, effects }) =>
		htmlElement(
			document,
			"li",
			{},
			`${row.meaning} (${row.name}, ${valueWords(row)}, ${row.provenance})`,
			htmlElement(
				document,
				"ul",
				{ class: "plain" },
				...effects.map((effect) =>
					htmlElement(
						document,
						"li",
						{},
						`${inSentence(effect.measure)}${whose(effect, pair)}: ${values(effect, pair, scale)}${says(effect)}`,
					),
				),
			),
		),
	);
	return htmlElement(document, "ul", { class: "plain turning-list" }, ...items);
}

/** '0.004 /h'. */
export const valueWords = ({ value, unit }: RestsOnRow): string =>
	unit === "" ? String(value) : `${value} ${unit}`;

function whose({ dressing }: Effect, { owners }: Pair): string {
	if (owners.length === 1) return "";
	return dressing === "all" ? ", all dressings" : `, ${dressing}`;
}

function decimalsOf({ dressing, measure }: Effect, pair: Pair): number {
	const difference = pair.of(dressing, measure);
	return difference === undefined
		? measureWords[measure].decimals
		: differenceDecimals(difference);
}

/** '0.08 a day as it stands, 0 without it'. */
function withoutWords(effect: Effect, pair: Pair, scale: MeasureScale): string {
	const { measure, base, without } = effect;
	const decimals = decimalsOf(effect, pair);
	return `${measured(base, measure, scale, decimals)} as it stands, ${plainNumber(without ?? 0, decimals)} without it`;
}

/** '−0.4 a day as it stands, −0.2 at half, 0.1 at twice'. */
function effectWords(effect: Effect, pair: Pair, scale: MeasureScale): string {
	const { measure, base, half, twice } = effect;
	const decimals = decimalsOf(effect, pair);
	const at = (value: number | null, where: string): string =>
		value === null
			? `cannot be run ${where}`
			: `${plainNumber(value, decimals)} ${where}`;
	return `${measured(base, measure, scale, decimals)} as it stands, ${at(half, "at half")}, ${at(twice, "at twice")}`;
}
