// Long, since it is the one face of all its parts: what may be read of a dressing and asked of it, a few lines each.
import { type EventId, type Resource, type Simulation, Substream } from "../engine/index.ts";
import { type Constants, weeping } from "../physics/index.ts";
import type { Dressing, Regimen, Scenario } from "../scenario/index.ts";
import type { Condition, DemandCause, PauseReason, Phase, PieceKind } from "../vocabulary/index.ts";
import { Air } from "./air/air-state.ts";
import { Alarms, type Watched } from "./alarms/alarms.ts";
import { eventPriority } from "./base/event-priority.ts";
import type { Observer, Readings } from "./base/observer.ts";
import { type Purpose, purposeNumber } from "./base/purposes.ts";
import type { Stores } from "./base/stores.ts";
import type { CaredFor } from "./care/care.ts";
import { Cycle } from "./cycle.ts";
import { DressingChange } from "./dressing-change.ts";
import type { Breaches } from "./hazards/breaches.ts";
import type { Clogging } from "./hazards/clogging.ts";
import type { Endangered } from "./hazards/hazard.ts";
import { Hazards } from "./hazards/hazards.ts";
import type { Kinks } from "./hazards/kinks.ts";
import { Liquid, type WayOut } from "./liquid/liquid-state.ts";
import { Canister } from "./parts/canister.ts";
import { DrainClock } from "./parts/drain-clock.ts";
import { OffSuction } from "./parts/off-suction.ts";
import { Pump } from "./parts/pump.ts";
import { Source } from "./parts/source.ts";
import { Supply } from "./parts/supply.ts";
import { WoundOutput } from "./parts/wound-output.ts";
import { Regimens } from "./regimens.ts";
import { Watch } from "./watch.ts";

/**
 * One dressing with its therapy unit: holds the parts together, and time.
 *
 * Between events everything runs by closed forms from one anchor. A handler first settles (books the span since the
 * anchor), then changes what it has to, then plans anew (routes the liquid and asks for the next boundaries).
 */
export class DressingProcess implements Endangered, CaredFor, Watched, Readings {
	readonly id: string;
	readonly sim: Simulation;
	readonly constants: Constants;
	readonly spec: Dressing;
	readonly index: number;
	readonly horizonMin: number;
	readonly stochastic: boolean;
	observer: Observer;
	/** Moved by the cycle. */
	phase: Phase = "suction";
	/** The one in force, of the list. */
	regimen: Regimen;
	readonly air: Air;
	readonly liquid: Liquid;
	readonly alarms: Alarms;
	readonly canister: Canister;
	readonly source: Source;
	readonly pump: Pump;
	readonly regimens: Regimens;
	readonly off: OffSuction;
	readonly wound: WoundOutput;
	readonly watch: Watch;
	readonly cycle: Cycle;
	readonly supply: Supply;
	readonly change: DressingChange;
	readonly hazards: Hazards;
	readonly seal: Breaches;
	readonly port: Clogging;
	readonly kinks: Kinks;
	readonly #seed: string;
	readonly #substreams: Substream[] = [];
	readonly #events: EventId[] = [];
	/** Time of the anchor from which the closed forms run. */
	#anchor = 0;
	/** The depth has just fallen through the balance. */
	#isGrazing = false;
	readonly #eAir: EventId;
	readonly #eLow: EventId;
	readonly #eLeaking: EventId;
	readonly #eLevel: EventId;
	readonly #eLook: EventId;

