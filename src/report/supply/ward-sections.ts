import type { CountSpread, SupplyResult } from "../../results/index.ts";
import { clockWords, durationWords, percentWords, plainNumber, volumeWords } from "../../words/index.ts";
import { type HtmlMaker, section } from "../kit/html-element.ts";
import { type Column, htmlTable, shownNumber } from "../kit/table.ts";
import { stockedItems } from "./rules-section.ts";
import { countWords, piecesWords, shownSpread } from "./supply-words.ts";

export function nursesSection(html: HtmlMaker, { nurses }: SupplyResult): HTMLElement {
	const caption = "Hands-on hours of one shift, counted where the work was finished: alarms, rounds, dressing changes.";
	type Row = (typeof nurses)[number];
	const hoursWords = (hours: number) => plainNumber(hours, 1);
	const columns: Column<Row>[] = [
		{ head: "Shift from", written: ({ fromClockMin }) => clockWords(fromClockMin) },
		shownNumber("Nurses", ({ nurses: many }) => (many === null ? "no limit" : countWords(many))),
		...shownSpread<Row>(({ hours }) => hours, hoursWords),
	];
	const table = htmlTable(html, { id: "nurses", caption }, columns, nurses);
	return section(html, "nurses", "Nurse hours by shift", null, table);
}

interface WasteRow {
	readonly name: string;
	readonly spread: CountSpread;
	readonly words: typeof piecesWords;
}

/** What is thrown away: liquid, solution, weight, expired pieces. */
export function wasteSection(html: HtmlMaker, result: SupplyResult): HTMLElement {
	const { waste, scenario } = result;
	const rows: WasteRow[] = [
		{ name: "liquid in canisters", spread: waste.liquidMl, words: volumeWords },
		{ name: "unused solution", spread: waste.solutionMl, words: volumeWords },
		{ name: "weight", spread: waste.weightKg, words: (kg) => `${plainNumber(kg, 0)} kg` },
		...stockedItems(result)
			.filter(({ store }) => store.expired.mean > 0)
			.map(({ item, store }) => ({ name: `expired: ${item}`, spread: store.expired, words: piecesWords })),
	];
	const caption = `What is thrown away in ${scenario.days} days, with orders by the rules. Weight: pieces with a weight given, and liquid at 1 g/mL.`;
	const written = (value: number, name: keyof CountSpread, { words }: WasteRow) => words(value, name);
	const columns: Column<WasteRow>[] = [
		{ head: "Waste", written: ({ name }) => name },
		...shownSpread<WasteRow>(({ spread }) => spread, written),
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
	const columns: Column<(typeof kinds)[number]>[] = [
		{ head: "Kind", written: ({ id }) => id },
		shownNumber("Share", ({ share }) => percentWords(share / all)),
		{ head: "Regimen", written: ({ regimen }) => regimen },
		shownNumber("Canister", ({ canisterMl }) => volumeWords(canisterMl)),
		{
			head: "Solution",
			written: ({ sourceMl: ml, solution }) => (ml === null ? "none" : `${solution}, ${volumeWords(ml)}`),
		},
	];
	const table = htmlTable(html, { id: "kinds", caption: "Kinds of dressings." }, columns, kinds);
	return section(html, "kinds", "Who is treated", null, html("p", {}, words), table);
}
