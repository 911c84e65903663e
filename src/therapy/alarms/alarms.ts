import type { EventId, Job, Resource, Simulation, Substream } from "../../engine/index.ts";
import { lognormal } from "../../engine/index.ts";
import type { ConstantName, Constants } from "../../physics/index.ts";
import type { Care } from "../../scenario/index.ts";
import { type Condition, conditionFacts, conditions, type Ending } from "../../vocabulary/index.ts";
import { isNight, never } from "../base/clock.ts";
import { eventPriority } from "../base/event-priority.ts";
import type { Observer } from "../base/observer.ts";
import { AlarmTimer } from "./alarm-timer.ts";

/** What the alarms ask of the dressing they watch. */
export interface Watched {
	readonly lineKinked: boolean;
	/** The cause is mended by the nurse who was called; `freesKink`: the job is to free a kink that was known. */
	mendByCall(condition: Condition, freesKink: boolean): void;
	/** The pump stops for the last minutes of a new port, or that job is over. */
	portWork(running: boolean): void;
	/** What stands has changed: a fill may be due or withheld. */
	reviewFill(): void;
}

interface Called {
	/** The constant with the minutes of work on it. */
	readonly work: ConstantName;
	/** From which the time is drawn until the nurse comes. */
	readonly response: Substream;
}

interface Standing {
	readonly condition: Condition;
	readonly withholdsFill: boolean;
	/** When the alarm began; `never` where none stands. */
	since: number;
	/** The timers that raise it. */
	readonly timers: AlarmTimer[];
	hands: number;
	freesKink: boolean;
	/** null where no nurse is called. */
	readonly called: Called | null;
	readonly call: EventId;
	readonly repair: EventId;
	readonly job: Job;
}

/** The alarms of one dressing, from the timer that raises one to the nurse who mends its cause. */
export class Alarms {
	/** Alarms that withhold a fill. */
	withholding = 0;
	/** Conditions that something the scenario lists may bring about now: a listed break, leak, kink, clog or bleeding. */
	readonly listed = new Set<Condition>();
	/** Since the last reset. */
	raised = 0;
	nightCalls = 0;
	nurseMin = 0;
	/** A leak above its limit. */
	readonly leak: AlarmTimer;
	/** A depth below what counts as held. */
	readonly depth: AlarmTimer;
	/** A closed suction path. */
	readonly closed: AlarmTimer;
	/** A drain that takes too long. */
	readonly drain: AlarmTimer;
	/** A fill that stands still. */
	readonly stall: AlarmTimer;
	/** Off suction for too long. */
	readonly absent: AlarmTimer;
	readonly #sim: Simulation;
	readonly #k: Constants;
	readonly #care: Care;
	readonly #nurses: Resource;
	readonly #startClockMin: number;
	readonly #chance: boolean;
	readonly #watched: Watched;
	readonly #dressing: number;
	readonly #observer: () => Observer;
	readonly #horizon: number;
	readonly #all: readonly Standing[];
	readonly #portStop: EventId;

