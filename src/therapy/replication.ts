import { Resource, Simulation, type Trace } from "../engine/index.ts";
import type { Scenario } from "../scenario/index.ts";
import type { Observer } from "./base/observer.ts";
import { CareOfDressing } from "./care/care.ts";
import { DressingProcess } from "./dressing.ts";

/**
 * A scenario made ready to be run again and again: everything is built once, and `run` sets it back, so that a
 * replication allocates next to nothing. Replication 0 is the traced day.
 */
export class TherapyDay {
	readonly processes: readonly DressingProcess[];
	readonly nurses: Resource;
	readonly #scenario: Scenario;
	readonly #sim = new Simulation();
	readonly #care: readonly CareOfDressing[];

	constructor(scenario: Scenario, observer: Observer) {
		this.#scenario = scenario;
		this.nurses = new Resource(scenario.care.nurses ?? Number.POSITIVE_INFINITY, this.#sim);
		this.processes = scenario.dressings.map(
			(_, index) => new DressingProcess(this.#sim, scenario, index, this.nurses, observer),
		);
		this.#care = this.processes.map((process) => new CareOfDressing(this.#sim, scenario, process));
	}

	/** The clock: the horizon once a run is over. */
	get now(): number {
		return this.#sim.now;
	}

	/** Runs one replication over [0, horizon). Returns the number of events executed. */
	run(replication: number, observer: Observer, trace: Trace | null = null): number {
		const sim = this.#sim;
		sim.reset();
		sim.trace = trace;
		this.nurses.reset();
		for (const process of this.processes) process.observer = observer;
		for (const process of this.processes) process.reset(replication);
		for (const care of this.#care) care.reset();
		sim.run(this.#scenario.horizonMin);
		for (const process of this.processes) process.finish();
		return sim.executed;
	}
}
