import { htmlElement } from "../report/html-element.ts";
import type { Handed } from "./orders.ts";
import { pressed } from "./press.ts";
import { linkOf } from "./rehearse-view.ts";

/** Where a case comes from: the bench, a seed, a file, or a link. */
export class CaseChooser {
	readonly element: HTMLElement;
	readonly #own: HTMLElement;
	readonly #says: HTMLElement;
	readonly #link: HTMLTextAreaElement;

	constructor(
		document: Document,
		of: {
			/** Text of the scenario on the bench. */
			readonly text: () => string;
			readonly address: () => string;
			readonly begin: (handed: Handed) => void;
		},
	) {
		const element = htmlElement.bind(null, document);
		const seed = htmlElement(document, "input", {
			type: "text",
			id: "case-seed",
			value: "tuesday",
			autocomplete: "off",
		});
		const file = htmlElement(document, "input", {
			type: "file",
			id: "case-file",
			accept: ".yaml,.yml,.json",
		});
		file.addEventListener("change", () => {
			const [chosen] = file.files ?? [];
			file.value = "";
			void chosen
				?.text()
				.then((text) => of.begin({ text, seed: null, drawn: false }));
		});
		this.#says = element("p", { class: "wrong", role: "alert" });
		this.#link = htmlElement(document, "textarea", {
			id: "case-link",
			readonly: "",
			rows: "3",
			class: "link",
			"aria-label": "Link to the case",
			hidden: "",
		});
		const drawn = (): Handed => ({
			text: of.text(),
			seed: seed.value.trim() === "" ? "tuesday" : seed.value.trim(),
			drawn: true,
		});
		seed.addEventListener("keydown", ({ key }) => {
			if (key === "Enter") of.begin(drawn());
		});
		const own = (): Handed => ({ text: of.text(), seed: null, drawn: false });
		const hand = (handed: Handed) => {
			this.#link.hidden = false;
			this.#link.value = `${of.address()}${linkOf(handed)}`;
			this.#link.focus();
			this.#link.select();
		};
		this.#own = element(
			"section",
			{ "aria-labelledby": "own-case" },
			element("h3", { id: "own-case" }, "The case on the bench"),
			element(
				"p",
				{},
				"The scenario on the bench hides something. Whoever has read its file knows what.",
			),
			element(
				"div",
				{ class: "bar" },
				pressed(document, "Rehearse it", () => of.begin(own())),
				pressed(document, "Make a link to it", () => hand(own())),
			),
		);
		this.element = element(
			"div",
			{ class: "chooser" },
			element("h2", {}, "Rehearse a shift"),
			element(
				"p",
				{},
				"A shift at one bedside in which something may be wrong. You see what a bedside shows; every look and every act takes its minutes, and the day goes on. Afterwards the debrief says what was hidden, and what an orderly search would have been.",
			),
			this.#says,
			this.#own,
			element(
				"section",
				{ "aria-labelledby": "drawn-case" },
				element("h3", { id: "drawn-case" }, "A drawn case"),
				element(
					"p",
					{},
					"Causes are drawn from a seed, as often as the model brings them, for the first dressing on the bench. The same seed gives the same case.",
				),
				element(
					"div",
					{ class: "field" },
					element("label", { for: "case-seed" }, "Seed"),
					seed,
				),
				element(
					"div",
					{ class: "bar" },
					pressed(document, "Draw it and begin", () => of.begin(drawn())),
					pressed(document, "Make a link to it", () => hand(drawn())),
				),
			),
			element(
				"section",
				{ "aria-labelledby": "file-case" },
				element("h3", { id: "file-case" }, "A case from a file"),
				element(
					"p",
					{},
					"Choose a scenario file with a rehearsal: part, or drop one here. A link with #case= in it opens by itself.",
				),
				element(
					"div",
					{ class: "field" },
					element("label", { for: "case-file" }, "File"),
					file,
				),
			),
			this.#link,
			element(
				"p",
				{ class: "help" },
				"The answer of a case cannot be read from a link at a glance. It is no secret: whoever has this page can find it.",
			),
		);
	}

	/** Whether the scenario on the bench is a case itself. */
	show(isCase: boolean): void {
		this.#own.hidden = !isCase;
		this.#link.hidden = true;
	}

	/** Says why a case could not be begun. */
	refuse(words: string): void {
		this.#says.textContent = words;
	}
}
