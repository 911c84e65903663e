// Longer than most: the elements of one view and what moves them belong together, and each is used by the others.

import type {
	CompareResult,
	RestsOn,
	TracedDayResult,
} from "../analysis/index.ts";
import { counted, waterLineChart } from "../charts/index.ts";
import { compareJson } from "../report/compare-json.ts";
import { type Pair, pairBetween } from "../report/compare-parts.ts";
import { questionOf } from "../report/compare-question.ts";
import { differenceSections } from "../report/difference-section.ts";
import { htmlElement, unbroken } from "../report/html-element.ts";
import { joinedWords } from "../report/joined-words.ts";
import { regimenLines } from "../report/regimen-lines.ts";
import { roundShare } from "../report/round-share.ts";
import { silenceSection } from "../report/silence-section.ts";
import { spanWords } from "../report/span-words.ts";
import { chartWidth } from "./chart-width.ts";
import { Cursor } from "./cursor.ts";
import { emptyNote } from "./empty-note.ts";
import type { Frames } from "./frames.ts";
import { lensAround } from "./lens-around.ts";
import { pressed } from "./press.ts";
import { readingsAt } from "./reading.ts";
import { RestsOnPart } from "./rests-on-part.ts";
import { saveFile } from "./save-file.ts";
import { type SettingName, Sliders } from "./sliders.ts";

/** What the reader does with a comparison. */
export interface ComparisonTurns {
	drag(regimen: string, setting: SettingName, written: string): void;
	drop(): void;
	/** Another pair was chosen. */
	chosen(): void;
	/** The scenario has fewer than two regimens, and is to have two. */
	begin(): void;
	/** What the differences between two regimens rest on is to be tried. */
	tryRestsOn(between: readonly [string, string]): void;
}

interface Shown {
	readonly result: CompareResult;
	readonly days: readonly TracedDayResult[];
}

/** Two regimens of one scenario, one water line above the other on one axis, and what they differ in. */
export class CompareView {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #frames: Frames;
	readonly #faulty: HTMLElement;
	readonly #empty: HTMLElement;
	readonly #filled: HTMLElement;
	readonly #heading: HTMLElement;
	readonly #facts: HTMLElement;
	readonly #selects: readonly [HTMLSelectElement, HTMLSelectElement];
	readonly #sliders: readonly [Sliders, Sliders];
	readonly #settings: readonly [HTMLElement, HTMLElement];
	readonly #dressing: HTMLSelectElement;
	readonly #lines: HTMLElement;
	readonly #differences: HTMLElement;
	readonly #cursor: Cursor;
	readonly #restsOn: RestsOnPart;
	readonly #save: HTMLButtonElement;
	#pair: readonly [string, string] = ["", ""];
	#shown: Shown | null = null;
	#whole: CompareResult | null = null;
	/** What the differences shown rest on; null until it is tried. */
	#tried: RestsOn | null = null;

