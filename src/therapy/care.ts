import type { EventId, Simulation } from "../engine/index.ts";
import type { Happening, Scenario } from "../scenario/index.ts";
import { nextClock } from "./clock.ts";
import type { Condition } from "./conditions.ts";
import type { DressingProcess } from "./dressing.ts";
import { order } from "./order.ts";

/** What comes to a dressing by the clock or by script: rounds, turns in bed, listed dressing changes, happenings. */
export class CareOfDressing {
	readonly #sim: Simulation;
	readonly #scenario: Scenario;
	readonly #process: DressingProcess;
	readonly #eRound: EventId;
	readonly #eTurn: EventId;
	readonly #fixed: readonly {
		readonly event: EventId;
		readonly atMin: number;
	}[];
	#began = 0;
	#turns = 0;

	constructor(sim: Simulation, scenario: Scenario, process: DressingProcess) {
		this.#sim = sim;
		this.#scenario = scenario;
		this.#process = process;
		this.#eRound = sim.event(`${process.id}: round`, order.round, () => {
			process.round();
			this.#nextRound(1);
		});
		this.#eTurn = sim.event(`${process.id}: turn`, order.turn, () => {
			process.move("turn");
			this.#nextTurn();
		});
		const fixed: { event: EventId; atMin: number }[] = [];
		const at = (
			atMin: number,
			name: string,
			priority: number,
			action: () => void,
		) => {
			if (atMin < scenario.horizonMin)
				fixed.push({
					event: sim.event(`${process.id}: ${name}`, priority, action),
					atMin,
				});
		};
		const change = scenario.care.dressingChange;
		if (change !== null && "atMin" in change) {
			for (const atMin of change.atMin)
				at(atMin, "listed dressing change", order.scripted, () =>
					process.changeDressing(),
				);
		}
		for (const happening of scenario.happenings) {
			if (happening.dressing === process.id) script(happening, process, at);
		}
		this.#fixed = fixed;
	}

	/** Care begins now, with the therapy: what is listed counts from here. */
	reset(): void {
		this.#began = this.#sim.now;
		for (const { event, atMin } of this.#fixed)
			this.#sim.schedule(event, this.#began + atMin);
		this.#nextRound(0);
		this.#turns = 0;
		if (this.#scenario.chance) this.#nextTurn();
	}

	/** Care ends: nothing more comes. */
	stop(): void {
		for (const { event } of this.#fixed) this.#sim.cancel(event);
		this.#sim.cancel(this.#eRound);
		this.#sim.cancel(this.#eTurn);
	}

	/** The next round at least `laterMin` from now. */
	#nextRound(laterMin: number): void {
		const { startClockMin, care, horizonMin } = this.#scenario;
		const due = nextClock(
			this.#sim.now + laterMin,
			startClockMin,
			care.roundsClockMin,
		);
		if (due < horizonMin) this.#sim.schedule(this.#eRound, due);
	}

	/** Turn k comes at k intervals, early or late by a uniform jitter. With chance off turns break nothing and are left out. */
	#nextTurn(): void {
		const { care, horizonMin, constants } = this.#scenario;
		if (care.turningMin === null) return;
		this.#turns++;
		const jitter =
			constants["turn.jitter"] * (2 * this.#process.jitter.uniform() - 1);
		const due = Math.max(
			this.#sim.now,
			this.#began + (this.#turns * care.turningMin + jitter),
		);
		if (due < horizonMin) this.#sim.schedule(this.#eTurn, due);
	}
}

type At = (
	atMin: number,
	name: string,
	priority: number,
	action: () => void,
) => void;

function script(happening: Happening, process: DressingProcess, at: At): void {
	const { atMin, what } = happening;
	const scripted = (action: () => void) =>
		at(atMin, `scripted ${what}`, order.scripted, action);
	/** What a listed happening may bring about is not put down to chance; on a dressing that is being changed it acts on nothing. */
	const bringing = (
		conditions: readonly Condition[],
		action: () => void,
	): void =>
		scripted(() => {
			if (process.phase !== "change")
				for (const condition of conditions)
					process.alarms.listed.add(condition);
			action();
		});
	switch (happening.what) {
		case "turn":
		case "transfer": {
			const kind = happening.what;
			scripted(() => process.move(kind));
			break;
		}
		case "kink-fill":
			bringing(["fill-path-obstructed"], () => process.kink("fill"));
			break;
		case "kink-suction":
			bringing(["suction-path-obstructed"], () => process.kink("suction"));
			break;
		case "canister-change":
			scripted(() => process.canister.changeAsAtRound("scripted"));
			break;
		case "source-change":
			scripted(() => process.source.renewAsAtRound("scripted"));
			break;
		case "dressing-change":
			scripted(() => process.changeDressing());
			break;
		case "breach":
			bringing(["seal-leak", "depth-not-held"], () =>
				process.breach(happening.size),
			);
			break;
		case "clog":
			bringing(["suction-path-obstructed"], () =>
				process.port.add(happening.share),
			);
			break;
		case "off":
			bringing(["suction-absent"], () => process.switchOff(true));
			at(atMin + happening.forMin, "switched on again", order.scripted, () => {
				process.switchOff(false);
				process.alarms.listed.delete("suction-absent");
			});
			break;
		case "bleed": {
			const rate = happening.volumeMl / happening.forMin;
			bringing(["large-output"], () => process.bleed(rate));
			at(atMin + happening.forMin, "bleeding stops", order.scripted, () => {
				process.bleed(-rate);
				process.alarms.listed.delete("large-output");
			});
			break;
		}
	}
}
