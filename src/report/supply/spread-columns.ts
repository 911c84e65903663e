import type { CountSpread } from "../../results/index.ts";
import { plainNumber } from "../../words/index.ts";
import { type Column, shownNumber } from "../kit/table.ts";

/** Digits that the numbers of a simulation are given, money apart: more than any number of replications supports, fewer than bring a rounding of the machine to light. */
const digits = 6;

/** The shortest number that says as much: whole ones whole, others to six digits and never fewer than stand before the point. */
export function short(value: number): number;
export function short(value: number | null | undefined): number | null;
export function short(value: number | null | undefined): number | null {
	if (value === null || value === undefined) return null;
	return Number.isInteger(value)
		? value
		: Number(value.toPrecision(Math.max(digits, Math.trunc(Math.abs(value)).toString().length)));
}

/** An amount of money, to the cent. */
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
	filed: (value: number) => number | null = short,
	prefix = "",
): Column<Row>[] => four.map((name) => ({ key: `${prefix}${name}`, value: (row) => filed(of(row)[name]) }));

/** The spread at one place of a series. */
export const spreadAt = (series: { readonly [N in Four]: readonly number[] }, place: number): CountSpread => ({
	mean: series.mean[place] ?? Number.NaN,
	p10: series.p10[place] ?? Number.NaN,
	p50: series.p50[place] ?? Number.NaN,
	p90: series.p90[place] ?? Number.NaN,
});
