import { type Constants, constantFacts, constantNames } from "../physics/index.ts";
import { filledDefaults, writtenDefault } from "./filled-defaults.ts";
import { startClockMin } from "./keys/clock.ts";
import { resolveSolution } from "./keys/supplies.ts";
import type { ScenarioFrame } from "./meaning/scenario.ts";
import { pathText } from "./reading/problem.ts";

/** What a sound file of a day and one of a ward both say. */
type FrameFile = Pick<ScenarioFrame, "title" | "seed" | "start" | "replications" | "chance"> & {
	readonly horizon: number;
	readonly solution: Parameters<typeof resolveSolution>[0];
};

/** What a day and a ward have in common but for the care; `data` is the raw file, for the list of what it leaves to the defaults. */
export function resolveFrame(
	file: FrameFile,
	constants: Constants,
	data: unknown,
): Omit<ScenarioFrame, "care" | "constants"> {
	const { title, seed, start, horizon: horizonMin, replications, chance } = file;
	return {
		title,
		seed,
		start,
		startClockMin: startClockMin(start),
		horizonMin,
		replications,
		chance,
		solution: resolveSolution(file.solution),
		defaulted: filledDefaults(data).map(({ keys, default: filled }) => ({
			path: pathText(keys),
			value: writtenDefault(filled),
			provenance: filled.provenance,
			source: filled.source,
		})),
		overridden: constantNames.filter((name) => constants[name] !== constantFacts[name].value),
	};
}
