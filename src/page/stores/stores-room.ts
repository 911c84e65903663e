import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { wardScenarioSchema } from "../../scenario/index.ts";
import { Bench } from "../editor/bench.ts";
import { historyOf, type Sheet, sameSheet } from "../editor/history.ts";
import { scenarioPanel } from "../editor/scenario-panel.ts";
import type { Shape } from "../editor/shape.ts";
import type { Room, Surroundings } from "../shell/room.ts";
import { Engine } from "../worker/engine.ts";
import type { Answer } from "../worker/orders.ts";
import { storesView } from "./stores-view.ts";

/** The ward beside the day: a bench of its own, its form, its view, and a worker that runs it while other views are looked at. */
export function storesRoom(html: HtmlMaker, of: Surroundings): Room & { readonly element: HTMLElement } {
	const { own, keep, frames } = of;
	let engine: Engine | null = null;
	let asked: Sheet | null = null;
	let isDone = false;
	/** Replications that there will be. */
	let most = 0;
	let title = "Stores";
	let whole: string | null = null;

	const bench: Bench = new Bench(
		keep.load() ?? historyOf({ text: own.ward, beside: own.beside }),
		keep.save,
		(change) => of.told(room, change),
	);
	const schema = wardScenarioSchema() as Shape; // JSON Schema, of which Shape is a part
	const panel = scenarioPanel(html, of.window, "Ward", schema, bench);
	const view = storesView(html, frames);

	/** What lies on the bench has been run to its end, and is drawn when the frames are. */
	const settle = () => {
		if (of.view() === "Stores") of.sign.settle(() => {});
	};

	function hear(answer: Answer, last: boolean): void {
		switch (answer.kind) {
			case "checked":
				frames.plan("problems of the ward", () => panel.complain(answer));
				break;
			case "progress":
				most = answer.of;
				view.progress(answer.done, answer.of);
				break;
			case "stores":
				title = answer.result.scenario.title;
				whole = answer.whole;
				if (of.view() === "Stores") of.named();
				view.show(answer.result, last ? null : most);
				break;
			case "nothing":
				view.stop();
				break;
			case "fault":
				view.stop();
				of.say(answer.words);
		}
		if (!last) return;
		isDone = true;
		settle();
	}

	const room = {
		element: view.element,
		bench,
		panel,
		title: () => title,
		whole: () => whole ?? bench.text,
		again: () => bench.lay(own.ward, own.beside),
		/** Nothing is run that has been run or is under way. */
		run(): void {
			of.sign.mark("");
			of.named();
			const { sheet } = bench;
			if (asked !== null && sameSheet(sheet, asked)) {
				view.redraw();
				if (isDone) settle();
				return;
			}
			asked = sheet;
			isDone = false;
			whole = null;
			view.begin();
			engine ??= new Engine(of.address, true);
			engine.ask({ kind: "stores", sheet, carried: own.beside, version: own.version }, hear);
		},
		redraw: view.redraw,
	};
	return room;
}
