import type { Pair } from "../../report/compare/pairs/pairs.ts";
import { restsOnSection } from "../../report/compare/rests-on/rests-on-section.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { RestsOn } from "../../results/index.ts";
import { pressed, progressBar } from "../kit/controls.ts";

/**
 * What the differences rest on: tried when asked for, as it takes seconds, and taken away when what was compared changes.
 * `wanted` is told when it is asked for.
 */
export function restsOnPart(html: HtmlMaker, wanted: () => void) {
	const bar = progressBar(html, "Assumptions that have been tried");
	const ask = pressed(html, "Try what this rests on", () => {
		ask.disabled = true;
		bar.begin();
		wanted();
	});
	const says = html("span", { role: "status" });
	const place = html("div");
	const rest = () => {
		ask.disabled = false;
		bar.end();
	};
	const help =
		"Every assumption in turn at half and at twice its value, on the same random numbers: which of them would turn an answer. It takes a few seconds.";
	const asking = html("p", {}, ask, " ", bar.element, says);
	return {
		element: html("div", {}, html("p", { class: "help" }, help), asking, place),
		/** Nothing has been tried of what is compared now. */
		clear(): void {
			rest();
			says.textContent = "";
			place.replaceChildren();
		},
		progress: bar.show,
		/** `pair` is of a result that holds what was tried. */
		show(restsOn: RestsOn, pair: Pair): void {
			rest();
			place.replaceChildren(restsOnSection(html, pair));
			says.textContent = `${restsOn.rows.length} assumptions have been tried; what they do stands below.`;
		},
	};
}
