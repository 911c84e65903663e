import { firstParting, type Parting, TraceLog } from "../../src/engine/index.ts";
import { readScenario } from "../../src/scenario/index.ts";
import { traceDay } from "../../src/studies/trace/trace-day.ts";

/** A scenario file: its name and its text. */
export interface Named {
	readonly name: string;
	readonly text: string;
}

/** Seeds under which a scenario is traced: its own (written as nothing), then numbers. */
export const seeds = (count: number): string[] => Array.from({ length: count }, (_, i) => (i === 0 ? "" : `${i + 1}`));

/**
 * Every event of the traced day under a seed.
 * @public Called by name in engines that load this as one bundle.
 */
export function log({ text }: Named, seed: string): TraceLog {
	const scenario = readScenario(text);
	const trace = new TraceLog();
	traceDay(seed === "" ? scenario : { ...scenario, seed }, trace);
	return trace;
}

/** One line a scenario and seed: name, seed, number of events, hash. Runs in any engine. */
export function traces(files: readonly Named[], count: number): string[] {
	return files.flatMap((file) => {
		const scenario = readScenario(file.text);
		return seeds(count).map((seed) => {
			const { events, hash } = traceDay(seed === "" ? scenario : { ...scenario, seed }).trace;
			return `${file.name} ${seed === "" ? "own" : seed} ${events} ${hash}`;
		});
	});
}

/** Where the day of another engine, given event by event, parts from ours. */
export function parting(
	file: Named,
	seed: string,
	other: { readonly times: readonly number[]; readonly names: readonly string[] },
): Parting | null {
	const theirs = new TraceLog();
	other.times.forEach((time, i) => {
		theirs.note(time, 0, other.names[i]);
	});
	return firstParting(log(file, seed), theirs);
}
