// Longer than most: one table after the other, in the order of the report, and nothing else.
import type { CountSpread, SupplyResult } from "../analysis/supply-result.ts";
import {
	durationWords,
	percentWords,
	plainNumber,
	timeOfDay,
	volumeWords,
} from "../charts/index.ts";
import { htmlElement, htmlTable } from "./html-element.ts";
import { section } from "./section.ts";
import { dayWordsAt, momentWords, moneyWords } from "./supply-answers.ts";

const number = (heading: string) => ({ heading, numeric: true });
const pieces = (value: number) => plainNumber(value, 0);
const spread = ({ mean, p10, p50, p90 }: CountSpread) => [
	plainNumber(mean, 1),
	pieces(p10),
	pieces(p50),
	pieces(p90),
];
const quantiles = ["Mean", "P10", "P50", "P90"].map(number);

/** The list to send: whole packs, dates, and room for a name. On paper a page of its own. */
export function orderSheet(result: SupplyResult, document: Document) {
	const { orders, scenario } = result;
	const element = htmlElement.bind(null, document);
	if (orders.length === 0)
		return section(
			document,
			"orders",
			"Order list",
			null,
			element("p", {}, "No order is due within the time shown."),
		);
	const currency = scenario.currency ?? "";
	const table = htmlTable(document, {
		id: "orders",
		caption:
			"What the order rules ask for on a median course of demand, in whole packs. Look at the shelf before it is sent.",
		columns: [
			{ heading: "Order by" },
			{ heading: "Item" },
			number("Packs"),
			number("Pieces in a pack"),
			number("Pieces"),
			{ heading: "Expected on" },
			number(currency === "" ? "Cost" : `Cost, ${currency}`),
			number("Out without it"),
			{ heading: "Sent" },
		],
		rows: orders.map((order) => [
			order.atMin === 0 ? "now" : momentWords(order.atMin, scenario),
			order.item,
			pieces(order.packs),
			pieces(order.packSize),
			pieces(order.pieces),
			dayWordsAt(order.arrivesMin, scenario),
			order.cost === null ? "" : plainNumber(order.cost, 2),
			`${percentWords(order.without.probability)} by ${dayWordsAt(order.without.byMin, scenario)}`,
			"",
		]),
	});
	const sign = element(
		"div",
		{ class: "paper-only" },
		element(
			"div",
			{ class: "sign" },
			element("span", {}, "Ordered by"),
			element("span", {}, "Date"),
			element("span", {}, "Delivery to"),
		),
	);
	return section(document, "orders", "Order list", null, table, sign);
}

