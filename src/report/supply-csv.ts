import type {
	CountSeries,
	CountSpread,
	SupplyResult,
} from "../analysis/supply-result.ts";
import { type Cell, csvTable } from "./csv-table.ts";
import { dateAt, dateTimeAt } from "./dates.ts";

/** Digits that the numbers of a simulation are given, money apart: more than any number of replications supports, fewer than bring a rounding of the machine to light. */
const digits = 6;

/** The shortest number that says as much: whole ones whole, others to six digits and never fewer than stand before the point. */
const short = (value: number): number =>
	Number.isInteger(value)
		? value
		: Number(
				value.toPrecision(
					Math.max(digits, Math.trunc(Math.abs(value)).toString().length),
				),
			);

/** An amount of money, to the cent. */
const cents = (amount: number): number => Math.round(amount * 100) / 100;

/** One table a file, RFC 4180 with CRLF, by file name. Pieces are whole, money is to the cent, all else to six digits; days and weeks count from 1. */
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
	four.map((name) => shortOrNull(series[name][i]));
const values = (spread: CountSpread): Cell[] =>
	four.map((name) => short(spread[name]));
const shortOrNull = (value: number | null | undefined): Cell =>
	value === null || value === undefined ? null : short(value);

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
						shortOrNull(store.outOnDay[i]),
						shortOrNull(store.outByDay[i]),
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
			"probabilityWithIt",
			"positionBefore",
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
			short(order.without.probability),
			short(order.with.probability),
			order.position,
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
			"reorderLow95",
			"reorderHigh95",
			"reorderOfOtherHalf",
			"reached",
			"reachedLow95",
			"reachedHigh95",
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
							short(store.rule.demandPerDay),
							short(store.rule.demandSdPerDay),
							short(store.rule.exposureDays),
							store.rule.textBook.reorder,
							shortOrNull(store.rule.textBook.service),
							short(store.ready.mean),
							shortOrNull(store.fillRate),
							short(store.stockOut.probability),
							short(store.stockOut.low),
							short(store.stockOut.high),
							short(store.short.mean),
							short(store.substituted.mean),
							short(store.offHours.mean),
							short(store.expired.mean),
							store.rule.low95,
							store.rule.high95,
							store.rule.otherHalf,
							short(store.rule.reached.mean),
							shortOrNull(store.rule.reached.low95),
							shortOrNull(store.rule.reached.high95),
						],
					],
		),
	);

const cost = (result: SupplyResult): string =>
	csvTable(
		[
			"item",
			"currency",
			"asOf",
			"price",
			...four,
			"expiredMean",
			...four.map((name) => `needed.${name}`),
		],
		(result.cost?.items ?? []).map((row): Cell[] => [
			row.item,
			result.cost?.currency ?? null,
			result.cost?.asOf ?? null,
			row.price,
			...four.map((name) => cents(row.used[name] * row.price)),
			cents(row.expiredMean * row.price),
			...four.map((name) => cents(row.needed[name] * row.price)),
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
