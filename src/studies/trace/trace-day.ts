import { Trace } from "../../engine/index.ts";
import type { DressingDay } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { TherapyDay } from "../../therapy/index.ts";
import { Recorder } from "./recorder.ts";

export interface TracedDay {
	readonly trace: { readonly events: number; readonly hash: string };
	readonly dressings: readonly DressingDay[];
	/** Spells off suction of each dressing. */
	readonly off: readonly (readonly { readonly start: number; readonly end: number }[])[];
}

/** Runs one replication, the traced day unless another is asked for, with everything recorded. `trace` may be a log, to compare two runs. */
export function traceDay(scenario: Scenario, trace: Trace = new Trace(), replication = 0): TracedDay {
	const recorder = new Recorder(scenario);
	const day = new TherapyDay(scenario, recorder);
	day.run(replication, recorder, trace);
	return {
		trace: { events: trace.events, hash: trace.hash },
		dressings: day.processes.map((process, index) => recorder.day(index, process)),
		off: recorder.off,
	};
}
