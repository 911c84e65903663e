import type { EventId, Simulation, Substream } from "../../engine/index.ts";
import type { Constants } from "../../physics/index.ts";
import type { Dressing, Regimen } from "../../scenario/index.ts";
import type { DemandCause, PauseReason, Phase, PieceKind } from "../../vocabulary/index.ts";
import type { Air } from "../air/air-state.ts";
import type { Alarms } from "../alarms/alarms.ts";
import type { Observer } from "../base/observer.ts";
import type { Purpose } from "../base/purposes.ts";
import type { Liquid } from "../liquid/liquid-state.ts";

/** What a part of a dressing (its canister, its pump, a hazard) may ask of the whole. */
export interface Whole {
	readonly sim: Simulation;
	readonly constants: Constants;
	/** What the scenario says of the dressing. */
	readonly spec: Dressing;
	/** Place of the dressing in the scenario's list. */
	readonly index: number;
	/** Whether anything is left to chance. */
	readonly stochastic: boolean;
	readonly observer: Observer;
	readonly alarms: Alarms;
	readonly air: Air;
	readonly liquid: Liquid;
	readonly phase: Phase;
	readonly regimen: Regimen;
	/** The dressing's own random numbers for a purpose: asked for once, by who draws them, while the dressing is made. */
	substream(purpose: Purpose): Substream;
	/** An event of this dressing. */
	event(name: string, priority: number, action: () => void): EventId;
	/** Schedules an event, or cancels it where its time lies beyond the horizon. */
	at(event: EventId, time: number): void;
	/** Books the span since the anchor and makes now the anchor: before anything is changed. */
	settle(): void;
	/** Routes air and liquid from here on and asks for the next boundaries: after anything has been changed. */
	replan(): void;
	/** Does a piece of work with what it needs from the stores: at once, or as soon as there is one. */
	need(kind: PieceKind, cause: DemandCause, work: (sizeMl: number) => void): void;
	/** Whether the stores hold one: asked before work that can be put off. */
	has(kind: PieceKind): boolean;
	pause(reason: PauseReason): void;
	resume(reason: PauseReason): void;
	/** Therapy is switched off, or on again; offs that overlap count as one. */
	switchOff(off: boolean): void;
}
