import type {
	CountSeries,
	CountSpread,
	ItemSupply,
	PlannedOrder,
	StoreResult,
	SupplyResult,
} from "../../../src/results/index.ts";
import type { WardScenario } from "../../../src/scenario/index.ts";
import { type Catalogue, type CellSaid, type Entry, entry, fixedWords } from "../check.ts";
import { fixed } from "../holes.ts";
import { listed, type Said } from "../pattern.ts";
import { placed } from "../scope.ts";
import { capital } from "../vocabulary.ts";
import { assumptionsTable, cautionsOfAll, raisedCautions, sourcesWords } from "./common.ts";

export interface SupplyScope {
	readonly scenario: WardScenario;
	readonly result: SupplyResult;
}

type Stocked = ItemSupply & { readonly store: StoreResult };

const stocked = ({ result }: SupplyScope): Stocked[] =>
	result.items.filter((item): item is Stocked => item.store !== null);

const currency = ({ result }: SupplyScope): string => result.scenario.currency ?? "";

/** '4 packs of canister 1000 mL', '12 × suction port'. */
const orderSaid = (order: PlannedOrder): Said =>
	order.packSize === 1
		? ["{n} × {text}", order.pieces, order.item]
		: ["{count:pack} of {text}", fixed(order.packs, 0), order.item];

/** '1 in 6', '62 in 100', or that it is less or more than so many replications can tell. */
function chanceSaid({ scenario }: SupplyScope, probability: number): Said {
	const most = scenario.chance ? Math.max(2, Math.min(100, scenario.replications)) : 100;
	if (probability < 1 / most - 1e-12) return ["less than 1 in {n}", most];
	if (probability > 1 - 1 / most + 1e-12) return ["more than {n} in {n}", most - 1, most];
	return probability > 0.5 ? ["{n} in 100", 100 * probability] : ["1 in {n}", 1 / probability];
}

/** '99.2 %', '>99.9 %'. */
const shareSaid = (share: number): Said =>
	share < 1 && share >= 0.9995 ? [">99.9 %"] : ["{n} %", fixed(100 * share, 1)];

const money = (scope: SupplyScope, amount: number): Said => ["{money} {text}", amount, currency(scope)];

/** Orders of the first two weeks, or the first one where it comes later; the others are only counted. */
function toldOrders({ result: { orders } }: SupplyScope) {
	const [first] = orders;
	const untilMin = Math.max((first?.atMin ?? 0) + 1, 14 * 1440);
	return {
		told: orders.filter(({ atMin }) => atMin < untilMin),
		later: orders.filter(({ atMin }) => atMin >= untilMin),
	};
}

const whenSaid = (order: PlannedOrder): Said =>
	order.atMin === 0 ? ["now"] : ["by {date} {time}", order.atMin, order.atMin];

const weeks = ({ result: { scenario } }: SupplyScope): Said =>
	scenario.days % 7 === 0 ? ["{count:week}", fixed(scenario.days / 7, 0)] : ["{n} days", scenario.days];

/** Items that run out most often: all of them, where they are level. */
function worst(scope: SupplyScope): Stocked[] {
	const all = stocked(scope);
	const most = Math.max(...all.map(({ store }) => store.stockOut.probability));
	return all.filter(({ store }) => store.stockOut.probability === most);
}

/** The week in the middle of the time, or what there is of it: its first day, how many days it has, its demand by item. */
function weekOf({ result }: SupplyScope) {
	const { weeks, days } = result.scenario;
	const middle = Math.floor((weeks - 1) / 2);
	const items = result.items
		.filter(({ demand }) => demand.total.mean > 0)
		.map(
			({ item, demand: { weeks: week } }): Said => [
				"{between} × {text}",
				[week.p10[middle] ?? 0, week.p90[middle] ?? 0],
				item,
			],
		);
	return { from: middle * 7 * 1440, days: Math.min(7, days - 7 * middle), items };
}

