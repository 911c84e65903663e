import { expectedEvents, maxExpectedEvents, type Problem, type Scenario } from "../../scenario/index.ts";
import { refuse } from "../terminal/failure.ts";
import { reader, type Typed } from "./options.ts";

/** What the options lay over a scenario, undefined where one was not given; what is wrong with them is added to `problems`. */
export function readOverrides(typed: Typed, problems: Problem[]) {
	const read = reader(typed, problems);
	return {
		seed: read("seed"),
		replications: read("replications"),
		horizonMin: read("horizon"),
		chance: read("chance"),
		/** The replication to draw; undefined: the typical one. */
		draw: read("draw"),
		workers: read("workers"),
		quiet: typed.quiet === true,
		/** Half-widths to reach; empty where none were asked for. */
		precision: read("precision") ?? [],
	};
}

export type Overrides = ReturnType<typeof readOverrides>;

/** The scenario with the options laid over it; a run that would never end is added to `problems`. */
export function override(scenario: Scenario, overrides: Overrides, problems: Problem[]): Scenario {
	const { seed, replications, horizonMin, chance, draw } = overrides;
	const given: Readonly<Record<string, unknown>> = { seed, replications, horizon: horizonMin, chance };
	const changed: Scenario = {
		...scenario,
		seed: seed ?? scenario.seed,
		replications: replications ?? scenario.replications,
		horizonMin: horizonMin ?? scenario.horizonMin,
		chance: chance ?? scenario.chance,
		defaulted: scenario.defaulted.filter((entry) => given[entry.path] === undefined),
	};
	if (draw !== undefined && draw >= changed.replications)
		refuse(problems, "--draw", `a replication from 0 to ${changed.replications - 1}`, `"${draw}"`);
	const events = expectedEvents(changed);
	const most = `a run of at most ${maxExpectedEvents} events`;
	if (!(events <= maxExpectedEvents)) refuse(problems, "--horizon", most, `one of about ${Math.round(events)}`);
	return changed;
}
