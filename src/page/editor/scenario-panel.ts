import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { type Problem, sentence } from "../../scenario/index.ts";
import { pressed } from "../kit/controls.ts";
import type { Bench, Findings } from "./bench.ts";
import { scenarioForm } from "./form.ts";
import { dataOf } from "./scenario-text.ts";
import type { Shape } from "./shape.ts";

export type ScenarioPanel = ReturnType<typeof scenarioPanel>;

/** A pause in typing after which the text is taken, ms. */
const pauseMs = 400;

/** The scenario on the bench, as a form or as text, with everything that is wrong with it. */
export function scenarioPanel(html: HtmlMaker, window: Window, heading: string, schema: Shape, bench: Bench) {
	let found: Findings | null = null;
	/** Whether something is still drawn where there are problems. */
	let isDrawn = true;
	let typing: number | undefined;

	const form = scenarioForm(html, schema, (keys, value, reshapes) => {
		bench.set(keys, value, reshapes ? "else" : "form");
	});
	const text = html("textarea", {
		id: "scenario-text",
		class: "source",
		spellcheck: "false",
		autocomplete: "off",
		rows: "32",
		"aria-label": "The scenario as text, YAML or JSON",
		"aria-describedby": "problems",
	});
	const take = () => {
		window.clearTimeout(typing);
		if (text.value !== bench.text) bench.replace(text.value);
	};
	text.addEventListener("input", () => {
		window.clearTimeout(typing);
		typing = window.setTimeout(take, pauseMs);
	});
	text.addEventListener("change", take);
	const problemList = html("div", { class: "problems", id: "problems", role: "status" });
	const noForm = "The text cannot be read as YAML or JSON, so there is no form to show. Mend it as text.";
	const unreadable = html("p", { class: "help" }, noForm);
	const asForm = pressed(html, "As a form", () => turn(false));
	const asText = pressed(html, "As text", () => turn(true));
	const how = html("div", { class: "bar", role: "group", "aria-label": "How the scenario is shown" }, asForm, asText);

	/** Shows the text that lies on the bench; `anew` where the form does not know of it yet. */
	function show(anew: boolean): void {
		if (text.value !== bench.text) text.value = bench.text;
		if (!anew) return;
		const data = dataOf(bench.text);
		const readable = typeof data === "object" && data !== null;
		unreadable.hidden = readable || !text.hidden;
		form.element.hidden = !readable || !text.hidden;
		if (readable) form.show(data);
		if (found !== null) write(found);
	}

	function write({ problems, notes }: Findings): void {
		const homeless = new Set(form.complain(problems));
		const item = (problem: Problem) =>
			html("li", homeless.has(problem) ? { class: "homeless" } : {}, sentence(problem));
		const count = problems.length === 1 ? "One problem" : `${problems.length} problems`;
		const drawn = isDrawn
			? "What is drawn is the last scenario without any."
			: "Nothing is drawn until they are mended.";
		const list = [
			html("p", { class: "wrong" }, `${count}. ${drawn}`),
			html("ul", { class: "plain" }, ...problems.map(item)),
		];
		problemList.replaceChildren(
			...(problems.length === 0 ? [] : list),
			...notes.map((note) => html("p", { class: "help" }, `Note: ${note}`)),
		);
	}

	function turn(toText: boolean): void {
		asForm.setAttribute("aria-pressed", String(!toText));
		asText.setAttribute("aria-pressed", String(toText));
		text.hidden = !toText;
		show(true);
	}
	turn(false);

	return {
		element: html(
			"section",
			{ class: "scenario", "aria-labelledby": "scenario-heading" },
			html("h2", { id: "scenario-heading" }, heading),
			how,
			problemList,
			unreadable,
			form.element,
			text,
		),
		show,
		/** Says everything that is wrong, here and beside the fields. */
		complain(findings: Findings, drawn = true): void {
			found = findings;
			isDrawn = drawn;
			write(findings);
		},
	};
}
