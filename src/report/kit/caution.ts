import type { Caution } from "../../results/index.ts";
import { cautionSentences } from "../../vocabulary/index.ts";
import type { HtmlMaker } from "./html-element.ts";

/** What stands under the title of every report that may be read at a bedside. */
export const bedsideCautions: readonly string[] = cautionSentences.slice(0, 2);

/** A caution, with whose it is where it is one dressing's. */
export const cautionWords = ({ dressing, text }: Caution): string =>
	dressing === undefined ? text : `Dressing ${dressing}: ${text}`;

/** What must be known of single dressings, with whose it is. */
export const ofDressings = ({ cautions }: { readonly cautions: readonly Caution[] }): string[] =>
	cautions.filter(({ dressing }) => dressing !== undefined).map(cautionWords);

/** Cautions, to stand beside the regimen that they are of. */
export const cautionLines = (html: HtmlMaker, texts: readonly string[]): HTMLElement[] =>
	texts.map((text) => html("p", { class: "caution" }, text));
