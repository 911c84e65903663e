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
import {
	chanceWords,
	dayWordsAt,
	momentWords,
	moneyWords,
} from "./supply-answers.ts";

const number = (heading: string) => ({ heading, numeric: true });
const pieces = (value: number) => plainNumber(value, 0);
const spread = ({ mean, p10, p50, p90 }: CountSpread) => [
	plainNumber(mean, 1),
	pieces(p10),
	pieces(p50),
	pieces(p90),
];
/** '99.2 %', '>99.9 %': a share of the time, with a tenth of a percent. */
function shareWords(share: number): string {
	const text = plainNumber(share * 100, 1);
	return share < 1 && text === "100" ? ">99.9\u00A0%" : `${text}\u00A0%`;
}
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
			"On each order day, in whole packs, what it takes to last until the delivery of the next one, after the median use up to then. Beside it the chance of being out before that delivery, without the order and with it. Look at the shelf before it is sent.",
		columns: [
			{ heading: "Order by" },
			{ heading: "Item" },
			number("Packs of"),
			number("Pieces"),
			{ heading: "Expected on" },
			number(currency === "" ? "Cost" : `Cost, ${currency}`),
			{ heading: "Out by" },
			number("without it"),
			number("with it"),
			{ heading: "Sent" },
		],
		rows: orders.map((order) => [
			order.atMin === 0 ? "now" : momentWords(order.atMin, scenario),
			order.item,
			`${pieces(order.packs)} × ${pieces(order.packSize)}`,
			pieces(order.pieces),
			dayWordsAt(order.arrivesMin, scenario),
			order.cost === null ? "" : plainNumber(order.cost, 2),
			dayWordsAt(order.without.byMin, scenario),
			chanceWords(order.without.probability, scenario),
			chanceWords(order.with.probability, scenario),
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
		caption: `Pieces asked for in ${result.scenario.days} days, whether they were there or not, by what made them necessary; orders by the rules, from today's stock on.`,
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
				rule.origin === "given"
					? `${pieces(rule.reorder)} (given)`
					: `${pieces(rule.reorder)}${rule.low95 === null || rule.high95 === null ? "" : ` (${pieces(rule.low95)} to ${pieces(rule.high95)})`}`,
				pieces(rule.upTo),
				shareWords(rule.service),
				`${shareWords(rule.reached.mean)}${rule.reached.low95 === null || rule.reached.high95 === null ? "" : ` (${shareWords(rule.reached.low95)} to ${shareWords(rule.reached.high95)})`}`,
				shareWords(store.ready.mean),
				store.fillRate === null ? "" : shareWords(store.fillRate),
				[
					percentWords(store.stockOut.probability),
					` (${percentWords(store.stockOut.low)} to ${percentWords(store.stockOut.high)})`,
				]
					.join("")
					.replaceAll(" %", "\u00A0%"),
				`${pieces(text.reorder)}${text.service === null ? "" : ` (${shareWords(text.service)})`}`,
				rule.ladder
					.map(
						({ reorder, service }) =>
							`${pieces(reorder)}: ${shareWords(service)}`,
					)
					.join(", "),
			],
		];
	});
	const table = htmlTable(document, {
		id: "rules",
		caption:
			"When to order and up to what. Asked for is the share of the time with a piece on the shelf. A reorder point that is not given was sought on one half of the replications; in brackets those that would do as well as far as that half can tell (95 %, from the differences between its groups). Reached is the share on the other half, in the long run; then what it came to in this run, which begins with today's stock, and the share of pieces that were there when needed. Then the text-book reorder point (mean use until the delivery, and a safety stock for normal demand and the spread of the lead time) and others about the one in force, with the share of the time that each reaches.",
		columns: [
			{ heading: "Item" },
			{ heading: "Reorder at" },
			number("Order up to"),
			number("Asked for"),
			{ heading: "Reached" },
			number("In this run"),
			number("There when needed"),
			{ heading: "Ran out at least once" },
			{ heading: "Text-book reorder point" },
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
		caption: `Cost of the pieces that are needed in ${result.scenario.days} days, with stores that lack nothing, in ${cost.currency} at prices of ${cost.asOf}${cost.unpriced.length === 0 ? "" : `; without ${cost.unpriced.join(", ")}, which have no price`}. Beside it what is used with orders by the rules, from today's stock on: less where something runs out, since a therapy that is off uses nothing; and what expires there.`,
		columns: [
			{ heading: "Item" },
			number("Price"),
			...quantiles,
			number("By the rules (mean)"),
			number("Expired (mean)"),
		],
		rows: [
			...cost.items.map(({ item, price, used, expiredMean, needed }) => [
				item,
				plainNumber(price, 2),
				...[needed.mean, needed.p10, needed.p50, needed.p90].map((n) =>
					money(n * price),
				),
				money(used.mean * price),
				money(expiredMean * price),
			]),
			[
				"all",
				"",
				...[
					cost.totalNeeded.mean,
					cost.totalNeeded.p10,
					cost.totalNeeded.p50,
					cost.totalNeeded.p90,
				].map(money),
				money(
					cost.items.reduce(
						(sum, { used, price }) => sum + used.mean * price,
						0,
					),
				),
				money(
					cost.items.reduce(
						(sum, { expiredMean, price }) => sum + expiredMean * price,
						0,
					),
				),
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
			"The same patients under other regimens or with other sizes, with stores that lack nothing. Today's mix costs what is needed under 'Cost by item'. The difference is to it, with its 95 % half-width; variance saved is how much the same patients make it surer.",
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
		caption: `What is thrown away in ${result.scenario.days} days, with orders by the rules. Weight: pieces with a weight given, and liquid at 1 g/mL.`,
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
