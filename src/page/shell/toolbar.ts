import type { HtmlMaker } from "../../report/kit/html-element.ts";
import type { Bench } from "../editor/bench.ts";
import { scenarioLink } from "../editor/scenario-link.ts";
import { fileStem, linkField, pressed, saveButton } from "../kit/controls.ts";
import { type Opening, readFiles } from "./open-files.ts";

/** Opening, saving, undoing, and a link to what lies on the bench. */
export function toolbar(
	html: HtmlMaker,
	of: {
		/** The bench that is looked at. */
		bench(): Bench;
		readonly opening: Opening;
		/** Puts the scenario of the file on the bench again. */
		again(): void;
		/** What a link carries: it needs no other file. */
		linked(): string;
		/** The page's own address, to which it is added. */
		address(): string;
		title(): string;
	},
) {
	const file = html("input", {
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
	const fileName = () => `${fileStem(of.title())}.${/^\s*\{/u.test(of.bench().text) ? "json" : "yaml"}`;
	const undo = pressed(html, "Undo", () => of.bench().undo(), { "aria-keyshortcuts": "Control+Z" });
	const redo = pressed(html, "Redo", () => of.bench().redo(), { "aria-keyshortcuts": "Control+Y" });
	const link = linkField(html, "Link to this scenario", 2);
	html.document.addEventListener("keydown", (event) => {
		const { target } = event;
		// In a field the browser's own undo is meant.
		if (target instanceof HTMLElement && target.matches("textarea,input:not([type=range]),select")) return;
		if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
		const key = event.key.toLowerCase();
		if (key !== "z" && key !== "y") return;
		event.preventDefault();
		if (key === "y" || event.shiftKey) of.bench().redo();
		else of.bench().undo();
	});
	return {
		element: html(
			"div",
			{ class: "bar tools", role: "group", "aria-label": "Scenario file" },
			pressed(html, "Open a file", () => file.click()),
			file,
			saveButton(html, "Save as a file", fileName, () => of.bench().text),
			undo,
			redo,
			pressed(html, "Make a link", () => {
				void scenarioLink(of.linked()).then((fragment) => link.show(`${of.address()}${fragment}`));
			}),
			pressed(html, "Begin again", () => of.again()),
			link.element,
		),
		/** Says whether there is anything to undo; a link is to what was on the bench before. */
		show(): void {
			undo.disabled = !of.bench().canUndo;
			redo.disabled = !of.bench().canRedo;
			link.hide();
		},
	};
}
