import { htmlElement } from "../report/html-element.ts";
import { type Problem, sentence } from "../scenario/index.ts";
import type { Bench, Findings } from "./bench.ts";
import { Form } from "./form.ts";
import { pressed } from "./press.ts";
import { dataOf } from "./scenario-text.ts";
import type { Shape } from "./shape.ts";

/** A pause in typing after which the text is taken, ms. */
const pauseMs = 400;

/** The scenario on the bench, as a form or as text, with everything that is wrong with it. */
export class ScenarioPanel {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #bench: Bench;
	readonly #form: Form;
	readonly #text: HTMLTextAreaElement;
	readonly #problems: HTMLElement;
	readonly #unreadable: HTMLElement;
	readonly #asForm: HTMLButtonElement;
	readonly #asText: HTMLButtonElement;
	#findings: Findings | null = null;
	/** Whether something is still drawn where there are problems. */
	#drawn = true;
	#typing: number | null = null;

	constructor(
		document: Document,
		window: Window,
		bench: Bench,
		of: { readonly heading: string; readonly schema: Shape },
	) {
		this.#document = document;
		this.#bench = bench;
		const element = htmlElement.bind(null, document);
		this.#form = new Form(document, of.schema, (keys, value, reshapes) => {
			bench.set(keys, value, reshapes ? "else" : "form");
		});
		this.#text = htmlElement(document, "textarea", {
			id: "scenario-text",
			class: "source",
			spellcheck: "false",
			autocomplete: "off",
			rows: "32",
			"aria-label": "The scenario as text, YAML or JSON",
			"aria-describedby": "problems",
		});
		const take = () => {
			if (this.#typing !== null) window.clearTimeout(this.#typing);
			this.#typing = null;
			if (this.#text.value !== bench.text) bench.replace(this.#text.value);
		};
		this.#text.addEventListener("input", () => {
			if (this.#typing !== null) window.clearTimeout(this.#typing);
			this.#typing = window.setTimeout(take, pauseMs);
		});
		this.#text.addEventListener("change", take);
		this.#problems = element("div", {
			class: "problems",
			id: "problems",
			role: "status",
		});
		this.#unreadable = element(
			"p",
			{ class: "help" },
			"The text cannot be read as YAML or JSON, so there is no form to show. Mend it as text.",
		);
		this.#asForm = pressed(document, "As a form", () => this.#turn(false));
		this.#asText = pressed(document, "As text", () => this.#turn(true));
		this.element = element(
			"section",
			{ class: "scenario", "aria-labelledby": "scenario-heading" },
			element("h2", { id: "scenario-heading" }, of.heading),
			element(
				"div",
				{
					class: "bar",
					role: "group",
					"aria-label": "How the scenario is shown",
				},
				this.#asForm,
				this.#asText,
			),
			this.#problems,
			this.#unreadable,
			this.#form.element,
			this.#text,
		);
		this.#turn(false);
	}

	/** Shows the text that lies on the bench; `anew` where the form does not know of it yet. */
	show(anew: boolean): void {
		const { text } = this.#bench;
		if (this.#text.value !== text) this.#text.value = text;
		if (!anew) return;
		const data = dataOf(text);
		const readable = typeof data === "object" && data !== null;
		this.#unreadable.hidden = readable || !this.#text.hidden;
		this.#form.element.hidden = !readable || !this.#text.hidden;
		if (readable) this.#form.show(data);
		if (this.#findings !== null) this.#complain(this.#findings);
	}

	/** Says everything that is wrong, here and beside the fields. */
	complain(findings: Findings, drawn = true): void {
		this.#findings = findings;
		this.#drawn = drawn;
		this.#complain(findings);
	}

	#complain({ problems, notes }: Findings): void {
		const homeless = new Set(this.#form.complain(problems));
		const element = htmlElement.bind(null, this.#document);
		const item = (problem: Problem) =>
			element(
				"li",
				homeless.has(problem) ? { class: "homeless" } : {},
				sentence(problem),
			);
		const count =
			problems.length === 1 ? "One problem" : `${problems.length} problems`;
		this.#problems.replaceChildren(
			...(problems.length === 0
				? []
				: [
						element(
							"p",
							{ class: "wrong" },
							`${count}. ${this.#drawn ? "What is drawn is the last scenario without any." : "Nothing is drawn until they are mended."}`,
						),
						element("ul", { class: "plain" }, ...problems.map(item)),
					]),
			...notes.map((note) => element("p", { class: "help" }, `Note: ${note}`)),
		);
	}

	#turn(toText: boolean): void {
		this.#asForm.setAttribute("aria-pressed", String(!toText));
		this.#asText.setAttribute("aria-pressed", String(toText));
		this.#text.hidden = !toText;
		this.show(true);
	}
}
