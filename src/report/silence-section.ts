import type { CompareResult } from "../analysis/compare-result.ts";
import { htmlElement } from "./html-element.ts";
import { sheetPart } from "./sheet-part.ts";

/** What a comparison leaves open, whatever its numbers. */
export function silenceSection(
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
