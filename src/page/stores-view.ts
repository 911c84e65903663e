import type { SupplyResult } from "../analysis/index.ts";
import { supplyCalendar } from "../report/calendar.ts";
import { htmlElement } from "../report/html-element.ts";
import { supplyTables } from "../report/supply-csv.ts";
import { supplyJson } from "../report/supply-json.ts";
import { supplyFacts, supplySections } from "../report/supply-sections.ts";
import { chartWidth } from "./chart-width.ts";
import type { Frames } from "./frames.ts";
import { pressed } from "./press.ts";
import { saveFile } from "./save-file.ts";

/** Parts that are folded away at first, by their class. */
const folded = new Set([
	"rules",
	"cost",
	"policies",
	"nurses",
	"waste",
	"kinds",
	"beds",
	"sources",
]);

/** The weeks of a ward: what to order, what there will be on the shelf, and everything else that its report says. */
export class StoresView {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #frames: Frames;
	readonly #facts: HTMLElement;
	readonly #says: HTMLElement;
	readonly #bar: HTMLProgressElement;
	readonly #saves: readonly HTMLButtonElement[];
	readonly #places: readonly HTMLElement[];
	/** Parts that the reader has unfolded. */
	readonly #opened = new Set<string>();
	#shown: SupplyResult | null = null;
	#widthPx = 0;

	constructor(document: Document, frames: Frames) {
		this.#document = document;
		this.#frames = frames;
		const element = htmlElement.bind(null, document);
		const save = (
			words: string,
			name: string,
			textOf: (result: SupplyResult) => string,
		) =>
			pressed(
				document,
				words,
				() => {
					if (this.#shown !== null)
						saveFile(document, name, textOf(this.#shown));
				},
				{ disabled: "" },
			);
		this.#saves = [
			save(
				"Save the order list (orders.csv)",
				"orders.csv",
				(result) => supplyTables(result)["orders.csv"] ?? "",
			),
			save(
				"Save its days for a calendar (orders.ics)",
				"orders.ics",
				supplyCalendar,
			),
			save("Save these numbers (supply.json)", "supply.json", supplyJson),
		];
		this.#facts = element("p", { class: "facts" });
		this.#says = element("p", { role: "status" });
		this.#bar = htmlElement(document, "progress", {
			"aria-label": "Replications that are done",
			hidden: "",
		});
		this.#places = supplySections.map(() => element("div", {}));
		this.element = element(
			"div",
			{ class: "stores common" },
			element(
				"div",
				{ class: "head" },
				element("h2", {}, "The stores"),
				this.#facts,
				element("div", { class: "under-way" }, this.#bar, this.#says),
			),
			element("div", { class: "bar" }, ...this.#saves),
			...this.#places,
		);
	}

	/** A run has begun; what is shown is that of an older one. */
	begin(): void {
		for (const button of this.#saves) button.disabled = true;
		this.#bar.removeAttribute("value");
		this.#bar.hidden = false;
		this.#tell(
			"help",
			this.#shown === null
				? "Working it out …"
				: "Working it out anew; what is shown is what was there before.",
		);
	}

	/** How far it has come, in replications. */
	progress(done: number, of: number): void {
		this.#bar.max = of;
		if (done === 0) return;
		this.#bar.value = done;
	}

	/** There is nothing to run: what was there before stays to be read, and is not handed out. */
	stop(): void {
		this.#bar.hidden = true;
		this.#tell(
			"caution",
			`${this.#shown === null ? "Nothing to show yet" : "What is shown is what was there before"}: the ward's file has problems, which stand beside it.`,
		);
	}

	/** Shows what a run came to; `of`: how many replications it will have, null where it is the whole. */
	show(result: SupplyResult, of: number | null): void {
		this.#shown = result;
		this.#facts.textContent = supplyFacts(result);
		this.#bar.hidden = of === null;
		this.#say(result, of);
		this.#draw(() => true);
	}

	/** Says how much of a run is shown; only a whole one is handed out. */
	#say({ scenario: { replications } }: SupplyResult, of: number | null): void {
		for (const button of this.#saves) button.disabled = of !== null;
		if (of === null)
			this.#tell("help", `All ${replications} replications are in.`);
		else
			this.#tell(
				"caution",
				`Preliminary: the first ${replications} of ${of} replications.`,
			);
	}

	#tell(kind: "help" | "caution", words: string): void {
		this.#says.className = kind;
		this.#says.textContent = words;
	}

	/** Draws the charts for another width. */
	redraw(): void {
		if (this.#widthPx === chartWidth(this.element)) return;
		this.#draw((place) => place.querySelector("svg") !== null);
	}

	#draw(isMeant: (place: HTMLElement) => boolean): void {
		const result = this.#shown;
		if (result === null) return;
		const widthPx = chartWidth(this.element);
		this.#widthPx = widthPx;
		this.#places.forEach((place, i) => {
			if (!isMeant(place)) return;
			this.#frames.plan(`stores ${i}`, () => {
				const charts: (() => void)[] = [];
				const drawn = supplySections[i]?.(result, this.#document, {
					widthPx,
					later: (draw) => charts.push(draw),
				});
				if (drawn && folded.has(drawn.className)) this.#fold(drawn);
				charts.forEach((draw, chart) => {
					this.#frames.plan(`stores ${i}, chart ${chart}`, draw);
				});
				// All at once, so that nothing jumps under the reader's eyes.
				this.#frames.plan(`stores ${i} in place`, () =>
					place.replaceChildren(...(drawn ? [drawn] : [])),
				);
			});
		});
	}

	/** Folds a part away under its heading. */
	#fold(section: HTMLElement): void {
		const [heading, ...rest] = section.children;
		const name = section.className;
		const details = htmlElement(
			this.#document,
			"details",
			this.#opened.has(name) ? { open: "" } : {},
			htmlElement(
				this.#document,
				"summary",
				{ id: heading?.id ?? "" },
				heading?.textContent ?? "",
			),
			...rest,
		);
		details.addEventListener("toggle", () => {
			if (details.open) this.#opened.add(name);
			else this.#opened.delete(name);
		});
		section.replaceChildren(details);
	}
}
