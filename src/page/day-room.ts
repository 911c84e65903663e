import type { HtmlMaker } from "../report/kit/html-element.ts";
import { dayScenarioSchema } from "../scenario/index.ts";
import { compareView } from "./compare/compare-view.ts";
import { dayView } from "./day/day-view.ts";
import { sourcesView } from "./day/sources-view.ts";
import { Bench, type Findings } from "./editor/bench.ts";
import { historyOf, sheetOf } from "./editor/history.ts";
import { scenarioPanel } from "./editor/scenario-panel.ts";
import { dataOf } from "./editor/scenario-text.ts";
import type { Shape } from "./editor/shape.ts";
import type { Room, Surroundings } from "./shell/room.ts";
import type { ViewName } from "./shell/views.ts";
import { Engine } from "./worker/engine.ts";
import type { Answer, Order } from "./worker/orders.ts";

/** Replications at the most while something is dragged. */
const draggedReplications = 400;

/** The day's scenario on its bench, and the views that show it: the day, a comparison of two regimens, the sources. */
export function dayRoom(html: HtmlMaker, of: Surroundings & { checked(findings: Findings): void }) {
	const { own, keep, frames, sign } = of;
	const { version } = own;
	let findings: Findings = { problems: [], notes: [], rehearsed: false, regimens: [] };
	/** Whether the scenario on the bench is another one than was shown, and cannot be run. */
	let isBlank = false;
	let title = "";
	/** Another text was laid on the bench, and has not been run yet. */
	let laid = false;
	/** The text that each view was last drawn of. */
	const shownText = new Map<ViewName, string>();

	const bench: Bench = new Bench(keep.load() ?? historyOf(sheetOf(own.scenario)), keep.save, (change) => {
		if (change.laid) laid = true;
		of.told(room, change);
	});
	const schema = dayScenarioSchema() as Shape; // JSON Schema, of which Shape is a part
	const panel = scenarioPanel(html, of.window, "Scenario", schema, bench);
	const engine = new Engine(of.address);
	const ask = (order: Order, steady: boolean, done: (answer: Answer) => void = () => {}) =>
		engine.ask(order, (answer, last) => {
			if (last) done(answer);
			take(answer, steady);
			if (last && steady && of.view() !== "Stores") sign.settle(settled);
		});

	const day = dayView(html, frames, {
		drag: ({ dressing, regimen, setting, written }) => {
			const data = dataOf(bench.text) as { dressings?: { regimen?: unknown }[] } | null; // looked at, not trusted
			const isList = Array.isArray(data?.dressings?.[dressing]?.regimen);
			bench.drag(["dressings", dressing, "regimen", ...(isList ? [regimen] : []), setting], written);
		},
		drop: () => bench.drop(),
	});
	const compare = compareView(html, frames, {
		drag: (name, setting, written) => bench.drag(["compare", name, setting], written),
		drop: () => bench.drop(),
		chosen: () => {
			sign.ask();
			run(true);
		},
		tryRestsOn: (between) => {
			sign.ask();
			ask({ kind: "rests-on", text: bench.text, between }, true, ({ kind }) => {
				if (kind !== "rests-on") compare.untried();
			});
		},
		begin: () => {
			const data = dataOf(bench.text) as { compare?: object } | null; // looked at, not trusted
			const known = findings.regimens.length > 0 ? (data?.compare ?? {}) : { now: {} };
			bench.set(["compare"], { ...known, other: {} }, "else");
		},
	});
	const sources = sourcesView(html);

	function run(steady: boolean): void {
		const most = steady ? null : draggedReplications;
		const { text } = bench;
		const view = of.view();
		const known = shownText.get(view);
		if (view === "Rehearse") sign.mark("");
		else if (known === undefined) sign.mark("first");
		else if (known !== text) sign.mark("working");
		if (view !== "Compare") ask({ kind: "day", text, most, version }, steady);
		else {
			const between = steady ? null : compare.between(findings.regimens);
			ask({ kind: "compare", text, most, version, between }, steady);
		}
	}

	const isFaulty = () => findings.problems.length > 0;

	function settled(): void {
		const view = of.view();
		if (view === "Stores") return;
		if (!isFaulty()) shownText.set(view, bench.text);
		sign.mark(isFaulty() && !isBlank && view !== "Rehearse" ? "before" : "");
	}

	function named(words: string): void {
		title = words;
		of.named();
	}

	/** Nothing of what lay here before stands beside another scenario that cannot be run. */
	function blankWhereFaulty(): void {
		const now = (dataOf(bench.text) as { title?: unknown } | null)?.title; // looked at, not trusted
		const other = typeof now === "string" && now !== title;
		if (!isFaulty()) {
			laid = false;
			isBlank = false;
		} else if (laid || other || isBlank) {
			isBlank = true;
			for (const view of [day, compare, sources]) view.blank();
			named("A scenario with problems");
		}
	}

	function take(answer: Answer, steady: boolean): void {
		switch (answer.kind) {
			case "checked":
				findings = answer;
				blankWhereFaulty();
				if (steady) frames.plan("problems", () => panel.complain(answer, !isBlank));
				of.checked(answer);
				if (of.view() === "Compare" && !isBlank) compare.between(answer.regimens);
				return;
			case "traced":
				named(answer.day.scenario.title);
				day.show(answer.day, steady);
				return;
			case "day":
				named(answer.result.scenario.title);
				if (of.view() === "Day") day.show(answer.result, steady);
				if (of.view() === "Sources") sources.show(answer.result);
				return;
			case "compare":
				named(answer.result.scenario.title);
				compare.show(answer, steady);
				return;
			case "progress":
				compare.tried(answer.done, answer.of);
				return;
			case "rests-on":
				compare.showRestsOn(answer.restsOn);
				return;
			case "fault":
				of.say(answer.words);
		}
	}

	const room: Room = {
		bench,
		panel,
		title: () => title,
		whole: () => bench.text,
		again: () => bench.lay(own.scenario),
		run,
		redraw: () => {
			day.redraw();
			compare.redraw();
		},
	};
	return { room, day: day.element, compare: compare.element, sources: sources.element };
}
