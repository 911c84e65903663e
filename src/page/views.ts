import { htmlElement } from "../report/html-element.ts";
import { pressed } from "./press.ts";

export type ViewName = "Day" | "Compare" | "Rehearse" | "Sources";

/** The views of the page, in one bar; one of them is shown. */
export class Views {
	readonly bar: HTMLElement;
	readonly #views: ReadonlyMap<
		ViewName,
		{ readonly button: HTMLButtonElement; readonly element: HTMLElement }
	>;
	readonly #turned: (name: ViewName) => void;
	#name: ViewName = "Day";

	constructor(
		document: Document,
		elements: { readonly [V in ViewName]: HTMLElement },
		turned: (name: ViewName) => void,
	) {
		this.#turned = turned;
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
			element.hidden = name !== this.#name;
			if (name === this.#name) button.setAttribute("aria-current", "page");
			else button.removeAttribute("aria-current");
		}
	}
}