	constructor(document: Document, frames: Frames, turns: ComparisonTurns) {
		this.#document = document;
		this.#frames = frames;
		const element = htmlElement.bind(null, document);
		const side = (place: 0 | 1) => {
			const id = place === 0 ? "regimen-a" : "regimen-b";
			const select = element("select", { id }) as HTMLSelectElement; // bind forgets which element a name makes
			select.addEventListener("change", () => {
				const other = this.#pair[1 - place];
				const name = select.value;
				const rest = place === 0 ? [name, other] : [other, name];
				this.#pair = [rest[0] ?? "", rest[1] ?? ""];
				turns.chosen();
			});
			const sliders = new Sliders(
				document,
				id,
				`Settings of the ${place === 0 ? "first" : "second"} regimen`,
				(setting, written) => turns.drag(this.#pair[place], setting, written),
				() => turns.drop(),
			);
			const settings = element("div", { class: "facts" });
			const block = element(
				"div",
				{ class: "side" },
				element(
					"div",
					{ class: "which" },
					element(
						"label",
						{ for: id },
						place === 0 ? "This regimen" : "against",
					),
					select,
				),
				sliders.element,
				settings,
			);
			return { select, sliders, settings, block };
		};
		const [a, b] = [side(0), side(1)];
		this.#selects = [a.select, b.select];
		this.#sliders = [a.sliders, b.sliders];
		this.#settings = [a.settings, b.settings];
		this.#heading = element("h2", { id: "compare-heading" }, "");
		this.#facts = element("p", { class: "facts" });
		this.#dressing = htmlElement(document, "select", {
			id: "compare-dressing",
		});
		this.#dressing.addEventListener("change", () => this.redraw());
		this.#lines = element("div", { class: "lines" });
		this.#differences = element("div", { class: "differences" });
		this.#cursor = new Cursor(document, "compare-cursor", () => {
			this.#read();
			this.#planLines();
		});
		this.#cursor.watch(this.#lines);
		this.#restsOn = new RestsOnPart(document, () =>
			turns.tryRestsOn(this.#pair),
		);
		this.#save = pressed(document, "Save these numbers (compare.json)", () => {
			if (this.#whole !== null)
				saveFile(document, "compare.json", compareJson(this.#whole));
		});
		this.#empty = element(
			"div",
			{},
			element("h2", {}, "Nothing to compare yet"),
			element(
				"p",
				{},
				"This scenario names fewer than two regimens under compare:. Set the one it has against another, then move the sliders of either.",
			),
			pressed(document, "Set it against another regimen", () => turns.begin()),
		);
		this.#filled = element(
			"div",
			{},
			this.#heading,
			this.#facts,
			element("div", { class: "sides" }, a.block, b.block),
			element(
				"section",
				{ "aria-labelledby": "lines-heading" },
				element("h3", { id: "lines-heading" }, "The same day under each"),
				element(
					"div",
					{ class: "which" },
					element("label", { for: "compare-dressing" }, "Dressing"),
					this.#dressing,
				),
				this.#lines,
				this.#cursor.element,
			),
			this.#differences,
			this.#restsOn.element,
			element("p", {}, this.#save),
		);
		this.#filled.hidden = true;
		this.#faulty = emptyNote(document);
		this.element = element(
			"div",
			{ class: "compare" },
			this.#faulty,
			this.#empty,
			this.#filled,
		);
	}

	/** The two regimens that are looked at, among those that there are; null where there are fewer than two. */
	between(names: readonly string[]): readonly [string, string] | null {
		this.#faulty.hidden = true;
		const isThere = names.length >= 2;
		this.#empty.hidden = isThere;
		this.#filled.hidden = !isThere;
		if (!isThere) return null;
		const [first, second] = this.#pair;
		const a = names.includes(first) ? first : (names[0] ?? "");
		const b =
			names.includes(second) && second !== a
				? second
				: (names.find((name) => name !== a) ?? "");
		this.#pair = [a, b];
		this.#selects.forEach((select, place) => {
			const others = names.filter((name) => name !== this.#pair[1 - place]);
			select.replaceChildren(
				...others.map((name) =>
					htmlElement(this.#document, "option", { value: name }, name),
				),
			);
			select.value = this.#pair[place] ?? "";
		});
		return this.#pair;
	}

	/** Forgets what was shown: another scenario lies on the bench, and it cannot be run. */
	blank(): void {
		this.#shown = null;
		this.#whole = null;
		this.#save.disabled = true;
		for (const part of [
			this.#heading,
			this.#facts,
			this.#lines,
			this.#differences,
		])
			part.replaceChildren();
		this.#restsOn.clear();
		this.#cursor.clear();
		this.#empty.hidden = true;
		this.#filled.hidden = true;
		this.#faulty.hidden = false;
	}

	/** Shows what two regimens, or all of them, came to. `steady`: nothing is being dragged. */
	show(shown: Shown, steady: boolean): void {
		this.#shown = shown;
		this.#tried = null;
		this.#restsOn.clear();
		this.#whole = steady ? shown.result : null;
		this.#save.disabled = !steady;
		const { dressings } = shown.result.scenario;
		if (steady) {
			this.#sliders.forEach((sliders, place) => {
				const regimen = shown.result.regimens.find(
					({ name }) => name === this.#pair[place],
				);
				sliders.show(
					regimen?.regimen ?? null,
					Math.max(...dressings.map(({ capacityMl }) => capacityMl)),
				);
			});
			const was = this.#dressing.value;
			this.#dressing.replaceChildren(
				...dressings.map(({ id }) =>
					htmlElement(this.#document, "option", { value: id }, id),
				),
			);
			if (dressings.some(({ id }) => id === was)) this.#dressing.value = was;
			const which = this.#dressing.parentElement;
			if (which !== null) which.hidden = dressings.length < 2;
		}
		this.redraw();
	}

	/** Draws it again, in the width that there is now. */
	redraw(): void {
		if (this.#shown === null) return;
		this.#planLines();
		this.#frames.plan("differences", () => this.#writeDifferences());
	}

	#place(side: number): number {
		return (
			this.#shown?.result.regimens.findIndex(
				({ name }) => name === this.#pair[side],
			) ?? -1
		);
	}

	#dayOf(side: number) {
		const traced = this.#shown?.days[this.#place(side)];
		const { value } = this.#dressing;
		const place = Math.max(
			0,
			traced?.scenario.dressings.findIndex(({ id }) => id === value) ?? 0,
		);
		const [day, dressing] = [
			traced?.dressings[place],
			traced?.scenario.dressings[place],
		];
		return traced === undefined || day === undefined || dressing === undefined
			? null
			: { traced, day, dressing };
	}

	#planLines(): void {
		this.#frames.plan("compare line 0", () => this.#drawLine(0));
		this.#frames.plan("compare line 1", () => this.#drawLine(1));
	}

	#drawLine(side: 0 | 1): void {
		const [own, other] = [this.#dayOf(side), this.#dayOf(1 - side)];
		const result = this.#shown?.result;
		if (own === null || result === undefined) return;
		const id = `line-of-${side}`;
		let figure = this.#lines.querySelector<HTMLElement>(`#${id}`);
		if (figure === null) {
			figure = htmlElement(this.#document, "div", {
				class: "scroll chart",
				role: "region",
				tabindex: "0",
				id,
			});
			this.#lines.append(
				htmlElement(this.#document, "h4", { id: `${id}-heading` }),
				figure,
			);
			figure.setAttribute("aria-labelledby", `${id}-heading lines-heading`);
		}
		const heading = this.#lines.querySelector(`#${id}-heading`);
		if (heading !== null) heading.textContent = this.#pair[side];
		figure.replaceChildren(
			waterLineChart(
				{
					title: this.#pair[side],
					clock: result.scenario,
					dressing: own.dressing,
					day: own.day,
					replications: 1,
					roundShare: roundShare(result),
					beside: other === null ? [] : [other],
					...lensAround(this.#cursor.atMin, result.scenario),
				},
				this.#document,
				{
					idPrefix: id,
					styled: false,
					titled: false,
					widthPx: chartWidth(figure),
				},
			),
		);
		this.#cursor.over(
			[...this.#lines.querySelectorAll<SVGSVGElement>("svg.sw-chart")],
			result.scenario,
		);
		this.#read();
	}

	#read(): void {
		const { atMin } = this.#cursor;
		if (atMin === null) return;
		this.#cursor.read(
			[0, 1].flatMap((side) => {
				const own = this.#dayOf(side);
				return own === null
					? []
					: [
							{
								heading: this.#pair[side] ?? "",
								readings: readingsAt(atMin, {
									clock: own.traced.scenario,
									dressing: own.dressing,
									day: own.day,
									projection: null,
								}),
							},
						];
			}),
		);
	}

	/** How many assumptions have been tried. */
	tried(done: number, of: number): void {
		this.#restsOn.progress(done, of);
	}

	/** It could not be tried; it may be asked for again. */
	untried(): void {
		this.#restsOn.clear();
	}

	/** Shows what the differences of the two regimens rest on. */
	showRestsOn(restsOn: RestsOn): void {
		const pair = this.#compared();
		const result = this.#shown?.result;
		if (pair === undefined || result === undefined) return;
		this.#tried = restsOn;
		this.#restsOn.show(result, restsOn, pair);
		this.#frames.plan("differences", () => this.#writeDifferences());
	}

	/** The pair that is looked at, in the order in which it was chosen. */
	#compared(): Pair | undefined {
		const result = this.#shown?.result;
		return result === undefined
			? undefined
			: pairBetween(result, ...this.#pair);
	}

	/** Where a regimen sets dressings differently, how it sets each, and whose settings its sliders show. */
	#writeSettings(
		place: HTMLElement,
		result: CompareResult,
		regimen: CompareResult["regimens"][number] | undefined,
	): void {
		const isOne =
			regimen === undefined ||
			regimen.regimenOf.length === result.scenario.dressings.length;
		const lines = isOne
			? []
			: [
					...regimenLines(regimen, result),
					`The sliders stand where they are set for ${joinedWords(regimen.regimenOf)}`,
				];
		place.replaceChildren(
			...lines.map((line) =>
				htmlElement(this.#document, "p", {}, unbroken(`${line}.`)),
			),
		);
	}

	#writeDifferences(): void {
		const result = this.#shown?.result;
		const pair = this.#compared();
		if (result === undefined || pair === undefined) return;
		const regimens = [pair.a, pair.b].flatMap((name) =>
			result.regimens.filter((regimen) => regimen.name === name),
		);
		this.#heading.textContent = unbroken(questionOf({ ...result, regimens }));
		this.#facts.textContent = unbroken(
			`${spanWords(result.scenario)} ${counted(result.replications, "replication")}, chance ${result.scenario.chance}, the same patients under each. Seed ${result.scenario.seed}.`,
		);
		this.#settings.forEach((place, side) => {
			this.#writeSettings(place, result, regimens[side]);
		});
		this.#differences.replaceChildren(
			...differenceSections(
				{ ...result, restsOn: this.#tried },
				[{ ...pair, index: 0 }],
				this.#document,
			),
			silenceSection(result, this.#document),
		);
	}
}
