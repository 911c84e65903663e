import { tornado } from "../../../charts/index.ts";
import type { RestsOn, RestsOnRow } from "../../../results/index.ts";
import type { MeasureName } from "../../../vocabulary/index.ts";
import { differenceDecimals, measureWords, unitWords } from "../../../words/index.ts";
import { twoWidthFigure } from "../../kit/chart-figure.ts";
import type { HtmlMaker } from "../../kit/html-element.ts";
import { chapter, details, plainList, section } from "../../kit/section.ts";
import { mainDifferences } from "../pairs/difference-rows.ts";
import type { Pair } from "../pairs/pairs.ts";
import { type Effect, turningSection, valueWords } from "./turning-section.ts";

/** What the verdicts of the first pair rest on: a plain list of what would turn one, then a tornado for each measure. */
export function restsOnSection(html: HtmlMaker, pair: Pair): HTMLElement {
	const { restsOn } = pair.result;
	const parts =
		restsOn === null
			? [
					"Not looked into in this run. The assumptions at the end of this report decide how large a difference comes out; calibrate them before a decision rests on it.",
				]
			: [
					lookedInto(restsOn),
					turningSection(html, restsOn, pair),
					...tornados(html, restsOn, pair),
					leftOut(html, restsOn),
				];
	return chapter(html, "rests-on", "What the answer rests on", ...parts);
}

function lookedInto({ rows, replications }: RestsOn): string {
	const isWithout = rows.some(({ effects }) => effects.some(({ without }) => without !== null));
	return `Each of ${rows.length} assumptions in turn at half and at twice its value, everything else as it was${isWithout ? "; what goes wrong by an assumed chance was also left out, one cause at a time" : ""}; over ${replications} replications with the same random numbers.`;
}

/** An assumption and what it does to one difference. */
interface Mover {
	readonly row: RestsOnRow;
	readonly effect: Effect;
}

/** A tornado for each measure that anything moves; those of the first page stand open, the others are folded away. */
function tornados(html: HtmlMaker, restsOn: RestsOn, pair: Pair): HTMLElement[] {
	const main = mainDifferences(pair).differences.map(({ measure }) => measure);
	const asked = pair.result.measures.map((measure) => ({ measure, movers: moversOf(restsOn, pair.whole, measure) }));
	const moved = asked.filter(({ movers }) => movers.length > 0);
	const still = asked.length - moved.length;
	const drawn = (open: boolean): HTMLElement[] =>
		moved
			.filter(({ measure }) => main.includes(measure) === open)
			.map(({ measure, movers }) => tornadoSection(html, restsOn, pair, measure, movers));
	const folded = drawn(false);
	const others = `The other ${folded.length === 1 ? "measure" : `${folded.length} measures`} that an assumption moves`;
	const unmoved = `${still === 1 ? "One measure" : `${still} measures`} asked for: no assumption moves the difference.`;
	return [
		...drawn(true),
		...(folded.length === 0 ? [] : [details(html, others, ...folded)]),
		...(still === 0 ? [] : [html("p", { class: "facts" }, unmoved)]),
	];
}

const moversOf = ({ rows }: RestsOn, owner: string, measure: MeasureName): Mover[] =>
	rows.flatMap((row) => {
		const effect = row.effects.find((one) => one.dressing === owner && one.measure === measure);
		const moves = (value: number | null): boolean => value !== null && value !== effect?.base;
		return effect !== undefined && (moves(effect.half) || moves(effect.twice)) ? [{ row, effect }] : [];
	});

function tornadoSection(
	html: HtmlMaker,
	{ a, b }: RestsOn,
	pair: Pair,
	measure: MeasureName,
	movers: readonly Mover[],
): HTMLElement {
	const difference = pair.of(pair.whole, measure);
	const { label } = measureWords[measure];
	const id = `rests-${measure.replaceAll(/[^a-zA-Z]/g, "")}`;
	const data = {
		title: `${label}: what the difference rests on`,
		a,
		b,
		unit: unitWords(measure, pair.scale),
		...(difference === undefined ? {} : { decimals: differenceDecimals(difference) }),
		base: movers[0]?.effect.base ?? 0,
		rows: movers.map(({ row, effect: { half, twice, turns } }) => ({
			label: row.meaning,
			value: valueWords(row),
			half,
			twice,
			turns,
		})),
	};
	const figure = twoWidthFigure(html, { id, draw: (options) => tornado(data, html.document, options) });
	return section(html, `${id}-tornado`, label, null, figure);
}

function leftOut(html: HtmlMaker, restsOn: RestsOn): HTMLElement | null {
	if (restsOn.leftOut.length === 0) return null;
	const items = restsOn.leftOut.map(({ name, why }) => `${name}: ${why}`);
	return details(html, `Left out: ${items.length} assumptions`, plainList(html, items));
}
