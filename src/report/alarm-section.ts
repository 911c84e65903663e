import type { DayResult } from "../analysis/day-result.ts";
import {
	type Clock,
	conditionWords,
	heatStrip,
	percentWords,
	shownConditions,
	timeRange,
} from "../charts/index.ts";
import { type DressingParts, headingOf, idOf } from "./dressing-parts.ts";
import { htmlElement, htmlTable } from "./html-element.ts";
import { section } from "./section.ts";
import { aligned } from "./totals-table.ts";

/** Above this chance in a half-hour an alarm counts as likely there. */
export const likelyLevel = 0.05;
const mostWindows = 6;

/** When alarms are likely: the strip by half-hour and condition, and the same in words. */
export function alarmSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement {
	const id = `${idOf(parts)}-alarms`;
	const { alarms } = parts.projection;
	const { scenario } = result;
	const isListed = scenario.happenings.some(
		({ dressing }) => dressing === parts.summary.id,
	);
	const chance = isListed ? " by chance" : "";
	const shown = shownConditions(alarms);
	if (shown.length === 0) {
		const none = `No alarm came${chance} in ${result.projection.replications === 1 ? "the one replication" : `any of ${result.projection.replications} replications`}.`;
		return section(
			document,
			id,
			"Likely alarms",
			headingOf(parts),
			htmlElement(document, "p", {}, none),
		);
	}
	const title = `${parts.summary.id}: when an alarm is likely`;
	const strip = heatStrip(
		{ title, clock: scenario, alarms, level: likelyLevel },
		document,
		{
			idPrefix: `${id}-strip`,
			styled: false,
			titled: false,
		},
	);
	const region = {
		class: "scroll",
		role: "region",
		tabindex: "0",
		"aria-label": `Chance of alarms on ${parts.summary.id}`,
	};
	const caption = `Chance that at least one alarm of the condition starts in the time of a cell.${isListed ? " What the scenario lists brings no cell." : ""} Where half-hours are merged they are taken as independent.`;
	const figure = htmlElement(
		document,
		"figure",
		{},
		htmlElement(document, "div", region, strip),
		htmlElement(document, "figcaption", {}, caption),
	);
	const table = htmlTable(document, {
		id: `${id}-table`,
		under: headingOf(parts),
		caption: `Alarms that start${chance} in 24 h, mean with its 95 % half-width (±), and the times when one starts with more than ${percentWords(likelyLevel)} in a half-hour.`,
		columns: [
			{ heading: "Condition" },
			{ heading: "In 24 h", numeric: true },
			{ heading: "±", numeric: true },
			{ heading: "Likely times" },
		],
		rows: shown.map((alarm) => [
			conditionWords[alarm.condition],
			aligned(document, alarm.byChance.meanPerDay, 3),
			alarm.byChance.halfWidth95 === null
				? ""
				: aligned(document, alarm.byChance.halfWidth95, 3),
			windowWords(alarm.windows, scenario),
		]),
	});
	return section(
		document,
		id,
		"Likely alarms",
		headingOf(parts),
		figure,
		table,
	);
}

function windowWords(
	windows: DayResult["projection"]["dressings"][number]["alarms"][number]["windows"],
	clock: Clock,
): string {
	if (windows.length === 0) return "at no time in particular";
	const named = windows
		.slice(0, mostWindows)
		.map(
			(window) =>
				`${timeRange(window.startMin, window.endMin, clock)} (up to ${percentWords(window.peakProbability)})`,
		);
	const more =
		windows.length > mostWindows
			? `, and ${windows.length - mostWindows} more`
			: "";
	return `${named.join(", ")}${more}`;
}
