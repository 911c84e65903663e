import {
	isTotalName,
	type PrecisionTarget,
	totalNames,
} from "../analysis/index.ts";
import { readQuantity } from "../physics/index.ts";
import {
	expectedEvents,
	maxExpectedEvents,
	type Problem,
	type Scenario,
} from "../scenario/index.ts";

/** Options of a run as they were typed. */
export interface TypedOptions {
	readonly seed?: string;
	readonly replications?: string;
	readonly horizon?: string;
	readonly chance?: string;
	readonly workers?: string;
	readonly precision?: string;
	readonly draw?: string;
	readonly out?: string;
	readonly json?: boolean;
	readonly quiet?: boolean;
	readonly force?: boolean;
}

/** What the options lay over the scenario; undefined where an option was not given. */
export interface Overrides {
	readonly seed?: string;
	readonly replications?: number;
	readonly horizonMin?: number;
	readonly chance?: boolean;
	/** The replication to draw; undefined: the typical one. */
	readonly draw?: number;
	/** Threads; undefined: as many as the work is worth. */
	readonly workers?: number;
	/** Half-widths to reach; empty where none were asked for. */
	readonly precision: readonly PrecisionTarget[];
}

const longestHorizonMin = 28 * 1440;

/** Reads the options of a run; everything that is wrong with them is added to `problems`. */
export function readOptions(
	typed: TypedOptions,
	problems: Problem[],
): Overrides {
	const whole = (
		name: string,
		text: string | undefined,
		least: number,
		most: number,
	): number | undefined => {
		if (text === undefined) return undefined;
		const value = Number(text);
		if (/^\d+$/.test(text) && value >= least && value <= most) return value;
		problems.push({
			path: `--${name}`,
			expected: `a whole number from ${least} to ${most}`,
			received: JSON.stringify(text),
		});
		return undefined;
	};
	return {
		seed: seed(typed.seed, problems),
		replications: whole("replications", typed.replications, 1, 1_000_000),
		horizonMin: horizon(typed.horizon, problems),
		chance: chance(typed.chance, problems),
		draw: whole("draw", typed.draw, 0, 999_999),
		workers: whole("workers", typed.workers, 1, 64),
		precision: precision(typed.precision, problems),
	};
}

function precision(
	text: string | undefined,
	problems: Problem[],
): PrecisionTarget[] {
	if (text === undefined) return [];
	return text.split(",").flatMap((part) => {
		const [total = "", width = "", ...rest] = part.split("=");
		const halfWidth = Number(width);
		if (
			isTotalName(total) &&
			rest.length === 0 &&
			/^\d*\.?\d+$/.test(width) &&
			halfWidth > 0
		)
			return [{ total, halfWidth }];
		problems.push({
			path: "--precision",
			expected: `half-widths such as toCanisterMl=5,meanExudateShare=0.002, of ${totalNames.join(", ")}`,
			received: JSON.stringify(part.slice(0, 60)),
		});
		return [];
	});
}

function seed(
	text: string | undefined,
	problems: Problem[],
): string | undefined {
	if (text === undefined) return undefined;
	if (text.length >= 1 && text.length <= 200 && !/\p{Cc}/u.test(text))
		return text;
	problems.push({
		path: "--seed",
		expected: "1 to 200 characters without control characters",
		received: JSON.stringify(text.slice(0, 40)),
	});
	return undefined;
}

function horizon(
	text: string | undefined,
	problems: Problem[],
): number | undefined {
	if (text === undefined) return undefined;
	const reading = readQuantity(text, "min");
	if (
		"value" in reading &&
		reading.value > 0 &&
		reading.value <= longestHorizonMin
	)
		return reading.value;
	problems.push({
		path: "--horizon",
		expected: 'a duration up to 28 d, such as "24 h"',
		received: JSON.stringify(text),
	});
	return undefined;
}

function chance(
	text: string | undefined,
	problems: Problem[],
): boolean | undefined {
	if (text === undefined || text === "on" || text === "off")
		return text === undefined ? undefined : text === "on";
	problems.push({
		path: "--chance",
		expected: "on or off",
		received: JSON.stringify(text),
	});
	return undefined;
}

/** The scenario with the options laid over it; a run that would never end is added to `problems`. */
export function override(
	scenario: Scenario,
	overrides: Overrides,
	problems: Problem[],
): Scenario {
	const given: Readonly<Record<string, unknown>> = {
		seed: overrides.seed,
		replications: overrides.replications,
		horizon: overrides.horizonMin,
		chance: overrides.chance,
	};
	const changed: Scenario = {
		...scenario,
		seed: overrides.seed ?? scenario.seed,
		replications: overrides.replications ?? scenario.replications,
		horizonMin: overrides.horizonMin ?? scenario.horizonMin,
		chance: overrides.chance ?? scenario.chance,
		defaulted: scenario.defaulted.filter(
			(entry) => given[entry.path] === undefined,
		),
	};
	const { draw } = overrides;
	if (draw !== undefined && draw >= changed.replications)
		problems.push({
			path: "--draw",
			expected: `a replication from 0 to ${changed.replications - 1}`,
			received: `"${draw}"`,
		});
	const events = expectedEvents(changed);
	if (!(events <= maxExpectedEvents)) {
		problems.push({
			path: "--horizon",
			expected: `a run of at most ${maxExpectedEvents} events`,
			received: `one of about ${Math.round(events)}`,
		});
	}
	return changed;
}
