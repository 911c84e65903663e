import type { CompareResult } from "../../results/index.ts";
import { dressingLine, sentenceStart, sharedDrawdownWords } from "../../words/index.ts";
import { cautionLines, ofDressings } from "../kit/closing-chapter.ts";
import { type HtmlMaker, handwritten, plainList, sheetPart, unbroken } from "../kit/html-element.ts";
import { differenceTable } from "./difference-section.ts";
import { mainRows } from "./pairs/difference-rows.ts";
import type { Pair } from "./pairs/pairs.ts";
import { commonDrawdown, regimenLines, sizesDiffer } from "./regimen-words.ts";

/** The first page, on screen and on paper: the regimens, the differences that matter most, and what they do not tell. */
export const compareSheet = (html: HtmlMaker, result: CompareResult, pair: Pair | undefined): HTMLElement =>
	html(
		"div",
		{ class: "brief" },
		regimensSection(html, result),
		pair === undefined ? null : differencesSection(html, pair),
		silenceSection(html, result),
		handwritten(html, ["What we decided, and why"], ["Names", "Date", "To be looked at again on"]),
	);

function regimensSection(html: HtmlMaker, result: CompareResult): HTMLElement {
	const { dressings } = result.scenario;
	const rows = result.regimens.flatMap((regimen) => [
		html("dt", {}, regimen.name),
		...regimenLines(regimen, result).map((line) => html("dd", {}, unbroken(`${line}.`))),
	]);
	const shared = (id: string): string =>
		commonDrawdown(result) === null ? "" : `; ${sharedDrawdownWords(regimensOf(result, id))} under every regimen`;
	const wounds = dressings.map((dressing) => {
		const line = `${sentenceStart(dressingLine(dressing, !sizesDiffer(result)))}${shared(dressing.id)}.`;
		return html("p", { class: "facts" }, unbroken(dressings.length > 1 ? `${dressing.id}: ${line}` : line));
	});
	const cautions = cautionLines(html, ofDressings(result));
	return sheetPart(html, "regimens", "The regimens", html("dl", {}, ...rows), ...wounds, ...cautions);
}

const regimensOf = ({ regimens }: CompareResult, id: string) =>
	regimens.flatMap(({ dressings }) => dressings.flatMap((one) => (one.id === id ? one.regimens : [])));

function differencesSection(html: HtmlMaker, pair: Pair): HTMLElement {
	const id = "main-differences";
	const { caption, ...rows } = mainRows(pair);
	return sheetPart(html, id, rows.title, differenceTable(html, id, rows, caption));
}

/** What a comparison leaves open, whatever its numbers. */
export function silenceSection(html: HtmlMaker, result: CompareResult): HTMLElement {
	const unjudged = "Whether either clogs more: nobody has measured those rates, so no verdict on clogging is given.";
	const sentences = [
		"Whether the wound heals sooner or better: nothing here is about healing, pain or comfort.",
		"Which regimen is the better one: there is no overall score. What a wash is worth against a leak or a call at night is for the clinician to weigh, with the patient and the prescription.",
		...(result.differences.some(({ kind }) => kind === "not-judged") ? [unjudged] : []),
		"That there is no difference where none was found: one smaller than the bar may be there.",
	];
	return sheetPart(html, "silence", "What this does not tell", plainList(html, sentences));
}