	constructor(
		sim: Simulation,
		scenario: Scenario,
		index: number,
		nurses: Resource,
		observer: Observer,
		stores: Stores | null = null,
	) {
		const spec = scenario.dressings[index];
		const k = scenario.constants;
		this.id = spec.id;
		this.sim = sim;
		this.constants = k;
		this.spec = spec;
		this.index = index;
		this.horizonMin = scenario.horizonMin;
		this.stochastic = scenario.chance;
		this.observer = observer;
		this.regimen = spec.regimens[0];
		this.#seed = scenario.seed;
		this.air = new Air(k, (k["foam.capacity"] * spec.foamVolumeMl) / 1000);
		this.liquid = new Liquid(k, spec.foamVolumeMl);
		this.alarms = new Alarms(
			sim,
			k,
			scenario.care,
			nurses,
			{
				dressing: index,
				id: spec.id,
				startClockMin: scenario.startClockMin,
				horizon: scenario.horizonMin,
				chance: scenario.chance,
			},
			(condition) => this.substream(`response.${condition}` as Purpose), // only asked for conditions that call
			this,
			() => this.observer,
		);
		this.supply = new Supply(stores, spec, (off) => this.switchOff(off));
		this.canister = new Canister(this, spec.canisterMl);
		this.source = new Source(this, spec.sourceMl);
		this.off = new OffSuction(this);
		const drain = new DrainClock(this);
		this.pump = new Pump(this, this.canister, drain);
		this.regimens = new Regimens(this, this.pump, this.source);
		const bleeds = scenario.happenings.some((h) => h.what === "bleed" && h.dressing === spec.id);
		this.wound = new WoundOutput(this, bleeds);
		this.hazards = new Hazards(this);
		this.seal = this.hazards.named.seal;
		this.port = this.hazards.named.port;
		this.kinks = this.hazards.named.kinks;
		this.watch = new Watch(this, this.pump, drain, this.off);
		this.cycle = new Cycle(this);
		this.change = new DressingChange(this, scenario.care);
		const { boundary, observer: atLast } = eventPriority;
		this.#eAir = this.event("depth runs otherwise", boundary, () => this.#airTurns());
		this.#eLow = this.event("depth passes what counts as held", boundary, () => {
			this.air.low = !this.air.low;
			this.#review();
		});
		this.#eLeaking = this.event("leak passes its limit", boundary, () => {
			this.air.leaking = !this.air.leaking;
			this.#review();
		});
		this.#eLevel = this.event("level reaches what suction leaves", boundary, () => this.#levelReached());
		this.#eLook = this.event("content at the start is noted", atLast, () => {
			this.canister.look();
			this.source.look();
		});
	}

	// ── beginning and end ──────────────────────────────────────────────────────────────────────────────────────────

	/**
	 * Sets everything back and begins a therapy now: of another replication, or of another `instance` where one process
	 * serves many stays, with what hangs and how old the dressing is where that differs from the scenario.
	 */
	reset(
		replication: number,
		instance = 0,
		{ canisterMl = this.spec.canisterMl, sourceMl = this.spec.sourceMl, ageMin = this.spec.ageMin } = {},
	): void {
		for (const substream of this.#substreams) substream.reset(replication, instance);
		this.#anchor = this.sim.now;
		this.#isGrazing = false;
		this.supply.reset();
		this.alarms.reset();
		this.liquid.reset(this.spec.sourceLeftMl ?? sourceMl, this.spec.canisterHoldsMl);
		this.air.reset();
		this.pump.reset();
		this.watch.expectNothing();
		this.wound.begin();
		this.hazards.begin(ageMin);
		this.canister.reset(canisterMl);
		this.source.reset(sourceMl);
		this.off.reset();
		this.regimens.begin();
		this.cycle.reset();
		this.cycle.begin();
		// A round that falls on the start comes before what is noted of the content that was given.
		if (this.canisterWasNew && this.sourceWasNew) this.source.look();
		else this.at(this.#eLook, this.sim.now);
		this.change.begin(ageMin);
	}

	/** Whether nothing was in the canister at the start. */
	get canisterWasNew(): boolean {
		return this.spec.canisterHoldsMl === 0;
	}

	/** Whether the source was full at the start. */
	get sourceWasNew(): boolean {
		const { sourceLeftMl, sourceMl } = this.spec;
		return sourceLeftMl === null || sourceLeftMl >= sourceMl;
	}

	/** Books the last span and closes what is open, at the horizon. */
	finish(): void {
		this.settle();
		this.off.close();
		this.cycle.close();
		this.pump.close();
		this.alarms.close();
	}

	/** Ends the therapy: after `finish`, nothing of it is left in the calendar and nobody is at work on it. */
	stop(): void {
		this.supply.stop();
		this.alarms.stop();
		for (const event of this.#events) this.sim.cancel(event);
	}

	// ── how things stand ───────────────────────────────────────────────────────────────────────────────────────────

	depthAt(at: number): number {
		return this.air.depthAfter(at - this.#anchor);
	}

	levelAt(at: number): number {
		return this.liquid.levelAfter(at - this.#anchor, this.air);
	}

	canisterAt(at: number): number {
		return this.liquid.canisterAfter(at - this.#anchor, this.air);
	}

	exudateAt(at: number): number {
		return this.liquid.exudate + this.liquid.exudateRate * (at - this.#anchor);
	}

	sourceAt(at: number): number {
		return this.liquid.sourceAfter(at - this.#anchor);
	}

	get capacity(): number {
		return this.liquid.capacity;
	}

	get isWet(): boolean {
		return this.phase === "fill" || this.phase === "dwell" || this.phase === "drain";
	}

	get isHeld(): boolean {
		const { air } = this;
		return this.pump.isOn && this.isOpen && air.depth === air.setDepth && air.tau === Number.POSITIVE_INFINITY;
	}

	/** The suction path is open: line not kinked, port not closed. */
	get isOpen(): boolean {
		return !this.kinks.suction && this.port.debris < 1;
	}

	get lineKinked(): boolean {
		return this.kinks.suction;
	}

	get fillEndsAt(): number {
		return this.cycle.fillEndsAt;
	}

	// ── what a part may ask for ────────────────────────────────────────────────────────────────────────────────────

	substream(purpose: Purpose): Substream {
		const owner = purpose === "turn.jitter" ? this.spec.patient : this.id;
		const made = new Substream(this.#seed, owner, purposeNumber(purpose));
		this.#substreams.push(made);
		return made;
	}

	event(name: string, priority: number, action: () => void): EventId {
		const event = this.sim.event(`${this.id}: ${name}`, priority, action);
		this.#events.push(event);
		return event;
	}

	at(event: EventId, time: number): void {
		if (time < this.horizonMin) this.sim.schedule(event, time);
		else this.sim.cancel(event);
	}

	need(kind: PieceKind, cause: DemandCause, work: (sizeMl: number) => void): void {
		this.supply.need(kind, cause, work);
	}

	has(kind: PieceKind): boolean {
		return this.supply.has(kind);
	}

	pause(reason: PauseReason): void {
		this.pump.pause(reason);
	}

	resume(reason: PauseReason): void {
		this.pump.resume(reason);
	}

	switchOff(off: boolean): void {
		this.settle();
		this.cycle.switchOff(off);
		this.replan();
	}

	portWork(running: boolean): void {
		if (running === this.pump.isPausedFor("port")) return;
		this.settle();
		if (running) this.pause("port");
		else this.resume("port");
		this.replan();
	}

	reviewFill(): void {
		this.cycle.reviewFill();
	}

	mendByCall(condition: Condition, freesKink: boolean): void {
		switch (condition) {
			case "canister-at-capacity":
				this.need("canister", "at-capacity", (sizeMl) => this.canister.change("at-capacity", sizeMl));
				break;
			case "source-empty":
				this.source.renew("empty");
				break;
			case "suction-path-obstructed":
				if (freesKink) this.#clearPath(false);
				else this.need("port", "clogged", () => this.#clearPath(true));
				break;
			default:
				this.hazards.mend(condition);
		}
	}

	/** Mending the path is a pump start. */
	#clearPath(withNewPort: boolean): void {
		this.settle();
		this.kinks.suction = false;
		if (withNewPort) this.port.replace();
		this.alarms.end("suction-path-obstructed", "call");
		this.pump.run(true);
		this.replan();
	}

	// ── time: settle, plan ─────────────────────────────────────────────────────────────────────────────────────────

	settle(): void {
		const now = this.sim.now;
		const minutes = now - this.#anchor;
		if (minutes <= 0) return;
		this.observer.span(this.index, this, this.#anchor, now);
		for (const hazard of this.hazards.settling) hazard.settle();
		this.liquid.advance(minutes, this.air);
		this.air.depth = this.air.depthAfter(minutes);
		this.#anchor = now;
	}

	replan(): void {
		const now = this.sim.now;
		const { air, liquid, phase, isOpen } = this;
		const isOn = this.pump.isOn;
		const isDrawing = isOn && isOpen;
		liquid.open = isOpen ? 1 - this.port.debris : 0;
		liquid.weepRate = weeping(this.constants["weep.perLeak"], air.leak, this.constants["leak.sound"]);
		liquid.fillRate = 0;
		if (phase === "fill") liquid.fillRate = this.#fillFlow;
		liquid.route(air, this.#wayOut(phase, isDrawing));
		this.#isGrazing = false;
		const airMin = air.plan(now, isOn, isOpen, liquid.outflow === "held" ? liquid.balance : -1);
		// A mark comes before the end of the curve where both fall on one instant.
		this.at(this.#eLow, now + air.lowMin);
		this.at(this.#eLeaking, now + air.leakingMin);
		this.at(this.#eAir, now + airMin);
		const levelMin = liquid.timeToRetained(air, airMin);
		this.at(this.#eLevel, now + levelMin);
		const spanMin = Math.min(airMin, levelMin);
		this.canister.plan(spanMin);
		if (phase === "fill") this.cycle.planFill();
		for (const hazard of this.hazards.planning) hazard.plan(spanMin);
		this.#review(isDrawing);
	}

	/** What flows in a fill, mL/min. */
	get #fillFlow(): number {
		const stands = this.pump.isPausedFor("off") || this.kinks.fill || this.liquid.source <= 0;
		return stands ? 0 : this.constants["fill.flow"];
	}

	#wayOut(phase: Phase, isDrawing: boolean): WayOut {
		if (phase === "change") return "no dressing";
		if (isDrawing) return this.#isGrazing ? "port, let go" : "port";
		return phase === "suction" ? "none" : "edge";
	}

	/** Compares every alarm condition with how things stand, and the start of the next fill. */
	#review(isDrawing = this.pump.isOn && this.isOpen): void {
		this.watch.review(isDrawing);
		this.cycle.reviewFill();
	}

	#airTurns(): void {
		this.settle();
		this.#isGrazing = this.air.next === "balance";
		this.air.cross(this.liquid.balance);
		this.replan();
	}

	#levelReached(): void {
		this.settle();
		this.liquid.reachRetained();
		this.cycle.drained();
		this.replan();
	}
}
