import type { CompareResult } from "../analysis/compare-result.ts";
import { differenceRows } from "../charts/index.ts";
import { twoWidthFigure } from "./chart-figure.ts";
import { compareScale, type Pair, rowOf } from "./compare-parts.ts";
import { dressingLine } from "./dressing-words.ts";
import { htmlElement, unbroken } from "./html-element.ts";
import { mainDifferences } from "./main-differences.ts";
import { commonDrawdown, regimenLines } from "./regimen-lines.ts";
import { sentenceStart } from "./sentence.ts";
import { sheetPart } from "./sheet-part.ts";

/** The first page, on screen and on paper: the regimens, the differences that matter most, and what they do not tell. */
export function compareSheet(
	result: CompareResult,
	pair: Pair | undefined,
	document: Document,
): HTMLElement {
	return htmlElement(
		document,
		"div",
		{ class: "brief" },
		regimensSection(result, document),
		pair === undefined ? null : differencesSection(result, pair, document),
		silenceSection(result, document),
		signature(document),
	);
}

function regimensSection(
	result: CompareResult,
	document: Document,
): HTMLElement {
	const element = htmlElement.bind(null, document);
	const rows = result.regimens.flatMap((regimen) => [
		element("dt", {}, regimen.name),
		...regimenLines(regimen, result).map((line) =>
			element("dd", {}, unbroken(`${line}.`)),
		),
	]);
	const several = result.scenario.dressings.length > 1;
	const drawdown = commonDrawdown(result);
	const shared =
		drawdown === null ? "" : `; ${drawdown} drawdown under every regimen`;
	const wounds = result.scenario.dressings.map((dressing) =>
		element(
			"p",
			{ class: "facts" },
			unbroken(
				`${several ? `${dressing.id}: ` : ""}${sentenceStart(dressingLine(dressing))}${shared}.`,
			),
		),
	);
	return sheetPart(
		document,
		"regimens",
		"The regimens",
		element("dl", {}, ...rows),
		...wounds,
	);
}

function differencesSection(
	result: CompareResult,
	pair: Pair,
	document: Document,
): HTMLElement {
	const [owner = "all"] = pair.owners;
	const { differences, why } = mainDifferences(result, pair, owner);
	const scale = compareScale(result);
	const whose = pair.owners.length > 1 ? "All dressings together. " : "";
	const figure = twoWidthFigure(document, {
		id: "main-differences",
		caption: `${whose}${why}`,
		draw: (options) =>
			differenceRows(
				{
					title: `${pair.a} against ${pair.b}: what differs most`,
					a: pair.a,
					b: pair.b,
					rows: differences.map((one) => rowOf(one, scale)),
				},
				document,
				options,
			),
	});
	return sheetPart(
		document,
		"main-differences",
		`${pair.a} against ${pair.b}: what differs most`,
		figure,
	);
}

/** What a comparison leaves open, whatever its numbers. */
function silenceSection(
	result: CompareResult,
	document: Document,
): HTMLElement {
	const isUnjudged = result.differences.some(
		({ kind }) => kind === "not-judged",
	);
	const sentences = [
		"Whether the wound heals sooner or better: nothing here is about healing, pain or comfort.",
		"Which regimen is the better one: there is no overall score. What a wash is worth against a leak or a call at night is for the clinician to weigh, with the patient and the prescription.",
		...(isUnjudged
			? [
					"Whether either clogs more: nobody has measured those rates, so no verdict on clogging is given.",
				]
			: []),
		"That there is no difference where none was found: one smaller than the bar may be there.",
	];
	return sheetPart(
		document,
		"silence",
		"What this does not tell",
		htmlElement(
			document,
			"ul",
			{ class: "plain" },
			...sentences.map((sentence) => htmlElement(document, "li", {}, sentence)),
		),
	);
}

/** Room for the meeting's own words, by hand; on paper only. */
function signature(document: Document): HTMLElement {
	const line = (...places: readonly string[]): HTMLElement =>
		htmlElement(
			document,
			"div",
			{ class: "sign" },
			...places.map((place) => htmlElement(document, "span", {}, place)),
		);
	return htmlElement(
		document,
		"div",
		{ class: "paper-only" },
		line("What we decided, and why"),
		line("Names", "Date", "To be looked at again on"),
	);
}
