import {
	type EventId,
	exponential,
	type Resource,
	type Simulation,
	Stream,
} from "../engine/index.ts";
import { airToThin, type Constants, weeping } from "../physics/index.ts";
import type { Dressing, Regimen, Scenario } from "../scenario/index.ts";
import { Air } from "./air-state.ts";
import { Alarms, type Watched } from "./alarms.ts";
import { Canister } from "./canister.ts";
import { Clogging } from "./clogging.ts";
import { type Condition, conditions, type Ending } from "./conditions.ts";
import { Exudate } from "./exudate.ts";
import { Liquid } from "./liquid-state.ts";
import { never } from "./never.ts";
import type { Observer, PauseReason, Phase } from "./observer.ts";
import { OffSuction } from "./off-suction.ts";
import { order } from "./order.ts";
import { OutputWindow } from "./output-window.ts";
import type { Whole } from "./part.ts";
import { type Purpose, purposeNumber, purposes } from "./purposes.ts";
import { same } from "./same.ts";
import { Seal } from "./seal.ts";
import { Source } from "./source.ts";
import type { Cause, PieceKind, Stores } from "./stores.ts";

const pauseReasons: readonly PauseReason[] = [
	"off",
	"canister",
	"round",
	"port",
];

/** What moves a patient: a turn in bed, or a transfer from one place to another. */
export type Move = "turn" | "transfer";

/**
 * One dressing with its therapy unit: the phases of its cycle, and everything that may befall it.
 *
 * Between events everything runs by closed forms from one anchor. A handler first settles (books the span since the
 * anchor), then changes what it has to, then plans (routes the liquid and asks for the next boundaries). It is long
 * because the phases share that one state; the parts with a life of their own (air, liquid, seal, alarms, exudate,
 * output) stand in files of theirs.
 */
export class DressingProcess implements Watched, Whole {
	readonly id: string;
	readonly air: Air;
	readonly liquid: Liquid;
	readonly alarms: Alarms;
	readonly canister: Canister;
	readonly source: Source;
	readonly port: Clogging;
	readonly off: OffSuction;
	phase: Phase = "suction";
	regimen: Regimen;
	lineKinked = false;
	fillKinked = false;
	fills = 0;
	washes = 0;
	breaches = 0;
	dressingChanges = 0;
	portsReplaced = 0;
	wetMin = 0;
	observer: Observer;
	readonly sim: Simulation;
	readonly constants: Constants;
	readonly #spec: Dressing;
	readonly index: number;
	readonly #horizon: number;
	readonly #chance: boolean;
	/** Every how many minutes of age the dressing is changed; null: not by age. */
	readonly #changeEvery: number | null;
	readonly #seal: Seal;
	readonly #exudate: Exudate;
	readonly #output: OutputWindow;
	readonly #mayBurst: boolean;
	readonly #streams: { readonly [P in Purpose]: Stream };

