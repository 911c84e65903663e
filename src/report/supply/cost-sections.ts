import type { CostResult, CountSpread, PolicyResult, SupplyResult } from "../../results/index.ts";
import { percentWords } from "../../words/index.ts";
import { type HtmlMaker, section } from "../kit/html-element.ts";
import { type Column, htmlTable, numberColumn, shownNumber } from "../kit/table.ts";
import { cents, countWords, filedSpread, moneyWords, priceWords, shownSpread } from "./supply-words.ts";

/** What an item comes to, in money; the sum of all has no price of its own. */
type CostRow = Omit<CostResult["items"][number], "price"> & { readonly price: number | null };

const times = ({ mean, p10, p50, p90 }: CountSpread, price: number): CountSpread => ({
	mean: mean * price,
	p10: p10 * price,
	p50: p50 * price,
	p90: p90 * price,
});

export const costRows = ({ items }: CostResult): CostRow[] =>
	items.map((item) => ({
		...item,
		used: times(item.used, item.price),
		expiredMean: item.expiredMean * item.price,
		needed: times(item.needed, item.price),
	}));

/** Cost by item: on screen, on paper and in `cost.csv`. */
export function costColumns({ currency, asOf }: Pick<CostResult, "currency" | "asOf">): readonly Column<CostRow>[] {
	const money = (amount: number): string => moneyWords(amount, currency);
	return [
		{ head: "Item", key: "item", value: ({ item }) => item },
		{ key: "currency", value: () => currency },
		{ key: "asOf", value: () => asOf },
		numberColumn("Price", "price", ({ price }) => price, priceWords),
		...shownSpread<CostRow>(({ needed }) => needed, money),
		...filedSpread<CostRow>(({ used }) => used, cents),
		shownNumber("By the rules (mean)", ({ used }) => money(used.mean)),
		numberColumn("Expired (mean)", "expiredMean", ({ expiredMean }) => expiredMean, money, cents),
		...filedSpread<CostRow>(({ needed }) => needed, cents, "needed."),
	];
}

export function costSection(html: HtmlMaker, { cost, scenario }: SupplyResult): HTMLElement {
	const none =
		"No prices are given: put price: on the items and prices: { currency: EUR, asOf: 2026-01 } into the scenario.";
	if (cost === null) return section(html, "cost", "Cost", null, none);
	const rows = costRows(cost);
	const all: CostRow = {
		item: "all",
		price: null,
		used: { ...cost.total, mean: rows.reduce((sum, { used }) => sum + used.mean, 0) },
		expiredMean: rows.reduce((sum, { expiredMean }) => sum + expiredMean, 0),
		needed: cost.totalNeeded,
	};
	const unpriced = cost.unpriced.length === 0 ? "" : `; without ${cost.unpriced.join(", ")}, which have no price`;
	const caption = `Cost of the pieces that are needed in ${scenario.days} days, with stores that lack nothing, in ${cost.currency} at prices of ${cost.asOf}${unpriced}. Beside it what is used with orders by the rules, from today's stock on: less where something runs out, since a therapy that is off uses nothing; and what expires there.`;
	const table = htmlTable(html, { id: "cost", caption }, costColumns(cost), [...rows, all]);
	return section(html, "cost", "Cost by item", null, table);
}

/** Other regimens, canisters and bags for everybody, with the same patients. */
export function policiesSection(html: HtmlMaker, { policies, scenario }: SupplyResult): HTMLElement | null {
	if (policies.length === 0) return null;
	const caption =
		"The same patients under other regimens or with other sizes, with stores that lack nothing. Today's mix costs what is needed under 'Cost by item'. The difference is to it, with its 95 % half-width; variance saved is how much the same patients make it surer.";
	const money = (amount: number): string => moneyWords(amount, scenario.currency ?? "");
	const columns: Column<PolicyResult>[] = [
		{ head: "Policy", written: ({ name }) => name },
		shownNumber("Cost", ({ cost }) => (cost === null ? "" : money(cost.mean))),
		shownNumber("Difference", ({ difference }) => differenceWords(difference, money)),
		shownNumber("Variance saved", ({ variance }) => savedWords(variance)),
		shownNumber("Nurse hours", ({ nurseHours }) => countWords(nurseHours.mean)),
		shownNumber("Difference, h", ({ nurseHoursDifference: hours }) => (hours === null ? "" : countWords(hours.mean))),
		{ head: "Pieces used (mean)", written: ({ items }) => usedWords(items) },
	];
	const table = htmlTable(html, { id: "policies", caption }, columns, policies);
	return section(html, "policies", "Other regimens and sizes", null, table);
}

function savedWords(variance: PolicyResult["variance"]): string {
	if (variance === null || variance.independent === 0) return "";
	return percentWords(Math.max(0, 1 - variance.paired / variance.independent));
}

const usedWords = (items: PolicyResult["items"]): string =>
	items
		.filter(({ used }) => used.mean > 0)
		.map(({ item, used }) => `${item}: ${countWords(used.mean)}`)
		.join("; ");

function differenceWords(difference: PolicyResult["difference"], money: (amount: number) => string): string {
	if (difference === null) return "";
	const { mean, halfWidth95 } = difference;
	return `${mean > 0 ? "+" : ""}${money(mean)}${halfWidth95 === null ? "" : ` ± ${money(halfWidth95)}`}`;
}
