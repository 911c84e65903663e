import type { PlannedOrder, SupplyResult } from "../../results/index.ts";
import { dateAt, dateTimeAt, measureHeading } from "../../words/index.ts";
import { type HtmlMaker, handwritten, section } from "../kit/html-element.ts";
import { type Column, htmlTable, numberColumn, shownNumber } from "../kit/table.ts";
import { chanceWords, countWords, dayWordsAt, momentWords, priceWords, short } from "./supply-words.ts";

/** The order list: on screen, on paper and in `orders.csv`. */
export function orderColumns(scenario: SupplyResult["scenario"]): readonly Column<PlannedOrder>[] {
	const chance = (probability: number): string => chanceWords(probability, scenario);
	return [
		{ head: "Order by", written: ({ atMin }) => (atMin === 0 ? "now" : momentWords(atMin, scenario)) },
		{ head: "Item", key: "item", value: ({ item }) => item },
		{ key: "orderAt", value: ({ atMin }) => dateTimeAt(atMin, scenario) },
		{ key: "arrives", value: ({ arrivesMin }) => dateTimeAt(arrivesMin, scenario) },
		shownNumber("Packs of", ({ packs, packSize }) => `${countWords(packs)} × ${countWords(packSize)}`),
		{ key: "packs", value: ({ packs }) => packs },
		{ key: "packSize", value: ({ packSize }) => packSize },
		numberColumn("Pieces", "pieces", ({ pieces }) => pieces, countWords),
		{ head: "Expected on", written: ({ arrivesMin }) => dayWordsAt(arrivesMin, scenario) },
		numberColumn(measureHeading("Cost", scenario.currency ?? ""), "cost", ({ cost }) => cost, priceWords),
		{ key: "currency", value: ({ cost }) => (cost === null ? null : scenario.currency) },
		{
			head: "Out by",
			key: "outWithoutItBy",
			value: ({ without }) => dateAt(without.byMin, scenario),
			written: ({ without }) => dayWordsAt(without.byMin, scenario),
		},
		numberColumn("without it", "probability", ({ without }) => without.probability, chance, short),
		numberColumn("with it", "probabilityWithIt", (order) => order.with.probability, chance, short),
		{ head: "Sent", written: () => "" },
		{ key: "positionBefore", value: ({ position }) => position },
	];
}

/** The list to send: whole packs, dates, and room for a name. On paper a page of its own. */
export function orderSheet(html: HtmlMaker, { orders, scenario }: SupplyResult): HTMLElement {
	if (orders.length === 0) return section(html, "orders", "Order list", null, "No order is due within the time shown.");
	const caption =
		"On each order day, in whole packs, what it takes to last until the delivery of the next one, after the median use up to then. Beside it the chance of being out before that delivery, without the order and with it. Look at the shelf before it is sent.";
	const table = htmlTable(html, { id: "orders", caption }, orderColumns(scenario), orders);
	return section(html, "orders", "Order list", null, table, handwritten(html, ["Ordered by", "Date", "Delivery to"]));
}
