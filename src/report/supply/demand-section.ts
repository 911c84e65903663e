import type { CountSeries, SupplyResult } from "../../results/index.ts";
import { dateAt, plainNumber } from "../../words/index.ts";
import { csvTable } from "../kit/csv-table.ts";
import { type HtmlMaker, section } from "../kit/html-element.ts";
import { type Column, htmlTable, shownNumber } from "../kit/table.ts";
import { filedSpread, piecesWords, shownSpread, spreadAt } from "./supply-words.ts";

/** All that is asked of each item, then the same cause by cause. */
const byCause = ({ items }: SupplyResult) =>
	items.flatMap(({ item, demand }) => [
		{ item, cause: "all", ...demand },
		...demand.causes.map((one) => ({ item, ...one })),
	]);

type DemandRow = ReturnType<typeof byCause>[number];

export function demandSection(html: HtmlMaker, result: SupplyResult): HTMLElement {
	const { days } = result.scenario;
	const caption = `Pieces asked for in ${days} days, whether they were there or not, by what made them necessary; orders by the rules, from today's stock on.`;
	const columns: Column<DemandRow>[] = [
		{ head: "Item", written: ({ item }) => item },
		{ head: "Cause", written: ({ cause }) => causeWords[cause] ?? cause },
		...shownSpread<DemandRow>(({ total }) => total, piecesWords),
		shownNumber("A week (mean)", ({ total }) => plainNumber((total.mean / days) * 7, 1)),
	];
	const rows = byCause(result).filter(({ cause, total }) => cause === "all" || total.mean > 0);
	return section(html, "demand", "Demand by cause", null, htmlTable(html, { id: "demand", caption }, columns, rows));
}

const causeWords: Readonly<Record<string, string>> = {
	all: "all causes",
	start: "start of a therapy",
	"at-capacity": "canister at capacity",
	round: "changed at a round",
	empty: "source empty",
	expired: "source hung long enough",
	"dressing-change": "dressing change",
	clogged: "port clogged",
};

/** `demand-by-day.csv` and `demand-by-week.csv`: the same over the time. */
export function demandCsv(result: SupplyResult, by: "days" | "weeks"): string {
	const [one, minutes] = by === "days" ? ["day", 1440] : ["week", 10_080];
	return csvTable(
		[
			"item",
			"cause",
			{ key: one, value: ({ place }) => place + 1 },
			{ key: "from", value: ({ place }) => dateAt(place * minutes, result.scenario) },
			...filedSpread<{ readonly series: CountSeries; readonly place: number }>(({ series, place }) =>
				spreadAt(series, place),
			),
		],
		byCause(result).flatMap(({ item, cause, [by]: series }) =>
			series.mean.map((_, place) => ({ item, cause, series, place })),
		),
	);
}
