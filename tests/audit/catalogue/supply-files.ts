import type { CountSeries, CountSpread, PlannedOrder } from "../../../src/results/index.ts";
import type { Fault } from "../check.ts";
import { type Cell, type CsvSaid, type EventSaid, wallClock, wallDate } from "../check-files.ts";
import { listed, type Said } from "../pattern.ts";
import { assumptionsCsv } from "./day-files.ts";
import type { SupplyScope } from "./supply.ts";

const four = ["mean", "p10", "p50", "p90"];
const ofSeries = (series: CountSeries, at: number): Cell[] => [
	series.mean[at] ?? null,
	series.p10[at] ?? null,
	series.p50[at] ?? null,
	series.p90[at] ?? null,
];
const ofSpread = ({ mean, p10, p50, p90 }: CountSpread): number[] => [mean, p10, p50, p90];

function demandCsv({ scenario, result }: SupplyScope, by: "days" | "weeks"): CsvSaid {
	const [one, minutes] = by === "days" ? ["day", 1440] : ["week", 10_080];
	return {
		head: ["item", "cause", one, "from", ...four],
		rows: result.items.flatMap(({ item, demand }) =>
			[{ cause: "all", ...demand }, ...demand.causes].flatMap((row) =>
				row[by].mean.map((_, at): Cell[] => [
					item,
					row.cause,
					at + 1,
					wallDate(scenario.start, at * minutes),
					...ofSeries(row[by], at),
				]),
			),
		),
	};
}

/** The CSV files of a ward. */
export function supplyFiles(scope: SupplyScope): { readonly [file: string]: CsvSaid } {
	const { scenario, result } = scope;
	const { start } = scenario;
	const stores = result.items.flatMap(({ item, store }) => (store === null ? [] : [{ item, store }]));
	return {
		"demand-by-day.csv": demandCsv(scope, "days"),
		"demand-by-week.csv": demandCsv(scope, "weeks"),
		"stock.csv": {
			head: ["item", "day", "date", ...four, "outOnDay", "outByDay"],
			rows: stores.flatMap(({ item, store }) =>
				store.onHand.mean.map((_, at): Cell[] => [
					item,
					at + 1,
					wallDate(start, at * 1440),
					...ofSeries(store.onHand, at),
					store.outOnDay[at] ?? null,
					store.outByDay[at] ?? null,
				]),
			),
		},
		"orders.csv": {
			head: [
				"item",
				"orderAt",
				"arrives",
				"packs",
				"packSize",
				"pieces",
				"cost",
				"currency",
				"outWithoutItBy",
				"probability",
				"probabilityWithIt",
				"positionBefore",
			],
			rows: result.orders.map((order) => [
				order.item,
				wallClock(start, order.atMin).slice(0, 16),
				wallClock(start, order.arrivesMin).slice(0, 16),
				order.packs,
				order.packSize,
				order.packs * order.packSize,
				order.cost === null ? null : { amount: order.cost },
				order.cost === null ? null : result.scenario.currency,
				wallDate(start, order.without.byMin),
				order.without.probability,
				order.with.probability,
				order.position,
			]),
		},
		"rules.csv": {
			head: [
				"item",
				"origin",
				"reorder",
				"upTo",
				"service",
				"demandPerDay",
				"demandSdPerDay",
				"exposureDays",
				"textBookReorder",
				"textBookService",
				"ready",
				"fillRate",
				"stockOut",
				"low95",
				"high95",
				"short",
				"substituted",
				"offHours",
				"expired",
				"reorderLow95",
				"reorderHigh95",
				"reorderOfOtherHalf",
				"reached",
				"reachedLow95",
				"reachedHigh95",
			],
			rows: stores.map(({ item, store }) => [
				item,
				store.rule.origin,
				store.rule.reorder,
				store.rule.upTo,
				store.rule.service,
				store.rule.demandPerDay,
				store.rule.demandSdPerDay,
				store.rule.exposureDays,
				store.rule.textBook.reorder,
				store.rule.textBook.service,
				store.ready.mean,
				store.fillRate,
				store.stockOut.probability,
				store.stockOut.low,
				store.stockOut.high,
				store.short.mean,
				store.substituted.mean,
				store.offHours.mean,
				store.expired.mean,
				store.rule.low95,
				store.rule.high95,
				store.rule.otherHalf,
				store.rule.reached.mean,
				store.rule.reached.low95,
				store.rule.reached.high95,
			]),
		},
		"cost.csv": {
			head: ["item", "currency", "asOf", "price", ...four, "expiredMean", ...four.map((name) => `needed.${name}`)],
			rows: (result.cost?.items ?? []).map((row) => [
				row.item,
				result.cost?.currency ?? null,
				result.cost?.asOf ?? null,
				row.price,
				...ofSpread(row.used).map((many) => ({ amount: many * row.price })),
				{ amount: row.expiredMean * row.price },
				...ofSpread(row.needed).map((many) => ({ amount: many * row.price })),
			]),
		},
		"policies.csv": {
			head: ["policy", "item", ...four],
			rows: result.policies.flatMap(({ name, items }) =>
				items.map(({ item, used }) => [name, item, ...ofSpread(used)]),
			),
		},
		"beds.csv": {
			head: ["day", "date", ...four.map((name) => `inBed.${name}`), ...four.map((name) => `waiting.${name}`)],
			rows: result.beds.inBed.mean.map((_, at): Cell[] => {
				const day = result.beds.firstDay + at;
				return [
					day < 0 ? day : day + 1,
					wallDate(start, day * 1440),
					...ofSeries(result.beds.inBed, at),
					...ofSeries(result.beds.waiting, at),
				];
			}),
		},
		"supply-assumptions.csv": assumptionsCsv(result.assumptions),
	};
}

