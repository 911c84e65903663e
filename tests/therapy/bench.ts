import { type EventId, Resource, Simulation, Substream } from "../../src/engine/index.ts";
import { type Constants, constantsWith } from "../../src/physics/index.ts";
import type { Care, Dressing } from "../../src/scenario/index.ts";
import { Air } from "../../src/therapy/air/air-state.ts";
import { Alarms, type Watched } from "../../src/therapy/alarms/alarms.ts";
import type { Observer } from "../../src/therapy/base/observer.ts";
import { type Purpose, purposeNumber } from "../../src/therapy/base/purposes.ts";
import type { Endangered } from "../../src/therapy/hazards/hazard.ts";
import { Liquid } from "../../src/therapy/liquid/liquid-state.ts";
import { WoundOutput } from "../../src/therapy/parts/wound-output.ts";
import {
	type Condition,
	conditions,
	type DemandCause,
	type PauseReason,
	type Phase,
	type PieceKind,
} from "../../src/vocabulary/index.ts";
import { reference, shortDwell, thigh } from "./example.ts";

/**
 * What a part of a dressing may ask of the whole, for a test of that part alone: clock, air, liquid and alarms are the
 * real ones, the rest is written down, a line each. Depth and phase are what the test says.
 */
export class Bench implements Endangered, Watched {
	readonly sim = new Simulation();
	readonly constants: Constants;
	readonly index = 2;
	readonly log: string[] = [];
	readonly air: Air;
	readonly liquid: Liquid;
	readonly nurses: Resource;
	readonly alarms: Alarms;
	readonly spec: Dressing;
	readonly stochastic: boolean;
	readonly wound: WoundOutput;
	readonly horizonMin: number;
	readonly isHeld = true;
	readonly fillEndsAt = Number.POSITIVE_INFINITY;
	phase: Phase = "suction";
	regimen = shortDwell;
	lineKinked = false;
	/** What the stores hold, 500 mL each; for what they do not hold nothing is done. */
	readonly stock = new Set<PieceKind>(["canister", "solution"]);
	#anchor = 0;

	constructor({
		constants = {},
		horizon = 100_000,
		nurses = Number.POSITIVE_INFINITY,
		startClockMin = 420,
		chance = false,
		spec = thigh,
		response = reference.care.response,
	}: {
		readonly constants?: Partial<Constants>;
		readonly horizon?: number;
		readonly nurses?: number;
		readonly startClockMin?: number;
		readonly chance?: boolean;
		readonly spec?: Dressing;
		readonly response?: Care["response"];
	} = {}) {
		const k = constantsWith(constants);
		this.constants = k;
		this.horizonMin = horizon;
		this.stochastic = chance;
		this.spec = spec;
		this.air = new Air(k, 0.08);
		this.liquid = new Liquid(k, 240);
		this.nurses = new Resource(nurses, this.sim);
		this.alarms = new Alarms(
			this.sim,
			k,
			{ ...reference.care, response },
			this.nurses,
			{ dressing: this.index, id: "bench", startClockMin, horizon, chance },
			responseStream,
			this,
			() => this.observer,
		);
		this.alarms.reset();
		this.air.reset();
		this.liquid.reset(1000);
		this.wound = new WoundOutput(this, false);
	}

	substream(purpose: Purpose): Substream {
		return new Substream("bench", "bed 2", purposeNumber(purpose));
	}

	/** `what` at the time that the clock shows. */
	note(what: string): void {
		this.log.push(`${this.sim.now}: ${what}`);
	}

	/** What has been written down since the last call. */
	noted(): string[] {
		return this.log.splice(0);
	}

	readonly observer: Observer = {
		span() {},
		phase() {},
		pause() {},
		breach() {},
		notice: (dressing, notice, at) => this.note(`dressing ${dressing} ${notice} at ${at}`),
		alarmStarts: (dressing, condition, at) => this.note(`dressing ${dressing} ${condition} from ${at}`),
		alarmEnds: (dressing, condition, start, end, ending) =>
			this.note(`dressing ${dressing} ${condition} ${start} to ${end} by ${ending}`),
		canisterChange: (dressing, reason, at, due) =>
			this.note(`dressing ${dressing} canister changed at ${at} by ${reason}, due at ${due}`),
		sourceChange: (dressing, reason, at, wastedMl) =>
			this.note(`dressing ${dressing} source changed at ${at} by ${reason}, ${wastedMl} mL wasted`),
		offSuction: (dressing, start, end) => this.note(`dressing ${dressing} off suction ${start} to ${end}`),
	};

	event(name: string, priority: number, action: () => void): EventId {
		return this.sim.event(name, priority, action);
	}

	at(event: EventId, time: number): void {
		if (time < this.horizonMin) this.sim.schedule(event, time);
		else this.sim.cancel(event);
	}

	settle(): void {
		const minutes = this.sim.now - this.#anchor;
		if (minutes > 0) this.liquid.advance(minutes, this.air);
		this.#anchor = this.sim.now;
	}

	/** What the test plans anew after each change. */
	plans: () => void = () => {};

	replan(): void {
		this.plans();
	}

	levelAt(at: number): number {
		return this.liquid.levelAfter(at - this.#anchor, this.air);
	}

	get capacity(): number {
		return this.liquid.capacity;
	}

	need(kind: PieceKind, cause: DemandCause, work: (sizeMl: number) => void): void {
		this.note(`takes ${kind} for ${cause}`);
		if (this.stock.has(kind)) work(500);
	}

	has(kind: PieceKind): boolean {
		return this.stock.has(kind);
	}

	pause(reason: PauseReason): void {
		this.note(`pauses for ${reason}`);
	}

	resume(reason: PauseReason): void {
		this.note(`resumes from ${reason}`);
	}

	switchOff(off: boolean): void {
		this.note(`switched ${off ? "off" : "on"}`);
	}

	/** Whether the nurse finds something to mend it with. */
	mends = true;

	mendByCall(condition: Condition, freesKink: boolean): void {
		this.note(`nurse mends ${condition}${freesKink ? ", a kink" : ""}`);
		if (this.mends) this.alarms.end(condition, "call");
	}

	portWork(running: boolean): void {
		this.note(`port work ${running ? "begins" : "is over"}`);
	}

	reviewFill(): void {
		this.note("fill reviewed");
	}
}

/** The stream from which the response to a condition is drawn. */
export function responseStream(condition: Condition): Substream {
	return new Substream("response", "bench", conditions.indexOf(condition));
}
