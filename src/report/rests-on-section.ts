import type {
	CompareResult,
	RestsOn,
	RestsOnRow,
} from "../analysis/compare-result.ts";
import type { MeasureName } from "../analysis/measures.ts";
import { tornado } from "../charts/index.ts";
import { chapter } from "./chapter.ts";
import { twoWidthFigure } from "./chart-figure.ts";
import { compareScale, type Pair } from "./compare-parts.ts";
import { htmlElement } from "./html-element.ts";
import { mainDifferences } from "./main-differences.ts";
import { unitWords } from "./measure-number.ts";
import { measureWords } from "./measure-words.ts";
import { paragraph } from "./paragraph.ts";
import { section } from "./section.ts";
import { turningSection, valueWords } from "./turning-section.ts";
import { differenceDecimals } from "./verdict-words.ts";

/** What the verdicts of the first pair rest on: a plain list of what would turn one, then a tornado for each measure. */
export function restsOnSection(
	result: CompareResult,
	pair: Pair,
	document: Document,
): HTMLElement {
	const { restsOn } = result;
	const heading = "What the answer rests on";
	if (restsOn === null)
		return chapter(
			document,
			"rests-on",
			heading,
			paragraph(
				document,
				"Not looked into in this run. The assumptions at the end of this report decide how large a difference comes out; calibrate them before a decision rests on it.",
			),
		);
	return chapter(
		document,
		"rests-on",
		heading,
		paragraph(
			document,
			`Each of ${restsOn.rows.length} assumptions in turn at half and at twice its value, everything else as it was${restsOn.rows.some(({ effects }) => effects.some(({ without }) => without !== null)) ? "; what goes wrong by an assumed chance was also left out, one cause at a time" : ""}; over ${restsOn.replications} replications with the same random numbers.`,
		),
		turningSection(result, restsOn, pair, document),
		...tornados(result, restsOn, pair, document),
		leftOut(restsOn, document),
	);
}

/** A tornado for each measure that anything moves; those of the first page stand open, the others are folded away. */
function tornados(
	result: CompareResult,
	restsOn: RestsOn,
	pair: Pair,
	document: Document,
): HTMLElement[] {
	const [owner = "all"] = pair.owners;
	const main = mainDifferences(result, pair, owner).differences.map(
		({ measure }) => measure,
	);
	const moved = result.measures.filter((measure) =>
		restsOn.rows.some((row) => moves(row, owner, measure)),
	);
	const still = result.measures.length - moved.length;
	const drawn = (measure: MeasureName): HTMLElement =>
		section(
			document,
			`rests-${measure.replaceAll(/[^a-zA-Z]/g, "")}-tornado`,
			measureWords[measure].label,
			null,
			tornadoFigure(result, restsOn, pair, owner, measure, document),
		);
	const [open, folded] = [
		moved.filter((measure) => main.includes(measure)),
		moved.filter((measure) => !main.includes(measure)),
	];
	return [
		...open.map(drawn),
		...(folded.length === 0
			? []
			: [
					htmlElement(
						document,
						"details",
						{},
						htmlElement(
							document,
							"summary",
							{},
							`The other ${folded.length === 1 ? "measure" : `${folded.length} measures`} that an assumption moves`,
						),
						...folded.map(drawn),
					),
				]),
		...(still === 0
			? []
			: [
					htmlElement(
						document,
						"p",
						{ class: "facts" },
						`${still === 1 ? "One measure" : `${still} measures`} asked for: no assumption moves the difference.`,
					),
				]),
	];
}

const effectOf = (
	row: RestsOnRow,
	owner: string,
	measure: MeasureName,
): RestsOnRow["effects"][number] | undefined =>
	row.effects.find(
		(effect) => effect.dressing === owner && effect.measure === measure,
	);

function moves(row: RestsOnRow, owner: string, measure: MeasureName): boolean {
	const effect = effectOf(row, owner, measure);
	return (
		effect !== undefined &&
		[effect.half, effect.twice].some(
			(value) => value !== null && value !== effect.base,
		)
	);
}

function tornadoFigure(
	result: CompareResult,
	restsOn: RestsOn,
	pair: Pair,
	owner: string,
	measure: MeasureName,
	document: Document,
): HTMLElement {
	const difference = pair.of(owner, measure);
	const rows = restsOn.rows
		.filter((row) => moves(row, owner, measure))
		.flatMap((row) => {
			const effect = effectOf(row, owner, measure);
			return effect === undefined ? [] : [{ row, effect }];
		});
	const base = rows[0]?.effect.base ?? 0;
	return twoWidthFigure(document, {
		id: `rests-${measure.replaceAll(/[^a-zA-Z]/g, "")}`,
		draw: (options) =>
			tornado(
				{
					title: `${measureWords[measure].label}: what the difference rests on`,
					a: restsOn.a,
					b: restsOn.b,
					unit: unitWords(measure, compareScale(result)),
					...(difference === undefined
						? {}
						: { decimals: differenceDecimals(difference) }),
					base,
					rows: rows.map(({ row, effect }) => ({
						label: row.meaning,
						value: valueWords(row),
						half: effect.half,
						twice: effect.twice,
						turns: effect.turns,
					})),
				},
				document,
				options,
			),
	});
}

function leftOut(restsOn: RestsOn, document: Document): HTMLElement | null {
	if (restsOn.leftOut.length === 0) return null;
	return htmlElement(
		document,
		"details",
		{},
		htmlElement(
			document,
			"summary",
			{},
			`Left out: ${restsOn.leftOut.length} assumptions`,
		),
		htmlElement(
			document,
			"ul",
			{ class: "plain" },
			...restsOn.leftOut.map(({ name, why }) =>
				htmlElement(document, "li", {}, `${name}: ${why}`),
			),
		),
	);
}
