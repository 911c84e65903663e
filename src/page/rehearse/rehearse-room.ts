import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { Engine } from "../worker/engine.ts";
import type { Handed } from "../worker/orders.ts";
import { caseChooser } from "./case-chooser.ts";
import { rehearseView } from "./rehearse-view.ts";

/** Cases to choose from, and the shift that is rehearsed, in a worker of its own. */
export function rehearseRoom(
	html: HtmlMaker,
	window: Window,
	of: {
		/** Address of the worker's text. */
		readonly worker: string;
		/** Text of the scenario on the bench. */
		text(): string;
		/** The page's own address, to which a case is added. */
		address(): string;
		/** Turns the page to where a shift is rehearsed. */
		turn(): void;
		/** The title may be another one now. */
		named(): void;
		say(words: string): void;
	},
) {
	const chooser = caseChooser(html, { ...of, begin });
	const view = rehearseView(html, window, new Engine(of.worker), (begun) => {
		of.named();
		if (begun) return;
		chooser.element.hidden = false;
		chooser.element.querySelector("button")?.focus();
	});

	function begin(handed: Handed): void {
		of.turn();
		chooser.refuse("");
		chooser.element.hidden = true;
		// Whoever has the case on the bench may have read it.
		const known = !handed.drawn && handed.text === of.text();
		view.begin(handed, known ? ["opened-on-bench"] : [], (words) => {
			if (view.underWay()) {
				of.say(`${words} The shift goes on.`);
				return;
			}
			chooser.element.hidden = false;
			chooser.refuse(words);
		});
	}

	return {
		element: html("div", {}, chooser.element, view.element),
		/** Title of the case that is shown; null: none. */
		title: view.title,
		begin,
		/** Whether the scenario on the bench is a case itself. */
		show: chooser.show,
	};
}