const answers: Entry<SupplyScope>[] = [
	fixedWords("Answers"),
	fixedWords("No order is due within the time shown.", ({ result }) => result.orders.length === 0),
	entry("Order {said} {said}; without it the chance of running out by {date} is {said}, with it {said}.", (scope) =>
		toldOrders(scope)
			.told.filter((order) => order.with.probability < 0.5)
			.map((order) => [
				orderSaid(order),
				whenSaid(order),
				order.without.byMin,
				chanceSaid(scope, order.without.probability),
				chanceSaid(scope, order.with.probability),
			]),
	),
	entry(
		"Order {said} {said}; without it the chance of running out by {date} is {said}, with it still {said}: ask for a quicker delivery, too.",
		(scope) =>
			toldOrders(scope)
				.told.filter((order) => order.with.probability >= 0.5)
				.map((order) => [
					orderSaid(order),
					whenSaid(order),
					order.without.byMin,
					chanceSaid(scope, order.without.probability),
					chanceSaid(scope, order.with.probability),
				]),
	),
	entry("{n} more {text} due from {date} {time} on: the order list has {text}.", (scope) => {
		const { later } = toldOrders(scope);
		const [first] = later;
		const isOne = later.length === 1;
		return first === undefined
			? []
			: [[later.length, isOne ? "order is" : "orders are", first.atMin, first.atMin, isOne ? "it" : "them"]];
	}),
	entry("With orders that follow these rules nothing ran out in any of the {n} replications of {said}.", (scope) =>
		stocked(scope).length > 0 && worst(scope)[0]?.store.stockOut.probability === 0
			? [[scope.result.scenario.replications, weeks(scope)]]
			: [],
	),
	entry(
		"If orders go on following these rules, the item most likely to run out is {text}: {percent} ({percent} to {percent}) over {said}[[; therapy lost to it: {n} h on average]].",
		(scope) => {
			const all = worst(scope);
			const [first] = all;
			if (all.length !== 1 || first === undefined || first.store.stockOut.probability === 0) return [];
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
	entry(
		"If orders go on following these rules, the items most likely to run out are {said}, equally: {percent} ({percent} to {percent}) each over {said}[[; therapy lost to them: {n} h on average]].",
		(scope) => {
			const all = worst(scope);
			const [first] = all;
			if (all.length < 2 || first === undefined || first.store.stockOut.probability === 0) return [];
			const { probability, low, high } = first.store.stockOut;
			const lost = all.reduce((sum, { store }) => sum + store.offHours.mean, 0);
			return [
				[
					listed(
						all.map(({ item }): Said => ["{text}", item]),
						", ",
						" and ",
					),
					probability,
					low,
					high,
					weeks(scope),
					lost > 0.05 ? fixed(lost, 1) : undefined,
				],
			];
		},
	),
	fixedWords("Nothing is asked of the stores.", (scope) => weekOf(scope).items.length === 0),
	entry("The [[{text}]][[{n} days]] from {date} {text}, in eight of ten replications, {said}[[; {said}]].", (scope) => {
		const { from, days, items } = weekOf(scope);
		return items.length === 0
			? []
			: [
					[
						days === 7 ? "week" : undefined,
						days === 7 ? undefined : days,
						from,
						days === 7 ? "takes" : "take",
						listed(items.slice(0, 2), " and "),
						items.length > 2 ? listed(items.slice(2), "; ") : undefined,
					],
				];
	}),
	entry("In use on average: {n}[[ of {n}]] units; hardly anybody waits for one.", (scope) =>
		waitMean(scope) < 1 ? [unitsValues(scope)] : [],
	),
	entry(
		"In use on average: {n}[[ of {n}]] units; {percent} of the patients wait for one, {n} h on average over all.",
		(scope) =>
			waitMean(scope) < 1
				? []
				: [[...unitsValues(scope), scope.result.beds.shareWaited, fixed(waitMean(scope) / 60, 1)]],
	),
	entry("{n} are treated elsewhere.", ({ result: { beds } }) =>
		beds.turnedAway.mean > 0 ? [[fixed(beds.turnedAway.mean, 1)]] : [],
	),
	entry(
		"The pieces that are needed cost {said} (between {said} and {said}), at prices of {text}, where the stores lack nothing; with orders by these rules, shortages and expired pieces included, {said} (between {said} and {said}).",
		(scope) => {
			const { cost } = scope.result;
			if (cost === null) return [];
			const three = ({ p50, p10, p90 }: CountSpread): Said[] => [p50, p10, p90].map((amount) => money(scope, amount));
			return [[...three(cost.totalNeeded), cost.asOf, ...three(cost.total)]];
		},
	),
	entry("{text} instead of today's mix: {text} {said}[[ (± {said}, the same patients)]].", (scope) =>
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
										difference.halfWidth95 === null ? undefined : money(scope, difference.halfWidth95),
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

const waitMean = ({ result }: SupplyScope): number => result.beds.meanWaitMin.mean;

const unitsValues = ({ result }: SupplyScope): unknown[] => [
	fixed(result.beds.meanInBed.mean, 1),
	result.scenario.units ?? undefined,
];

const headings = [
	"The stores",
	"Order list",
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
		? ["Left of the line is the warm-up: it is long enough where the band stands still before it."]
		: ["There is no warm-up: the patients of the first day are those that the scenario lists."];

/** What a band of counts says: where its lower edge is least. */
function bandSaid(unit: string, firstDay: number, { p10, p90 }: CountSeries, reading: Said): Said {
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
	entry("Chart: Stock: {text}", (scope) => stocked(scope).map(({ item }) => [item])),
	entry("Stock: {text}", (scope) => stocked(scope).map(({ item }) => [item])),
	entry("{said}", (scope) =>
		stocked(scope).map((item) => [bandSaid("pieces on the shelf", 0, item.store.onHand, readingSaid(item))]),
	),
	entry(
		"{said} Each replication orders by the rules, as its own shelf falls; the order list, whose deliveries the triangles mark, is drawn up once for all of them. So the curve need not rise where a triangle stands.",
		(scope) => stocked(scope).map((item) => [readingSaid(item)]),
	),
	fixedWords("Chart: Patients with a therapy unit"),
	fixedWords("Patients with a therapy unit"),
	entry("{said}", (scope) => [
		[bandSaid("patients", scope.result.beds.firstDay, scope.result.beds.inBed, warmSaid(scope))],
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
		entry("{text}", ({ result }) => [[result.cost === null ? "Cost" : "Cost by item"]]),
		...["Ordered by", "Date", "Delivery to"].map((place) =>
			fixedWords<SupplyScope>(place, ({ result }) => result.orders.length > 0),
		),
		...answers,
		...charts,
		entry("{text}: stores", ({ scenario }) => [[scenario.title]]),
		entry("{text}", ({ scenario }) => [[scenario.title]]),
		entry("From {date} {time} for {n} days.", ({ result }) => [[0, 0, result.scenario.days]]),
		entry("{duration} of warm-up before it are left out.", ({ scenario }) =>
			scenario.warmUpMin === 0 ? [] : [[scenario.warmUpMin]],
		),
		entry("{n} replications, chance {text}.", ({ scenario }) => [
			[scenario.replications, scenario.chance ? "on" : "off"],
		]),
		entry("{n}, chance {text}", ({ scenario }) => [[scenario.replications, scenario.chance ? "on" : "off"]]),
		entry("{n} events, {text}", ({ result: { trace } }) => [[trace.events, trace.hash]]),
		fixedWords(
			"On each order day, in whole packs, what it takes to last until the delivery of the next one, after the median use up to then. Beside it the chance of being out before that delivery, without the order and with it.",
			({ result }) => result.orders.length > 0,
		),
		fixedWords("Look at the shelf before it is sent.", ({ result }) => result.orders.length > 0),
		entry(
			"Pieces asked for in {n} days, whether they were there or not, by what made them necessary; orders by the rules, from today's stock on.",
			({ result }) => [[result.scenario.days]],
		),
		fixedWords(
			"When to order and up to what. Asked for is the share of the time with a piece on the shelf. A reorder point that is not given was sought on one half of the replications; in brackets those that would do as well as far as that half can tell (95 %, from the differences between its groups). Reached is the share on the other half, in the long run; then what it came to in this run, which begins with today's stock, and the share of pieces that were there when needed. Then the text-book reorder point (mean use until the delivery, and a safety stock for normal demand and the spread of the lead time) and others about the one in force, with the share of the time that each reaches.",
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
			"Cost of the pieces that are needed in {n} days, with stores that lack nothing, in {text} at prices of {text}[[; without {text}, which have no price]]. Beside it what is used with orders by the rules, from today's stock on: less where something runs out, since a therapy that is off uses nothing; and what expires there.",
			({ result: { cost, scenario } }) =>
				cost === null
					? []
					: [
							[
								scenario.days,
								cost.currency,
								cost.asOf,
								cost.unpriced.length === 0 ? undefined : cost.unpriced.join(", "),
							],
						],
		),
		fixedWords("Other regimens and sizes", ({ result }) => result.policies.length > 0),
		fixedWords(
			"The same patients under other regimens or with other sizes, with stores that lack nothing. Today's mix costs what is needed under 'Cost by item'. The difference is to it, with its 95 % half-width; variance saved is how much the same patients make it surer.",
			({ result }) => result.policies.length > 0,
		),
		entry("What is thrown away in {n} days, with orders by the rules.", ({ result }) => [[result.scenario.days]]),
		fixedWords("Weight: pieces with a weight given, and liquid at 1 g/mL."),
		fixedWords("Nobody comes by chance.", ({ result }) => result.scenario.arrivalsPerWeek === null),
		entry("{n} patients a week.", ({ result: { scenario } }) =>
			scenario.arrivalsPerWeek === null ? [] : [[fixed(scenario.arrivalsPerWeek, 1)]],
		),
		entry("A therapy lasts {duration} on average.", ({ result }) =>
			result.scenario.meanLengthMin === null ? [] : [[result.scenario.meanLengthMin]],
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
							...stocked(scope).flatMap(({ store }) => [...store.onHand.p90, store.rule.reorder]),
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
		fixedWords("the count begins"),
		entry(
			"{text} at the end of each day: median and eight in ten[[; dashed: {text} {n}]][[; triangles: listed deliveries{?}]]",
			(scope) => [
				...stocked(scope).map(({ item, store }) => [
					"pieces on the shelf",
					"reorder at",
					store.rule.reorder,
					scope.result.orders.some((order) => order.item === item && order.arrivesMin < scope.scenario.horizonMin)
						? true
						: undefined,
				]),
				[
					"patients",
					scope.result.scenario.units === null ? undefined : "units",
					scope.result.scenario.units ?? undefined,
					undefined,
				],
			],
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
				"Packs of",
				"Pieces",
				"Expected on",
				currency(scope) === "" ? "Cost" : `Cost, ${currency(scope)}`,
				"Out by",
				"without it",
				"with it",
				"Sent",
			],
			rows: (scope) =>
				scope.result.orders.map((order): CellSaid[] => [
					order.atMin === 0 ? "now" : ["{date} {time}", order.atMin, order.atMin],
					order.item,
					["{n} × {n}", order.packs, order.packSize],
					["{n}", order.packs * order.packSize],
					["{date}", order.arrivesMin],
					order.cost === null ? "" : ["{n}", fixed(order.cost, 2)],
					["{date}", order.without.byMin],
					chanceSaid(scope, order.without.probability),
					chanceSaid(scope, order.with.probability),
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
							.map(({ cause, total }) => ({ name: causes[cause] ?? "", total })),
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
				"Reached",
				"In this run",
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
						rule.origin === "given"
							? ["{n} (given)", rule.reorder]
							: [
									"{n}[[ ({n} to {n})]]",
									rule.reorder,
									rule.low95 === null || rule.high95 === null ? undefined : rule.low95,
									rule.low95 === null || rule.high95 === null ? undefined : rule.high95,
								],
						["{n}", rule.upTo],
						shareSaid(rule.service),
						[
							"{said}[[ ({said} to {said})]]",
							shareSaid(rule.reached.mean),
							...(rule.reached.low95 === null || rule.reached.high95 === null
								? [undefined, undefined]
								: [shareSaid(rule.reached.low95), shareSaid(rule.reached.high95)]),
						],
						shareSaid(store.ready.mean),
						store.fillRate === null ? "" : shareSaid(store.fillRate),
						["{percent} ({percent} to {percent})", stockOut.probability, stockOut.low, stockOut.high],
						[
							"{n}[[ ({said})]]",
							rule.textBook.reorder,
							rule.textBook.service === null ? undefined : shareSaid(rule.textBook.service),
						],
						rule.ladder.length === 0
							? ""
							: [
									"{said}",
									listed(rule.ladder.map(({ reorder, service }): Said => ["{n}: {said}", reorder, shareSaid(service)])),
								],
					];
				}),
		},
		{
			id: /^cost$/u,
			columns: () => ["Item", "Price", ...quantiles, "By the rules (mean)", "Expired (mean)"],
			rows: (scope) => {
				const { cost } = scope.result;
				if (cost === null) return [];
				const { mean, p10, p50, p90 } = cost.totalNeeded;
				const { items } = cost;
				const sum = (of: (item: (typeof items)[number]) => number) => items.reduce((so, item) => so + of(item), 0);
				const cell = (amount: number): CellSaid => ["{said}", money(scope, amount)];
				return [
					...cost.items.map(({ item, price, used, expiredMean, needed }): CellSaid[] => [
						item,
						["{n}", fixed(price, 2)],
						...[needed.mean, needed.p10, needed.p50, needed.p90, used.mean, expiredMean].map((many) =>
							cell(many * price),
						),
					]),
					[
						"all",
						"",
						...[mean, p10, p50, p90].map(cell),
						cell(sum(({ used, price }) => used.mean * price)),
						cell(sum(({ expiredMean, price }) => expiredMean * price)),
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
									difference.halfWidth95 === null ? undefined : money(scope, difference.halfWidth95),
								],
						variance === null || variance.independent === 0
							? ""
							: ["{percent}", Math.max(0, 1 - variance.paired / variance.independent)],
						["{n}", fixed(policy.nurseHours.mean, 0)],
						policy.nurseHoursDifference === null ? "" : ["{n}", fixed(policy.nurseHoursDifference.mean, 0)],
						policy.items.every(({ used }) => used.mean === 0)
							? ""
							: [
									"{said}",
									listed(
										policy.items
											.filter(({ used }) => used.mean > 0)
											.map(({ item, used }): Said => ["{text}: {n}", item, used.mean]),
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
					...[hours.mean, hours.p10, hours.p50, hours.p90].map((value): CellSaid => ["{n}", fixed(value, 1)]),
				]),
		},
		{
			id: /^waste$/u,
			columns: () => ["Waste", ...quantiles],
			rows: (scope) => {
				const { waste } = scope.result;
				const four = ({ mean, p10, p50, p90 }: CountSpread): number[] => [mean, p10, p50, p90];
				return [
					["liquid in canisters", ...four(waste.liquidMl).map((ml): CellSaid => ["{ml}", ml])],
					["unused solution", ...four(waste.solutionMl).map((ml): CellSaid => ["{ml}", ml])],
					["weight", ...four(waste.weightKg).map((kg): CellSaid => ["{n} kg", kg])],
					...stocked(scope)
						.filter(({ store }) => store.expired.mean > 0)
						.map(({ item, store }) => [`expired: ${item}`, ...spreadCells(store.expired)]),
				];
			},
		},
		{
			id: /^kinds$/u,
			columns: () => ["Kind", "Share", "Regimen", "Canister", "Solution"],
			rows: ({ scenario }) => {
				const all = scenario.kinds.reduce((sum, { share }) => sum + share, 0);
				return scenario.kinds.map(({ id, share, dressing, solution }): CellSaid[] => {
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
				});
			},
		},
	],
	partTables: [],
};
