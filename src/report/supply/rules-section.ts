import type { SupplyResult } from "../../results/index.ts";
import { percentWords } from "../../words/index.ts";
import { type HtmlMaker, section, unbroken } from "../kit/html-element.ts";
import { type Column, htmlTable, numberColumn } from "../kit/table.ts";
import { bracketed, countWords, shareWords, short } from "./supply-words.ts";

export const stockedItems = ({ items }: SupplyResult) =>
	items.flatMap(({ item, store }) => (store === null ? [] : [{ item, store, rule: store.rule }]));

export type StockedItem = ReturnType<typeof stockedItems>[number];

/** Order rules and what they come to, beside what the text-book formula says: on screen, on paper and in `rules.csv`. */
export const ruleColumns: readonly Column<StockedItem>[] = [
	{ head: "Item", key: "item", value: ({ item }) => item },
	{ key: "origin", value: ({ rule }) => rule.origin },
	{
		head: "Reorder at",
		key: "reorder",
		value: ({ rule }) => rule.reorder,
		written: ({ rule: { origin, reorder, low95, high95 } }) =>
			`${countWords(reorder)}${origin === "given" ? " (given)" : bracketed(low95, high95, countWords)}`,
	},
	numberColumn("Order up to", "upTo", ({ rule }) => rule.upTo, countWords),
	numberColumn("Asked for", "service", ({ rule }) => rule.service, shareWords),
	{ key: "demandPerDay", value: ({ rule }) => short(rule.demandPerDay) },
	{ key: "demandSdPerDay", value: ({ rule }) => short(rule.demandSdPerDay) },
	{ key: "exposureDays", value: ({ rule }) => short(rule.exposureDays) },
	{ key: "textBookReorder", value: ({ rule }) => rule.textBook.reorder },
	{ key: "textBookService", value: ({ rule }) => short(rule.textBook.service) },
	{
		head: "Reached",
		written: ({ rule: { reached } }) =>
			`${shareWords(reached.mean)}${bracketed(reached.low95, reached.high95, shareWords)}`,
	},
	numberColumn("In this run", "ready", ({ store }) => store.ready.mean, shareWords, short),
	numberColumn("There when needed", "fillRate", ({ store }) => store.fillRate, shareWords, short),
	{
		head: "Ran out at least once",
		key: "stockOut",
		value: ({ store }) => short(store.stockOut.probability),
		written: ({ store: { stockOut } }) =>
			unbroken(`${percentWords(stockOut.probability)}${bracketed(stockOut.low, stockOut.high, percentWords)}`),
	},
	{ key: "low95", value: ({ store }) => short(store.stockOut.low) },
	{ key: "high95", value: ({ store }) => short(store.stockOut.high) },
	{
		head: "Text-book reorder point",
		written: ({ rule: { textBook } }) =>
			`${countWords(textBook.reorder)}${textBook.service === null ? "" : ` (${shareWords(textBook.service)})`}`,
	},
	{
		head: "Other reorder points",
		written: ({ rule }) =>
			rule.ladder.map(({ reorder, service }) => `${countWords(reorder)}: ${shareWords(service)}`).join(", "),
	},
	{ key: "short", value: ({ store }) => short(store.short.mean) },
	{ key: "substituted", value: ({ store }) => short(store.substituted.mean) },
	{ key: "offHours", value: ({ store }) => short(store.offHours.mean) },
	{ key: "expired", value: ({ store }) => short(store.expired.mean) },
	{ key: "reorderLow95", value: ({ rule }) => rule.low95 },
	{ key: "reorderHigh95", value: ({ rule }) => rule.high95 },
	{ key: "reorderOfOtherHalf", value: ({ rule }) => rule.otherHalf },
	{ key: "reached", value: ({ rule }) => short(rule.reached.mean) },
	{ key: "reachedLow95", value: ({ rule }) => short(rule.reached.low95) },
	{ key: "reachedHigh95", value: ({ rule }) => short(rule.reached.high95) },
];

export function rulesSection(html: HtmlMaker, result: SupplyResult): HTMLElement {
	const caption =
		"When to order and up to what. Asked for is the share of the time with a piece on the shelf. A reorder point that is not given was sought on one half of the replications; in brackets those that would do as well as far as that half can tell (95 %, from the differences between its groups). Reached is the share on the other half, in the long run; then what it came to in this run, which begins with today's stock, and the share of pieces that were there when needed. Then the text-book reorder point (mean use until the delivery, and a safety stock for normal demand and the spread of the lead time) and others about the one in force, with the share of the time that each reaches.";
	const table = htmlTable(html, { id: "rules", caption }, ruleColumns, stockedItems(result));
	return section(html, "rules", "Order rules", null, table);
}
