import { wardScenarioSchema } from "../scenario/index.ts";
import { Bench, type Change } from "./bench.ts";
import { Engine } from "./engine.ts";
import type { Frames } from "./frames.ts";
import type { History } from "./history.ts";
import type { Answer } from "./orders.ts";
import type { OwnData } from "./own-data.ts";
import { ScenarioPanel } from "./scenario-panel.ts";
import type { Shape } from "./shape.ts";
import { type Sheet, sameSheet } from "./sheet.ts";
import { StoresView } from "./stores-view.ts";

/** What the rest of the page does for the stores. */
export interface Surroundings {
	/** Address of the worker's text. */
	readonly address: string;
	readonly own: OwnData;
	readonly history: History;
	readonly keep: (history: History) => void;
	readonly told: (change: Change) => void;
	readonly name: (title: string) => void;
	readonly say: (words: string) => void;
	/** What lies on the bench has been run to its end, and is drawn when the frames are. */
	readonly settled: () => void;
}

/** The ward beside the day: a bench of its own, its form, its view, and a worker that runs it while other views are looked at. */
export class StoresRoom {
	readonly bench: Bench;
	readonly panel: ScenarioPanel;
	readonly view: StoresView;
	readonly #frames: Frames;
	readonly #of: Surroundings;
	#engine: Engine | null = null;
	#asked: Sheet | null = null;
	#isDone = false;
	#most = 0;
	#title = "Stores";
	#whole: string | null = null;

	constructor(
		document: Document,
		window: Window,
		frames: Frames,
		of: Surroundings,
	) {
		this.#frames = frames;
		this.#of = of;
		this.bench = new Bench(of.history, of.keep, of.told);
		this.panel = new ScenarioPanel(document, window, this.bench, {
			heading: "Ward",
			schema: wardScenarioSchema() as Shape, // JSON Schema, of which Shape is a part
		});
		this.view = new StoresView(document, frames);
	}

	/** The ward as a text that needs no other file, as far as it can be read. */
	get whole(): string {
		return this.#whole ?? this.bench.text;
	}

	/** Runs what lies on the bench, unless that has been done or is under way. */
	run(): void {
		this.#of.name(this.#title);
		const { sheet } = this.bench;
		if (this.#asked !== null && sameSheet(sheet, this.#asked)) {
			this.view.redraw();
			if (this.#isDone) this.#of.settled();
			return;
		}
		this.#asked = sheet;
		this.#isDone = false;
		this.#whole = null;
		this.view.begin();
		this.#engine ??= new Engine(this.#of.address, true);
		const { beside, version } = this.#of.own;
		this.#engine.ask(
			{ kind: "stores", sheet, carried: beside, version },
			(answer, last) => this.#hear(answer, last),
		);
	}

	#hear(answer: Answer, last: boolean): void {
		switch (answer.kind) {
			case "checked":
				this.#frames.plan("problems of the ward", () =>
					this.panel.complain(answer),
				);
				break;
			case "progress":
				this.#most = answer.of;
				this.view.progress(answer.done, answer.of);
				break;
			case "stores":
				this.#title = answer.result.scenario.title;
				this.#whole = answer.whole;
				this.#of.name(this.#title);
				this.view.show(answer.result, last ? null : this.#most);
				break;
			case "nothing":
				this.view.stop();
				break;
			case "fault":
				this.view.stop();
				this.#of.say(answer.words);
				break;
			default:
				break;
		}
		if (!last) return;
		this.#isDone = true;
		this.#of.settled();
	}
}
