import type { DressingParts } from "../../report/day/dressing/dressing-parts.ts";
import { planSection, suppliesSection } from "../../report/day/plan-section.ts";
import { clockSection } from "../../report/day/sheet/sheet-sections.ts";
import { totalsTable } from "../../report/day/totals-table.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";

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
