import type { CompareResult, RestsOn } from "../analysis/index.ts";
import type { Pair } from "../report/compare-parts.ts";
import { htmlElement } from "../report/html-element.ts";
import { restsOnSection } from "../report/rests-on-section.ts";
import { pressed } from "./press.ts";

/** What the differences rest on: tried when asked for, as it takes seconds, and taken away when what was compared changes. */
export class RestsOnPart {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #ask: HTMLButtonElement;
	readonly #bar: HTMLProgressElement;
	readonly #says: HTMLElement;
	readonly #place: HTMLElement;

	/** `wanted` is told when it is asked for. */
	constructor(document: Document, wanted: () => void) {
		this.#document = document;
		this.#bar = htmlElement(document, "progress", {
			"aria-label": "Assumptions that have been tried",
			hidden: "",
		});
		this.#ask = pressed(document, "Try what this rests on", () => {
			this.#ask.disabled = true;
			this.#bar.removeAttribute("value");
			this.#bar.hidden = false;
			wanted();
		});
		this.#says = htmlElement(document, "span", { role: "status" });
		this.#place = htmlElement(document, "div", {});
		this.element = htmlElement(
			document,
			"div",
			{},
			htmlElement(
				document,
				"p",
				{ class: "help" },
				"Every assumption in turn at half and at twice its value, on the same random numbers: which of them would turn an answer. It takes a few seconds.",
			),
			htmlElement(document, "p", {}, this.#ask, " ", this.#bar, this.#says),
			this.#place,
		);
	}

	/** Nothing has been tried of what is compared now. */
	clear(): void {
		this.#rest();
		this.#says.textContent = "";
		this.#place.replaceChildren();
	}

	progress(done: number, of: number): void {
		this.#bar.max = of;
		this.#bar.value = done;
	}

	show(result: CompareResult, restsOn: RestsOn, pair: Pair): void {
		this.#rest();
		this.#place.replaceChildren(
			restsOnSection({ ...result, restsOn }, pair, this.#document),
		);
		this.#says.textContent = `${restsOn.rows.length} assumptions have been tried; what they do stands below.`;
	}

	#rest(): void {
		this.#ask.disabled = false;
		this.#bar.hidden = true;
	}
}