	readonly #stores: Stores | null;
	/** Kinds of pieces that are waited for. */
	readonly #lacking = new Set<PieceKind>();
	readonly #events: EventId[] = [];
	/** When the therapy began; regimens count from here. */
	#began = 0;
	/** Time of the anchor from which the closed forms run. */
	#anchor = 0;
	#phaseSince = 0;
	#pumpOn = false;
	#pumpSince = 0;
	#regimenIndex = 0;
	/** Minutes of the suction period that are over, not counting the present run of the pump. */
	#periodDone = 0;
	#dwellDone = 0;
	#dwellSince = 0;
	/** A fill or dwell takes longer than it should. */
	#overdue = false;
	#drainLimit = 0;
	#drainCounted = 0;
	#drainSince = never;
	#offCount = 0;
	readonly #pausedSince: Record<PauseReason, number> = {
		off: never,
		canister: never,
		round: never,
		port: never,
	};
	#pauses = 0;

	readonly #eAir: EventId;
	readonly #eLow: EventId;
	readonly #eLeaking: EventId;
	readonly #eLevel: EventId;
	readonly #eFillEnd: EventId;
	readonly #eDwellEnd: EventId;
	readonly #eFillStart: EventId;
	readonly #eOverdue: EventId;
	readonly #eGrace: EventId;
	readonly #eTakeover: EventId;
	readonly #eChangeEnd: EventId;
	readonly #eChangeDue: EventId;
	readonly #eBlock: EventId;
	readonly #eBurst: EventId;
	readonly #eKink: EventId;
	readonly #eSealDry: EventId;
	readonly #eSealWet: EventId;
	readonly #eOutput: EventId;
	readonly #eLook: EventId;
	readonly #eCapacity: EventId;
	#grazing = false;

	constructor(
		sim: Simulation,
		scenario: Scenario,
		index: number,
		nurses: Resource,
		observer: Observer,
		stores: Stores | null = null,
	) {
		this.#stores = stores;
		const spec = scenario.dressings[index];
		const k = scenario.constants;
		this.sim = sim;
		this.constants = k;
		this.#spec = spec;
		this.index = index;
		this.id = spec.id;
		this.#horizon = scenario.horizonMin;
		this.#chance = scenario.chance;
		const change = scenario.care.dressingChange;
		this.#changeEvery =
			change !== null && "everyMin" in change ? change.everyMin : null;
		this.observer = observer;
		this.regimen = spec.regimens[0];
		const stream = (purpose: Purpose) =>
			new Stream(
				scenario.seed,
				purpose === "turn.jitter" ? spec.patient : spec.id,
				purposeNumber(purpose),
			);
		const streams = Object.fromEntries(
			purposes.map((purpose) => [purpose, stream(purpose)]),
		) as { [P in Purpose]: Stream }; // fromEntries forgets the keys
		this.#streams = streams;
		this.air = new Air(k, (k["foam.capacity"] * spec.foamVolumeMl) / 1000);
		this.liquid = new Liquid(k, spec.foamVolumeMl);
		this.#seal = new Seal(k, k[`difficulty.${spec.difficulty}`], {
			dry: streams["breach.dry"],
			drySize: streams["breach.dry.size"],
			wet: streams["breach.wet"],
			wetSize: streams["breach.wet.size"],
		});
		this.#exudate = new Exudate(spec, k, scenario.chance, {
			patient: streams["exudate.patient"],
			blocks: streams["exudate.blocks"],
			times: streams["outflow.times"],
			volumes: streams["outflow.volumes"],
		});
		this.#output = new OutputWindow(k["output.limit"], k["output.window"]);
		this.#mayBurst =
			spec.outflow !== null ||
			scenario.happenings.some(
				(h) => h.what === "bleed" && h.dressing === spec.id,
			);
		const place = {
			dressing: index,
			id: spec.id,
			startClockMin: scenario.startClockMin,
			horizon: scenario.horizonMin,
			chance: scenario.chance,
		};
		const response = (condition: Condition) =>
			streams[`response.${condition}` as Purpose]; // only asked for conditions that call
		this.alarms = new Alarms(
			sim,
			k,
			scenario.care,
			nurses,
			place,
			response,
			this,
			() => this.observer,
		);
		const event = this.event.bind(this);
		this.canister = new Canister(this, spec.canisterMl);
		this.source = new Source(this, spec.sourceMl);
		this.off = new OffSuction(this);
		this.port = new Clogging(
			this,
			k[`slough.${spec.slough}`],
			streams["debris.drain"],
			streams["debris.clump"],
		);
		this.#eAir = event("depth runs otherwise", order.boundary, () =>
			this.#airTurns(),
		);
		this.#eLow = event(
			"depth passes what counts as held",
			order.boundary,
			() => {
				this.air.low = !this.air.low;
				this.#review();
			},
		);
		this.#eLeaking = event("leak passes its limit", order.boundary, () => {
			this.air.leaking = !this.air.leaking;
			this.#review();
		});
		this.#eLevel = event(
			"level reaches what suction leaves",
			order.boundary,
			() => this.#levelReached(),
		);
		this.#eFillEnd = event("fill ends", order.boundary, () => this.#fillEnds());
		this.#eDwellEnd = event("dwell ends", order.boundary, () =>
			this.#dwellEnds(),
		);
		this.#eFillStart = event("fill starts", order.fillStart, () =>
			this.#fillStarts(),
		);
		this.#eOverdue = event("fill or dwell is overdue", order.alarmTimer, () =>
			this.#becomesOverdue(),
		);
		this.#eGrace = event("pump has had its time", order.alarmTimer, () =>
			this.#reviewOff(),
		);
		this.#eTakeover = event("next regimen's time", order.boundary, () =>
			this.#takeoverDue(),
		);
		this.#eChangeEnd = event("dressing change ends", order.boundary, () =>
			this.#changeEnds(),
		);
		this.#eChangeDue = event("dressing change is due", order.scripted, () =>
			this.changeDressing(),
		);
		this.#eBlock = event("exudate block", order.exudateBlock, () =>
			this.#nextBlock(),
		);
		this.#eBurst = event("burst of outflow", order.burst, () => this.#burst());
		this.#eKink = event("kink", order.kink, () => this.#kinks());
		this.#eSealDry = event("seal breaks while dry", order.seal, () =>
			this.#breaksDry(),
		);
		this.#eSealWet = event("seal breaks while wet", order.seal, () =>
			this.#breaksWet(),
		);
		this.#eCapacity = event("level passes capacity", order.boundary, () =>
			this.#passesCapacity(),
		);
		this.#eLook = event("content at the start is noted", order.observer, () => {
			this.canister.look();
			this.source.look();
		});
		this.#eOutput = event("hourly output passes a mark", order.boundary, () =>
			this.#outputPasses(),
		);
	}

	/** Whether nothing was in the canister at the start. */
	get canisterWasNew(): boolean {
		return this.#spec.canisterHoldsMl === 0;
	}

	/** Whether the source was full at the start. */
	get sourceWasNew(): boolean {
		const { sourceLeftMl, sourceMl } = this.#spec;
		return sourceLeftMl === null || sourceLeftMl >= sourceMl;
	}

	// ── beginning and end ──────────────────────────────────────────────────────────────────────────────────────────

	/**
	 * Sets everything back and begins a therapy now: of another replication, or of another `instance` where one process
	 * serves many stays, with what hangs and how old the dressing is where that differs from the scenario.
	 */
	reset(
		replication: number,
		instance = 0,
		{
			canisterMl = this.#spec.canisterMl,
			sourceMl = this.#spec.sourceMl,
			ageMin = this.#spec.ageMin,
		} = {},
	): void {
		for (const purpose of purposes)
			this.#streams[purpose].reset(replication, instance);
		const k = this.constants;
		const now = this.sim.now;
		this.#began = now;
		this.#lacking.clear();
		this.alarms.reset();
		this.liquid.reset(
			this.#spec.sourceLeftMl ?? sourceMl,
			this.#spec.canisterHoldsMl,
		);
		this.lineKinked = false;
		this.fillKinked = false;
		this.fills = 0;
		this.washes = 0;
		this.breaches = 0;
		this.dressingChanges = 0;
		this.portsReplaced = 0;
		this.wetMin = 0;
		this.#anchor = now;
		this.#pumpOn = false;
		this.#regimenIndex = 0;
		this.regimen = this.#spec.regimens[0];
		this.#overdue = false;
		this.#drainCounted = 0;
		this.#drainSince = never;
		this.#offCount = 0;
		this.#pauses = 0;
		for (const reason of pauseReasons) this.#pausedSince[reason] = never;
		this.#grazing = false;
		this.air.reset();
		this.#exudate.reset();
		this.liquid.exudateRate = this.#exudate.rate;
		this.#output.reset(now, this.liquid.exudateRate, this.#mayBurst);
		this.at(this.#eOutput, this.#output.next());
		const ageZero = now - ageMin;
		if (this.#chance) {
			this.#seal.reset(ageZero);
			this.at(this.#eBlock, now + k["exudate.block"] * 60);
			this.at(
				this.#eKink,
				now + (60 / k["kink.rate"]) * exponential(this.#streams["kink.times"]),
			);
		}
		if (this.#exudate.spacing < Number.POSITIVE_INFINITY)
			this.at(this.#eBurst, now + this.#exudate.untilBurst(true));
		this.port.begin(this.#chance);
		this.canister.reset(canisterMl);
		this.source.reset(sourceMl);
		this.off.reset();
		if (this.#spec.regimens.length > 1)
			this.at(this.#eTakeover, now + this.#spec.regimens[1].fromMin);
		this.#setRegimen();
		this.phase = "suction";
		this.#phaseSince = now;
		this.#begin();
		// A round that falls on the start comes before what is noted of the content that was given.
		if (this.canisterWasNew && this.sourceWasNew) this.source.look();
		else this.at(this.#eLook, now);
		if (this.#changeEvery !== null)
			this.at(this.#eChangeDue, now + Math.max(0, this.#changeEvery - ageMin));
	}

	/** Books the last span and closes what is open, at the horizon. */
	finish(): void {
		this.settle();
		if (this.phase === "fill" || this.phase === "dwell") this.#wetEnds();
		this.off.close();
		this.observer.phase(this.index, this.phase, this.#phaseSince, this.sim.now);
		for (const reason of pauseReasons) {
			const since = this.#pausedSince[reason];
			if (since >= 0)
				this.observer.pause(this.index, reason, since, this.sim.now);
		}
		this.alarms.close();
	}

	/** Ends the therapy: after `finish`, nothing of it is left in the calendar and nobody is at work on it. */
	stop(): void {
		for (const kind of this.#lacking) this.#stores?.withdraw(kind);
		this.#lacking.clear();
		this.alarms.stop();
		for (const event of this.#events) this.sim.cancel(event);
	}

	/** A day that begins in fill is for no time in suction with the period over: its first fill starts, or is withheld, like any other. */
	#begin(): void {
		this.#setPhase("suction");
		const { begin, suctionMin, fillMl } = this.regimen;
		this.#periodDone = begin === "fill" && fillMl > 0 ? suctionMin : 0;
		this.#enterSuction();
		this.#runPump(true);
		this.replan();
	}

	// ── time: settle, plan ─────────────────────────────────────────────────────────────────────────────────────────

	/** Suction depth at a time of the present span, mmHg, positive. */
	depthAt(at: number): number {
		return this.air.depthAfter(at - this.#anchor);
	}

	/** Liquid in the dressing at a time of the present span, mL. */
	levelAt(at: number): number {
		return this.liquid.levelAfter(at - this.#anchor, this.air);
	}

	canisterAt(at: number): number {
		return this.liquid.canisterAfter(at - this.#anchor, this.air);
	}

	/** Exudate that has come since the last reset, mL. */
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
		return (
			this.phase === "fill" || this.phase === "dwell" || this.phase === "drain"
		);
	}

	get isHeld(): boolean {
		return (
			this.#pumpOn &&
			this.isOpen &&
			this.air.depth === this.air.setDepth &&
			this.air.tau === Number.POSITIVE_INFINITY
		);
	}

	/** The suction path is open: line not kinked, port not closed. */
	get isOpen(): boolean {
		return !this.lineKinked && this.port.debris < 1;
	}

	/** An event of this dressing. */
	event(name: string, priority: number, action: () => void): EventId {
		const event = this.sim.event(`${this.id}: ${name}`, priority, action);
		this.#events.push(event);
		return event;
	}

	at(event: EventId, time: number): void {
		if (time < this.#horizon) this.sim.schedule(event, time);
		else this.sim.cancel(event);
	}

	/** Books the span since the anchor and makes now the anchor. */
	settle(): void {
		const now = this.sim.now;
		const minutes = now - this.#anchor;
		if (minutes <= 0) return;
		this.observer.span(this.index, this, this.#anchor, now);
		if (this.#chance && this.isWet) this.#seal.passWet(now, this);
		this.liquid.advance(minutes, this.air);
		this.air.depth = this.air.depthAfter(minutes);
		this.#anchor = now;
	}

	/** Routes air and liquid from here on and asks for the next boundaries. */
	replan(): void {
		const now = this.sim.now;
		const { air, liquid, phase } = this;
		const drawing = this.#pumpOn && this.isOpen;
		liquid.open = this.isOpen ? 1 - this.port.debris : 0;
		liquid.weepRate = weeping(
			this.constants["weep.perLeak"],
			air.leak,
			this.constants["leak.sound"],
		);
		liquid.fillRate =
			phase === "fill" &&
			this.#offCount === 0 &&
			!this.fillKinked &&
			liquid.source > 0
				? this.constants["fill.flow"]
				: 0;
		const vented =
			phase === "fill" || phase === "dwell" || (phase === "drain" && !drawing);
		liquid.route(air, drawing, vented, phase !== "change", this.#grazing);
		this.#grazing = false;
		const airMin = air.plan(
			now,
			this.#pumpOn,
			this.isOpen,
			liquid.outflow === "held" ? liquid.balance : -1,
		);
		// A mark comes before the end of the curve where both fall on one instant.
		this.at(this.#eLow, now + air.lowMin);
		this.at(this.#eLeaking, now + air.leakingMin);
		this.at(this.#eAir, now + airMin);
		const levelMin = liquid.timeToRetained(air, airMin);
		this.at(this.#eLevel, now + levelMin);
		this.canister.plan(Math.min(airMin, levelMin));
		if (liquid.fillRate > 0) this.#planFlow(now);
		else if (phase === "fill") {
			this.sim.cancel(this.#eFillEnd);
			this.source.rest();
		}
		if (this.#chance && this.isWet)
			this.#planWetHazard(now, Math.min(airMin, levelMin));
		this.#review();
	}

	/** The ends of a fill that runs: the set volume is in, or the source is out before. */
	#planFlow(now: number): void {
		const { liquid } = this;
		const lacking = this.regimen.fillMl - liquid.filled;
		if (this.source.plan(lacking)) this.sim.cancel(this.#eFillEnd);
		else this.at(this.#eFillEnd, now + lacking / liquid.fillRate);
	}

	/** Asks when the wet seal will break. The span looked at ends where the level passes capacity, and in any case after half an hour above it. */
	#planWetHazard(now: number, spanMin: number): void {
		const { liquid } = this;
		const rise = liquid.exudateRate + liquid.fillRate;
		const over = liquid.level >= liquid.capacity - same;
		let ends = Math.min(this.#horizon, now + spanMin);
		if (liquid.outflow !== "draining" && !over && rise > 0)
			ends = Math.min(ends, now + (liquid.capacity - liquid.level) / rise);
		else if (over) ends = Math.min(ends, now + 30);
		const highest =
			over || liquid.outflow === "draining"
				? liquid.level +
					rise * (Math.min(ends, this.sim.timeOf(this.#eFillEnd)) - now)
				: liquid.level;
		this.at(this.#eSealWet, this.#seal.planWet(now, ends, highest, this));
		if (over || ends < now + spanMin) this.at(this.#eCapacity, ends);
		else if (this.sim.isPending(this.#eCapacity))
			this.sim.cancel(this.#eCapacity);
	}

	/** Compares every alarm condition with how things stand, and the start of the next fill. */
	#review(): void {
		const { alarms, air } = this;
		const k = this.constants;
		const drawing = this.#pumpOn && this.isOpen;
		// A pump that stops rewinds its timers, and a fill that goes on has stopped its own.
		if (this.#pumpOn) {
			alarms.leak.watch(drawing && air.leaking, k["leak.delay"]);
			alarms.depth.watch(drawing && air.low, k["depth.delay"]);
			alarms.closed.watch(!drawing, k["path.closedLimit"]);
		} else if (this.phase === "fill") {
			const stalled = this.fillKinked && this.#offCount === 0;
			alarms.stall.watch(stalled, k["fill.stallLimit"]);
		}
		this.#reviewDrain(this.phase === "drain" && drawing && !air.low);
		this.#reviewOff();
		this.reviewFill();
	}

	#reviewDrain(counting: boolean): void {
		const now = this.sim.now;
		if (this.#drainSince >= 0 && !counting) {
			this.#drainCounted += now - this.#drainSince;
			this.#drainSince = never;
			this.alarms.drain.rewind();
		}
		if (counting && this.#drainSince < 0) {
			this.#drainSince = now;
			this.alarms.drain.watch(
				true,
				Math.max(0, this.#drainLimit - this.#drainCounted),
			);
		}
	}

	/** Off suction: outside fill and dwell the pump is stopped, or depth is low past the first minutes; in them, what is overdue. */
	#reviewOff(): void {
		let off: boolean;
		switch (this.phase) {
			case "fill":
			case "dwell":
				off = this.#overdue;
				break;
			case "change":
				off = true;
				break;
			case "suction":
			case "drain":
				off =
					!this.#pumpOn || (this.air.low && this.sim.now >= this.#graceEnds);
		}
		const graced = this.#pumpOn && this.air.low && !off;
		if (graced !== this.sim.isPending(this.#eGrace)) {
			if (graced) this.at(this.#eGrace, this.#graceEnds);
			else this.sim.cancel(this.#eGrace);
		}
		this.off.set(off);
	}

	/** When the first minutes after a pump start are over, in which a low depth does not count as off suction. */
	get #graceEnds(): number {
		return this.#pumpSince + this.constants["pump.drawdownLimit"];
	}

	/** The next fill starts when the suction period is over, no alarm withholds it, the pump runs and the drain is finished. */
	reviewFill(): void {
		const ready =
			this.phase === "suction" &&
			this.regimen.fillMl > 0 &&
			this.#pumpOn &&
			this.alarms.withholding === 0;
		if (!ready) {
			if (this.sim.isPending(this.#eFillStart))
				this.sim.cancel(this.#eFillStart);
			return;
		}
		const due = Math.max(
			this.sim.now,
			this.#pumpSince + (this.regimen.suctionMin - this.#periodDone),
		);
		if (this.sim.timeOf(this.#eFillStart) !== due)
			this.at(this.#eFillStart, due);
	}

	// ── phases ─────────────────────────────────────────────────────────────────────────────────────────────────────

	#setPhase(phase: Phase): void {
		const now = this.sim.now;
		if (now > this.#phaseSince && phase !== this.phase)
			this.observer.phase(this.index, this.phase, this.#phaseSince, now);
		if (phase !== this.phase || now === this.#phaseSince)
			this.#phaseSince = now;
		this.phase = phase;
	}

	#enterSuction(): void {
		if (this.#chance)
			this.at(this.#eSealDry, this.#seal.beginDry(this.sim.now));
	}

	#leaveSuction(): void {
		if (!this.#chance) return;
		this.#seal.endDry(this.sim.now);
		this.sim.cancel(this.#eSealDry);
	}

	#leaveWet(): void {
		if (!this.#chance) return;
		this.#seal.endWet(this.sim.now, this);
		this.sim.cancel(this.#eSealWet);
		this.sim.cancel(this.#eCapacity);
	}

	#wetEnds(): void {
		this.wetMin += this.sim.now - this.#phaseSince;
	}

	#fillStarts(): void {
		this.settle();
		this.#leaveSuction();
		const now = this.sim.now;
		this.#stopPump();
		this.off.end();
		this.#setPhase("fill");
		this.fills++;
		this.air.depth = 0;
		this.air.compare();
		this.liquid.filled = 0;
		this.#overdue = false;
		this.at(
			this.#eOverdue,
			now + this.regimen.fillMl / this.constants["fill.flow"],
		);
		if (this.#chance) this.#seal.beginWet(now);
		if (this.source.isEmpty) this.source.runOut();
		this.replan();
	}

	#fillEnds(): void {
		this.settle();
		this.liquid.completeFill(this.regimen.fillMl);
		this.#wetEnds();
		const now = this.sim.now;
		this.#setPhase("dwell");
		this.off.end();
		this.#dwellDone = 0;
		this.#dwellSince = now;
		this.#overdue = false;
		this.source.rest();
		this.at(this.#eOverdue, now + this.regimen.dwellMin);
		if (this.#offCount === 0)
			this.at(this.#eDwellEnd, now + this.regimen.dwellMin);
		this.source.fillOver();
		this.replan();
	}

	#dwellEnds(): void {
		this.settle();
		this.#wetEnds();
		this.sim.cancel(this.#eOverdue);
		this.#overdue = false;
		if (this.#chance) this.port.loosen(this.regimen.dwellMin);
		this.#takeOver();
		this.off.end();
		const drains = this.liquid.isWet;
		this.#setPhase(drains ? "drain" : "suction");
		if (!drains) {
			this.#leaveWet();
			this.#enterSuction();
		}
		this.#periodDone = 0;
		this.#runPump(true);
		this.replan();
	}

	#levelReached(): void {
		this.settle();
		this.liquid.reachRetained();
		if (this.phase === "drain") this.#drainEnds();
		this.replan();
	}

	#passesCapacity(): void {
		this.settle();
		this.replan();
	}

	#drainEnds(): void {
		this.washes++;
		this.#setPhase("suction");
		this.#leaveWet();
		this.#enterSuction();
	}

	#becomesOverdue(): void {
		this.#overdue = true;
		this.#reviewOff();
	}

	// ── pump, pauses ───────────────────────────────────────────────────────────────────────────────────────────────

	/** Brings the pump to what phase and pauses ask for; `anew` where a pump start is due even if it ran. */
	#runPump(anew = false): void {
		const should =
			(this.phase === "suction" || this.phase === "drain") &&
			this.#pauses === 0;
		if (this.#pumpOn && (!should || anew)) this.#stopPump();
		if (should && !this.#pumpOn) this.#startPump();
	}

	#stopPump(): void {
		if (!this.#pumpOn) return;
		this.#pumpOn = false;
		this.#periodDone += this.sim.now - this.#pumpSince;
		this.alarms.leak.rewind();
		this.alarms.depth.rewind();
		this.alarms.closed.rewind();
	}

	#startPump(): void {
		const now = this.sim.now;
		const { air, liquid } = this;
		const k = this.constants;
		this.#pumpOn = true;
		this.#pumpSince = now;
		air.pumpStart(
			now,
			airToThin(k, liquid.capacity, this.canister.size, liquid.canister),
		);
		this.alarms.drain.rewind();
		this.#drainCounted = 0;
		this.#drainSince = never;
		const expected =
			1 +
			(liquid.level - liquid.retained) /
				(k["drain.conductance"] * air.setDepth);
		this.#drainLimit = Math.max(k["drain.limit"], k["drain.factor"] * expected);
	}

	#airTurns(): void {
		this.settle();
		this.#grazing = this.air.next === "balance";
		this.air.cross(this.liquid.balance);
		this.replan();
	}

	pause(reason: PauseReason): void {
		if (this.#pausedSince[reason] >= 0) return;
		this.#pausedSince[reason] = this.sim.now;
		this.#pauses++;
		this.#runPump();
	}

	resume(reason: PauseReason): void {
		const since = this.#pausedSince[reason];
		if (since < 0) return;
		this.observer.pause(this.index, reason, since, this.sim.now);
		this.#pausedSince[reason] = never;
		this.#pauses--;
		this.#runPump();
	}

	/** Therapy is switched off, or on again; offs that overlap count as one. */
	switchOff(off: boolean): void {
		this.settle();
		const now = this.sim.now;
		this.#offCount += off ? 1 : -1;
		if (off && this.#offCount === 1) {
			if (this.phase === "dwell") {
				this.#dwellDone += now - this.#dwellSince;
				this.sim.cancel(this.#eDwellEnd);
			}
			this.pause("off");
		} else if (!off && this.#offCount === 0) {
			if (this.phase === "dwell") {
				this.#dwellSince = now;
				this.at(
					this.#eDwellEnd,
					now + (this.regimen.dwellMin - this.#dwellDone),
				);
			}
			this.resume("off");
		}
		this.replan();
	}

	portWork(running: boolean): void {
		if (running === this.#pausedSince.port >= 0) return;
		this.settle();
		if (running) this.pause("port");
		else this.resume("port");
		this.replan();
	}

	// ── regimens ───────────────────────────────────────────────────────────────────────────────────────────────────

	#setRegimen(): void {
		this.regimen = this.#spec.regimens[this.#regimenIndex];
		this.air.setDepth = this.regimen.depthMmHg;
		this.air.drawdownShare = this.regimen.drawdown;
	}

	/** The latest regimen whose time has passed takes over, if it is not in force yet. */
	#takeOver(): boolean {
		const { now } = this.sim;
		const list = this.#spec.regimens;
		let index = this.#regimenIndex;
		while (
			index + 1 < list.length &&
			this.#began + list[index + 1].fromMin <= now
		)
			index++;
		if (index === this.#regimenIndex) return false;
		this.#regimenIndex = index;
		this.#setRegimen();
		this.source.takeOver();
		return true;
	}

	#takeoverDue(): void {
		const list = this.#spec.regimens;
		const { now } = this.sim;
		const later = list.find((regimen) => this.#began + regimen.fromMin > now);
		if (later !== undefined)
			this.at(this.#eTakeover, this.#began + later.fromMin);
		// A regimen with fill ends at its next start of a suction period; a dressing change asks by itself.
		if (this.regimen.fillMl > 0 || this.phase === "change") return;
		this.settle();
		if (!this.#takeOver()) return;
		this.#periodDone = 0;
		this.#runPump(true);
		this.#periodDone = 0;
		if (this.air.depth > this.air.setDepth) this.air.depth = this.air.setDepth;
		this.replan();
	}

	// ── what goes wrong ────────────────────────────────────────────────────────────────────────────────────────────

	/** Adds a leak to the seal; nothing happens while the dressing is being changed. */
	breach(leak: number): void {
		if (this.phase === "change") return;
		this.settle();
		this.breaches++;
		this.air.leak += leak;
		this.air.compare();
		this.observer.breach(this.index, leak, this.sim.now);
		this.replan();
	}

	#breaksDry(): void {
		this.#seal.endDry(this.sim.now);
		this.breach(this.#seal.breakDry());
		this.at(this.#eSealDry, this.#seal.beginDry(this.sim.now));
	}

	#breaksWet(): void {
		this.settle();
		this.breach(this.#seal.breakWet(this.sim.now));
	}

	/** A turn in bed or a transfer: a breach by what the dressing is doing. With chance off it breaks nothing. */
	move(kind: Move): void {
		if (!this.#chance) return;
		const u = this.#streams[`${kind}.outcome`].uniform();
		if (this.phase === "change") return;
		const wet = this.phase === "fill" || this.phase === "dwell";
		const state = this.isHeld ? "held" : wet ? "wet" : "between";
		if (u < this.constants[`${kind}.${state}`])
			this.breach(this.#seal.size(this.#streams[`${kind}.size`]));
	}

	/** Kinks a line; nothing happens while the dressing is being changed. */
	kink(line: "suction" | "fill"): void {
		if (this.phase === "change") return;
		this.settle();
		if (line === "suction") this.lineKinked = true;
		else this.fillKinked = true;
		this.replan();
	}

	#kinks(): void {
		this.at(
			this.#eKink,
			this.sim.now +
				(60 / this.constants["kink.rate"]) *
					exponential(this.#streams["kink.times"]),
		);
		this.kink(
			this.#streams["kink.line"].uniform() < this.constants["kink.suctionShare"]
				? "suction"
				: "fill",
		);
	}

	#nextBlock(): void {
		this.settle();
		this.#exudate.nextBlock();
		this.at(this.#eBlock, this.sim.now + this.constants["exudate.block"] * 60);
		this.#exudateChanges();
	}

	/** Adds (or, negative, takes away) a constant bleeding, mL/min. */
	bleed(rate: number): void {
		this.settle();
		this.#exudate.bleed(rate);
		this.#exudateChanges();
	}

	#exudateChanges(): void {
		this.liquid.exudateRate = this.#exudate.rate;
		if (this.phase !== "change") {
			this.#output.setRate(this.sim.now, this.liquid.exudateRate);
			this.#outputReviewed();
		}
		this.replan();
	}

	#burst(): void {
		this.at(this.#eBurst, this.sim.now + this.#exudate.untilBurst(false));
		const volume = this.#exudate.burstVolume();
		this.settle();
		this.liquid.burst(volume);
		if (this.phase !== "change") {
			this.#output.burst(this.sim.now, volume);
			this.#output.compare();
			this.#outputReviewed();
		}
		this.replan();
	}

	#outputPasses(): void {
		this.#output.pass(this.sim.now);
		this.#outputReviewed();
	}

	#outputReviewed(): void {
		if (this.#output.above) this.alarms.raise("large-output");
		else if (this.alarms.stands("large-output"))
			this.alarms.end("large-output", "by-itself");
		this.at(this.#eOutput, Math.max(this.sim.now, this.#output.next()));
	}

	// ── care ───────────────────────────────────────────────────────────────────────────────────────────────────────

	mendByCall(condition: Condition, freesKink: boolean): void {
		switch (condition) {
			case "canister-at-capacity":
				this.need("canister", "at-capacity", (sizeMl) =>
					this.canister.change("at-capacity", sizeMl),
				);
				return;
			case "source-empty":
				this.source.renew("empty");
				return;
			case "fill-path-obstructed":
				this.settle();
				this.fillKinked = false;
				this.alarms.end(condition, "call");
				this.replan();
				return;
			case "suction-path-obstructed":
				if (freesKink) this.#clearPath(true);
				else this.need("port", "clogged", () => this.#clearPath(false));
				return;
			default:
				this.patch("call");
		}
	}

	#clearPath(freesKink: boolean): void {
		this.settle();
		this.lineKinked = false;
		if (!freesKink) {
			this.port.debris = 0;
			this.portsReplaced++;
		}
		this.alarms.end("suction-path-obstructed", "call");
		// Mending the path is a pump start.
		this.#runPump(true);
		this.replan();
	}

	/** Closes every breach; ends both alarms that a leak explains. */
	patch(ending: Ending): void {
		this.settle();
		this.air.leak = this.constants["leak.sound"];
		this.air.compare();
		this.alarms.end("seal-leak", ending);
		this.alarms.end("depth-not-held", ending);
		this.replan();
	}

	/** A nurse's round: a canister that is nearly full, a source below one fill, a leak that can be heard. */
	round(): void {
		const now = this.sim.now;
		const k = this.constants;
		if (
			this.canisterAt(now) >=
			k["round.canisterAbove"] * this.canister.size - same
		)
			this.canister.changeAsAtRound("round");
		if (
			this.regimen.fillMl > 0 &&
			this.sourceAt(now) < this.regimen.fillMl - same
		)
			this.source.renewAsAtRound("round");
		if (
			this.phase !== "change" &&
			this.air.leak * this.air.setDepth > k["round.leakAbove"]
		) {
			this.alarms.nurseMin += k["hands.patch"];
			this.patch("round");
		}
	}

	need(kind: PieceKind, cause: Cause, work: (sizeMl: number) => void): void {
		if (this.#stores === null) {
			work(kind === "solution" ? this.#spec.sourceMl : this.#spec.canisterMl);
			return;
		}
		if (this.#lacking.has(kind)) return;
		const sizeMl = this.#stores.take(kind, cause, (late) => {
			this.#lacking.delete(kind);
			work(late);
			this.switchOff(false);
		});
		if (sizeMl !== null) {
			work(sizeMl);
			return;
		}
		// The therapy is off until one comes.
		this.#lacking.add(kind);
		this.switchOff(true);
	}

	has(kind: PieceKind): boolean {
		return (
			this.#stores === null ||
			(!this.#lacking.has(kind) && this.#stores.has(kind))
		);
	}

	/** Takes the dressing off; everything but the unit starts anew half an hour later. Does nothing while one is under way. */
	changeDressing(): void {
		if (this.phase === "change") return;
		this.need("kit", "dressing-change", () => this.#changes());
	}

	#changes(): void {
		if (this.#lacking.delete("port")) {
			// The new dressing brings a port of its own.
			this.#stores?.withdraw("port");
			this.switchOff(false);
		}
		this.settle();
		const now = this.sim.now;
		if (this.phase === "fill" || this.phase === "dwell") this.#wetEnds();
		if (this.isWet) this.#leaveWet();
		else this.#leaveSuction();
		this.#stopPump();
		this.off.end();
		this.#setPhase("change");
		for (const event of [
			this.#eFillEnd,
			this.#eDwellEnd,
			this.#eFillStart,
			this.#eOverdue,
			this.#eOutput,
			this.#eChangeDue,
		])
			this.sim.cancel(event);
		this.liquid.discard();
		this.air.depth = 0;
		this.air.leak = this.constants["leak.sound"];
		this.air.compare();
		this.port.debris = 0;
		this.source.rest();
		this.lineKinked = false;
		this.fillKinked = false;
		this.#overdue = false;
		this.#output.reset(now, 0, false);
		for (const condition of conditions) {
			if (condition !== "canister-at-capacity" && condition !== "source-empty")
				this.alarms.end(condition, "dressing-change");
		}
		this.dressingChanges++;
		this.alarms.nurseMin += this.constants["hands.change"];
		this.at(this.#eChangeEnd, now + this.constants["hands.change"]);
		this.source.fillOver();
		this.replan();
	}

	#changeEnds(): void {
		this.settle();
		const now = this.sim.now;
		this.#seal.ageZero = now;
		if (this.#changeEvery !== null)
			this.at(this.#eChangeDue, now + this.#changeEvery);
		this.off.end();
		this.#output.reset(now, this.liquid.exudateRate, this.#mayBurst);
		this.at(this.#eOutput, this.#output.next());
		this.port.begin(this.#chance);
		this.#takeOver();
		this.#begin();
	}

	/** Stream of the jitter of turns. */
	get jitter(): Stream {
		return this.#streams["turn.jitter"];
	}
}
