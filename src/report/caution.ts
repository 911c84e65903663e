import type { Caution } from "../analysis/day-result.ts";
import { htmlElement } from "./html-element.ts";

/** What must be known of one dressing, to stand beside its regimen. */
export const dressingCautions = (
	{ cautions }: { readonly cautions: readonly Caution[] },
	dressing: string,
	document: Document,
): HTMLElement[] =>
	cautions
		.filter((caution) => caution.dressing === dressing)
		.map(({ text }) => htmlElement(document, "p", { class: "caution" }, text));

/** What every report, page and rehearsal says of itself. */
export const cautionInALine =
	"For planning and teaching, not for setting a device or treating a patient: the prescription, the maker's instructions and local policy come first.";

export const cautionSentences: readonly string[] = [
	cautionInALine,
	"Bleeding, exposed vessels or organs, unexplained pain or a large sudden output need a clinician now.",
	"Nothing here has been validated on patients, and numbers marked assumed are placeholders until a site calibrates them.",
];

/** A caution, with whose it is where it is one dressing's. */
export const cautionWords = ({ dressing, text }: Caution): string =>
	dressing === undefined ? text : `Dressing ${dressing}: ${text}`;
