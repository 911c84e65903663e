import type { EventId, Simulation, Substream } from "../../engine/index.ts";
import type { Happening, Scenario } from "../../scenario/index.ts";
import type { Condition } from "../../vocabulary/index.ts";
import { nextClock } from "../base/clock.ts";
import { eventPriority } from "../base/event-priority.ts";
import type { Breaches } from "../hazards/breaches.ts";
import type { Clogging } from "../hazards/clogging.ts";
import type { Move } from "../hazards/hazard.ts";
import type { Kinks } from "../hazards/kinks.ts";
import { same } from "../liquid/liquid-state.ts";
import type { Canister } from "../parts/canister.ts";
import type { Source } from "../parts/source.ts";
import type { Whole } from "../parts/whole.ts";
import type { WoundOutput } from "../parts/wound-output.ts";

/** What care asks of a dressing. */
export interface CaredFor extends Whole {
	readonly id: string;
	readonly canister: Canister;
	readonly source: Source;
	readonly wound: WoundOutput;
	readonly change: { start(): void };
	readonly hazards: { move(kind: Move): void };
	readonly seal: Breaches;
	readonly port: Clogging;
	readonly kinks: Kinks;
	canisterAt(at: number): number;
	sourceAt(at: number): number;
}

/** What comes to a dressing by the clock or by script: rounds, repositioning in bed, listed dressing changes, happenings. */
export class CareOfDressing {
	readonly #sim: Simulation;
	readonly #scenario: Scenario;
	readonly #process: CaredFor;
	readonly #eRound: EventId;
	readonly #eReposition: EventId;
	/** Patients are turned as a whole: dressings of one patient draw the same. */
	readonly #jitter: Substream;
	readonly #fixed: readonly { readonly event: EventId; readonly atMin: number }[];
	#began = 0;
	#repositionings = 0;

	constructor(sim: Simulation, scenario: Scenario, process: CaredFor) {
		this.#sim = sim;
		this.#scenario = scenario;
		this.#process = process;
		this.#jitter = process.substream("turn.jitter");
		this.#eRound = sim.event(`${process.id}: round`, eventPriority.round, () => {
			this.#round();
			this.#nextRound(1);
		});
		this.#eReposition = sim.event(`${process.id}: turn`, eventPriority.turn, () => {
			process.hazards.move("turn");
			this.#nextRepositioning();
		});
		const fixed: { event: EventId; atMin: number }[] = [];
		const at = (atMin: number, name: string, priority: number, action: () => void) => {
			if (atMin < scenario.horizonMin)
				fixed.push({ event: sim.event(`${process.id}: ${name}`, priority, action), atMin });
		};
		const change = scenario.care.dressingChange;
		if (change !== null && "atMin" in change) {
			for (const atMin of change.atMin)
				at(atMin, "listed dressing change", eventPriority.scripted, () => process.change.start());
		}
		for (const happening of scenario.happenings) {
			if (happening.dressing === process.id) script(happening, process, at);
		}
		this.#fixed = fixed;
	}

	/** Care begins now, with the therapy: what is listed counts from here. */
	reset(): void {
		this.#began = this.#sim.now;
		for (const { event, atMin } of this.#fixed) this.#sim.schedule(event, this.#began + atMin);
		this.#nextRound(0);
		this.#repositionings = 0;
		if (this.#scenario.chance) this.#nextRepositioning();
	}

	/** Care ends: nothing more comes. */
	stop(): void {
		for (const { event } of this.#fixed) this.#sim.cancel(event);
		this.#sim.cancel(this.#eRound);
		this.#sim.cancel(this.#eReposition);
	}

	/** A nurse looks: for a canister that is nearly full, a source below one fill, a leak that can be heard. */
	#round(): void {
		const { canister, source, seal, air, alarms, regimen, phase, constants: k, sim } = this.#process;
		if (this.#process.canisterAt(sim.now) >= k["round.canisterAbove"] * canister.size - same)
			canister.changeAsAtRound("round");
		if (regimen.fillMl > 0 && this.#process.sourceAt(sim.now) < regimen.fillMl - same) source.renewAsAtRound("round");
		if (phase !== "change" && air.leak * air.setDepth > k["round.leakAbove"]) {
			alarms.nurseMin += k["hands.patch"];
			seal.patch("round");
		}
	}

	/** The next round at least `laterMin` from now. */
	#nextRound(laterMin: number): void {
		const { startClockMin, care, horizonMin } = this.#scenario;
		const due = nextClock(this.#sim.now + laterMin, startClockMin, care.roundsClockMin);
		if (due < horizonMin) this.#sim.schedule(this.#eRound, due);
	}

	/** Turn k comes at k intervals, early or late by a uniform jitter. With chance off turns break nothing and are left out. */
	#nextRepositioning(): void {
		const { care, horizonMin, constants } = this.#scenario;
		if (care.turningMin === null) return;
		this.#repositionings++;
		const jitter = constants["turn.jitter"] * (2 * this.#jitter.uniform() - 1);
		const due = Math.max(this.#sim.now, this.#began + (this.#repositionings * care.turningMin + jitter));
		if (due < horizonMin) this.#sim.schedule(this.#eReposition, due);
	}
}

type At = (atMin: number, name: string, priority: number, action: () => void) => void;

function script(happening: Happening, process: CaredFor, at: At): void {
	const { atMin, what } = happening;
	const scripted = (action: () => void) => at(atMin, `scripted ${what}`, eventPriority.scripted, action);
	/** What a listed happening may bring about is not put down to chance; on a dressing that is being changed it acts on nothing. */
	const bringing = (conditions: readonly Condition[], action: () => void): void =>
		scripted(() => {
			if (process.phase !== "change") for (const condition of conditions) process.alarms.listed.add(condition);
			action();
		});
	switch (happening.what) {
		case "turn":
		case "transfer": {
			const kind = happening.what;
			scripted(() => process.hazards.move(kind));
			break;
		}
		case "kink-fill":
			bringing(["fill-path-obstructed"], () => process.kinks.kink("fill"));
			break;
		case "kink-suction":
			bringing(["suction-path-obstructed"], () => process.kinks.kink("suction"));
			break;
		case "canister-change":
			scripted(() => process.canister.changeAsAtRound("scripted"));
			break;
		case "source-change":
			scripted(() => process.source.renewAsAtRound("scripted"));
			break;
		case "dressing-change":
			scripted(() => process.change.start());
			break;
		case "breach":
			bringing(["seal-leak", "depth-not-held"], () => process.seal.breach(happening.size));
			break;
		case "clog":
			bringing(["suction-path-obstructed"], () => process.port.add(happening.share));
			break;
		case "off":
			bringing(["suction-absent"], () => process.switchOff(true));
			at(atMin + happening.forMin, "switched on again", eventPriority.scripted, () => {
				process.switchOff(false);
				process.alarms.listed.delete("suction-absent");
			});
			break;
		case "bleed": {
			const rate = happening.volumeMl / happening.forMin;
			bringing(["large-output"], () => process.wound.bleed(rate));
			at(atMin + happening.forMin, "bleeding stops", eventPriority.scripted, () => {
				process.wound.bleed(-rate);
				process.alarms.listed.delete("large-output");
			});
			break;
		}
	}
}
