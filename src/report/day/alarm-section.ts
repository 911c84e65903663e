import { heatStrip, shownConditions } from "../../charts/index.ts";
import type { AlarmProjection } from "../../results/index.ts";
import { type Clock, conditionWords, percentWords, timeRange } from "../../words/index.ts";
import { chartFigure, onPage } from "../kit/chart-figure.ts";
import { type HtmlMaker, section } from "../kit/html-element.ts";
import { aligned, type Column, htmlTable } from "../kit/table.ts";
import type { DressingParts } from "./dressing/dressing-parts.ts";

/** Above this chance in a half-hour an alarm counts as likely there. */
export const likelyLevel = 0.05;
const mostWindows = 6;

/** When alarms are likely: the strip by half-hour and condition, and the same in words. */
export function alarmSection(html: HtmlMaker, parts: DressingParts): HTMLElement {
	const { clock, dressing, headingId, projection, replications } = parts;
	const id = `${parts.id}-alarms`;
	const isListed = parts.happenings.length > 0;
	const chance = isListed ? " by chance" : "";
	const shown = shownConditions(projection.alarms);
	if (shown.length === 0) {
		const days = replications === 1 ? "the one replication" : `any of ${replications} replications`;
		return section(html, id, "Likely alarms", headingId, `No alarm came${chance} in ${days}.`);
	}
	const title = `${dressing.id}: when an alarm is likely`;
	const data = { title, clock, alarms: projection.alarms, level: likelyLevel };
	const strip = heatStrip(data, html.document, onPage(`${id}-strip`));
	const caption = `Chance that at least one alarm of the condition starts in the time of a cell.${isListed ? " What the scenario lists brings no cell." : ""} Where half-hours are merged they are taken as independent.`;
	const table = {
		id: `${id}-table`,
		under: headingId,
		caption: `Alarms that start${chance} in 24 h, mean with its 95 % half-width (±), and the times when one starts with more than ${percentWords(likelyLevel)} in a half-hour.`,
	};
	const figure = chartFigure(html, strip, `Chance of alarms on ${dressing.id}`, caption);
	return section(html, id, "Likely alarms", headingId, figure, htmlTable(html, table, columns(clock), shown));
}

const columns = (clock: Clock): readonly Column<AlarmProjection>[] => [
	{ head: "Condition", written: ({ condition }) => conditionWords[condition] },
	{ head: "In 24 h", numeric: true, written: ({ byChance }, html) => aligned(html, byChance.meanPerDay, 3) },
	{ head: "±", numeric: true, written: ({ byChance }, html) => aligned(html, byChance.halfWidth95, 3) },
	{ head: "Likely times", written: ({ windows }) => windowWords(windows, clock) },
];

function windowWords(windows: AlarmProjection["windows"], clock: Clock): string {
	if (windows.length === 0) return "at no time in particular";
	const named = windows.slice(0, mostWindows).map(({ startMin, endMin, peakProbability }) => {
		return `${timeRange(startMin, endMin, clock)} (up to ${percentWords(peakProbability)})`;
	});
	const more = windows.length > mostWindows ? `, and ${windows.length - mostWindows} more` : "";
	return `${named.join(", ")}${more}`;
}
