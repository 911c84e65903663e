import { cautionInALine, cautionSentences } from "../report/caution.ts";
import { htmlElement } from "../report/html-element.ts";

/** What stands around every view: title, caution and bars above, the work, what the page is not for below. */
export function pageFrame(
	document: Document,
	version: string,
	of: {
		readonly title: HTMLElement;
		readonly bars: readonly HTMLElement[];
		readonly work: readonly HTMLElement[];
	},
): HTMLElement[] {
	const element = htmlElement.bind(null, document);
	return [
		element("a", { class: "skip", href: "#main" }, "Skip to the work"),
		element(
			"header",
			{},
			of.title,
			element("p", { class: "caution" }, cautionInALine),
			...of.bars,
		),
		element("main", { id: "main", tabindex: "-1" }, ...of.work),
		element(
			"footer",
			{},
			...cautionSentences.map((words) => element("p", {}, words)),
			element(
				"p",
				{ class: "help" },
				`slackwater ${version}. Everything stays in this page and this browser; nothing is sent.`,
			),
		),
	];
}
