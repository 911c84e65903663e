// Longer than most: the elements of one view and what moves them belong together, and each is used by the others.

import type {
	DayResult,
	DressingDay,
	DressingSummary,
	TracedDayResult,
} from "../analysis/index.ts";
import {
	counted,
	heatStrip,
	shownConditions,
	waterLineChart,
	waterLineLegend,
} from "../charts/index.ts";
import { likelyLevel } from "../report/alarm-section.ts";
import { answers } from "../report/answers.ts";
import { drawnWords } from "../report/drawn-words.ts";
import { answerData, dressingParts } from "../report/dressing-parts.ts";
import { dressingLine, regimenLine } from "../report/dressing-words.ts";
import {
	htmlElement,
	sentenceNodes,
	unbroken,
} from "../report/html-element.ts";
import { dayJson } from "../report/json.ts";
import { roundShare } from "../report/round-share.ts";
import { sentenceStart } from "../report/sentence.ts";
import { spanWords } from "../report/span-words.ts";
import { chartWidth } from "./chart-width.ts";
import { Cursor } from "./cursor.ts";
import { dayTables } from "./day-tables.ts";
import { DressingList } from "./dressing-list.ts";
import { emptyNote } from "./empty-note.ts";
import type { Frames } from "./frames.ts";
import { lensAround } from "./lens-around.ts";
import { pressed } from "./press.ts";
import { readingsAt } from "./reading.ts";
import { saveFile } from "./save-file.ts";
import { type SettingName, Sliders } from "./sliders.ts";

/** What a slider of a day turns. */
export interface DaySetting {
	readonly dressing: number;
	readonly regimen: number;
	readonly setting: SettingName;
	readonly written: string;
}

/** The key of the strip needs more room than a day, px. */
const stripLeastPx = 800;

/** The day of one dressing: answers in sentences, sliders, the water line with a cursor, likely alarms, tables. */
export class DayView {
	readonly element: HTMLElement;
	readonly #document: Document;
	readonly #frames: Frames;
	readonly #sliders: Sliders;
	readonly #cursor: Cursor;
	readonly #list: DressingList;
	readonly #empty: HTMLElement;
	readonly #filled: HTMLElement;
	readonly #head: HTMLElement;
	readonly #answers: HTMLElement;
	/** Says where the answers are still those of before. */
	readonly #status: HTMLElement;
	readonly #figure: HTMLElement;
	readonly #legend: HTMLElement;
	readonly #strip: HTMLElement;
	readonly #tables: HTMLElement;
	readonly #save: HTMLButtonElement;
	#result: DayResult | null = null;
	#traced: TracedDayResult | null = null;
	/** The day as it stood when nothing was dragged, and the one before it. */
	#settled: readonly DressingDay[] = [];
	#settledTrace = "";
	#before: readonly DressingDay[] = [];

