import type {
	CountSeries,
	CountSpread,
	ItemSupply,
	PlannedOrder,
	StoreResult,
	SupplyResult,
} from "../../../src/analysis/supply-result.ts";
import type { WardScenario } from "../../../src/scenario/index.ts";
import {
	type Catalogue,
	type CellSaid,
	type Entry,
	entry,
	fixedWords,
} from "../check.ts";
import { fixed } from "../holes.ts";
import { type Listed, listed, type Said } from "../pattern.ts";
import { placed } from "../scope.ts";
import { capital } from "../vocabulary.ts";
import {
	assumptionsTable,
	cautionsOfAll,
	raisedCautions,
	sourcesWords,
} from "./common.ts";

export interface SupplyScope {
	readonly scenario: WardScenario;
	readonly result: SupplyResult;
}

type Stocked = ItemSupply & { readonly store: StoreResult };

const stocked = ({ result }: SupplyScope): Stocked[] =>
	result.items.filter((item): item is Stocked => item.store !== null);

const currency = ({ result }: SupplyScope): string =>
	result.scenario.currency ?? "";

/** '4 packs of canister 1000 mL', '12 × suction port'. */
const orderSaid = (order: PlannedOrder): Said =>
	order.packSize === 1
		? ["{n} × {text}", order.pieces, order.item]
		: ["{count:pack} of {text}", fixed(order.packs, 0), order.item];

/** '1 in 6', '62 in 100', or that it is next to nothing or next to certain. */
function chanceSaid(probability: number): Said {
	if (probability < 0.01) return ["less than 1 in 100"];
	if (probability > 0.99) return ["more than 99 in 100"];
	return probability > 0.5
		? ["{n} in 100", 100 * probability]
		: ["1 in {n}", 1 / probability];
}

const money = (scope: SupplyScope, amount: number): Said => [
	"{money} {text}",
	amount,
	currency(scope),
];

/** The first order of each item, the soonest and likeliest to be missed first. */
function firstOrders({ result }: SupplyScope): PlannedOrder[] {
	const seen = new Set<string>();
	return result.orders
		.filter(({ item }) => {
			const first = !seen.has(item);
			seen.add(item);
			return first;
		})
		.toSorted(
			(a, b) =>
				a.atMin - b.atMin || b.without.probability - a.without.probability,
		);
}

const whenSaid = (order: PlannedOrder): Said =>
	order.atMin === 0 ? ["now"] : ["by {date} {time}", order.atMin, order.atMin];

const weeks = ({ result: { scenario } }: SupplyScope): Said =>
	scenario.days % 7 === 0
		? ["{count:week}", fixed(scenario.days / 7, 0)]
		: ["{n} days", scenario.days];

/** Items that run out most often: all of them, where they are level. */
function worst(scope: SupplyScope): Stocked[] {
	const all = stocked(scope);
	const most = Math.max(...all.map(({ store }) => store.stockOut.probability));
	return all.filter(({ store }) => store.stockOut.probability === most);
}

/** Demand of the week in the middle, P10 to P90, by item. */
function weeklySaid({
	result,
}: SupplyScope): readonly [Listed, Listed | undefined] {
	const items = result.items
		.filter(({ demand }) => demand.total.mean > 0)
		.map(({ item, demand: { weeks: week } }): Said => {
			const middle = Math.floor((week.p50.length - 1) / 2);
			return [
				"{between} × {text}",
				[week.p10[middle] ?? 0, week.p90[middle] ?? 0],
				item,
			];
		});
	return [
		listed(items.slice(0, 2), " and "),
		items.length > 2 ? listed(items.slice(2), "; ") : undefined,
	];
}

