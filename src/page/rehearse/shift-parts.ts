import { shiftLine, waterLineEdges } from "../../charts/index.ts";
import type { Happened, SoFar, View } from "../../rehearsal/index.ts";
import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { conditionWords, depthWords, durationWords, phaseWords, plainNumber } from "../../words/index.ts";
import { scrolling } from "../kit/controls.ts";
import { onPage } from "../kit/on-page.ts";
import type { Start } from "../worker/orders.ts";

/** What a shift shows as it goes on: the alarm that stands, the bedside, what has happened, the water line so far. */
export function shiftParts(html: HtmlMaker) {
	let alarmsShown = "";
	const alarm = html("p", { class: "alarm-line", role: "alert" });
	const facts = html("dl", { class: "facts-now" });
	/** Says what a wait has come to. */
	const passed = html("span", { class: "help", role: "status" });
	const told = html("ol");
	const log = html("div", { class: "told", role: "log", "aria-label": "What has happened", tabindex: "0" }, told);
	const line = scrolling(html, "", "The shift so far, drawn");

	function showAlarms(alarms: string): void {
		alarmsShown = alarms;
		alarm.textContent = alarms === "" ? "No alarm stands." : `Alarm: ${alarms}.`;
		alarm.classList.toggle("stands", alarms !== "");
	}

	return {
		alarm,
		facts,
		passed,
		log,
		line,
		/** Another shift begins. */
		begin(): void {
			told.replaceChildren();
			passed.textContent = "";
			showAlarms("");
		},
		tell(items: readonly Happened[]): void {
			told.append(...items.map(({ clock, words }) => html("li", {}, html("strong", {}, clock), ` ${words}`)));
			log.scrollTop = log.scrollHeight;
		},
		show(view: View): void {
			const alarms = view.alarms
				.map(({ condition, priority }) => `${conditionWords[condition]} (${priority} priority)`)
				.join(", ");
			// An alarm that stands on is not said again.
			if (alarms !== alarmsShown) showAlarms(alarms);
			const rows = {
				Time: `${view.clock}; ${durationWords(view.leftMin)} left of the shift`,
				Phase: `${phaseWords[view.phase]}, for ${durationWords(view.atMin - view.phaseSinceMin)}`,
				Depth: `${depthWords(-view.depthMmHg)}; set: ${depthWords(-view.setDepthMmHg)}`,
				Canister: `to the mark of ${view.canisterMl} mL`,
				Source: `to the mark of ${view.sourceMl} mL`,
				Fills: view.fills === 0 ? "none yet" : `${plainNumber(view.fills, 0)}; the last one ${view.filledMl} mL`,
				Dressing: view.dressing,
			};
			facts.replaceChildren(
				...Object.entries(rows).flatMap(([term, words]) => [html("dt", {}, term), html("dd", {}, words)]),
			);
		},
		draw({ title, clock, regimen }: Start, { atMin }: View, soFar: SoFar): void {
			const data = { title, clock, nowMin: atMin, regimen, soFar };
			const drawn = shiftLine(data, html.document, onPage(line, "so-far"));
			line.replaceChildren(drawn);
			// Where the line is wider than its place, its end stays in sight.
			const widthPx = drawn.viewBox.baseVal.width;
			const { leftPx, rightPx } = waterLineEdges(widthPx);
			const endPx = leftPx + (atMin / clock.horizonMin) * (rightPx - leftPx);
			line.scrollLeft = (endPx / widthPx) * line.scrollWidth - 0.75 * line.clientWidth;
		},
	};
}
