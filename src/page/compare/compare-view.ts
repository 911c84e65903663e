import { silenceSection } from "../../report/compare/compare-sheet.ts";
import { differenceSections } from "../../report/compare/difference-section.ts";
import { type Pair, pairBetween } from "../../report/compare/pairs/pairs.ts";
import { questionOf } from "../../report/compare/regimen-words.ts";
import { type HtmlMaker, unbroken } from "../../report/kit/html-element.ts";
import { compareJson } from "../../results/compare.ts";
import type { CompareResult, RestsOn, TracedDayResult } from "../../results/index.ts";
import { counted, roundShare, spanWords } from "../../words/index.ts";
import { type DrawnLine, waterLines } from "../day/water-lines.ts";
import { emptyNote, headed, labelled, options, pressed, saveButton } from "../kit/controls.ts";
import type { Frames } from "../kit/frames.ts";
import type { Between } from "../worker/orders.ts";
import { regimenSides, type SideTurns } from "./regimen-sides.ts";
import { restsOnPart } from "./rests-on-part.ts";

/** What the reader does with a comparison. */
interface ComparisonTurns extends SideTurns {
	/** The scenario has fewer than two regimens, and is to have two. */
	begin(): void;
	/** What the differences between two regimens rest on is to be tried. */
	tryRestsOn(between: Between): void;
}

interface Shown {
	readonly result: CompareResult;
	readonly days: readonly TracedDayResult[];
}

/** Two regimens of one scenario, one water line above the other on one axis, and what they differ in. */
export function compareView(html: HtmlMaker, frames: Frames, turns: ComparisonTurns) {
	let shown: Shown | null = null;
	/** The result with all its replications, to be handed out. */
	let whole: CompareResult | null = null;
	/** What the differences shown rest on; null until it is tried. */
	let tried: RestsOn | null = null;

	const sides = regimenSides(html, turns);
	const heading = html("h2", { id: "compare-heading" });
	const facts = html("p", { class: "facts" });
	const select = html("select", { id: "compare-dressing" });
	select.addEventListener("change", () => redraw());
	const which = labelled(html, "which", "Dressing", select);
	const figures = html("div", { class: "lines" });
	const differences = html("div", { class: "differences" });
	const restsOn = restsOnPart(html, () => turns.tryRestsOn(sides.pair()));
	const save = saveButton(html, "Save these numbers (compare.json)", "compare.json", () => whole && compareJson(whole));
	const lines = waterLines(html, frames, { id: "compare-cursor", place: figures, count: 2, line: lineOf });
	const tooFew =
		"This scenario names fewer than two regimens under compare:. Set the one it has against another, then move the sliders of either.";
	const begin = pressed(html, "Set it against another regimen", () => turns.begin());
	const empty = html("div", {}, html("h2", {}, "Nothing to compare yet"), html("p", {}, tooFew), begin);
	const filled = html(
		"div",
		{ hidden: "" },
		heading,
		facts,
		sides.element,
		headed(html, "lines-heading", "The same day under each", which, figures, lines.cursor),
		differences,
		restsOn.element,
		html("p", {}, save),
	);
	const faulty = emptyNote(html);

	function lineOf(side: number): DrawnLine | null {
		const [own, other] = [dayOf(side), dayOf(1 - side)];
		if (own === null || shown === null) return null;
		const title = sides.pair()[side] ?? "";
		const idPrefix = `line-of-${side}`;
		const { scenario } = shown.result;
		const beside = other === null ? [] : [other];
		const data = { title, clock: scenario, ...own, replications: 1, roundShare: roundShare(shown.result), beside };
		return { place: placeOf(idPrefix, title), idPrefix, heading: title, data };
	}

	/** The drawn day of the dressing that is looked at, under one of the two regimens. */
	function dayOf(side: number) {
		const place = shown?.result.regimens.findIndex(({ name }) => name === sides.pair()[side]) ?? -1;
		const traced = shown?.days[place];
		const at = Math.max(0, traced?.scenario.dressings.findIndex(({ id }) => id === select.value) ?? 0);
		const [day, dressing] = [traced?.dressings[at], traced?.scenario.dressings[at]];
		return day === undefined || dressing === undefined ? null : { day, dressing };
	}

	/** Where a line is drawn, under its name; made when it is first needed. */
	function placeOf(id: string, name: string): HTMLElement {
		const headingId = `${id}-heading`;
		const known = figures.querySelector<HTMLElement>(`#${id}`);
		const place =
			known ??
			html("div", {
				class: "scroll chart",
				role: "region",
				tabindex: "0",
				id,
				"aria-labelledby": `${headingId} lines-heading`,
			});
		if (known === null) figures.append(html("h4", { id: headingId }), place);
		if (place.previousElementSibling !== null) place.previousElementSibling.textContent = name;
		return place;
	}

	/** The pair that is looked at, in the order in which it was chosen. */
	const compared = (): Pair | undefined =>
		shown === null ? undefined : pairBetween({ ...shown.result, restsOn: tried }, ...sides.pair());

	function writeDifferences(): void {
		const pair = compared();
		if (shown === null || pair === undefined) return;
		const { result } = shown;
		const { scenario } = result;
		const regimens = [pair.a, pair.b].flatMap((name) => result.regimens.filter((regimen) => regimen.name === name));
		heading.textContent = unbroken(questionOf({ ...result, regimens }));
		facts.textContent = unbroken(
			`${spanWords(scenario)} ${counted(result.replications, "replication")}, chance ${scenario.chance}, the same patients under each. Seed ${scenario.seed}.`,
		);
		sides.describe(result, regimens);
		differences.replaceChildren(...differenceSections(html, [{ ...pair, index: 0 }]), silenceSection(html, result));
	}

	function redraw(): void {
		if (shown === null) return;
		lines.plan();
		frames.plan("differences", writeDifferences);
	}

	return {
		element: html("div", { class: "compare" }, faulty, empty, filled),
		/** The two regimens that are looked at, among those that there are; null where there are fewer than two. */
		between(names: readonly string[]): Between | null {
			faulty.hidden = true;
			empty.hidden = names.length >= 2;
			filled.hidden = names.length < 2;
			return names.length < 2 ? null : sides.among(names);
		},
		/** Forgets what was shown: another scenario lies on the bench, and it cannot be run. */
		blank(): void {
			shown = null;
			whole = null;
			save.disabled = true;
			for (const part of [heading, facts, figures, differences]) part.replaceChildren();
			restsOn.clear();
			lines.clear();
			empty.hidden = true;
			filled.hidden = true;
			faulty.hidden = false;
		},
		/** Shows what two regimens, or all of them, came to. `steady`: nothing is being dragged. */
		show(now: Shown, steady: boolean): void {
			shown = now;
			tried = null;
			restsOn.clear();
			whole = steady ? now.result : null;
			save.disabled = !steady;
			if (steady) {
				sides.show(now.result);
				const ids = now.result.scenario.dressings.map(({ id }) => id);
				const was = select.value;
				select.replaceChildren(...options(html, ids));
				if (ids.includes(was)) select.value = was;
				which.hidden = ids.length < 2;
			}
			redraw();
		},
		redraw,
		/** How many assumptions have been tried. */
		tried: restsOn.progress,
		/** It could not be tried; it may be asked for again. */
		untried: restsOn.clear,
		/** Shows what the differences of the two regimens rest on. */
		showRestsOn(found: RestsOn): void {
			tried = found;
			const pair = compared();
			if (pair === undefined) return;
			restsOn.show(found, pair);
			frames.plan("differences", writeDifferences);
		},
	};
}
