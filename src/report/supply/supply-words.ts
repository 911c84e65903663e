import type { CountSeries, CountSpread, PlannedOrder, SupplyResult } from "../../results/index.ts";
import { type Clock, dateWords, dayOffset, plainNumber, timeOfDay } from "../../words/index.ts";
import { type Column, shownNumber } from "../kit/table.ts";

/** '1 in 6', 'less than 1 in 100', 'more than 99 in 100'; of few replications 'less than 1 in 60', since they tell no more. */
export function chanceWords(probability: number, { replications, chance }: SupplyResult["scenario"]): string {
	const most = chance === "off" ? 100 : Math.max(2, Math.min(100, replications));
	if (probability < 1 / most - 1e-12) return `less than 1 in ${most}`;
	if (probability > 1 - 1 / most + 1e-12) return `more than ${most - 1} in ${most}`;
	if (probability > 0.5) return `${Math.round(probability * 100)} in 100`;
	return `1 in ${Math.round(1 / probability)}`;
}

/** 'Thu 5 March'. */
export const dayWordsAt = (atMin: number, clock: Clock): string => dateWords(dayOffset(atMin, clock), clock);

/** 'Thu 5 March 14:00'. */
export const momentWords = (atMin: number, clock: Clock): string =>
	`${dayWordsAt(atMin, clock)} ${timeOfDay(atMin, clock)}`;

/** '4 packs of canister 1000 mL', '12 × suction port'. */
export const orderWords = (order: PlannedOrder): string =>
	order.packSize === 1
		? `${order.pieces} × ${order.item}`
		: `${order.packs} ${order.packs === 1 ? "pack" : "packs"} of ${order.item}`;

/** '12 345 EUR'. */
export const moneyWords = (amount: number, currency: string): string =>
	`${plainNumber(Math.round(amount), 0).replace(/\B(?=(\d{3})+$)/g, "\u202F")} ${currency}`;

/** '12.5': an amount of money, with cents that are not nought. */
export const priceWords = (amount: number): string => plainNumber(amount, 2);

/** '12': whole pieces. */
export const countWords = (value: number): string => plainNumber(value, 0);

/** '99.2 %', '>99.9 %': a share of the time, with a tenth of a percent. */
export function shareWords(share: number): string {
	const text = plainNumber(share * 100, 1);
	return share < 1 && text === "100" ? ">99.9\u00A0%" : `${text}\u00A0%`;
}

/** ' (12 to 15)' behind a number; nothing where too few replications tell. */
export const bracketed = (low: number | null, high: number | null, words: (value: number) => string): string =>
	low === null || high === null ? "" : ` (${words(low)} to ${words(high)})`;

/** Digits of simulated numbers, money apart: more than replications support, fewer than show a rounding of the machine. */
const digits = 6;

/** The shortest number that says as much: whole ones whole, others to six digits and never fewer than stand before the point. */
export const short = <Value extends number | null>(value: Value): Value | number =>
	value === null || Number.isInteger(value)
		? value
		: Number(value.toPrecision(Math.max(digits, Math.trunc(Math.abs(value)).toString().length)));

export const cents = (amount: number): number => Math.round(amount * 100) / 100;

type Four = keyof CountSpread;
const heads: { readonly [N in Four]: string } = { mean: "Mean", p10: "P10", p50: "P50", p90: "P90" };
const four = Object.keys(heads) as Four[]; // the keys of the record above

/** A spread in a report: its mean and three of its quantiles. */
export const shownSpread = <Row>(
	of: (row: Row) => CountSpread,
	written: (value: number, name: Four, row: Row) => string,
): Column<Row>[] => four.map((name) => shownNumber(heads[name], (row) => written(of(row)[name], name, row)));

/** Pieces of a spread: their mean with a tenth, else whole. */
export const piecesWords = (pieces: number, name: Four): string => plainNumber(pieces, name === "mean" ? 1 : 0);

/** The same in a file: `mean`, `p10`, `p50`, `p90`, or `needed.mean` and so on. */
export const filedSpread = <Row>(
	of: (row: Row) => CountSpread,
	filed: (value: number) => number = short,
	prefix = "",
): Column<Row>[] => four.map((name) => ({ key: `${prefix}${name}`, value: (row) => filed(of(row)[name]) }));

export const spreadAt = ({ mean, p10, p50, p90 }: CountSeries, place: number): CountSpread => ({
	mean: mean[place],
	p10: p10[place],
	p50: p50[place],
	p90: p90[place],
});