/** Demand of the whole time by item and cause. */
export function demandSection(result: SupplyResult, document: Document) {
	const table = htmlTable(document, {
		id: "demand",
		caption: `Pieces asked for in ${result.scenario.days} days, by what made them necessary.`,
		columns: [
			{ heading: "Item" },
			{ heading: "Cause" },
			...quantiles,
			number("A week (mean)"),
		],
		rows: result.items.flatMap(({ item, demand }) =>
			[
				{ cause: "all", total: demand.total },
				...demand.causes.filter(({ total }) => total.mean > 0),
			].map(({ cause, total }) => [
				item,
				causeWords[cause] ?? cause,
				...spread(total),
				plainNumber((total.mean / result.scenario.days) * 7, 1),
			]),
		),
	});
	return section(document, "demand", "Demand by cause", null, table);
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

/** Order rules, beside what the text-book formula says. */
export function rulesSection(result: SupplyResult, document: Document) {
	const rows = result.items.flatMap(({ item, store }) => {
		if (store === null) return [];
		const { rule } = store;
		const text = rule.textBook;
		return [
			[
				item,
				`${pieces(rule.reorder)} (${rule.origin})`,
				pieces(rule.upTo),
				percentWords(rule.service),
				percentWords(store.ready.mean),
				store.fillRate === null ? "" : percentWords(store.fillRate),
				`${percentWords(store.stockOut.probability)} (${percentWords(store.stockOut.low)} to ${percentWords(store.stockOut.high)})`,
				`${pieces(text.reorder)}${text.service === null ? "" : ` (${percentWords(text.service)})`}`,
				rule.ladder
					.map(
						({ reorder, service }) =>
							`${pieces(reorder)}: ${plainNumber(service * 100, 1)} %`,
					)
					.join(", "),
			],
		];
	});
	const table = htmlTable(document, {
		id: "rules",
		caption:
			"When to order and up to what. Asked for is the share of the time with a piece on the shelf; beside it what it came to, and the share of pieces that were there when needed. Then the text-book reorder point (mean use until the delivery, and a safety stock for normal demand) and others about the one in force, with the share of the time that each comes to.",
		columns: [
			{ heading: "Item" },
			number("Reorder at"),
			number("Order up to"),
			number("Asked for"),
			number("On the shelf"),
			number("There when needed"),
			number("Ran out at least once"),
			number("Text-book reorder point"),
			{ heading: "Other reorder points" },
		],
		rows,
	});
	return section(document, "rules", "Order rules", null, table);
}

export function costSection(result: SupplyResult, document: Document) {
	const { cost } = result;
	const element = htmlElement.bind(null, document);
	if (cost === null)
		return section(
			document,
			"cost",
			"Cost",
			null,
			element(
				"p",
				{},
				"No prices are given: put price: on the items and prices: { currency: EUR, asOf: 2026-01 } into the scenario.",
			),
		);
	const money = (amount: number) => moneyWords(amount, cost.currency);
	const table = htmlTable(document, {
		id: "cost",
		caption: `Cost of the pieces used in ${result.scenario.days} days, in ${cost.currency} at prices of ${cost.asOf}${cost.unpriced.length === 0 ? "" : `; without ${cost.unpriced.join(", ")}, which have no price`}.`,
		columns: [
			{ heading: "Item" },
			number("Price"),
			...quantiles,
			number("Expired (mean)"),
		],
		rows: [
			...cost.items.map(({ item, price, used, expiredMean }) => [
				item,
				plainNumber(price, 2),
				...[used.mean, used.p10, used.p50, used.p90].map((n) =>
					money(n * price),
				),
				money(expiredMean * price),
			]),
			[
				"all, expired ones included",
				"",
				...[
					cost.total.mean,
					cost.total.p10,
					cost.total.p50,
					cost.total.p90,
				].map(money),
				"",
			],
		],
	});
	return section(document, "cost", "Cost by item", null, table);
}

/** Other regimens, canisters and bags for everybody, with the same patients. */
export function policiesSection(
	result: SupplyResult,
	document: Document,
): HTMLElement | null {
	const { policies, scenario } = result;
	if (policies.length === 0) return null;
	const currency = scenario.currency ?? "";
	const table = htmlTable(document, {
		id: "policies",
		caption:
			"The same patients under other regimens or with other sizes, with stores that lack nothing. The difference is to today's mix, with its 95 % half-width; variance saved is how much the same patients make it surer.",
		columns: [
			{ heading: "Policy" },
			number("Cost"),
			number("Difference"),
			number("Variance saved"),
			number("Nurse hours"),
			number("Difference, h"),
			{ heading: "Pieces used (mean)" },
		],
		rows: policies.map((policy) => {
			const { cost, difference, variance } = policy;
			return [
				policy.name,
				cost === null ? "" : moneyWords(cost.mean, currency),
				difference === null
					? ""
					: `${difference.mean > 0 ? "+" : ""}${moneyWords(difference.mean, currency)}${difference.halfWidth95 === null ? "" : ` ± ${moneyWords(difference.halfWidth95, currency)}`}`,
				variance === null || variance.independent === 0
					? ""
					: percentWords(
							Math.max(0, 1 - variance.paired / variance.independent),
						),
				plainNumber(policy.nurseHours.mean, 0),
				policy.nurseHoursDifference === null
					? ""
					: plainNumber(policy.nurseHoursDifference.mean, 0),
				policy.items
					.filter(({ used }) => used.mean > 0)
					.map(({ item, used }) => `${item}: ${plainNumber(used.mean, 0)}`)
					.join("; "),
			];
		}),
	});
	return section(document, "policies", "Other regimens and sizes", null, table);
}

export function nursesSection(result: SupplyResult, document: Document) {
	const table = htmlTable(document, {
		id: "nurses",
		caption:
			"Hands-on hours of one shift, counted where the work was finished: alarms, rounds, dressing changes.",
		columns: [{ heading: "Shift from" }, number("Nurses"), ...quantiles],
		rows: result.nurses.map(({ fromClockMin, nurses, hours }) => [
			timeOfDay(fromClockMin, { ...result.scenario, startClockMin: 0 }),
			nurses === null ? "no limit" : pieces(nurses),
			...[hours.mean, hours.p10, hours.p50, hours.p90].map((value) =>
				plainNumber(value, 1),
			),
		]),
	});
	return section(document, "nurses", "Nurse hours by shift", null, table);
}

export function wasteSection(result: SupplyResult, document: Document) {
	const { waste, items } = result;
	const row = (
		name: string,
		{ mean, p10, p50, p90 }: typeof waste.liquidMl,
		words: (value: number) => string,
	) => [name, words(mean), words(p10), words(p50), words(p90)];
	const expired = items.flatMap(({ item, store }) =>
		store !== null && store.expired.mean > 0
			? [[`expired: ${item}`, ...spread(store.expired)]]
			: [],
	);
	const table = htmlTable(document, {
		id: "waste",
		caption: `What is thrown away in ${result.scenario.days} days. Weight: pieces with a weight given, and liquid at 1 g/mL.`,
		columns: [{ heading: "Waste" }, ...quantiles],
		rows: [
			row("liquid in canisters", waste.liquidMl, volumeWords),
			row("unused solution", waste.solutionMl, volumeWords),
			row("weight", waste.weightKg, (kg) => `${plainNumber(kg, 0)} kg`),
			...expired,
		],
	});
	return section(document, "waste", "Waste", null, table);
}

export function kindsSection(result: SupplyResult, document: Document) {
	const { kinds, arrivalsPerWeek, meanLengthMin } = result.scenario;
	const all = kinds.reduce((sum, { share }) => sum + share, 0);
	const element = htmlElement.bind(null, document);
	const words = [
		arrivalsPerWeek === null
			? "Nobody comes by chance."
			: `${plainNumber(arrivalsPerWeek, 1)} patients a week.`,
		meanLengthMin === null
			? ""
			: `A therapy lasts ${durationWords(meanLengthMin)} on average.`,
	].join(" ");
	const table = htmlTable(document, {
		id: "kinds",
		caption: "Kinds of dressings.",
		columns: [
			{ heading: "Kind" },
			number("Share"),
			{ heading: "Regimen" },
			number("Canister"),
			{ heading: "Solution" },
		],
		rows: kinds.map((kind) => [
			kind.id,
			percentWords(kind.share / all),
			kind.regimen,
			volumeWords(kind.canisterMl),
			kind.sourceMl === null
				? "none"
				: `${kind.solution}, ${volumeWords(kind.sourceMl)}`,
		]),
	});
	return section(
		document,
		"kinds",
		"Who is treated",
		null,
		element("p", {}, words),
		table,
	);
}