	constructor(
		sim: Simulation,
		constants: Constants,
		care: Care,
		nurses: Resource,
		place: {
			readonly dressing: number;
			readonly id: string;
			readonly startClockMin: number;
			readonly horizon: number;
			readonly chance: boolean;
		},
		response: (condition: Condition) => Substream,
		watched: Watched,
		observer: () => Observer,
	) {
		this.#sim = sim;
		this.#k = constants;
		this.#care = care;
		this.#nurses = nurses;
		this.#startClockMin = place.startClockMin;
		this.#horizon = place.horizon;
		this.#chance = place.chance;
		this.#watched = watched;
		this.#dressing = place.dressing;
		this.#observer = observer;
		this.#all = conditions.map((condition) => {
			const { hands: work, withholdsFill } = conditionFacts[condition];
			const standing: Standing = {
				condition,
				withholdsFill,
				since: never,
				timers: [],
				hands: 0,
				freesKink: false,
				called: work === null ? null : { work, response: response(condition) },
				call: sim.event(`${place.id}: nurse comes for ${condition}`, eventPriority.call, () =>
					this.#nurses.request(standing.job),
				),
				repair: sim.event(`${place.id}: ${condition} mended`, eventPriority.repair, () => this.#repaired(standing)),
				job: { priority: 1, start: () => this.#begin(standing) },
			};
			return standing;
		});
		const timer = (name: string, condition: Condition) => {
			const standing = this.#find(condition);
			const runsOut = sim.event(`${place.id}: timer of ${condition} (${name})`, eventPriority.alarmTimer, () =>
				this.raise(condition),
			);
			const made = new AlarmTimer(sim, place.horizon, runsOut, standing);
			standing.timers.push(made);
			return made;
		};
		this.leak = timer("leak", "seal-leak");
		this.depth = timer("depth", "depth-not-held");
		this.closed = timer("closed", "suction-path-obstructed");
		this.drain = timer("drain", "suction-path-obstructed");
		this.stall = timer("stall", "fill-path-obstructed");
		this.absent = timer("absent", "suction-absent");
		this.#portStop = sim.event(`${place.id}: pump off for a new port`, eventPriority.call, () =>
			this.#watched.portWork(true),
		);
	}

	reset(): void {
		for (const standing of this.#all) standing.since = never;
		this.listed.clear();
		this.withholding = 0;
		this.raised = 0;
		this.nightCalls = 0;
		this.nurseMin = 0;
	}

	stands(condition: Condition): boolean {
		const since = this.#find(condition).since;
		return since >= 0;
	}

	raise(condition: Condition): void {
		const standing = this.#find(condition);
		if (standing.since >= 0) return;
		const now = this.#sim.now;
		standing.since = now;
		this.raised++;
		if (standing.withholdsFill) this.withholding++;
		this.#observer().alarmStarts(this.#dressing, condition, now, this.listed.has(condition));
		if (standing.called !== null) this.#callNurse(standing, standing.called);
		this.#watched.reviewFill();
	}

	/** Ends the alarm, if it stands: its timers go to 0, its call is cancelled and a nurse at work on it is free. */
	end(condition: Condition, ending: Ending): void {
		const standing = this.#find(condition);
		for (const timer of standing.timers) timer.rewind();
		if (this.listed.size > 0) this.listed.delete(condition);
		if (standing.since < 0) return;
		this.#observer().alarmEnds(this.#dressing, condition, standing.since, this.#sim.now, ending);
		standing.since = never;
		if (standing.withholdsFill) this.withholding--;
		if (standing.called !== null) {
			this.#sim.cancel(standing.call);
			this.#sim.cancel(standing.repair);
			this.#nurses.release(standing.job);
			if (condition === "suction-path-obstructed") {
				this.#sim.cancel(this.#portStop);
				this.#watched.portWork(false);
			}
		}
		this.#watched.reviewFill();
	}

	/** Tells the observer of every alarm that stands at the end. */
	close(): void {
		for (const standing of this.#all) {
			if (standing.since >= 0)
				this.#observer().alarmEnds(this.#dressing, standing.condition, standing.since, this.#sim.now, "horizon");
		}
	}

	/** The therapy ends: no timer runs, nobody comes, and whoever is at work is free. */
	stop(): void {
		for (const standing of this.#all) {
			this.#sim.cancel(standing.call);
			this.#sim.cancel(standing.repair);
			this.#nurses.release(standing.job);
			standing.since = never;
			for (const timer of standing.timers) timer.rewind();
		}
		this.#sim.cancel(this.#portStop);
	}

	#find(condition: Condition): Standing {
		return this.#all[conditions.indexOf(condition)];
	}

	#callNurse(standing: Standing, { work, response }: Called): void {
		const k = this.#k;
		const night = isNight(this.#startClockMin + standing.since);
		if (night) this.nightCalls++;
		standing.freesKink = standing.condition === "suction-path-obstructed" && this.#watched.lineKinked;
		standing.hands = k[standing.freesKink ? "hands.kink" : work];
		const { dayMin, nightMin, spread } = this.#care.response;
		const median = night ? nightMin : dayMin;
		const delay = this.#chance ? lognormal(response, median, spread) : median;
		const due = standing.since + delay;
		if (due < this.#horizon) this.#sim.schedule(standing.call, due);
	}

	#begin(standing: Standing): void {
		const now = this.#sim.now;
		if (standing.condition === "suction-path-obstructed" && !standing.freesKink) {
			const stop = now + Math.max(0, standing.hands - this.#k["port.pumpOff"]);
			if (stop < this.#horizon) this.#sim.schedule(this.#portStop, stop);
		}
		const done = now + standing.hands;
		if (done < this.#horizon) this.#sim.schedule(standing.repair, done);
	}

	#repaired(standing: Standing): void {
		this.nurseMin += standing.hands;
		this.#watched.mendByCall(standing.condition, standing.freesKink);
		// Where there was nothing to mend it with, the alarm stands and the nurse goes.
		if (standing.since >= 0) this.#nurses.release(standing.job);
	}
}
