import type { Problem } from "../../scenario/reading/problem.ts";
import { refuse } from "../terminal/failure.ts";
import { quoted } from "../terminal/quoted.ts";
import { constraints, goals, halfWidthsOfMeasures, halfWidthsOfTotals, measures } from "./measure-lists.ts";
import { duration, names, onOff, type Read, seed, shard, text, values, wholeDays, wholeNumber } from "./values.ts";

/**
 * An option as it stands in a help: what stands for its value, what it is for, how it is read; `flag` as it is typed, where
 * that is not the name in the table.
 */
const option = <V>(unit: string, words: string, read: Read<V>, flag?: string) => ({ unit, words, read, flag });
type Option<V> = ReturnType<typeof option<V>>;
const inputs = (unit: string, words: string) => option(unit, words, text);

/** Every option that takes a value, once. Which commands take it stands with the commands, and so do words of their own. */
export const options = {
	seed: option("<text>", "seed of chance", seed),
	replications: option("<n>", "how many days to draw", wholeNumber(1, 1_000_000)),
	horizon: option("<duration>", 'how long the day is, e.g. "48 h"', duration),
	weeks: option("<duration>", 'how many whole days, e.g. "8 w"', wholeDays, "horizon"),
	chance: option("<on|off>", "whether anything is left to chance", onOff),
	workers: option("<n>", "threads; the result is the same for any number", wholeNumber(1, 64)),
	draw: option("<n>", "draw this replication, counted from 0, instead of the typical one", wholeNumber(0, 999_999)),
	precision: option(
		"<list>",
		"run until the means of totals have these half-widths, e.g. toCanisterMl=5",
		halfWidthsOfTotals,
	),
	precisionOfDifferences: option(
		"<list>",
		"run until differences have these half-widths, e.g. nightCalls=0.05",
		halfWidthsOfMeasures,
		"precision",
	),
	between: option("<names>", "only these regimens, in this order", names),
	measures: option("<list>", "what to show, in this order", measures),
	restsOn: option("<on|off>", "whether every assumption is halved and doubled too (default: on)", onOff),
	dwell: option("<values>", 'e.g. "2 min, 5 min" or "2 min to 20 min by 2 min"', values),
	suction: option("<values>", 'suction periods, e.g. "2 h to 4 h by 30 min"', values),
	fill: option("<values>", 'e.g. "40 mL, 60 mL"', values),
	depth: option("<values>", 'e.g. "-75 mmHg to -150 mmHg by 25 mmHg"', values),
	start: option("<values>", 'clock times of the first phase, e.g. "06:00, 08:00"', values),
	apart: option("<values>", "how far dressings are out of step", values),
	keep: option("<list>", 'what a regimen must keep, e.g. "nightCalls<0.5, canisterLastsShift>=0.9"', constraints),
	efficient: option("<list>", "two or three measures whose best trade-offs are sought", goals),
	curve: inputs("<axis>", "the axis whose response is drawn as a curve"),
	shard: option("<k/n>", "simulate only the k-th of n parts, and write it for gather", shard),
	rules: inputs("<file>", "order rules that --rules-only wrote; without it every shard finds them anew"),
	script: inputs("<file>", "play a list of acts instead of asking; - is standard input"),
	out: inputs("<folder>", "folder of the report (default: in out/)"),
} as const;

/** Every option that takes none. */
const switches = {
	force: "overwrite the report of another scenario",
	json: "print the result as JSON; without --out no file is written",
	quiet: "say nothing but what went wrong",
	full: "print the scenario with every default filled in and where it comes from",
	rulesOnly: "find the order rules, over all replications, and write them as rules.json for the shards",
	generate: "draw new causes for this dressing from the seed",
	link: "print the case as a link's fragment, not readable at a glance; it is no secret",
} as const;

export type OptionName = keyof typeof options | keyof typeof switches;

/** The words of a command line after its command, as they were typed. */
export type Typed = { readonly [N in Exclude<keyof typeof options, "weeks" | "precisionOfDifferences">]?: string } & {
	readonly [N in keyof typeof switches]?: boolean;
};

type ValueOf<N extends keyof typeof options> = (typeof options)[N] extends Option<infer V> ? V : never;

const asked: { readonly [name: string]: Option<unknown> } = options;

/** `--rests-on` */
const flagOf = (name: string): string =>
	`--${(asked[name]?.flag ?? name).replaceAll(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}`;

/** An option as commander has it declared: `--seed <text>`, and its words. */
export function declared(name: OptionName): readonly [flags: string, words: string] {
	return name in switches
		? [flagOf(name), switches[name as keyof typeof switches]] // the line above has looked
		: [`${flagOf(name)} ${asked[name].unit}`, asked[name].words];
}

/** Reads what was typed for an option, undefined where nothing usable was; what is wrong with it is added to `problems`. */
export const reader =
	(typed: Typed, problems: Problem[]) =>
	<N extends keyof typeof options>(name: N): ValueOf<N> | undefined => {
		const { read, flag } = asked[name];
		const words = typed[(flag ?? name) as keyof Typed];
		if (typeof words !== "string") return undefined;
		return read(words, (expected, received = quoted(words), suggestion) =>
			refuse(problems, flagOf(name), expected, received, suggestion),
		) as ValueOf<N> | undefined; // of the same entry of the table
	};
