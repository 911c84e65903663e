import type { EventId, Simulation } from "../engine/index.ts";
import type { Constants } from "../physics/index.ts";
import type { Regimen } from "../scenario/index.ts";
import type { Air } from "./air-state.ts";
import type { Alarms } from "./alarms.ts";
import type { Liquid } from "./liquid-state.ts";
import type { Observer, PauseReason, Phase } from "./observer.ts";
import type { Cause, PieceKind } from "./stores.ts";

/** What a part of a dressing (its canister, its source, its port) may ask of the whole. */
export interface Whole {
	readonly sim: Simulation;
	readonly constants: Constants;
	/** Place of the dressing in the scenario's list. */
	readonly index: number;
	readonly observer: Observer;
	readonly alarms: Alarms;
	readonly air: Air;
	readonly liquid: Liquid;
	readonly phase: Phase;
	readonly regimen: Regimen;
	/** An event of this dressing. */
	event(name: string, priority: number, action: () => void): EventId;
	/** Schedules an event, or cancels it where its time lies beyond the horizon. */
	at(event: EventId, time: number): void;
	/** Books the span since the anchor and makes now the anchor. */
	settle(): void;
	/** Routes air and liquid from here on and asks for the next boundaries. */
	replan(): void;
	/** Does a piece of work with what it needs from the stores: at once, or as soon as there is one. */
	need(kind: PieceKind, cause: Cause, work: (sizeMl: number) => void): void;
	/** Whether the stores hold one: asked before work that can be put off. */
	has(kind: PieceKind): boolean;
	pause(reason: PauseReason): void;
	resume(reason: PauseReason): void;
}
