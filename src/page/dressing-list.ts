import type { TracedDayResult } from "../analysis/index.ts";
import { durationWords, sparkline } from "../charts/index.ts";
import { htmlElement } from "../report/html-element.ts";

/** The dressings of a scenario, each with its day at the height of a row, to choose from; and which of its regimens is turned. */
export class DressingList {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #buttons: HTMLElement;
	readonly #regimens: HTMLElement;
	readonly #chosen: () => void;
	#dressing = 0;
	#regimen = 0;

	constructor(document: Document, chosen: () => void) {
		this.#document = document;
		this.#chosen = chosen;
		this.#buttons = htmlElement(document, "ul", { class: "dressings" });
		this.#regimens = htmlElement(document, "div", { class: "which" });
		this.element = htmlElement(
			document,
			"div",
			{},
			this.#buttons,
			this.#regimens,
		);
	}

	/** Place of the dressing that is shown. */
	get dressing(): number {
		return this.#dressing;
	}
	/** Place of the regimen that the sliders turn. */
	get regimen(): number {
		return this.#regimen;
	}

	clear(): void {
		this.#buttons.replaceChildren();
		this.#regimens.replaceChildren();
	}

	show(day: TracedDayResult, anew: boolean): void {
		const { dressings } = day.scenario;
		if (this.#dressing >= dressings.length) this.#dressing = 0;
		if (this.#regimen >= (dressings[this.#dressing]?.regimens.length ?? 0))
			this.#regimen = 0;
		if (!anew) return;
		this.#showButtons(day);
		this.#showRegimens(day);
	}

	#showButtons(day: TracedDayResult): void {
		const { dressings, horizonMin } = day.scenario;
		this.#buttons.hidden = dressings.length < 2;
		if (dressings.length < 2) return;
		const held = this.#buttons.contains(this.#document.activeElement);
		this.#buttons.replaceChildren(
			...dressings.map(({ id }, place) => {
				const traced = day.dressings[place];
				const button = htmlElement(
					this.#document,
					"button",
					{ type: "button", "aria-pressed": String(place === this.#dressing) },
					htmlElement(this.#document, "span", {}, id),
					...(traced === undefined
						? []
						: [
								sparkline({ day: traced, horizonMin }, this.#document, {
									idPrefix: `spark-${place}`,
									styled: false,
								}),
							]),
				);
				button.addEventListener("click", () => {
					this.#dressing = place;
					this.#regimen = 0;
					this.#showButtons(day);
					this.#showRegimens(day);
					this.#chosen();
				});
				return htmlElement(this.#document, "li", {}, button);
			}),
		);
		if (held)
			this.#buttons.querySelector<HTMLElement>("[aria-pressed=true]")?.focus();
	}

	#showRegimens(day: TracedDayResult): void {
		const regimens = day.scenario.dressings[this.#dressing]?.regimens ?? [];
		this.#regimens.hidden = regimens.length < 2;
		if (regimens.length < 2) return;
		const select = htmlElement(
			this.#document,
			"select",
			{ id: "which-regimen" },
			...regimens.map(({ fromMin }, place) =>
				htmlElement(
					this.#document,
					"option",
					{ value: String(place) },
					fromMin === 0
						? "from the start"
						: `from ${durationWords(fromMin)} on`,
				),
			),
		);
		select.value = String(this.#regimen);
		select.addEventListener("change", () => {
			this.#regimen = Number(select.value);
			this.#chosen();
		});
		this.#regimens.replaceChildren(
			htmlElement(
				this.#document,
				"label",
				{ for: "which-regimen" },
				"The sliders turn the regimen",
			),
			select,
		);
	}
}
