import type { DayResult } from "../analysis/day-result.ts";
import { clockTime, waterLineChart, waterLineLegend } from "../charts/index.ts";
import { answers } from "./answers.ts";
import { cautionInALine, dressingCautions } from "./caution.ts";
import {
	type ClockRow,
	clockData,
	clockRows,
	rowTimes,
	sheetEndMin,
} from "./clock-table.ts";
import { drawnWords } from "./drawn-words.ts";
import {
	answerData,
	type DressingParts,
	headingOf,
	headingWords,
	idOf,
} from "./dressing-parts.ts";
import { dressingLine, regimenLine } from "./dressing-words.ts";
import {
	htmlElement,
	htmlTable,
	sentenceNodes,
	unbroken,
} from "./html-element.ts";
import { roundShare } from "./round-share.ts";
import { section } from "./section.ts";

const mostOnSheet = 14;
const mostLater = 120;

/** Parts 1 to 4 of a dressing: who and what, answers, what happens next, the water line; on paper the first page of it. */
export function sheetSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement {
	const { scenario } = result;
	const element = htmlElement.bind(null, document);
	const several = scenario.dressings.length > 1;
	const paperHead = several
		? element(
				"p",
				{ class: "paper-only" },
				`${scenario.title}. ${cautionInALine}`,
			)
		: null;
	return element(
		"div",
		{ class: "sheet", style: `--head:${headMm(result)}mm` },
		paperHead,
		element("h2", { id: headingOf(parts) }, headingWords(parts)),
		element(
			"p",
			{},
			unbroken(
				`${capital(regimenLine(parts.summary, scenario, true, parts.day.schedule.takeovers))}.`,
			),
		),
		...dressingCautions(result, parts.summary.id, document),
		element(
			"p",
			{ class: "facts" },
			unbroken(`${capital(dressingLine(parts.summary))}.`),
		),
		element(
			"div",
			{ class: "pair" },
			answersSection(result, parts, document),
			clockSection(result, parts, document),
		),
		chartSection(result, parts, document),
		signature(document),
	);
}

/** Height of what stands above a sheet on its page of paper: title, facts and caution with one dressing, a rule with several. */
function headMm(result: DayResult): number {
	if (result.scenario.dressings.length > 1) return 8;
	const lettersALine = 62;
	return 26 + 6.4 * Math.ceil(result.scenario.title.length / lettersALine);
}

const capital = (text: string): string =>
	`${text.charAt(0).toUpperCase()}${text.slice(1)}`;

function answersSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement {
	const sentences = answers(answerData(result, parts));
	const items = sentences.map((sentence) =>
		htmlElement(document, "li", {}, ...sentenceNodes(document, sentence)),
	);
	return section(
		document,
		`${idOf(parts)}-answers`,
		"Answers",
		headingOf(parts),
		htmlElement(document, "ul", {}, ...items),
	);
}

/** What comes next, as a table; later rows are folded away. */
export function clockSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement {
	const { scenario } = result;
	const id = `${idOf(parts)}-clock`;
	const under = headingOf(parts);
	const rows = clockRows(clockData(result, parts));
	const endMin = sheetEndMin(scenario);
	const first = rows.filter((row) => row.atMin < endMin).slice(0, mostOnSheet);
	const later = rows.slice(first.length, first.length + mostLater);
	const left = rows.length - first.length - later.length;
	const until = clockTime(Math.min(endMin, scenario.horizonMin), scenario);
	const caption = `What comes next, until ${until}, where nothing comes between; a fill that chance moves by more than 5 min says so.`;
	const more = left > 0 ? `, then ${left} more in schedule.csv` : "";
	const details =
		later.length === 0
			? null
			: htmlElement(
					document,
					"details",
					{},
					htmlElement(
						document,
						"summary",
						{},
						`Later: ${later.length} rows${more}`,
					),
					table(
						document,
						{ id: `${id}-later`, under },
						"What comes later.",
						later,
						result,
					),
				);
	return section(
		document,
		id,
		"On the clock",
		headingOf(parts),
		table(document, { id: `${id}-next`, under }, caption, first, result),
		details,
	);
}

function table(
	document: Document,
	ids: { readonly id: string; readonly under: string },
	caption: string,
	rows: readonly ClockRow[],
	result: DayResult,
): HTMLElement {
	const times = rowTimes(rows, result.scenario);
	return htmlTable(document, {
		...ids,
		caption,
		stacks: true,
		columns: [
			{ heading: "Time" },
			{ heading: "What" },
			{ heading: "Volume", numeric: true },
			{ heading: "Look at" },
		],
		rows: rows.map((row, index) => [
			times[index] ?? "",
			row.what,
			row.volume,
			row.look,
		]),
	});
}

function chartSection(
	result: DayResult,
	parts: DressingParts,
	document: Document,
): HTMLElement {
	const { scenario, projection } = result;
	const id = idOf(parts);
	const chart = waterLineChart(
		{
			title: parts.summary.id,
			clock: scenario,
			dressing: parts.summary,
			day: parts.day,
			projection: parts.projection,
			replications: projection.replications,
			roundShare: roundShare(result),
		},
		document,
		{ idPrefix: `${id}-water`, styled: false, titled: false },
	);
	const region = {
		class: "scroll",
		role: "region",
		tabindex: "0",
		"aria-label": `Water-line chart of ${parts.summary.id}`,
	};
	const legend = waterLineLegend({
		...projection,
		projection: parts.projection,
	});
	const drawn =
		projection.replications > 1
			? ` ${drawnWords(result)} The band and the change times come from all ${projection.replications}.`
			: "";
	const caption = htmlElement(document, "figcaption", {}, `${legend}${drawn}`);
	const figure = htmlElement(
		document,
		"figure",
		{},
		htmlElement(document, "div", region, chart),
		caption,
	);
	return section(
		document,
		`${id}-line`,
		"Water line",
		headingOf(parts),
		figure,
	);
}

/** Room for names and times by hand; on paper only. */
function signature(document: Document): HTMLElement {
	const places = ["Handed over by", "at (time)", "Taken over by", "at (time)"];
	const spans = places.map((place) => htmlElement(document, "span", {}, place));
	return htmlElement(
		document,
		"div",
		{ class: "paper-only" },
		htmlElement(document, "div", { class: "sign" }, ...spans),
	);
}
