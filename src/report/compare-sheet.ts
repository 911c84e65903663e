import type { CompareResult } from "../analysis/compare-result.ts";
import { compareScale, type Pair, rowOf } from "./compare-parts.ts";
import { differenceHtml } from "./difference-html.ts";
import { dressingLine } from "./dressing-words.ts";
import { isFragile } from "./fragile.ts";
import { htmlElement, unbroken } from "./html-element.ts";
import { mainDifferences } from "./main-differences.ts";
import { commonDrawdown, regimenLines } from "./regimen-lines.ts";
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
	const fragile = differences.filter((one) => isFragile(one, result.restsOn));
	const rows = differences.map((one) => {
		const row = rowOf(one, scale);
		return fragile.includes(one)
			? { ...row, verdict: `${row.verdict}; rests on assumed numbers` }
			: row;
	});
	const warning =
		fragile.length === 0
			? ""
			: " What rests on assumed numbers is lost or turned round at half or at twice one of them: see What the answer rests on.";
	const figure = differenceHtml(
		document,
		"main-differences",
		{
			title: `${pair.a} against ${pair.b}: what differs most`,
			a: pair.a,
			b: pair.b,
			rows,
		},
		`${whose}${why}${warning}`,
	);
	return sheetPart(
		document,
		"main-differences",
		`${pair.a} against ${pair.b}: what differs most`,
		figure,
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
