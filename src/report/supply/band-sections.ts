import { countBand } from "../../charts/index.ts";
import type { SupplyResult } from "../../results/index.ts";
import { dateAt, percentWords } from "../../words/index.ts";
import { chartFigure } from "../kit/chart-figure.ts";
import { csvTable } from "../kit/csv-table.ts";
import { type HtmlMaker, section } from "../kit/html-element.ts";
import { type StockedItem, stockedItems } from "./rules-section.ts";
import { dayWordsAt, filedSpread, orderWords, short, spreadAt } from "./supply-words.ts";

export interface SupplyDrawing {
	/** Width in px of their own grid. */
	readonly widthPx?: number;
	/** Draws one chart more, now or when there is time. */
	readonly later: (draw: () => void) => void;
}

const atOnce: SupplyDrawing = { later: (draw) => draw() };

const bandFigure = (html: HtmlMaker, chart: SVGSVGElement, caption: string): HTMLElement =>
	chartFigure(html, chart, `Chart: ${chart.querySelector("title")?.textContent ?? ""}`, caption);

/** What is on the shelf day by day, a chart an item. */
export function stockSection(html: HtmlMaker, result: SupplyResult, drawing = atOnce): HTMLElement {
	const items = stockedItems(result);
	const none = "Every item is of unlimited stock: write pieces instead of unlimited to see what is left.";
	const whole = section(html, "bands", "Stock", null, items.length === 0 ? none : null);
	for (const item of items) drawing.later(() => whole.append(stockFigure(html, result, item, drawing)));
	return whole;
}

function stockFigure(html: HtmlMaker, result: SupplyResult, { item, store }: StockedItem, drawing: SupplyDrawing) {
	const { scenario, orders, items } = result;
	const place = items.findIndex((one) => one.store === store);
	const reading = `Out at least once in ${percentWords(store.stockOut.probability)} of the replications; ${store.fillRate === null ? "nothing was asked for" : `${percentWords(store.fillRate)} of the pieces were there when needed`}.`;
	const deliveries = orders.filter((order) => order.item === item && order.arrivesMin < scenario.horizonMin);
	const data = {
		title: `Stock: ${item}`,
		clock: scenario,
		unit: "pieces on the shelf",
		firstDay: 0,
		series: store.onHand,
		levels: [{ value: store.rule.reorder, name: "reorder at" }],
		marks: deliveries.map((order) => ({
			atMin: order.arrivesMin,
			name: `delivery of ${orderWords(order)} on ${dayWordsAt(order.arrivesMin, scenario)}`,
		})),
		marked: "listed deliveries",
		reading,
	};
	const options = { idPrefix: `stock-${place + 1}`, styled: place === 0, widthPx: drawing.widthPx };
	const chart = countBand(data, html.document, options);
	const caption = `${reading} Each replication orders by the rules, as its own shelf falls; the order list, whose deliveries the triangles mark, is drawn up once for all of them. So the curve need not rise where a triangle stands.`;
	return bandFigure(html, chart, caption);
}

/** `stock.csv`: what is on the shelf day by day, and the chance of being out. */
export const stockCsv = (result: SupplyResult): string =>
	csvTable(
		[
			"item",
			{ key: "day", value: ({ place }) => place + 1 },
			{ key: "date", value: ({ place }) => dateAt(place * 1440, result.scenario) },
			...filedSpread<Pick<StockedItem, "store"> & { readonly place: number }>(({ store, place }) =>
				spreadAt(store.onHand, place),
			),
			{ key: "outOnDay", value: ({ store, place }) => short(store.outOnDay[place]) },
			{ key: "outByDay", value: ({ store, place }) => short(store.outByDay[place]) },
		],
		stockedItems(result).flatMap(({ item, store }) => store.onHand.mean.map((_, place) => ({ item, store, place }))),
	);

/** Patients with a unit day by day, from the warm-up on. */
export function bedsSection(html: HtmlMaker, { beds, scenario }: SupplyResult, drawing = atOnce): HTMLElement {
	const warm = beds.firstDay < 0;
	const reading = warm
		? "Left of the line is the warm-up: it is long enough where the band stands still before it."
		: "There is no warm-up: the patients of the first day are those that the scenario lists.";
	const data = {
		title: "Patients with a therapy unit",
		clock: scenario,
		unit: "patients",
		firstDay: beds.firstDay,
		series: beds.inBed,
		levels: scenario.units === null ? [] : [{ value: scenario.units, name: "units" }],
		marks: [],
		divide: warm ? { atMin: 0, name: "the count begins" } : undefined,
		reading,
	};
	const chart = countBand(data, html.document, { idPrefix: "beds", styled: false, widthPx: drawing.widthPx });
	return section(html, "beds", "Beds, and the warm-up", null, bandFigure(html, chart, reading));
}

/** `beds.csv`: the same, and who waits for a unit. */
export const bedsCsv = ({ beds: { firstDay, inBed, waiting }, scenario }: SupplyResult): string =>
	csvTable<{ readonly day: number; readonly place: number }>(
		[
			{ key: "day", value: ({ day }) => (day < 0 ? day : day + 1) },
			{ key: "date", value: ({ day }) => dateAt(day * 1440, scenario) },
			...filedSpread<{ readonly place: number }>(({ place }) => spreadAt(inBed, place), short, "inBed."),
			...filedSpread<{ readonly place: number }>(({ place }) => spreadAt(waiting, place), short, "waiting."),
		],
		inBed.mean.map((_, place) => ({ day: firstDay + place, place })),
	);
