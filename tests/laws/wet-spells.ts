import type { Scenario } from "../../src/scenario/index.ts";
import { unobserved } from "../../src/therapy/base/observer.ts";
import { type DressingProcess, type Observer, TherapyDay } from "../../src/therapy/index.ts";

/** From the start of a fill to the end of its drain. */
export interface WetSpell {
	readonly startMin: number;
	endMin: number;
	/** Breaches within it. */
	breaches: number;
	/** The level came within a twentieth of what the foam takes without pooling, or above it. */
	pooled: boolean;
}

export interface WetSpells {
	/** In order; the one under way at the end of the day is left out. */
	readonly spells: readonly WetSpell[];
	/** When the first alarm was raised, min; Infinity: none. */
	readonly firstAlarmMin: number;
}

/** Looks on at replications of the first dressing and tells wet breaches from dry ones by the phase in which they come. */
export class WetSpellWatch {
	readonly #day: TherapyDay;
	readonly #observer: Observer;
	#spells: WetSpell[] = [];
	#firstAlarmMin = Number.POSITIVE_INFINITY;

	constructor(scenario: Scenario) {
		const last = () => this.#spells[this.#spells.length - 1];
		this.#observer = {
			...unobserved,
			span: (_, process: DressingProcess, start, end) => {
				if (!process.isWet) return;
				if (process.cycle.fills > this.#spells.length)
					this.#spells.push({ startMin: start, endMin: end, breaches: 0, pooled: false });
				last().endMin = end;
				last().pooled ||= process.levelAt(end) > 0.95 * process.capacity;
			},
			breach: () => {
				if (this.#day.processes[0].isWet) last().breaches++;
			},
			alarmStarts: (_, _condition, at) => {
				this.#firstAlarmMin = Math.min(this.#firstAlarmMin, at);
			},
		};
		this.#day = new TherapyDay(scenario, this.#observer);
	}

	run(replication: number): WetSpells {
		this.#spells = [];
		this.#firstAlarmMin = Number.POSITIVE_INFINITY;
		this.#day.run(replication, this.#observer);
		if (this.#day.processes[0].isWet) this.#spells.pop();
		return { spells: this.#spells, firstAlarmMin: this.#firstAlarmMin };
	}
}