	constructor(
		document: Document,
		frames: Frames,
		turn: { drag(setting: DaySetting): void; drop(): void },
	) {
		this.#document = document;
		this.#frames = frames;
		const element = htmlElement.bind(null, document);
		this.#list = new DressingList(document, () => this.#redraw(true));
		this.#sliders = new Sliders(
			document,
			"turn",
			"Settings of the regimen",
			(setting, written) =>
				turn.drag({
					dressing: this.#list.dressing,
					regimen: this.#list.regimen,
					setting,
					written,
				}),
			() => turn.drop(),
		);
		this.#cursor = new Cursor(document, "day-cursor", () => {
			this.#read();
			frames.plan("water line", () => this.#drawLine());
		});
		this.#head = element("div", { class: "head" });
		this.#answers = element("ul", { class: "sentences" });
		this.#status = element("p", { class: "caution", role: "status" });
		this.#figure = element("div", {
			class: "scroll chart",
			role: "region",
			tabindex: "0",
			"aria-label": "Water-line chart",
		});
		this.#legend = element("figcaption", {});
		this.#strip = element("div", {
			class: "scroll chart strip",
			role: "region",
			tabindex: "0",
			"aria-label": "Chance of alarms",
		});
		this.#tables = element("div", { class: "tables" });
		this.#save = pressed(document, "Save these numbers (day.json)", () => {
			if (this.#result !== null)
				saveFile(document, "day.json", dayJson(this.#result));
		});
		this.#save.disabled = true;
		this.#cursor.watch(this.#figure);
		this.#empty = emptyNote(document);
		this.#filled = element(
			"div",
			{},
			this.#list.element,
			this.#head,
			this.#sliders.element,
			element(
				"section",
				{ class: "answers", "aria-labelledby": "answers-heading" },
				element("h3", { id: "answers-heading" }, "Answers"),
				this.#status,
				this.#answers,
			),
			element(
				"section",
				{ class: "line", "aria-labelledby": "line-heading" },
				element("h3", { id: "line-heading" }, "Water line"),
				element("figure", {}, this.#figure, this.#legend),
				this.#cursor.element,
			),
			element(
				"section",
				{ class: "alarms", "aria-labelledby": "alarms-heading" },
				element("h3", { id: "alarms-heading" }, "Likely alarms"),
				this.#strip,
			),
			this.#tables,
			element("p", {}, this.#save),
		);
		this.element = element("div", { class: "day" }, this.#empty, this.#filled);
	}

	/** Forgets what was shown: another scenario lies on the bench, and it cannot be run. */
	blank(): void {
		this.#result = null;
		this.#traced = null;
		this.#settled = [];
		this.#settledTrace = "";
		this.#before = [];
		for (const part of [
			this.#head,
			this.#answers,
			this.#figure,
			this.#legend,
			this.#strip,
			this.#tables,
		])
			part.replaceChildren();
		this.#list.clear();
		this.#sliders.show(null, 0);
		this.#cursor.clear();
		this.#status.textContent = "";
		this.#save.disabled = true;
		this.#filled.hidden = true;
		this.#empty.hidden = false;
	}

	/** Shows a result, or the drawn day while its projection takes its time. `steady`: nothing is being dragged. */
	show(shown: DayResult | TracedDayResult, steady: boolean): void {
		const result = "format" in shown ? shown : null;
		this.#empty.hidden = true;
		this.#filled.hidden = false;
		this.#traced = shown;
		this.#result = result;
		if (steady && result !== null) {
			if (this.#settledTrace !== result.trace.hash)
				this.#before = this.#settled;
			this.#settled = result.dressings;
			this.#settledTrace = result.trace.hash;
		}
		this.#save.disabled = result === null || !steady;
		this.#status.textContent =
			result === null
				? `Working out the answers …${this.#answers.childElementCount > 0 ? " Those that stand here are of before the change." : ""}`
				: "";
		this.#list.show(shown, steady && result !== null);
		this.#redraw(steady);
	}

	/** Draws it again, in the width that there is now. */
	redraw(): void {
		if (this.#traced !== null) this.#redraw(true);
	}

	get #summary(): DressingSummary | undefined {
		return this.#traced?.scenario.dressings[this.#list.dressing];
	}

	#redraw(steady: boolean): void {
		const summary = this.#summary;
		if (summary === undefined || this.#traced === null) return;
		if (steady) {
			this.#sliders.show(
				summary.regimens[this.#list.regimen] ?? null,
				summary.capacityMl,
			);
			this.#frames.plan("words", () => this.#writeHead());
		}
		this.#frames.plan("water line", () => this.#drawLine());
		if (this.#result === null) return;
		this.#frames.plan("answers", () => this.#writeAnswers());
		this.#frames.plan("alarm strip", () => this.#drawStrip());
		if (steady) this.#frames.plan("tables", () => this.#writeTables());
	}

	#writeHead(): void {
		const [summary, scenario] = [this.#summary, this.#traced?.scenario];
		if (summary === undefined || scenario === undefined) return;
		const element = htmlElement.bind(null, this.#document);
		const line = (text: string) => unbroken(`${sentenceStart(text)}.`);
		// Known with the answers only, which say the same times.
		const takeovers =
			this.#result?.dressings[this.#list.dressing]?.schedule.takeovers;
		this.#head.replaceChildren(
			element("h2", {}, `Dressing ${summary.id}`),
			element("p", {}, line(regimenLine(summary, scenario, true, takeovers))),
			element("p", { class: "facts" }, line(dressingLine(summary))),
			element(
				"p",
				{ class: "facts" },
				`${spanWords(scenario)} ${counted(scenario.replications, "replication")}, chance ${scenario.chance}. Seed ${scenario.seed}.`,
			),
		);
	}

	#writeAnswers(): void {
		const result = this.#result;
		const parts =
			result === null ? undefined : dressingParts(result)[this.#list.dressing];
		if (result === null || parts === undefined) return;
		const cautions = result.cautions.filter(
			({ dressing }) => dressing === parts.summary.id,
		);
		const item = (nodes: readonly Node[], attributes = {}) =>
			htmlElement(this.#document, "li", attributes, ...nodes);
		this.#answers.replaceChildren(
			...answers(answerData(result, parts)).map((sentence) =>
				item(sentenceNodes(this.#document, sentence)),
			),
			...cautions.map(({ text }) =>
				item([this.#document.createTextNode(text)], { class: "caution" }),
			),
		);
	}

	#drawLine(): void {
		const [traced, summary] = [this.#traced, this.#summary];
		const day = traced?.dressings[this.#list.dressing];
		if (traced === null || summary === undefined || day === undefined) return;
		const projection = this.#result?.projection;
		const { scenario } = traced;
		const old =
			this.#settled === traced.dressings ? this.#before : this.#settled;
		const replications = projection?.replications ?? 1;
		const data = {
			title: summary.id,
			clock: scenario,
			dressing: summary,
			day,
			projection: projection?.dressings[this.#list.dressing],
			replications,
			roundShare: roundShare(this.#result ?? { assumptions: [] }),
			before: old.find(({ id }) => id === summary.id),
			...lensAround(this.#cursor.atMin, scenario),
		};
		const chart = waterLineChart(data, this.#document, {
			idPrefix: "day",
			styled: false,
			titled: false,
			widthPx: chartWidth(this.#figure),
		});
		this.#figure.replaceChildren(chart);
		this.#legend.textContent = `${waterLineLegend(data)}${this.#result !== null && replications > 1 ? ` ${drawnWords(this.#result)} The band and the change times come from all ${replications}.` : ""}${data.before === undefined ? "" : " The pale line is the day before the last change."}`;
		this.#cursor.over([chart], scenario);
		this.#read();
	}

	#read(): void {
		const [traced, summary] = [this.#traced, this.#summary];
		const day = traced?.dressings[this.#list.dressing];
		const { atMin } = this.#cursor;
		if (traced === null || summary === undefined || day === undefined) return;
		if (atMin === null) return;
		const projection =
			this.#result?.projection.dressings[this.#list.dressing] ?? null;
		this.#cursor.read([
			{
				heading: "",
				readings: readingsAt(atMin, {
					clock: traced.scenario,
					dressing: summary,
					day,
					projection,
				}),
			},
		]);
	}

	#drawStrip(): void {
		const result = this.#result;
		const projection = result?.projection.dressings[this.#list.dressing];
		if (result === null || projection === undefined) return;
		const { alarms } = projection;
		this.#strip.replaceChildren(
			shownConditions(alarms).length === 0
				? htmlElement(
						this.#document,
						"p",
						{},
						`No alarm came in any of ${result.projection.replications} replications.`,
					)
				: heatStrip(
						{
							title: `${projection.id}: when an alarm is likely`,
							clock: result.scenario,
							alarms,
							level: likelyLevel,
						},
						this.#document,
						{
							idPrefix: "strip",
							styled: false,
							titled: false,
							widthPx: chartWidth(this.#strip, stripLeastPx),
						},
					),
		);
	}

	#writeTables(): void {
		if (this.#result === null) return;
		this.#tables.replaceChildren(
			...dayTables(
				this.#result,
				this.#list.dressing,
				this.#tables,
				this.#document,
			),
		);
	}
}
