import type { ScriptStep, Answer as Told } from "../../rehearsal/index.ts";
import { debriefSections } from "../../report/debrief/debrief-html.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { debriefJson } from "../../results/debrief.ts";
import type { Debrief } from "../../results/index.ts";
import type { Revealed } from "../../vocabulary/index.ts";
import { depthWords, phaseWords } from "../../words/index.ts";
import { pressed, saveButton } from "../kit/controls.ts";
import type { Engine } from "../worker/engine.ts";
import type { Answer, Handed, Start } from "../worker/orders.ts";
import { paceOf } from "./pace.ts";
import { shiftParts } from "./shift-parts.ts";
import { shiftStage } from "./shift-stage.ts";

/**
 * A shift as it is rehearsed, from its beginning to its debrief. `turned` is told of a case that is shown, and of one that
 * is left.
 */
export function rehearseView(html: HtmlMaker, window: Window, engine: Engine, turned: (begun: boolean) => void) {
	let handed: Handed | null = null;
	let start: Start | null = null;
	let stage: ReturnType<typeof shiftStage> | null = null;
	/** Steps that wait for the one before them. */
	let steps: ScriptStep[] = [];
	let busy = false;
	let over = true;
	const parts = shiftParts(html);
	const element = html("div", { class: "rehearsal", hidden: "" });
	const pace = paceOf(window, (minutes) => {
		if (busy) return false;
		take({ do: "wait", minutes });
		return true;
	});

	function setPace(times: number): void {
		pace.set(over ? 0 : times);
		stage?.showPace(pace.times());
	}

	function put(shown: HTMLElement): void {
		element.replaceChildren(shown);
		element.hidden = false;
	}

	/** Begins a case; `refused` is told in words where that cannot be done, and a shift that is under way goes on then. */
	function begin(given: Handed, known: readonly Revealed[], refused: (words: string) => void): void {
		setPace(0);
		busy = true;
		engine.ask({ kind: "rehearse", handed: given, known }, (answer) => {
			busy = false;
			if (answer.kind === "begun") {
				handed = { ...given, seed: answer.start.seed };
				steps = [];
				begun(answer.start);
			} else if (answer.kind === "fault") refused(answer.words);
			else if (answer.kind === "checked" && answer.problems.length > 0)
				refused(`The case has ${answer.problems.length} problems; put it on the bench to see them.`);
			takeNext();
		});
	}

	function begun(now: Start): void {
		over = false;
		start = now;
		parts.begin();
		stage = shiftStage(html, now, parts, { setPace, take, end: debrief });
		put(stage.element);
		parts.show(now.view);
		parts.draw(now, now.view, now.soFar);
		turned(true);
		stage.heading.focus();
	}

	/** Takes a step, or remembers it until the one before has been answered. */
	function take(step: ScriptStep): void {
		if (over) return;
		if (busy) {
			steps.push(step);
			return;
		}
		busy = true;
		engine.ask({ kind: "step", step }, (answer) => {
			busy = false;
			if (answer.kind === "answered") {
				answered(step, answer.answer);
				if (start !== null && !over) parts.draw(start, answer.answer.view, answer.soFar);
			} else failed(answer);
			takeNext();
		});
	}

	function takeNext(): void {
		const next = busy ? undefined : steps.shift();
		if (next !== undefined) take(next);
	}

	function answered(step: ScriptStep, { words, meanwhile, view }: Told): void {
		const asked = step.do === "look" || step.do === "act";
		parts.tell([...meanwhile, ...(asked || view.over ? [{ atMin: view.atMin, clock: view.clock, words }] : [])]);
		// At a pace the time would be said without end.
		parts.passed.textContent =
			step.do === "wait" && pace.times() === 0
				? `Now ${view.clock}: ${phaseWords[view.phase]}, ${depthWords(-view.depthMmHg)}.`
				: "";
		parts.show(view);
		if (view.over) debrief();
	}

	function failed(answer: Answer): void {
		if (answer.kind === "fault") parts.alarm.textContent = answer.words;
	}

	function debrief(): void {
		if (over) return;
		over = true;
		steps = [];
		setPace(0);
		engine.ask({ kind: "debrief" }, (answer) => {
			if (answer.kind === "debriefed") debriefed(answer.debrief);
			else failed(answer);
		});
	}

	function debriefed(found: Debrief): void {
		const heading = html("h2", { tabindex: "-1" }, found.case.title);
		const bar = html(
			"div",
			{ class: "bar" },
			pressed(html, "Run the same case again", () => {
				if (handed !== null) begin(handed, ["run-again"], () => {});
			}),
			pressed(html, "Choose another case", () => {
				element.hidden = true;
				turned(false);
			}),
			saveButton(html, "Save the debrief (debrief.json)", "debrief.json", () => debriefJson(found)),
		);
		const seed = html("p", { class: "facts" }, `Seed ${found.case.seed}.`);
		const all = html("details", {}, html("summary", {}, "All that happened in the shift"), parts.log);
		put(html("div", {}, heading, seed, bar, all, debriefSections(html, found)));
		heading.focus();
	}

	return {
		element,
		/** Title of the case that is shown, in its shift or its debrief; null: none. */
		title: () => (element.hidden ? null : (start?.title ?? null)),
		/** A shift is being rehearsed. */
		underWay: () => !over,
		begin,
	};
}
