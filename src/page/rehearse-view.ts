// Longer than most: one shift from its beginning to its debrief, whose steps wait for one another.

import {
	conditionWords,
	depthWords,
	durationWords,
	phaseWords,
	plainNumber,
	shiftLine,
	waterLineEdges,
} from "../charts/index.ts";
import type {
	Debrief,
	Happened,
	Revealed,
	ScriptStep,
	SoFar,
	Taking,
	Answer as Told,
	View,
} from "../rehearsal/index.ts";
import {
	acts,
	actWords,
	caseLink,
	isAct,
	isPlace,
	places,
	placeWords,
} from "../rehearsal/index.ts";
import { debriefSections } from "../report/debrief-html.ts";
import { debriefJson } from "../report/debrief-json.ts";
import { htmlElement, unbroken } from "../report/html-element.ts";
import { chartWidth } from "./chart-width.ts";
import type { Engine } from "./engine.ts";
import type { Answer, Handed, Start } from "./orders.ts";
import { Pace, paces } from "./pace.ts";
import { pressed } from "./press.ts";
import { saveFile } from "./save-file.ts";

/** A pace other than a pause in words. */
const paceWords = (times: number) => (times === 0 ? "Pause" : `×${times}`);

/** A shift as it is rehearsed: the time, what the bedside shows, what can be looked at and done; and the debrief. */
export class RehearseView {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #engine: Engine;
	readonly #turned: (begun: boolean) => void;
	readonly #pace: Pace;
	readonly #alarm: HTMLElement;
	readonly #facts: HTMLElement;
	/** Says what a wait has come to. */
	readonly #passed: HTMLElement;
	readonly #told: HTMLElement;
	readonly #log: HTMLElement;
	/** The water line of the shift so far. */
	readonly #line: HTMLElement;
	readonly #paceButtons = new Map<number, HTMLButtonElement>();
	#stage: HTMLElement;
	#handed: Handed | null = null;
	#start: Start | null = null;
	#alarms = "";
	/** Steps that wait for the one before them. */
	#steps: ScriptStep[] = [];
	#busy = false;
	#over = true;

