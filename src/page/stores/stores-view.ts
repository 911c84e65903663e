import { supplyCalendar } from "../../report/calendar.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { supplyFacts, supplySections } from "../../report/supply/supply-html.ts";
import { supplyTables } from "../../report/supply/supply-tables.ts";
import type { SupplyResult } from "../../results/index.ts";
import { supplyJson } from "../../results/supply.ts";
import { progressBar, saveButton } from "../kit/controls.ts";
import type { Frames } from "../kit/frames.ts";
import { chartWidth } from "../kit/on-page.ts";

/** Parts that are folded away at first, by their class. */
const folded = new Set(["rules", "cost", "policies", "nurses", "waste", "kinds", "beds", "sources"]);

/** The weeks of a ward: what to order, what there will be on the shelf, and everything else that its report says. */
export function storesView(html: HtmlMaker, frames: Frames) {
	/** Parts that the reader has unfolded. */
	const opened = new Set<string>();
	let shown: SupplyResult | null = null;
	let drawnPx = 0;

	const save = (words: string, name: string, textOf: (result: SupplyResult) => string) =>
		saveButton(html, words, name, () => shown && textOf(shown));
	const saves = [
		save("Save the order list (orders.csv)", "orders.csv", (result) => supplyTables(result)["orders.csv"] ?? ""),
		save("Save its days for a calendar (orders.ics)", "orders.ics", supplyCalendar),
		save("Save these numbers (supply.json)", "supply.json", supplyJson),
	];
	const facts = html("p", { class: "facts" });
	const says = html("p", { role: "status" });
	const bar = progressBar(html, "Replications that are done");
	const places = supplySections.map(() => html("div"));
	const underWay = html("div", { class: "under-way" }, bar.element, says);
	const element = html(
		"div",
		{ class: "stores common" },
		html("div", { class: "head" }, html("h2", {}, "The stores"), facts, underWay),
		html("div", { class: "bar" }, ...saves),
		...places,
	);

	/** Only a whole run is handed out. */
	const handOut = (isWhole: boolean) => {
		for (const button of saves) button.disabled = !isWhole;
	};
	handOut(false);

	function tell(kind: "help" | "caution", words: string): void {
		says.className = kind;
		says.textContent = words;
	}

	function draw(isMeant: (place: HTMLElement) => boolean): void {
		if (shown === null) return;
		const result = shown;
		const widthPx = chartWidth(element);
		drawnPx = widthPx;
		places.forEach((place, i) => {
			if (!isMeant(place)) return;
			frames.plan(`stores ${i}`, () => {
				const charts: (() => void)[] = [];
				const drawn = supplySections[i]?.(html, result, { widthPx, later: (chart) => charts.push(chart) });
				if (drawn && folded.has(drawn.className)) fold(drawn);
				charts.forEach((chart, n) => {
					frames.plan(`stores ${i}, chart ${n}`, chart);
				});
				// All at once, so that nothing jumps under the reader's eyes.
				frames.plan(`stores ${i} in place`, () => place.replaceChildren(...(drawn ? [drawn] : [])));
			});
		});
	}

	/** Folds a part away under its heading. */
	function fold(section: HTMLElement): void {
		const [heading, ...rest] = section.children;
		const name = section.className;
		const summary = html("summary", { id: heading?.id ?? "" }, heading?.textContent ?? "");
		const details = html("details", opened.has(name) ? { open: "" } : {}, summary, ...rest);
		details.addEventListener("toggle", () => {
			if (details.open) opened.add(name);
			else opened.delete(name);
		});
		section.replaceChildren(details);
	}

	return {
		element,
		/** A run has begun; what is shown is that of an older one. */
		begin(): void {
			handOut(false);
			bar.begin();
			const anew = "Working it out anew; what is shown is what was there before.";
			tell("help", shown === null ? "Working it out …" : anew);
		},
		/** How far it has come, in replications. */
		progress: bar.show,
		/** There is nothing to run: what was there before stays to be read, and is not handed out. */
		stop(): void {
			bar.end();
			const what = shown === null ? "Nothing to show yet" : "What is shown is what was there before";
			tell("caution", `${what}: the ward's file has problems, which stand beside it.`);
		},
		/** Shows what a run came to; `of`: how many replications it will have, null where it is the whole. */
		show(result: SupplyResult, of: number | null): void {
			const { replications } = result.scenario;
			shown = result;
			facts.textContent = supplyFacts(result);
			handOut(of === null);
			if (of === null) {
				bar.end();
				tell("help", `All ${replications} replications are in.`);
			} else tell("caution", `Preliminary: the first ${replications} of ${of} replications.`);
			draw(() => true);
		},
		/** Draws the charts for another width. */
		redraw(): void {
			if (drawnPx !== chartWidth(element)) draw((place) => place.querySelector("svg") !== null);
		},
	};
}
