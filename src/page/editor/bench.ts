import type { Problem } from "../../scenario/index.ts";
import type { Keys } from "../../scenario/reading/problem.ts";
import type { Beside, History, Sheet } from "./history.ts";
import { canRedo, canUndo, changed, present, redone, sameSheet, undone } from "./history.ts";
import { withValue } from "./scenario-text.ts";

/** What came of the scenario on the bench. */
export interface Findings {
	readonly problems: readonly Problem[];
	readonly notes: readonly string[];
	readonly rehearsed: boolean;
	/** Names of the regimens under `compare:`. */
	readonly regimens: readonly string[];
}

/** Who else wants to know: `text` where it became another one (by whom: the form, or anything else), `steady` where no drag is under way. */
export interface Change {
	readonly by: "form" | "else";
	readonly steady: boolean;
	/** Another text was laid here, perhaps of another patient: a file, a link, a step back. */
	readonly laid: boolean;
}

/** The scenario that lies on the bench: its text, what it has been before, and who is told of a change. */
export class Bench {
	#history: History;
	/** The text while something is dragged; null where nothing is. */
	#dragged: string | null = null;
	readonly #tell: (change: Change) => void;
	readonly #keep: (history: History) => void;

	constructor(history: History, keep: (history: History) => void, tell: (change: Change) => void) {
		this.#history = history;
		this.#keep = keep;
		this.#tell = tell;
	}

	get text(): string {
		return this.#dragged ?? present(this.#history).text;
	}
	/** The files that it names. */
	get beside(): Beside {
		return present(this.#history).beside;
	}
	get sheet(): Sheet {
		return { text: this.text, beside: this.beside };
	}
	get canUndo(): boolean {
		return canUndo(this.#history);
	}
	get canRedo(): boolean {
		return canRedo(this.#history);
	}

	/** Puts another text on the bench; other files beside it too, where they are given. */
	replace(text: string, by: Change["by"] = "else", beside: Beside = this.beside): void {
		this.#put({ text, beside }, by, false);
	}

	/** Lays another text on the bench, perhaps of another patient; other files beside it too, where they are given. */
	lay(text: string, beside: Beside = this.beside): void {
		this.#put({ text, beside }, "else", true);
	}

	#put(sheet: Sheet, by: Change["by"], laid: boolean): void {
		if (sameSheet(sheet, this.sheet) && this.#dragged === null) return;
		this.#step(changed(this.#history, sheet), by, laid);
	}

	/** Sets a value in the text, or takes it out; a text that cannot be read is left alone. */
	set(keys: Keys, value: unknown, by: Change["by"] = "form"): void {
		const text = withValue(this.text, keys, value);
		if (text !== null) this.replace(text, by);
	}

	/** Sets a value while something is dragged: not yet a step that can be undone. */
	drag(keys: Keys, value: unknown): void {
		const text = withValue(this.text, keys, value);
		if (text === null || text === this.text) return;
		this.#dragged = text;
		this.#tell({ by: "else", steady: false, laid: false });
	}

	/** The drag is over, and a step. */
	drop(): void {
		if (this.#dragged !== null) this.replace(this.#dragged);
	}

	undo(): void {
		this.#step(undone(this.#history));
	}
	redo(): void {
		this.#step(redone(this.#history));
	}

	#step(history: History, by: Change["by"] = "else", laid = true): void {
		this.#dragged = null;
		this.#history = history;
		this.#keep(history);
		this.#tell({ by, steady: true, laid });
	}
}