const pieces = (order: PlannedOrder): string =>
	order.packSize === 1
		? `${order.pieces} × ${order.item}`
		: `${order.packs} ${order.packs === 1 ? "pack" : "packs"} of ${order.item}`;

/** `orders.ics`: an entry for each moment of ordering, and for each day of a delivery. */
export function supplyEntries({ scenario: { start }, result: { orders } }: SupplyScope): EventSaid[] {
	const groups = (keyOf: (order: PlannedOrder) => string) =>
		[...new Set(orders.map(keyOf))].map((key) => orders.filter((order) => keyOf(order) === key));
	return [
		...groups(({ atMin }) => String(atMin)).map(
			(some): EventSaid => ({
				summary: `Order: ${some.map(pieces).join("; ")}`,
				description: [
					"{said}",
					listed(
						some.map(
							(order): Said => [
								"{text} ({n} pieces), expected on {text}",
								pieces(order),
								order.packs * order.packSize,
								wallDate(start, order.arrivesMin),
							],
						),
						"\n",
					),
				],
				start: wallClock(start, some[0]?.atMin ?? 0),
				end: wallClock(start, (some[0]?.atMin ?? 0) + 30),
				category: "order",
			}),
		),
		...groups(({ arrivesMin }) => wallDate(start, arrivesMin)).map(
			(some): EventSaid => ({
				summary: `Delivery: ${some.map(pieces).join("; ")}`,
				description: ["Look at the dates on the packs; oldest to the front."],
				start: wallDate(start, some[0]?.arrivesMin ?? 0),
				end: wallDate(start, (some[0]?.arrivesMin ?? 0) + 1440),
				category: "delivery",
			}),
		),
	];
}

/** A chance in words, no nearer to never or always than so many replications can tell. */
function inWords(share: number, { chance, replications }: SupplyScope["scenario"]): string {
	const most = chance ? Math.max(2, Math.min(100, replications)) : 100;
	if (share < 1 / most - 1e-12) return `less than 1 in ${most}`;
	if (share > 1 - 1 / most + 1e-12) return `more than ${most - 1} in ${most}`;
	return share > 0.5 ? `${Math.round(100 * share)} in 100` : `1 in ${Math.round(1 / share)}`;
}

/** `requests.fhir.json`: a request for each order, and every number and date of it. */
export function checkBundle(text: string, { scenario, result }: SupplyScope): Fault[] {
	const document = "requests.fhir.json";
	const bundle: fhir4.Bundle<fhir4.SupplyRequest> = JSON.parse(text);
	const entries = bundle.entry ?? [];
	const faults: Fault[] = [];
	const hold = (where: string, said: unknown, derived: unknown) => {
		if (said !== derived) faults.push({ document, where, said: String(said), derived: String(derived) });
	};
	hold("requests", entries.length, result.orders.length);
	const ids = entries.map(({ resource }) => resource?.id);
	hold("ids", new Set(ids).size, ids.length);
	for (const [at, order] of result.orders.entries()) {
		const request = entries[at]?.resource;
		const where = `request ${at + 1}`;
		if (request?.resourceType !== "SupplyRequest") {
			hold(where, request?.resourceType, "SupplyRequest");
			continue;
		}
		const item = result.items.find((one) => one.item === order.item);
		const quantity = (name: string) => request.parameter?.find(({ code }) => code?.text === name)?.valueQuantity;
		hold(where, request.itemCodeableConcept?.text, order.item);
		hold(`${where} requester`, request.requester?.display, scenario.title);
		hold(`${where} deliver to`, request.deliverTo?.display, scenario.title);
		hold(`${where} identifier`, request.identifier?.[0]?.value, request.id);
		hold(`${where} packs`, request.quantity.value, order.packs);
		hold(`${where} unit`, request.quantity.code, "{pack}");
		hold(`${where} pieces in a pack`, quantity("pieces in a pack")?.value, order.packSize);
		const size = quantity("size of one piece");
		hold(`${where} size`, size?.value ?? null, item?.sizeMl ?? null);
		if (size !== undefined) hold(`${where} size`, size.unit, "mL");
		hold(`${where} from`, request.occurrencePeriod?.start, wallDate(scenario.start, order.atMin));
		hold(`${where} to`, request.occurrencePeriod?.end, wallDate(scenario.start, order.arrivesMin));
		hold(`${where} authored`, request.authoredOn, wallDate(scenario.start, 0));
		hold(
			`${where} reason`,
			request.reasonCode?.[0]?.text,
			`The chance of running out by ${wallDate(scenario.start, order.without.byMin)} is ${inWords(order.without.probability, scenario)} without it, ${inWords(order.with.probability, scenario)} with it (simulated, for planning only)`,
		);
	}
	return faults;
}
