import { readQuantity } from "../../physics/index.ts";

/** Reads what was typed; undefined where that is unusable, which `refuse` is told. */
export type Read<V> = (typed: string, refuse: Refuse) => V | undefined;

/** Notes that another value was expected; what was received is the text itself where it is not given. */
export type Refuse = (expected: string, received?: string, suggestion?: string) => void;

/** Any text; what it means is for the command to find out. */
export const text: Read<string> = (typed) => typed;

/** Names in a list. */
export const names: Read<readonly string[]> = (typed) => typed.split(",").map((name) => name.trim());

/** `2 min, 5 min` as a list, `2 min to 20 min by 2 min` as a range, as they would stand in a file. */
export const values: Read<unknown> = (typed) => {
	const [, from, to, by] = /^(.+?) to (.+?) by (.+)$/u.exec(typed.trim()) ?? [];
	return from === undefined ? names(typed, () => {}) : { from: from.trim(), to: to?.trim(), by: by?.trim() };
};

export const seed: Read<string> = (typed, refuse) => {
	if (typed.length >= 1 && typed.length <= 200 && !/\p{Cc}/u.test(typed)) return typed;
	refuse("1 to 200 characters without control characters", JSON.stringify(typed.slice(0, 40)));
};

export const wholeNumber =
	(least: number, most: number): Read<number> =>
	(typed, refuse) => {
		const value = Number(typed);
		if (/^\d+$/.test(typed) && value >= least && value <= most) return value;
		refuse(`a whole number from ${least} to ${most}`);
	};

export const onOff: Read<boolean> = (typed, refuse) => {
	if (typed === "on" || typed === "off") return typed === "on";
	refuse("on or off");
};

const longestHorizonMin = 28 * 1440;

/** Minutes. */
export const duration: Read<number> = (typed, refuse) => {
	const reading = readQuantity(typed, "min");
	if (reading.ok && reading.value > 0 && reading.value <= longestHorizonMin) return reading.value;
	refuse('a duration up to 28 d, such as "24 h"');
};

const longestWardMin = 364 * 1440;

/** The text itself, for the ward's file to read, where it is of whole days. */
export const wholeDays: Read<string> = (typed, refuse) => {
	const reading = readQuantity(typed, "min");
	if (reading.ok && reading.value > 0 && reading.value <= longestWardMin && reading.value % 1440 === 0) return typed;
	refuse('whole days up to 52 w, such as "8 w"');
};

/** Which part of how many, counted from 1. */
export interface Shard {
	readonly number: number;
	readonly of: number;
}

/** Shards of a run, at the most. */
const mostShards = 99_999;

export function isShard(data: { readonly number?: unknown; readonly of?: unknown }): data is Shard {
	const { number, of } = data;
	return (
		Number.isInteger(number) &&
		Number.isInteger(of) &&
		Number(number) >= 1 &&
		Number(number) <= Number(of) &&
		Number(of) <= mostShards
	);
}

export const shard: Read<Shard> = (typed, refuse) => {
	const [, number, of] = /^(\d{1,5})\/(\d{1,5})$/.exec(typed) ?? [];
	const asked = { number: Number(number), of: Number(of) };
	if (isShard(asked)) return asked;
	refuse("which part of how many, such as 2/10");
};
