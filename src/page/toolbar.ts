import { htmlElement } from "../report/html-element.ts";
import type { Bench } from "./bench.ts";
import { type Opening, readFiles } from "./open-files.ts";
import { pressed } from "./press.ts";
import { fileStem, saveFile } from "./save-file.ts";
import { scenarioLink } from "./scenario-link.ts";

/** Opening, saving, undoing, and a link to what lies on the bench. */
export class Toolbar {
	readonly element: HTMLElement;
	readonly #bench: () => Bench;
	readonly #undo: HTMLButtonElement;
	readonly #redo: HTMLButtonElement;
	readonly #link: HTMLTextAreaElement;

	constructor(
		document: Document,
		/** The bench that is looked at. */
		bench: () => Bench,
		of: {
			readonly opening: Opening;
			/** Puts the scenario of the file on the bench again. */
			readonly again: () => void;
			/** What a link carries: it needs no other file. */
			readonly linked: () => string;
			readonly address: () => string;
			readonly title: () => string;
		},
	) {
		this.#bench = bench;
		const file = htmlElement(document, "input", {
			type: "file",
			accept: ".yaml,.yml,.json",
			"aria-label": "Scenario files",
			multiple: "",
			hidden: "",
		});
		file.addEventListener("change", () => {
			void readFiles([...(file.files ?? [])], of.opening).then(() => {
				file.value = "";
			});
		});
		this.#link = htmlElement(document, "textarea", {
			class: "link",
			readonly: "",
			rows: "2",
			"aria-label": "Link to this scenario",
			hidden: "",
		});
		this.#undo = pressed(document, "Undo", () => bench().undo(), {
			"aria-keyshortcuts": "Control+Z",
		});
		this.#redo = pressed(document, "Redo", () => bench().redo(), {
			"aria-keyshortcuts": "Control+Y",
		});
		this.element = htmlElement(
			document,
			"div",
			{ class: "bar tools", role: "group", "aria-label": "Scenario file" },
			pressed(document, "Open a file", () => file.click()),
			file,
			pressed(document, "Save as a file", () => {
				const { text } = bench();
				const json = /^\s*\{/u.test(text);
				saveFile(
					document,
					`${fileStem(of.title())}.${json ? "json" : "yaml"}`,
					text,
				);
			}),
			this.#undo,
			this.#redo,
			pressed(document, "Make a link", () => {
				void scenarioLink(of.linked()).then((fragment) => {
					this.#link.hidden = false;
					this.#link.value = `${of.address()}${fragment}`;
					this.#link.focus();
					this.#link.select();
				});
			}),
			pressed(document, "Begin again", () => of.again()),
			this.#link,
		);
		document.addEventListener("keydown", (event) => {
			const { target } = event;
			// In a field the browser's own undo is meant.
			if (
				target instanceof HTMLElement &&
				target.matches("textarea,input:not([type=range]),select")
			)
				return;
			if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
			const key = event.key.toLowerCase();
			if (key !== "z" && key !== "y") return;
			event.preventDefault();
			if (key === "y" || event.shiftKey) bench().redo();
			else bench().undo();
		});
	}

	/** Says whether there is anything to undo; a link is to what was on the bench before. */
	show(): void {
		this.#undo.disabled = !this.#bench().canUndo;
		this.#redo.disabled = !this.#bench().canRedo;
		this.#link.hidden = true;
	}
}