	constructor(
		document: Document,
		window: Window,
		engine: Engine,
		/** Told of a case that is shown, and of one that is left. */
		turned: (begun: boolean) => void,
	) {
		this.#document = document;
		this.#engine = engine;
		this.#turned = turned;
		const element = htmlElement.bind(null, document);
		this.#pace = new Pace(window, (minutes) => {
			if (this.#busy) return false;
			this.#take({ do: "wait", minutes });
			return true;
		});
		this.#alarm = element("p", { class: "alarm-line", role: "alert" });
		this.#facts = element("dl", { class: "facts-now" });
		this.#passed = element("span", { class: "help", role: "status" });
		this.#told = element("ol", {});
		this.#log = element(
			"div",
			{
				class: "told",
				role: "log",
				"aria-label": "What has happened",
				tabindex: "0",
			},
			this.#told,
		);
		this.#line = element("div", {
			class: "scroll",
			role: "region",
			tabindex: "0",
			"aria-label": "The shift so far, drawn",
		});
		this.#stage = element("div", {});
		this.element = element(
			"div",
			{ class: "rehearsal", hidden: "" },
			this.#stage,
		);
	}

	/** Title of the case that is shown, in its shift or its debrief; null: none. */
	get title(): string | null {
		return this.element.hidden ? null : (this.#start?.title ?? null);
	}

	/** A shift is being rehearsed. */
	get underWay(): boolean {
		return !this.#over;
	}

	/** Begins a case; `refused` is told in words where that cannot be done, and a shift that is under way goes on then. */
	begin(
		handed: Handed,
		known: readonly Revealed[],
		refused: (words: string) => void,
	): void {
		this.#setPace(0);
		this.#busy = true;
		this.#engine.ask({ kind: "rehearse", handed, known }, (answer) => {
			this.#busy = false;
			if (answer.kind === "begun") {
				this.#handed = { ...handed, seed: answer.start.seed };
				this.#steps = [];
				this.#begun(answer.start);
			} else if (answer.kind === "fault") refused(answer.words);
			else if (answer.kind === "checked" && answer.problems.length > 0)
				refused(
					`The case has ${answer.problems.length} problems; put it on the bench to see them.`,
				);
			this.#takeNext();
		});
	}

	#begun(start: Start): void {
		this.#over = false;
		this.#start = start;
		this.#alarms = "";
		this.#told.replaceChildren();
		this.#passed.textContent = "";
		this.#alarm.textContent = "No alarm stands.";
		this.#alarm.classList.remove("stands");
		const element = htmlElement.bind(null, this.#document);
		const minutes = new Map(start.takings.map((one) => [one.what, one]));
		const heading = element("h2", { tabindex: "-1" }, start.title);
		const stage = element(
			"div",
			{},
			heading,
			element("p", { class: "case-brief" }, start.brief),
			this.#paceBar(start.pace),
			this.#alarm,
			element(
				"div",
				{ class: "shift" },
				element(
					"section",
					{ "aria-labelledby": "now-heading" },
					element("h3", { id: "now-heading" }, "At the bedside"),
					this.#facts,
				),
				element(
					"section",
					{ "aria-labelledby": "told-heading" },
					element("h3", { id: "told-heading" }, "What has happened"),
					this.#log,
				),
			),
			element(
				"figure",
				{},
				this.#line,
				element(
					"figcaption",
					{},
					"The shift so far, as the bedside has shown it: hatched suction hangs below the line, above it stands what has been run in, until the drain begins.",
				),
			),
			element(
				"div",
				{ class: "shift" },
				this.#choices("look", "Look", places, placeWords, minutes),
				this.#choices("act", "Do", acts, actWords, minutes),
			),
			element(
				"p",
				{},
				pressed(this.#document, "End the shift and go to the debrief", () =>
					this.#debrief(),
				),
			),
		);
		this.#put(stage);
		this.#show(start.view);
		this.#draw(start.view, start.soFar);
		this.#turned(true);
		heading.focus();
	}

	#put(stage: HTMLElement): void {
		this.#stage.replaceWith(stage);
		this.#stage = stage;
		this.element.hidden = false;
	}

	#paceBar(suggested: number | null): HTMLElement {
		const element = htmlElement.bind(null, this.#document);
		this.#paceButtons.clear();
		for (const times of paces)
			this.#paceButtons.set(
				times,
				pressed(this.#document, paceWords(times), () => this.#setPace(times), {
					"aria-pressed": String(times === 0),
					...(times === suggested ? { "aria-description": "suggested" } : {}),
				}),
			);
		return element(
			"div",
			{ class: "bar", role: "group", "aria-label": "How time passes" },
			pressed(this.#document, "On to the next thing", () => {
				this.#setPace(0);
				this.#take({ do: "next" });
			}),
			pressed(this.#document, "Let 10 min pass", () =>
				this.#take({ do: "wait", minutes: 10 }),
			),
			...this.#paceButtons.values(),
			suggested === null
				? null
				: element("span", { class: "help" }, `suggested: ×${suggested}`),
			this.#passed,
		);
	}

	#setPace(times: number): void {
		this.#pace.set(this.#over ? 0 : times);
		for (const [of, button] of this.#paceButtons)
			button.setAttribute("aria-pressed", String(of === this.#pace.times));
	}

	#choices<N extends Taking["what"]>(
		kind: "look" | "act",
		heading: string,
		names: readonly N[],
		words: { readonly [K in N]: string },
		minutes: ReadonlyMap<Taking["what"], Taking>,
	): HTMLElement {
		const element = htmlElement.bind(null, this.#document);
		return element(
			"section",
			{ "aria-labelledby": `${kind}-heading` },
			element("h3", { id: `${kind}-heading` }, heading),
			element(
				"ul",
				{ class: "choices" },
				...names.map((name) =>
					element(
						"li",
						{},
						pressed(
							this.#document,
							unbroken(
								`${words[name]}, ${durationWords(minutes.get(name)?.minutes ?? 0)}`,
							),
							() => {
								if (kind === "look" && isPlace(name))
									this.#take({ do: "look", place: name });
								else if (isAct(name)) this.#take({ do: "act", act: name });
							},
						),
					),
				),
			),
		);
	}

	/** Takes a step, or remembers it until the one before has been answered. */
	#take(step: ScriptStep): void {
		if (this.#over) return;
		if (this.#busy) {
			this.#steps.push(step);
			return;
		}
		this.#busy = true;
		this.#engine.ask({ kind: "step", step }, (answer) => {
			this.#busy = false;
			if (answer.kind === "answered") {
				this.#answered(step, answer.answer);
				this.#draw(answer.answer.view, answer.soFar);
			} else this.#failed(answer);
			this.#takeNext();
		});
	}

	#takeNext(): void {
		const next = this.#busy ? undefined : this.#steps.shift();
		if (next !== undefined) this.#take(next);
	}

	#answered(step: ScriptStep, { words, meanwhile, view }: Told): void {
		const asked = step.do === "look" || step.do === "act";
		const own: Happened[] =
			asked || view.over
				? [{ atMin: view.atMin, clock: view.clock, words }]
				: [];
		this.#tell([...meanwhile, ...own]);
		// At a pace the time would be said without end.
		this.#passed.textContent =
			step.do === "wait" && this.#pace.times === 0
				? `Now ${view.clock}: ${phaseWords[view.phase]}, ${depthWords(-view.depthMmHg)}.`
				: "";
		this.#show(view);
		if (view.over) this.#debrief();
	}

	#tell(items: readonly Happened[]): void {
		this.#told.append(
			...items.map(({ clock, words }) =>
				htmlElement(
					this.#document,
					"li",
					{},
					htmlElement(this.#document, "strong", {}, clock),
					` ${words}`,
				),
			),
		);
		this.#log.scrollTop = this.#log.scrollHeight;
	}

	#show(view: View): void {
		const alarms = view.alarms
			.map(
				({ condition, priority }) =>
					`${conditionWords[condition]} (${priority} priority)`,
			)
			.join(", ");
		if (alarms !== this.#alarms) {
			this.#alarms = alarms;
			this.#alarm.textContent =
				alarms === "" ? "No alarm stands." : `Alarm: ${alarms}.`;
			this.#alarm.classList.toggle("stands", alarms !== "");
		}
		const rows: readonly (readonly [string, string])[] = [
			[
				"Time",
				`${view.clock}; ${durationWords(view.leftMin)} left of the shift`,
			],
			[
				"Phase",
				`${phaseWords[view.phase]}, for ${durationWords(view.atMin - view.phaseSinceMin)}`,
			],
			[
				"Depth",
				`${depthWords(-view.depthMmHg)}; set: ${depthWords(-view.setDepthMmHg)}`,
			],
			["Canister", `to the mark of ${view.canisterMl} mL`],
			["Source", `to the mark of ${view.sourceMl} mL`],
			[
				"Fills",
				view.fills === 0
					? "none yet"
					: `${plainNumber(view.fills, 0)}; the last one ${view.filledMl} mL`,
			],
			["Dressing", view.dressing],
		];
		this.#facts.replaceChildren(
			...rows.flatMap(([term, words]) => [
				htmlElement(this.#document, "dt", {}, term),
				htmlElement(this.#document, "dd", {}, words),
			]),
		);
	}

	#draw(view: View, soFar: SoFar): void {
		if (this.#start === null || this.#over) return;
		const { title, clock, regimen } = this.#start;
		const drawn = shiftLine(
			{ title, clock, nowMin: view.atMin, regimen, soFar },
			this.#document,
			{
				idPrefix: "so-far",
				styled: false,
				titled: false,
				widthPx: chartWidth(this.#line),
			},
		);
		this.#line.replaceChildren(drawn);
		// Where the line is wider than its place, its end stays in sight.
		const { leftPx, rightPx } = waterLineEdges(drawn.viewBox.baseVal.width);
		const share = view.atMin / clock.horizonMin;
		const endPx =
			(leftPx + share * (rightPx - leftPx)) / drawn.viewBox.baseVal.width;
		this.#line.scrollLeft =
			endPx * this.#line.scrollWidth - 0.75 * this.#line.clientWidth;
	}

	#failed(answer: Answer): void {
		if (answer.kind === "fault") this.#alarm.textContent = answer.words;
	}

	#debrief(): void {
		if (this.#over) return;
		this.#over = true;
		this.#steps = [];
		this.#setPace(0);
		this.#engine.ask({ kind: "debrief" }, (answer) => {
			if (answer.kind === "debriefed") this.#debriefed(answer.debrief);
			else this.#failed(answer);
		});
	}

	#debriefed(debrief: Debrief): void {
		const element = htmlElement.bind(null, this.#document);
		const sections = debriefSections(debrief, this.#document);
		const heading = element("h2", { tabindex: "-1" }, debrief.case.title);
		const handed = this.#handed;
		this.#put(
			element(
				"div",
				{},
				heading,
				element("p", { class: "facts" }, `Seed ${debrief.case.seed}.`),
				element(
					"div",
					{ class: "bar" },
					pressed(this.#document, "Run the same case again", () => {
						if (handed !== null) this.begin(handed, ["run-again"], () => {});
					}),
					pressed(this.#document, "Choose another case", () => {
						this.element.hidden = true;
						this.#turned(false);
					}),
					pressed(this.#document, "Save the debrief (debrief.json)", () =>
						saveFile(this.#document, "debrief.json", debriefJson(debrief)),
					),
				),
				element(
					"details",
					{},
					element("summary", {}, "All that happened in the shift"),
					this.#log,
				),
				sections,
			),
		);
		heading.focus();
	}
}

/** The fragment of a link to a case. */
export const linkOf = (handed: Handed): string =>
	caseLink({ ...handed, seed: handed.seed ?? "" });