const answers: Entry<SupplyScope>[] = [
	fixedWords("Answers"),
	fixedWords(
		"No order is due within the time shown.",
		({ result }) => result.orders.length === 0,
	),
	entry(
		"Order {said} {said}; without it the chance of running out by {date} is {said}.",
		(scope) =>
			firstOrders(scope)
				.slice(0, 4)
				.map((order) => [
					orderSaid(order),
					whenSaid(order),
					order.without.byMin,
					chanceSaid(order.without.probability),
				]),
	),
	entry("Later: {said}.", (scope) => {
		const others = firstOrders(scope).slice(4);
		return others.length === 0
			? []
			: [
					[
						listed(
							others.map(
								(order): Said => [
									"{said} by {date}",
									orderSaid(order),
									order.atMin,
								],
							),
							"; ",
						),
					],
				];
	}),
	entry(
		"With orders that follow these rules nothing ran out in any of the {n} replications of {said}.",
		(scope) =>
			stocked(scope).length > 0 &&
			worst(scope)[0]?.store.stockOut.probability === 0
				? [[scope.result.scenario.replications, weeks(scope)]]
				: [],
	),
	entry(
		"If orders go on following these rules, the item most likely to run out is {text}: {percent} ({percent} to {percent}) over {said}[[; therapy lost to it: {n} h on average]].",
		(scope) => {
			const all = worst(scope);
			const [first] = all;
			if (
				all.length !== 1 ||
				first === undefined ||
				first.store.stockOut.probability === 0
			)
				return [];
			const { stockOut, offHours } = first.store;
			return [
				[
					first.item,
					stockOut.probability,
					stockOut.low,
					stockOut.high,
					weeks(scope),
					offHours.mean > 0.05 ? fixed(offHours.mean, 1) : undefined,
				],
			];
		},
	),
	entry("A week takes {said}[[; {said}]].", (scope) => [
		[...weeklySaid(scope)],
	]),
	entry(
		"In use on average: {n}[[ of {n}]] units; hardly anybody waits for one.",
		(scope) => (waitMean(scope) < 1 ? [unitsValues(scope)] : []),
	),
	entry(
		"In use on average: {n}[[ of {n}]] units; {percent} of the patients wait for one, {n} h on average over all.",
		(scope) =>
			waitMean(scope) < 1
				? []
				: [
						[
							...unitsValues(scope),
							scope.result.beds.shareWaited,
							fixed(waitMean(scope) / 60, 1),
						],
					],
	),
	entry("{n} are treated elsewhere.", ({ result: { beds } }) =>
		beds.turnedAway.mean > 0 ? [[fixed(beds.turnedAway.mean, 1)]] : [],
	),
	entry(
		"Used and expired pieces cost {said} (between {said} and {said}), at prices of {text}.",
		(scope) => {
			const { cost } = scope.result;
			return cost === null
				? []
				: [
						[
							money(scope, cost.total.p50),
							money(scope, cost.total.p10),
							money(scope, cost.total.p90),
							cost.asOf,
						],
					];
		},
	),
	entry(
		"{text} instead of today's mix: {text} {said}[[ (± {said}, the same patients)]].",
		(scope) =>
			scope.result.cost === null
				? []
				: scope.result.policies
						.slice(1)
						.flatMap(({ name, difference }) =>
							difference === null
								? []
								: [
										[
											capital(name),
											difference.mean < 0 ? "saves" : "adds",
											money(scope, Math.abs(difference.mean)),
											difference.halfWidth95 === null
												? undefined
												: money(scope, difference.halfWidth95),
										],
									],
						),
	),
	entry(
		"Thrown away: {ml} of liquid in canisters and {ml} of unused solution, {n} kg in all[[ (without {text}, which have no weight given)]].",
		({ result: { waste } }) => [
			[
				waste.liquidMl.p50,
				waste.solutionMl.p50,
				waste.weightKg.p50,
				waste.unweighed.length === 0 ? undefined : waste.unweighed.join(", "),
			],
		],
	),
];

const waitMean = ({ result }: SupplyScope): number =>
	result.beds.meanWaitMin.mean;

const unitsValues = ({ result }: SupplyScope): unknown[] => [
	fixed(result.beds.meanInBed.mean, 1),
	result.scenario.units ?? undefined,
];

