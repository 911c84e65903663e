import { heatStrip, shownConditions, waterLineLegend } from "../../charts/index.ts";
import { likelyLevel } from "../../report/day/alarm-section.ts";
import { type DressingParts, dressingParts } from "../../report/day/dressing/dressing-parts.ts";
import { drawnAmongWords } from "../../report/day/dressing/water-line-figure.ts";
import { type HtmlMaker, section } from "../../report/kit/html-element.ts";
import { dayJson } from "../../results/day.ts";
import type { DayResult, DressingDay, TracedDayResult } from "../../results/index.ts";
import { roundShare } from "../../words/index.ts";
import { emptyNote, saveButton, scrolling } from "../kit/controls.ts";
import type { Frames } from "../kit/frames.ts";
import { onPage } from "../kit/on-page.ts";
import { answerItems, dayHead, dayTables } from "./day-parts.ts";
import { dressingList } from "./dressing-list.ts";
import { type SettingName, settingSliders } from "./sliders.ts";
import { waterLines } from "./water-lines.ts";

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
export function dayView(html: HtmlMaker, frames: Frames, turn: { drag(setting: DaySetting): void; drop(): void }) {
	let traced: TracedDayResult | null = null;
	/** null while the answers are being worked out. */
	let result: DayResult | null = null;
	/** The day as it stood when nothing was dragged, and the one before it. */
	let settled: readonly DressingDay[] = [];
	let settledTrace = "";
	let before: readonly DressingDay[] = [];

	const list = dressingList(html, () => redraw(true));
	const drag = (setting: SettingName, written: string) =>
		turn.drag({ dressing: list.dressing(), regimen: list.regimen(), setting, written });
	const sliders = settingSliders(html, "turn", "Settings of the regimen", drag, () => turn.drop());
	const head = html("div", { class: "head" });
	const sentences = html("ul", { class: "sentences" });
	/** Says where the answers are still those of before. */
	const status = html("p", { class: "caution", role: "status" });
	const figure = scrolling(html, "chart", "Water-line chart");
	const legend = html("figcaption");
	const strip = scrolling(html, "chart strip", "Chance of alarms");
	const tables = html("div", { class: "tables" });
	const save = saveButton(html, "Save these numbers (day.json)", "day.json", () => result && dayJson(result));
	save.disabled = true;
	const lines = waterLines(html, frames, {
		id: "day-cursor",
		place: figure,
		count: 1,
		line: () => {
			const [dressing, day] = [dressingShown(), traced?.dressings[list.dressing()]];
			if (traced === null || dressing === undefined || day === undefined) return null;
			const old = settled === traced.dressings ? before : settled;
			const data = {
				title: dressing.id,
				clock: traced.scenario,
				dressing,
				day,
				projection: result?.projection.dressings[list.dressing()],
				replications: result?.projection.replications ?? 1,
				roundShare: roundShare(result ?? { assumptions: [] }),
				before: old.find(({ id }) => id === dressing.id),
			};
			return { place: figure, idPrefix: "day", heading: "", data };
		},
		drawn: (data) => {
			legend.textContent = [
				waterLineLegend(data),
				result === null ? "" : drawnAmongWords(result),
				data.before === undefined ? "" : "The pale line is the day before the last change.",
			]
				.filter((words) => words !== "")
				.join(" ");
		},
	});
	const empty = emptyNote(html);
	const filled = html(
		"div",
		{},
		list.element,
		head,
		sliders.element,
		section(html, "answers", "Answers", null, status, sentences),
		section(html, "line", "Water line", null, html("figure", {}, figure, legend), lines.cursor),
		section(html, "alarms", "Likely alarms", null, strip),
		tables,
		html("p", {}, save),
	);

	const dressingShown = () => traced?.scenario.dressings[list.dressing()];

	function redraw(steady: boolean): void {
		const dressing = dressingShown();
		if (dressing === undefined) return;
		if (steady) {
			sliders.show(dressing.regimens[list.regimen()] ?? null, dressing.capacityMl);
			frames.plan("words", writeHead);
		}
		lines.plan();
		if (result === null) return;
		answered("answers", (parts) => sentences.replaceChildren(...answerItems(html, parts)));
		answered("alarm strip", (parts) => strip.replaceChildren(stripOf(parts)));
		if (steady) answered("tables", (parts) => tables.replaceChildren(...dayTables(html, parts, tables)));
	}

	function writeHead(): void {
		const dressing = dressingShown();
		if (traced === null || dressing === undefined) return;
		head.replaceChildren(...dayHead(html, traced, dressing, result?.dressings[list.dressing()]?.schedule.takeovers));
	}

	/** Draws a part of the answers when there is time, if there are any by then. */
	const answered = (name: string, draw: (parts: DressingParts) => void) =>
		frames.plan(name, () => {
			const parts = result === null ? undefined : dressingParts(result)[list.dressing()];
			if (parts !== undefined) draw(parts);
		});

	function stripOf({ clock, projection: { id, alarms }, replications }: DressingParts): Node {
		if (shownConditions(alarms).length === 0)
			return html("p", {}, `No alarm came in any of ${replications} replications.`);
		const data = { title: `${id}: when an alarm is likely`, clock, alarms, level: likelyLevel };
		return heatStrip(data, html.document, onPage(strip, "strip", stripLeastPx));
	}

	return {
		element: html("div", { class: "day" }, empty, filled),
		/** Forgets what was shown: another scenario lies on the bench, and it cannot be run. */
		blank(): void {
			result = null;
			traced = null;
			settled = [];
			settledTrace = "";
			before = [];
			for (const part of [head, sentences, figure, legend, strip, tables]) part.replaceChildren();
			list.clear();
			sliders.show(null, 0);
			lines.clear();
			status.textContent = "";
			save.disabled = true;
			filled.hidden = true;
			empty.hidden = false;
		},
		/** Shows a result, or the drawn day while its projection takes its time. `steady`: nothing is being dragged. */
		show(shown: DayResult | TracedDayResult, steady: boolean): void {
			empty.hidden = true;
			filled.hidden = false;
			traced = shown;
			result = "format" in shown ? shown : null;
			if (steady && result !== null) {
				if (settledTrace !== result.trace.hash) before = settled;
				settled = result.dressings;
				settledTrace = result.trace.hash;
			}
			save.disabled = result === null || !steady;
			status.textContent = result === null ? workingOut(sentences.childElementCount > 0) : "";
			list.show(shown, steady && result !== null);
			redraw(steady);
		},
		/** Draws it again, in the width that there is now. */
		redraw: () => redraw(true),
	};
}

const workingOut = (hasOld: boolean) =>
	`Working out the answers …${hasOld ? " Those that stand here are of before the change." : ""}`;
