import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { cautionInALine, cautionSentences } from "../../vocabulary/index.ts";

/** What stands around every view: title, caution and bars above, the work, what the page is not for below. */
export function pageFrame(
	html: HtmlMaker,
	version: string,
	of: { readonly title: HTMLElement; readonly bars: readonly HTMLElement[]; readonly work: readonly HTMLElement[] },
): HTMLElement[] {
	const kept = `slackwater ${version}. Everything stays in this page and this browser; nothing is sent.`;
	const sentences = cautionSentences.map((words) => html("p", {}, words));
	return [
		html("a", { class: "skip", href: "#main" }, "Skip to the work"),
		html("header", {}, of.title, html("p", { class: "caution" }, cautionInALine), ...of.bars),
		html("main", { id: "main", tabindex: "-1" }, ...of.work),
		html("footer", {}, ...sentences, html("p", { class: "help" }, kept)),
	];
}