const headings = [
	"The stores",
	"Order list",
	"Ordered by",
	"Date",
	"Delivery to",
	"Stock",
	"Demand by cause",
	"Order rules",
	"Nurse hours by shift",
	"Waste",
	"Who is treated",
	"Kinds of dressings.",
	"Beds, and the warm-up",
	"Hands-on hours of one shift, counted where the work was finished: alarms, rounds, dressing changes.",
	"Trace of the first replication",
];

const readingSaid = ({ store }: Stocked): Said => [
	"Out at least once in {percent} of the replications; [[{text}]][[{percent} of the pieces were there when needed]].",
	store.stockOut.probability,
	store.fillRate === null ? "nothing was asked for" : undefined,
	store.fillRate ?? undefined,
];

const warmSaid = ({ result }: SupplyScope): Said =>
	result.beds.firstDay < 0
		? [
				"Left of the line is the warm-up: it is long enough where the band stands still before it.",
			]
		: [
				"There is no warm-up: the patients of the first day are those that the scenario lists.",
			];

/** What a band of counts says: where its lower edge is least. */
function bandSaid(
	unit: string,
	firstDay: number,
	{ p10, p90 }: CountSeries,
	reading: Said,
): Said {
	const low = Math.min(...p10);
	const at = p10.indexOf(low);
	return [
		"{text} at the end of each day, the middle eight in ten of the replications. Lowest at {date}: between {n} and {n}. {said}",
		unit,
		// The end of a day is the beginning of the next, on whatever clock the days are counted.
		(firstDay + at + 1) * 1440,
		low,
		p90[at] ?? 0,
		reading,
	];
}

const charts: Entry<SupplyScope>[] = [
	fixedWords(
		"Every item is of unlimited stock: write pieces instead of unlimited to see what is left.",
		(scope) => stocked(scope).length === 0,
	),
	entry("Chart: Stock: {text}", (scope) =>
		stocked(scope).map(({ item }) => [item]),
	),
	entry("Stock: {text}", (scope) => stocked(scope).map(({ item }) => [item])),
	entry("{said}", (scope) =>
		stocked(scope).map((item) => [
			bandSaid("pieces on the shelf", 0, item.store.onHand, readingSaid(item)),
		]),
	),
	entry("{said} Triangles: deliveries of the order list.", (scope) =>
		stocked(scope).map((item) => [readingSaid(item)]),
	),
	fixedWords("Chart: Patients with a therapy unit"),
	fixedWords("Patients with a therapy unit"),
	entry("{said}", (scope) => [
		[
			bandSaid(
				"patients",
				scope.result.beds.firstDay,
				scope.result.beds.inBed,
				warmSaid(scope),
			),
		],
		[warmSaid(scope)],
	]),
];

const spreadCells = ({ mean, p10, p50, p90 }: CountSpread): CellSaid[] => [
	["{n}", fixed(mean, 1)],
	["{n}", fixed(p10, 0)],
	["{n}", fixed(p50, 0)],
	["{n}", fixed(p90, 0)],
];
const quantiles = ["Mean", "P10", "P50", "P90"];

const causes: { readonly [cause: string]: string } = {
	start: "start of a therapy",
	"at-capacity": "canister at capacity",
	round: "changed at a round",
	empty: "source empty",
	expired: "source hung long enough",
	"dressing-change": "dressing change",
	clogged: "port clogged",
};

