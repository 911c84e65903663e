import type { CompareResult } from "../analysis/compare-result.ts";
import { cautionWords } from "./caution.ts";
import type { Pair } from "./compare-parts.ts";
import { differenceHtml } from "./difference-html.ts";
import { sharedDrawdownWords } from "./drawdown-words.ts";
import { dressingLine } from "./dressing-words.ts";
import { htmlElement, unbroken } from "./html-element.ts";
import { mainRows } from "./main-rows.ts";
import { commonDrawdown, regimenLines, sizesDiffer } from "./regimen-lines.ts";
import { sentenceStart } from "./sentence.ts";
import { sheetPart } from "./sheet-part.ts";
import { silenceSection } from "./silence-section.ts";

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
	const shared = (id: string): string =>
		commonDrawdown(result) === null
			? ""
			: `; ${sharedDrawdownWords(regimensOf(result, id))} under every regimen`;
	const wounds = result.scenario.dressings.map((dressing) =>
		element(
			"p",
			{ class: "facts" },
			unbroken(
				`${several ? `${dressing.id}: ` : ""}${sentenceStart(dressingLine(dressing, !sizesDiffer(result)))}${shared(dressing.id)}.`,
			),
		),
	);
	return sheetPart(
		document,
		"regimens",
		"The regimens",
		element("dl", {}, ...rows),
		...wounds,
		...result.cautions
			.filter(({ dressing }) => dressing !== undefined)
			.map((caution) =>
				element("p", { class: "caution" }, cautionWords(caution)),
			),
	);
}

/** All regimens of one dressing in a comparison. */
const regimensOf = ({ regimens }: CompareResult, id: string) =>
	regimens.flatMap(({ dressings }) =>
		dressings.flatMap((one) => (one.id === id ? one.regimens : [])),
	);

function differencesSection(
	result: CompareResult,
	pair: Pair,
	document: Document,
): HTMLElement {
	const { heading, rows, caption } = mainRows(result, pair);
	const figure = differenceHtml(
		document,
		"main-differences",
		{ title: heading, a: pair.a, b: pair.b, rows },
		caption,
	);
	return sheetPart(document, "main-differences", heading, figure);
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
