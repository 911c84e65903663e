import { tornado } from "../../../charts/index.ts";
import type { RestsOn } from "../../../results/index.ts";
import type { MeasureName } from "../../../vocabulary/index.ts";
import { differenceDecimals, measureWords, unitWords } from "../../../words/index.ts";
import { twoWidthFigure } from "../../kit/chart-figure.ts";
import { type Child, chapter, details, type HtmlMaker, plainList, section } from "../../kit/html-element.ts";
import { mainDifferences } from "../pairs/difference-rows.ts";
import type { Pair } from "../pairs/pairs.ts";
import { turningSection, valueWords } from "./turning-section.ts";

/** What the verdicts of the first pair rest on: a plain list of what would turn one, then a tornado for each measure. */
export function restsOnSection(html: HtmlMaker, pair: Pair): HTMLElement {
	const { restsOn } = pair.result;
	const whole = (...parts: readonly Child[]) => chapter(html, "rests-on", "What the answer rests on", ...parts);
	if (restsOn === null)
		return whole(
			"Not looked into in this run. The assumptions at the end of this report decide how large a difference comes out; calibrate them before a decision rests on it.",
		);
	const turning = turningSection(html, restsOn, pair);
	return whole(lookedInto(restsOn), turning, ...tornados(html, restsOn, pair), leftOut(html, restsOn));
}

function lookedInto({ rows, replications }: RestsOn): string {
	const isWithout = rows.some(({ effects }) => effects.some(({ without }) => without !== null));
	return `Each of ${rows.length} assumptions in turn at half and at twice its value, everything else as it was${isWithout ? "; what goes wrong by an assumed chance was also left out, one cause at a time" : ""}; over ${replications} replications with the same random numbers.`;
}

/** A tornado for each measure that anything moves; those of the first page stand open, the others are folded away. */
function tornados(html: HtmlMaker, restsOn: RestsOn, pair: Pair): HTMLElement[] {
	const main = mainDifferences(pair).differences.map(({ measure }) => measure);
	const asked = pair.result.measures.map((measure) => ({ measure, movers: moversOf(restsOn, pair.whole, measure) }));
	const moved = asked.filter(({ movers }) => movers.length > 0);
	const still = asked.length - moved.length;
	const drawn = (open: boolean): HTMLElement[] =>
		moved.filter(({ measure }) => main.includes(measure) === open).map((of) => tornadoSection(html, restsOn, pair, of));
	const folded = drawn(false);
	const others = `The other ${folded.length === 1 ? "measure" : `${folded.length} measures`} that an assumption moves`;
	const unmoved = `${still === 1 ? "One measure" : `${still} measures`} asked for: no assumption moves the difference.`;
	return [
		...drawn(true),
		...(folded.length === 0 ? [] : [details(html, others, ...folded)]),
		...(still === 0 ? [] : [html("p", { class: "facts" }, unmoved)]),
	];
}

/** Assumptions that move one difference, each with what it does to it. */
const moversOf = ({ rows }: RestsOn, owner: string, measure: MeasureName) =>
	rows.flatMap((row) => {
		const effect = row.effects.find((one) => one.dressing === owner && one.measure === measure);
		const moves = (value: number | null): boolean => value !== null && value !== effect?.base;
		return effect !== undefined && (moves(effect.half) || moves(effect.twice)) ? [{ row, effect }] : [];
	});

interface Moved {
	readonly measure: MeasureName;
	readonly movers: ReturnType<typeof moversOf>;
}

function tornadoSection(html: HtmlMaker, { a, b }: RestsOn, pair: Pair, { measure, movers }: Moved): HTMLElement {
	const difference = pair.of(pair.whole, measure);
	const { label } = measureWords[measure];
	const id = `rests-${measure.replaceAll(/[^a-zA-Z]/g, "")}`;
	const data = {
		title: `${label}: what the difference rests on`,
		a,
		b,
		unit: unitWords(measure, pair.scale),
		decimals: difference && differenceDecimals(difference),
		base: movers[0]?.effect.base ?? 0,
		rows: movers.map(({ row, effect }) => ({ ...effect, label: row.meaning, value: valueWords(row) })),
	};
	const figure = twoWidthFigure(html, id, tornado, data);
	return section(html, `${id}-tornado`, label, null, figure);
}

function leftOut(html: HtmlMaker, restsOn: RestsOn): HTMLElement | null {
	if (restsOn.leftOut.length === 0) return null;
	const items = restsOn.leftOut.map(({ name, why }) => `${name}: ${why}`);
	return details(html, `Left out: ${items.length} assumptions`, plainList(html, items));
}