/** A ward's weeks: `report.html`. */
export const supplyCatalogue: Catalogue<SupplyScope, never> = {
	whole: [
		...cautionsOfAll<SupplyScope>("answers"),
		...raisedCautions<SupplyScope>(),
		...sourcesWords<SupplyScope>(),
		...headings.map((heading) => fixedWords<SupplyScope>(heading)),
		entry("{text}", ({ result }) => [
			[result.cost === null ? "Cost" : "Cost by item"],
		]),
		...answers,
		...charts,
		entry("{text}: stores", ({ scenario }) => [[scenario.title]]),
		entry("{text}", ({ scenario }) => [[scenario.title]]),
		entry("From {date} {time} for {n} days.", ({ result }) => [
			[0, 0, result.scenario.days],
		]),
		entry("{duration} of warm-up before it are left out.", ({ scenario }) =>
			scenario.warmUpMin === 0 ? [] : [[scenario.warmUpMin]],
		),
		entry("{n} replications, chance {text}.", ({ scenario }) => [
			[scenario.replications, scenario.chance ? "on" : "off"],
		]),
		entry("{n}, chance {text}", ({ scenario }) => [
			[scenario.replications, scenario.chance ? "on" : "off"],
		]),
		entry("{n} events, {text}", ({ result: { trace } }) => [
			[trace.events, trace.hash],
		]),
		fixedWords(
			"What the order rules ask for on a median course of demand, in whole packs.",
			({ result }) => result.orders.length > 0,
		),
		fixedWords(
			"Look at the shelf before it is sent.",
			({ result }) => result.orders.length > 0,
		),
		entry(
			"Pieces asked for in {n} days, by what made them necessary.",
			({ result }) => [[result.scenario.days]],
		),
		fixedWords(
			"When to order and up to what. Asked for is the share of the time with a piece on the shelf; beside it what it came to, and the share of pieces that were there when needed. Then the text-book reorder point (mean use until the delivery, and a safety stock for normal demand) and others about the one in force, with the share of the time that each comes to.",
		),
		entry("{text}", ({ result }) =>
			result.cost === null
				? [
						[
							"No prices are given: put price: on the items and prices: { currency: EUR, asOf: 2026-01 } into the scenario.",
						],
					]
				: [],
		),
		entry(
			"Cost of the pieces used in {n} days, in {text} at prices of {text}[[; without {text}, which have no price]].",
			({ result: { cost, scenario } }) =>
				cost === null
					? []
					: [
							[
								scenario.days,
								cost.currency,
								cost.asOf,
								cost.unpriced.length === 0
									? undefined
									: cost.unpriced.join(", "),
							],
						],
		),
		fixedWords(
			"Other regimens and sizes",
			({ result }) => result.policies.length > 0,
		),
		fixedWords(
			"The same patients under other regimens or with other sizes, with stores that lack nothing. The difference is to today's mix, with its 95 % half-width; variance saved is how much the same patients make it surer.",
			({ result }) => result.policies.length > 0,
		),
		entry("What is thrown away in {n} days.", ({ result }) => [
			[result.scenario.days],
		]),
		fixedWords("Weight: pieces with a weight given, and liquid at 1 g/mL."),
		fixedWords(
			"Nobody comes by chance.",
			({ result }) => result.scenario.arrivalsPerWeek === null,
		),
		entry("{n} patients a week.", ({ result: { scenario } }) =>
			scenario.arrivalsPerWeek === null
				? []
				: [[fixed(scenario.arrivalsPerWeek, 1)]],
		),
		entry("A therapy lasts {duration} on average.", ({ result }) =>
			result.scenario.meanLengthMin === null
				? []
				: [[result.scenario.meanLengthMin]],
		),
	],
	part: [],
	labels: [
		entry("{n}", (scope) =>
			// Heights of a band are round numbers, by what its greatest asks for.
			Array.from(
				{
					length:
						2 +
						Math.max(
							...scope.result.beds.inBed.p90,
							scope.result.scenario.units ?? 0,
							...stocked(scope).flatMap(({ store }) => [
								...store.onHand.p90,
								store.rule.reorder,
							]),
						),
				},
				(_, i) => [fixed(i, 0)],
			),
		),
		entry("{n}", () => [
			[fixed(0.5, 1)],
			[fixed(0.2, 1)],
			[fixed(0.4, 1)],
			[fixed(0.6, 1)],
			[fixed(0.8, 1)],
			[fixed(1.5, 1)],
			[fixed(2.5, 1)],
			[fixed(3.5, 1)],
		]),
		entry("reorder at: {n}", (scope) =>
			stocked(scope).map(({ store }) => [store.rule.reorder]),
		),
		entry("units: {n}", ({ result }) =>
			result.scenario.units === null ? [] : [[result.scenario.units]],
		),
		fixedWords("the count begins"),
		entry(
			"{text} at the end of each day: the line is the median, the band holds eight in ten",
			() => [["pieces on the shelf"], ["patients"]],
		),
		entry("Stock: {text}", (scope) => stocked(scope).map(({ item }) => [item])),
		fixedWords("Patients with a therapy unit"),
		entry("delivery of {said} on {date}", ({ result }) =>
			result.orders.map((order) => [orderSaid(order), order.arrivesMin]),
		),
	],
	partLabels: [],
	tables: [
		assumptionsTable<SupplyScope>(),
		{
			id: /^orders$/u,
			columns: (scope) => [
				"Order by",
				"Item",
				"Packs",
				"Pieces in a pack",
				"Pieces",
				"Expected on",
				currency(scope) === "" ? "Cost" : `Cost, ${currency(scope)}`,
				"Out without it",
				"Sent",
			],
			rows: ({ result }) =>
				result.orders.map((order): CellSaid[] => [
					order.atMin === 0
						? "now"
						: ["{date} {time}", order.atMin, order.atMin],
					order.item,
					["{n}", order.packs],
					["{n}", order.packSize],
					["{n}", order.packs * order.packSize],
					["{date}", order.arrivesMin],
					order.cost === null ? "" : ["{n}", fixed(order.cost, 2)],
					[
						"{percent} by {date}",
						order.without.probability,
						order.without.byMin,
					],
					"",
				]),
		},
		{
			id: /^demand$/u,
			columns: () => ["Item", "Cause", ...quantiles, "A week (mean)"],
			rows: ({ result }) =>
				result.items.flatMap(({ item, demand }) =>
					[
						{ name: "all causes", total: demand.total },
						...demand.causes
							.filter(({ total }) => total.mean > 0)
							.map(({ cause, total }) => ({
								name: causes[cause] ?? "",
								total,
							})),
					].map(({ name, total }): CellSaid[] => [
						item,
						name,
						...spreadCells(total),
						["{n}", fixed((7 * total.mean) / result.scenario.days, 1)],
					]),
				),
		},
		{
			id: /^rules$/u,
			columns: () => [
				"Item",
				"Reorder at",
				"Order up to",
				"Asked for",
				"On the shelf",
				"There when needed",
				"Ran out at least once",
				"Text-book reorder point",
				"Other reorder points",
			],
			rows: (scope) =>
				stocked(scope).map(({ item, store }): CellSaid[] => {
					const { rule, stockOut } = store;
					return [
						item,
						["{n} ({text})", rule.reorder, rule.origin],
						["{n}", rule.upTo],
						["{percent}", rule.service],
						["{percent}", store.ready.mean],
						store.fillRate === null ? "" : ["{percent}", store.fillRate],
						[
							"{percent} ({percent} to {percent})",
							stockOut.probability,
							stockOut.low,
							stockOut.high,
						],
						[
							"{n}[[ ({percent})]]",
							rule.textBook.reorder,
							rule.textBook.service ?? undefined,
						],
						rule.ladder.length === 0
							? ""
							: [
									"{said}",
									listed(
										rule.ladder.map(
											({ reorder, service }): Said => [
												"{n}: {n} %",
												reorder,
												fixed(100 * service, 1),
											],
										),
									),
								],
					];
				}),
		},
		{
			id: /^cost$/u,
			columns: () => ["Item", "Price", ...quantiles, "Expired (mean)"],
			rows: (scope) => {
				const { cost } = scope.result;
				if (cost === null) return [];
				const all = [
					cost.total.mean,
					cost.total.p10,
					cost.total.p50,
					cost.total.p90,
				];
				return [
					...cost.items.map(
						({ item, price, used, expiredMean }): CellSaid[] => [
							item,
							["{n}", fixed(price, 2)],
							...[used.mean, used.p10, used.p50, used.p90, expiredMean].map(
								(many): CellSaid => ["{said}", money(scope, many * price)],
							),
						],
					),
					[
						"all, expired ones included",
						"",
						...all.map((amount): CellSaid => ["{said}", money(scope, amount)]),
						"",
					],
				];
			},
		},
		{
			id: /^policies$/u,
			columns: () => [
				"Policy",
				"Cost",
				"Difference",
				"Variance saved",
				"Nurse hours",
				"Difference, h",
				"Pieces used (mean)",
			],
			rows: (scope) =>
				scope.result.policies.map((policy): CellSaid[] => {
					const { cost, difference, variance } = policy;
					return [
						policy.name,
						cost === null ? "" : ["{said}", money(scope, cost.mean)],
						difference === null
							? ""
							: [
									"[[{text}]]{said}[[ ± {said}]]",
									difference.mean > 0 ? "+" : undefined,
									money(scope, difference.mean),
									difference.halfWidth95 === null
										? undefined
										: money(scope, difference.halfWidth95),
								],
						variance === null || variance.independent === 0
							? ""
							: [
									"{percent}",
									Math.max(0, 1 - variance.paired / variance.independent),
								],
						["{n}", fixed(policy.nurseHours.mean, 0)],
						policy.nurseHoursDifference === null
							? ""
							: ["{n}", fixed(policy.nurseHoursDifference.mean, 0)],
						policy.items.every(({ used }) => used.mean === 0)
							? ""
							: [
									"{said}",
									listed(
										policy.items
											.filter(({ used }) => used.mean > 0)
											.map(
												({ item, used }): Said => [
													"{text}: {n}",
													item,
													used.mean,
												],
											),
										"; ",
									),
								],
					];
				}),
		},
		{
			id: /^nurses$/u,
			columns: () => ["Shift from", "Nurses", ...quantiles],
			rows: ({ result }) =>
				result.nurses.map(({ fromClockMin, nurses, hours }): CellSaid[] => [
					["{time}", fromClockMin - result.scenario.startClockMin],
					nurses === null ? "no limit" : ["{n}", nurses],
					...[hours.mean, hours.p10, hours.p50, hours.p90].map(
						(value): CellSaid => ["{n}", fixed(value, 1)],
					),
				]),
		},
		{
			id: /^waste$/u,
			columns: () => ["Waste", ...quantiles],
			rows: (scope) => {
				const { waste } = scope.result;
				const four = ({ mean, p10, p50, p90 }: CountSpread): number[] => [
					mean,
					p10,
					p50,
					p90,
				];
				return [
					[
						"liquid in canisters",
						...four(waste.liquidMl).map((ml): CellSaid => ["{ml}", ml]),
					],
					[
						"unused solution",
						...four(waste.solutionMl).map((ml): CellSaid => ["{ml}", ml]),
					],
					[
						"weight",
						...four(waste.weightKg).map((kg): CellSaid => ["{n} kg", kg]),
					],
					...stocked(scope)
						.filter(({ store }) => store.expired.mean > 0)
						.map(({ item, store }) => [
							`expired: ${item}`,
							...spreadCells(store.expired),
						]),
				];
			},
		},
		{
			id: /^kinds$/u,
			columns: () => ["Kind", "Share", "Regimen", "Canister", "Solution"],
			rows: ({ scenario }) => {
				const all = scenario.kinds.reduce((sum, { share }) => sum + share, 0);
				return scenario.kinds.map(
					({ id, share, dressing, solution }): CellSaid[] => {
						const regimen = placed(dressing.regimens, 0);
						const fills = dressing.regimens.some(({ fillMl }) => fillMl > 0);
						return [
							id,
							["{percent}", share / all],
							regimen.fillMl === 0
								? ["{mmHg}, suction alone", regimen.depthMmHg]
								: [
										"{mmHg}, {n} mL for {duration} after every {duration} of suction",
										regimen.depthMmHg,
										regimen.fillMl,
										regimen.dwellMin,
										regimen.suctionMin,
									],
							["{ml}", dressing.canisterMl],
							fills ? ["{text}, {ml}", solution, dressing.sourceMl] : "none",
						];
					},
				);
			},
		},
	],
	partTables: [],
};
