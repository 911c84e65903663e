import type { DayResult } from "../analysis/index.ts";
import { suppliesSection } from "../report/common-sections.ts";
import { dressingParts, idOf } from "../report/dressing-parts.ts";
import { htmlElement } from "../report/html-element.ts";
import { planSection } from "../report/plan-section.ts";
import { clockSection } from "../report/sheet-section.ts";
import { totalsTable } from "../report/totals-table.ts";

/** What is folded away below the charts; a part that is open in `now` stays open. */
export function dayTables(
	result: DayResult,
	dressing: number,
	now: HTMLElement,
	document: Document,
): HTMLElement[] {
	const parts = dressingParts(result)[dressing];
	if (parts === undefined) return [];
	const id = idOf(parts);
	const open = new Set(
		[...now.querySelectorAll<HTMLDetailsElement>(":scope > details[open]")].map(
			(one) => one.dataset.name,
		),
	);
	const folded = (name: string, heading: string, make: () => HTMLElement) => {
		const details = htmlElement(
			document,
			"details",
			open.has(name) ? { open: "" } : {},
			htmlElement(document, "summary", { id: `fold-${name}` }, heading),
		);
		details.dataset.name = name;
		let made = false;
		const build = () => {
			if (made || !details.open) return;
			made = true;
			details.append(make());
		};
		build();
		details.addEventListener("toggle", build);
		return details;
	};
	return [
		folded("clock", "On the clock", () =>
			clockSection(result, parts, document),
		),
		folded("totals", "Totals with their ranges", () =>
			totalsTable(
				document,
				{ id: `${id}-totals`, under: "fold-totals" },
				parts.day.totals,
				parts.projection.totals,
				result.projection.replications,
			),
		),
		folded("supplies", "Supplies and plan", () =>
			htmlElement(
				document,
				"div",
				{},
				suppliesSection(result, document),
				planSection(result, document),
			),
		),
	];
}
