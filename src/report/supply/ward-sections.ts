import type { CountSpread, SupplyResult } from "../../results/index.ts";
import { durationWords, percentWords, plainNumber, timeOfDay, volumeWords } from "../../words/index.ts";
import type { HtmlMaker } from "../kit/html-element.ts";
import { section } from "../kit/section.ts";
import { type Column, htmlTable, shownNumber } from "../kit/table.ts";
import { piecesWords, shownSpread } from "./spread-columns.ts";
import { countWords } from "./supply-words.ts";

/** Hands-on hours of the nurses by shift. */
export function nursesSection(html: HtmlMaker, { nurses, scenario }: SupplyResult): HTMLElement {
	const caption = "Hands-on hours of one shift, counted where the work was finished: alarms, rounds, dressing changes.";
	const midnight = { ...scenario, startClockMin: 0 };
	const columns: Column<(typeof nurses)[number]>[] = [
		{ head: "Shift from", written: ({ fromClockMin }) => timeOfDay(fromClockMin, midnight) },
		shownNumber("Nurses", ({ nurses: many }) => (many === null ? "no limit" : countWords(many))),
		...shownSpread<(typeof nurses)[number]>(
			({ hours }) => hours,
			(hours) => plainNumber(hours, 1),
		),
	];
	const table = htmlTable(html, { id: "nurses", caption }, columns, nurses);
	return section(html, "nurses", "Nurse hours by shift", null, table);
}

interface WasteRow {
	readonly name: string;
	readonly spread: CountSpread;
	readonly words: (value: number, name: keyof CountSpread) => string;
}

/** What is thrown away: liquid, solution, weight, expired pieces. */
export function wasteSection(html: HtmlMaker, { waste, items, scenario }: SupplyResult): HTMLElement {
	const volume = (volumeMl: number): string => volumeWords(volumeMl);
	const rows: WasteRow[] = [
		{ name: "liquid in canisters", spread: waste.liquidMl, words: volume },
		{ name: "unused solution", spread: waste.solutionMl, words: volume },
		{ name: "weight", spread: waste.weightKg, words: (kg) => `${plainNumber(kg, 0)} kg` },
		...items.flatMap(({ item, store }) =>
			store !== null && store.expired.mean > 0
				? [{ name: `expired: ${item}`, spread: store.expired, words: piecesWords }]
				: [],
		),
	];
	const caption = `What is thrown away in ${scenario.days} days, with orders by the rules. Weight: pieces with a weight given, and liquid at 1 g/mL.`;
	const columns: Column<WasteRow>[] = [
		{ head: "Waste", written: ({ name }) => name },
		...shownSpread<WasteRow>(
			({ spread }) => spread,
			(value, name, { words }) => words(value, name),
		),
	];
	return section(html, "waste", "Waste", null, htmlTable(html, { id: "waste", caption }, columns, rows));
}

/** Who comes, how long they stay, and the kinds of dressings they have. */
export function kindsSection(html: HtmlMaker, { scenario }: SupplyResult): HTMLElement {
	const { kinds, arrivalsPerWeek, meanLengthMin } = scenario;
	const all = kinds.reduce((sum, { share }) => sum + share, 0);
	const words = [
		arrivalsPerWeek === null ? "Nobody comes by chance." : `${plainNumber(arrivalsPerWeek, 1)} patients a week.`,
		meanLengthMin === null ? "" : `A therapy lasts ${durationWords(meanLengthMin)} on average.`,
	].join(" ");
	const table = htmlTable(
		html,
		{ id: "kinds", caption: "Kinds of dressings." },
		[
			{ head: "Kind", written: ({ id }) => id },
			{ head: "Share", numeric: true, written: ({ share }) => percentWords(share / all) },
			{ head: "Regimen", written: ({ regimen }) => regimen },
			{ head: "Canister", numeric: true, written: ({ canisterMl }) => volumeWords(canisterMl) },
			{
				head: "Solution",
				written: ({ sourceMl, solution }) => (sourceMl === null ? "none" : `${solution}, ${volumeWords(sourceMl)}`),
			},
		],
		kinds,
	);
	return section(html, "kinds", "Who is treated", null, html("p", {}, words), table);
}
