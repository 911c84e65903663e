import { htmlElement } from "../report/html-element.ts";
import { pressed } from "./press.ts";

export type ViewName = "Day" | "Compare" | "Stores" | "Rehearse" | "Sources";

/** The views of the page, in one bar; the one that is shown alone is in the document, so that names of their parts do not meet. */
export class Views {
	readonly bar: HTMLElement;
	readonly place: HTMLElement;
	readonly #views: ReadonlyMap<
		ViewName,
		{ readonly button: HTMLButtonElement; readonly element: HTMLElement }
	>;
	readonly #turned: (name: ViewName) => void;
	#name: ViewName;

	constructor(
		document: Document,
		first: ViewName,
		elements: { readonly [V in ViewName]: HTMLElement },
		turned: (name: ViewName) => void,
	) {
		this.#name = first;
		this.#turned = turned;
		this.place = htmlElement(document, "div", { class: "view" });
		this.#views = new Map(
			(Object.keys(elements) as ViewName[]).map((name) => [
				// keys forgets the names
				name,
				{
					element: elements[name],
					button: pressed(document, name, () => this.turn(name)),
				},
			]),
		);
		this.bar = htmlElement(
			document,
			"nav",
			{ class: "views", "aria-label": "Views" },
			...[...this.#views.values()].map(({ button }) => button),
		);
		this.#show();
	}

	get name(): ViewName {
		return this.#name;
	}

	turn(name: ViewName): void {
		this.#name = name;
		this.#show();
		this.#turned(name);
	}

	#show(): void {
		for (const [name, { button, element }] of this.#views) {
			if (name === this.#name) this.place.replaceChildren(element);
			if (name === this.#name) button.setAttribute("aria-current", "page");
			else button.removeAttribute("aria-current");
		}
	}
}
