import type { Bench, Change } from "../editor/bench.ts";
import type { ScenarioPanel } from "../editor/scenario-panel.ts";
import type { Frames } from "../kit/frames.ts";
import type { Keep } from "./keep.ts";
import type { OwnData } from "./own-data.ts";
import type { StateSign } from "./state-sign.ts";
import type { ViewName } from "./views.ts";

/** A scenario on its bench, the form that it is edited in, and what shows it. */
export interface Room {
	readonly bench: Bench;
	readonly panel: ScenarioPanel;
	/** What the page is called while it is looked at. */
	title(): string;
	/** Its text as far as it can be read, in need of no other file. */
	whole(): string;
	/** Puts the scenario of the page's file on the bench again. */
	again(): void;
	/** Runs what lies on the bench, and shows it; `steady`: nothing is being dragged. */
	run(steady: boolean): void;
	/** Draws it again, in the width that there is now. */
	redraw(): void;
}

/** What the rest of the page does for a room. */
export interface Surroundings {
	readonly window: Window;
	readonly frames: Frames;
	/** Address of the worker's text. */
	readonly address: string;
	readonly own: OwnData;
	readonly keep: Keep;
	readonly sign: StateSign;
	/** The view that is looked at. */
	view(): ViewName;
	told(room: Room, change: Change): void;
	/** Its title may be another one now. */
	named(): void;
	say(words: string): void;
}
