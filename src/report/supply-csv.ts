import type {
	CountSeries,
	CountSpread,
	SupplyResult,
} from "../analysis/supply-result.ts";
import { type Cell, csvTable } from "./csv-table.ts";
import { dateAt, dateTimeAt } from "./dates.ts";

/** One table a file, RFC 4180 with CRLF, by file name. Pieces are whole; days and weeks count from 1. */
export function supplyTables(result: SupplyResult): {
	readonly [fileName: string]: string;
} {
	return {
		"demand-by-day.csv": demand(result, "days"),
		"demand-by-week.csv": demand(result, "weeks"),
		"stock.csv": stock(result),
		"orders.csv": orders(result),
		"rules.csv": rules(result),
		"cost.csv": cost(result),
		"policies.csv": policies(result),
		"beds.csv": beds(result),
		"supply-assumptions.csv": assumptions(result),
	};
}

const four = ["mean", "p10", "p50", "p90"] as const;
const columns = (series: CountSeries, i: number): Cell[] =>
	four.map((name) => series[name][i] ?? null);
const values = (spread: CountSpread): Cell[] =>
	four.map((name) => spread[name]);

function demand(result: SupplyResult, by: "days" | "weeks"): string {
	const one = by === "days" ? "day" : "week";
	const minutes = by === "days" ? 1440 : 10_080;
	return csvTable(
		["item", "cause", one, "from", ...four],
		result.items.flatMap(({ item, demand: all }) =>
			[{ cause: "all", ...all }, ...all.causes].flatMap((row) =>
				row[by].mean.map((_, i): Cell[] => [
					item,
					row.cause,
					i + 1,
					dateAt(i * minutes, result.scenario),
					...columns(row[by], i),
				]),
			),
		),
	);
}

const stock = (result: SupplyResult): string =>
	csvTable(
		["item", "day", "date", ...four, "outOnDay", "outByDay"],
		result.items.flatMap(({ item, store }) =>
			store === null
				? []
				: store.onHand.mean.map((_, i): Cell[] => [
						item,
						i + 1,
						dateAt(i * 1440, result.scenario),
						...columns(store.onHand, i),
						store.outOnDay[i] ?? null,
						store.outByDay[i] ?? null,
					]),
		),
	);

const orders = (result: SupplyResult): string =>
	csvTable(
		[
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
		],
		result.orders.map((order): Cell[] => [
			order.item,
			dateTimeAt(order.atMin, result.scenario),
			dateTimeAt(order.arrivesMin, result.scenario),
			order.packs,
			order.packSize,
			order.pieces,
			order.cost,
			order.cost === null ? null : result.scenario.currency,
			dateAt(order.without.byMin, result.scenario),
			order.without.probability,
		]),
	);

const rules = (result: SupplyResult): string =>
	csvTable(
		[
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
		],
		result.items.flatMap(({ item, store }) =>
			store === null
				? []
				: [
						[
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
						],
					],
		),
	);

const cost = (result: SupplyResult): string =>
	csvTable(
		["item", "currency", "asOf", "price", ...four, "expiredMean"],
		(result.cost?.items ?? []).map((row): Cell[] => [
			row.item,
			result.cost?.currency ?? null,
			result.cost?.asOf ?? null,
			row.price,
			...values(row.used).map((used) =>
				typeof used === "number" ? used * row.price : null,
			),
			row.expiredMean * row.price,
		]),
	);

const policies = (result: SupplyResult): string =>
	csvTable(
		["policy", "item", ...four],
		result.policies.flatMap((policy) =>
			policy.items.map((row): Cell[] => [
				policy.name,
				row.item,
				...values(row.used),
			]),
		),
	);

const beds = (result: SupplyResult): string =>
	csvTable(
		[
			"day",
			"date",
			...four.map((name) => `inBed.${name}`),
			...four.map((name) => `waiting.${name}`),
		],
		result.beds.inBed.mean.map((_, i): Cell[] => {
			const day = result.beds.firstDay + i;
			return [
				day < 0 ? day : day + 1,
				dateAt(day * 1440, result.scenario),
				...columns(result.beds.inBed, i),
				...columns(result.beds.waiting, i),
			];
		}),
	);

const assumptions = (result: SupplyResult): string =>
	csvTable(
		["name", "value", "unit", "provenance", "defaulted", "meaning", "source"],
		result.assumptions.map((row) => [
			row.name,
			row.value,
			row.unit,
			row.provenance,
			row.defaulted,
			row.meaning,
			row.source,
		]),
	);
