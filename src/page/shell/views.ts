import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { pressed } from "../kit/controls.ts";

export type ViewName = "Day" | "Compare" | "Stores" | "Rehearse" | "Sources";

/**
 * The views of the page, in one bar; the one that is shown alone is in the document, so that names of their parts do not
 * meet. `turned` is told when another one is shown.
 */
export function viewBar(
	html: HtmlMaker,
	first: ViewName,
	views: readonly (readonly [name: ViewName, element: HTMLElement])[],
	turned: () => void,
) {
	let name = first;
	const place = html("div", { class: "view" });
	const all = views.map(([name, element]) => ({ name, element, button: pressed(html, name, () => turn(name)) }));

	function show(): void {
		for (const { name: one, element, button } of all) {
			if (one === name) place.replaceChildren(element);
			if (one === name) button.setAttribute("aria-current", "page");
			else button.removeAttribute("aria-current");
		}
	}
	show();

	function turn(to: ViewName): void {
		name = to;
		show();
		turned();
	}

	const bar = html("nav", { class: "views", "aria-label": "Views" }, ...all.map(({ button }) => button));
	return { bar, place, name: () => name, turn };
}
