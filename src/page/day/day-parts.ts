import { answers } from "../../report/day/answers/answers.ts";
import type { DressingParts } from "../../report/day/dressing/dressing-parts.ts";
import { planSection, suppliesSection } from "../../report/day/plan-section.ts";
import { clockSection } from "../../report/day/sheet/sheet-sections.ts";
import { totalsTable } from "../../report/day/totals-table.ts";
import { type HtmlMaker, sentenceNodes, unbroken } from "../../report/kit/html-element.ts";
import type { DayResult, DressingSummary, TracedDayResult } from "../../results/index.ts";
import { counted, dressingLine, regimenLine, sentenceStart, spanWords } from "../../words/index.ts";

type Takeovers = DayResult["dressings"][number]["schedule"]["takeovers"];

/** What is shown: the dressing, its regimen, the span. `takeovers` are known with the answers only, which say the same times. */
export function dayHead(
	html: HtmlMaker,
	{ scenario }: TracedDayResult,
	dressing: DressingSummary,
	takeovers: Takeovers | undefined,
): HTMLElement[] {
	const line = (text: string) => unbroken(`${sentenceStart(text)}.`);
	const facts = (text: string) => html("p", { class: "facts" }, text);
	return [
		html("h2", {}, `Dressing ${dressing.id}`),
		html("p", {}, line(regimenLine(dressing, scenario, true, takeovers))),
		facts(line(dressingLine(dressing))),
		facts(
			`${spanWords(scenario)} ${counted(scenario.replications, "replication")}, chance ${scenario.chance}. Seed ${scenario.seed}.`,
		),
	];
}

/** The answers in sentences, then what is to be minded. */
export const answerItems = (html: HtmlMaker, parts: DressingParts): HTMLElement[] => [
	...answers(parts).map((sentence) => html("li", {}, ...sentenceNodes(html, sentence))),
	...parts.cautions.map((text) => html("li", { class: "caution" }, text)),
];

/** What is folded away below the charts, made when it is first opened; a part that is open in `now` stays open. */
export function dayTables(html: HtmlMaker, parts: DressingParts, now: HTMLElement): HTMLElement[] {
	const open = new Set(
		[...now.querySelectorAll<HTMLDetailsElement>(":scope > details[open]")].map((one) => one.dataset.name),
	);
	const folded = (name: string, heading: string, make: () => HTMLElement) => {
		const summary = html("summary", { id: `fold-${name}` }, heading);
		const details = html("details", { "data-name": name, ...(open.has(name) ? { open: "" } : {}) }, summary);
		const build = () => {
			if (details.open && details.lastChild === summary) details.append(make());
		};
		build();
		details.addEventListener("toggle", build);
		return details;
	};
	return [
		folded("clock", "On the clock", () => clockSection(html, parts)),
		folded("totals", "Totals with their ranges", () => totalsTable(html, parts, "fold-totals")),
		folded("supplies", "Supplies and plan", () =>
			html("div", {}, suppliesSection(html, parts.result), planSection(html, parts.result)),
		),
	];
}
