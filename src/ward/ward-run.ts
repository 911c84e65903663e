// Long, since patients, shifts and days share one calendar: who comes, the stores and the therapy itself have files of theirs.
import { type EventId, type Job, Resource, Simulation, type Trace } from "../engine/index.ts";
import { type Dressing, dayOfKind, type Scenario, type WardScenario } from "../scenario/index.ts";
import { nextClock } from "../therapy/base/clock.ts";
import { eventPriority } from "../therapy/base/event-priority.ts";
import { unobserved } from "../therapy/base/observer.ts";
import type { Stores } from "../therapy/base/stores.ts";
import { CareOfDressing } from "../therapy/care/care.ts";
import { DressingProcess } from "../therapy/dressing.ts";
import { minutesADay } from "../vocabulary/index.ts";
import { type WeekClock, weekdayAt } from "./order-moment.ts";
import { type Patient, Patients } from "./patients.ts";
import type { OrderRule } from "./shelf.ts";
import { type ItemsOfKind, itemsOf, Storeroom, type StoresTold } from "./storeroom.ts";

/** Is told what happens in a ward, as far as it listens. Minutes count from the scenario's start: those of the warm-up are negative. */
export interface WardObserver extends StoresTold {
	/** A day is over; −1 is the last one of the warm-up. */
	dayEnds?(day: number, run: WardRun): void;
	/** Hands-on minutes that nurses finished in a shift. */
	shiftEnds?(shift: number, endMin: number, nurseMin: number): void;
	/** A patient has got a unit, after so long a wait; or has found none and is treated elsewhere. */
	begins?(waitMin: number, atMin: number): void;
	turnedAway?(atMin: number): void;
	/** The stores open and the count begins. */
	opens?(run: WardRun): void;
}

/** What a ward has come to, from the first minute on: differences of two moments are what happened in between. */
const noTotals = () => ({
	arrived: 0,
	turnedAway: 0,
	left: 0,
	/** Solution discarded with its source, mL. */
	solutionWastedMl: 0,
	/** Liquid that reached the canisters, mL. */
	toCanisterMl: 0,
	instilledMl: 0,
	nurseMin: 0,
	/** Minutes of therapy, of all patients together. */
	therapyMin: 0,
});
type Sum = ReturnType<typeof noTotals>;
export type WardTotals = Readonly<Sum>;

/** A therapy unit with what it needs to run one stay after another of one kind. */
interface Slot {
	readonly kind: number;
	readonly process: DressingProcess;
	readonly care: CareOfDressing;
	readonly stores: Stores;
	readonly eLeave: EventId;
	/** Holds the unit. */
	job: Job;
	/** Whose therapy runs, or waits for its first pieces. */
	patient: Patient | null;
	beganMin: number;
	isRunning: boolean;
}

/**
 * A ward made ready to be run again and again, on the bedside's own engine: one calendar, shared nurses, and as many
 * therapy units as patients meet. A stay is a dressing's process that is started when the patient gets a unit and
 * stopped when the therapy ends; slots are used again, so that memory grows with the beds in use and not with stays.
 */
export class WardRun {
	readonly storeroom: Storeroom;
	/** Busy with patients; others wait for them. */
	readonly units: Resource;
	readonly nurses: Resource;
	readonly #ward: WardScenario;
	readonly #sim = new Simulation();
	readonly #observer: WardObserver;
	readonly #patients: Patients;
	readonly #scenarios: readonly Scenario[];
	readonly #items: readonly ItemsOfKind[];
	/**
	 * By kind. A replication takes them in the order of this list, whatever ran before it, and sums run over it in that
	 * order: so its last bits do not depend on who else was simulated on this machine.
	 */
	readonly #slots: readonly Slot[][];
	readonly #free: readonly Slot[][];
	readonly #clock: WeekClock;
	readonly #eArrival: EventId;
	readonly #eShift: EventId;
	readonly #eDay: EventId;
	readonly #eOpen: EventId;
	readonly #beds: readonly EventId[];
	readonly #done: Sum = noTotals();
	#replication = 0;
	#number = 0;
	#shift = 0;
	#shiftFrom = 0;
	#day = 0;

	/** `dressings`: what every kind wears, by place; `rules` null: the stores lack nothing. */
	constructor(
		ward: WardScenario,
		dressings: readonly Dressing[],
		rules: readonly OrderRule[] | null,
		observer: WardObserver,
	) {
		this.#ward = ward;
		this.#observer = observer;
		const sim = this.#sim;
		const warm = ward.warmUpMin;
		this.#clock = { startClockMin: ward.startClockMin, startWeekday: weekdayAt(-warm, ward) };
		this.#patients = new Patients(ward, this.#clock);
		this.#scenarios = dressings.map((dressing, kind) => dayOfKind(ward, { ...dressing, id: ward.kinds[kind].id }));
		this.#items = dressings.map((dressing, kind) => itemsOf(ward, kind, dressing));
		this.#slots = dressings.map(() => []);
		this.#free = dressings.map(() => []);
		this.units = new Resource(ward.units ?? Number.POSITIVE_INFINITY, sim);
		this.nurses = new Resource(Number.POSITIVE_INFINITY, sim);
		this.storeroom = new Storeroom(sim, ward, rules, this.#clock, {
			asked: (item, cause, at, ...rest) => {
				if (at >= warm) observer.asked?.(item, cause, at - warm, ...rest);
			},
			ordered: (item, pieces, at, arrives) => observer.ordered?.(item, pieces, at - warm, arrives - warm),
			waited: (item, minutes) => observer.waited?.(item, minutes),
		});
		this.#eOpen = sim.event("stores open", eventPriority.opening, () => this.#opens());
		this.#eArrival = sim.event("patient arrives", eventPriority.arrival, () => {
			this.#arrives(this.#patients.arriving(this.#number++));
			this.#nextArrival();
		});
		this.#eShift = sim.event("shift changes", eventPriority.opening, () => this.#shiftChanges());
		this.#eDay = sim.event("day ends", eventPriority.opening, () => this.#dayEnds());
		// Numbers of patients of the census come first.
		const present = ward.census.reduce((sum, count) => sum + count, 0);
		this.#beds = ward.beds.map(({ id, kind, startMin, endMin }, i) => {
			const patient = { number: present + i, kind, lengthMin: endMin - startMin, ageMin: null, isThere: false };
			return sim.event(`${id}: therapy is due`, eventPriority.arrival, () => this.#arrives(patient));
		});
	}

	/** What has come about so far, warm-up included. */
	totals(): WardTotals {
		const sum = { ...this.#done };
		for (const slots of this.#slots) for (const slot of slots) if (slot.isRunning) this.#addTo(sum, slot);
		return sum;
	}

	/** Runs one replication over warm-up and horizon. Returns the number of events executed. */
	run(replication: number, trace: Trace | null = null): number {
		const sim = this.#sim;
		const ward = this.#ward;
		this.#begin(replication);
		sim.trace = trace;
		sim.run(ward.warmUpMin + ward.horizonMin);
		for (const slots of this.#slots) for (const slot of slots) if (slot.isRunning) slot.process.finish();
		this.#shiftChanges();
		this.#dayEnds();
		for (const shelf of this.storeroom.shelves) shelf.close();
		return sim.executed;
	}

	#begin(replication: number): void {
		const sim = this.#sim;
		const ward = this.#ward;
		sim.reset();
		this.#replication = replication;
		Object.assign(this.#done, noTotals());
		this.units.reset();
		this.nurses.reset();
		this.storeroom.reset(replication);
		this.#patients.reset(replication);
		this.#slots.forEach((slots, kind) => {
			this.#free[kind].length = 0;
			for (const slot of slots.toReversed()) {
				slot.patient = null;
				slot.isRunning = false;
				this.#free[kind].push(slot);
			}
		});
		this.#number = 0;
		// The shift that began last; before the first of the day that of the evening before.
		const begun = ward.shifts.findLastIndex(({ fromClockMin }) => fromClockMin <= this.#clock.startClockMin);
		this.#shiftFrom = 0;
		this.#beginShift(begun < 0 ? ward.shifts.length - 1 : begun);
		this.#day = -ward.warmUpMin / minutesADay;
		sim.schedule(this.#eDay, minutesADay);
		if (ward.warmUpMin > 0) sim.schedule(this.#eOpen, ward.warmUpMin);
		else this.#opens();
		ward.census.forEach((count, kind) => {
			for (let i = 0; i < count; i++) this.#arrives(this.#patients.present(this.#number++, kind));
		});
		this.#beds.forEach((event, i) => {
			sim.schedule(event, ward.warmUpMin + ward.beds[i].startMin);
		});
		this.#number += ward.beds.length;
		this.#nextArrival();
	}

	#opens(): void {
		for (const shelf of this.storeroom.shelves) shelf.open();
		this.#observer.opens?.(this);
	}

	#nextArrival(): void {
		const due = this.#patients.next(this.#sim.now);
		if (due < this.#ward.warmUpMin + this.#ward.horizonMin) this.#sim.schedule(this.#eArrival, due);
	}

	#arrives(patient: Patient): void {
		const { now } = this.#sim;
		this.#done.arrived++;
		if (this.#ward.full === "away" && this.units.busy >= this.units.servers) {
			this.#done.turnedAway++;
			this.#observer.turnedAway?.(now - this.#ward.warmUpMin);
			return;
		}
		const job: Job = { priority: 0, start: () => this.#getsUnit(patient, now, job) };
		this.units.request(job);
	}

	#getsUnit(patient: Patient, arrivedMin: number, job: Job): void {
		const { now } = this.#sim;
		this.#observer.begins?.(now - arrivedMin, now - this.#ward.warmUpMin);
		const slot = this.#free[patient.kind].pop() ?? this.#newSlot(patient.kind);
		slot.patient = patient;
		slot.job = job;
		if (patient.isThere) {
			this.#starts(slot, {});
			return;
		}
		// One of each at the start; the therapy begins when the last of them is there.
		let lacking = 1;
		const hangs: { canisterMl?: number; sourceMl?: number } = {};
		const got = (kind: string, sizeMl: number) => {
			if (kind === "canister" && sizeMl > 0) hangs.canisterMl = sizeMl;
			if (kind === "solution" && sizeMl > 0) hangs.sourceMl = sizeMl;
			lacking--;
			if (lacking === 0) this.#starts(slot, hangs);
		};
		for (const kind of ["canister", "solution", "line", "kit"] as const) {
			if (this.#items[patient.kind][kind] === null) continue;
			lacking++;
			const sizeMl = slot.stores.take(kind, "start", (late) => got(kind, late));
			if (sizeMl !== null) got(kind, sizeMl);
		}
		got("", 0);
	}

	#starts(slot: Slot, hangs: { canisterMl?: number; sourceMl?: number }): void {
		const { patient } = slot;
		if (patient === null) return;
		const { now } = this.#sim;
		slot.beganMin = now;
		slot.isRunning = true;
		const age = patient.ageMin === null ? {} : { ageMin: patient.ageMin };
		slot.process.reset(this.#replication, patient.number, { ...hangs, ...age });
		slot.care.reset();
		const ends = now + patient.lengthMin;
		if (ends < this.#ward.warmUpMin + this.#ward.horizonMin) this.#sim.schedule(slot.eLeave, ends);
	}

	#leaves(slot: Slot): void {
		slot.process.finish();
		this.#addTo(this.#done, slot);
		this.#done.left++;
		slot.process.stop();
		slot.care.stop();
		slot.isRunning = false;
		slot.patient = null;
		this.#free[slot.kind].push(slot);
		this.units.release(slot.job);
	}

	#newSlot(kind: number): Slot {
		const sim = this.#sim;
		const scenario = this.#scenarios[kind];
		const stores = this.storeroom.of(this.#items[kind]);
		const process = new DressingProcess(sim, scenario, 0, this.nurses, unobserved, stores);
		const slot: Slot = {
			kind,
			process,
			care: new CareOfDressing(sim, scenario, process),
			stores,
			eLeave: sim.event(`${process.id}: therapy ends`, eventPriority.leaving, () => this.#leaves(slot)),
			job: { priority: 0, start: () => {} },
			patient: null,
			beganMin: 0,
			isRunning: false,
		};
		this.#slots[kind].push(slot);
		return slot;
	}

	#addTo(sum: Sum, slot: Slot): void {
		const { process } = slot;
		sum.solutionWastedMl += process.source.wasted;
		sum.toCanisterMl += process.liquid.toCanister;
		sum.instilledMl += process.liquid.instilled;
		sum.nurseMin += process.alarms.nurseMin;
		sum.therapyMin += this.#sim.now - slot.beganMin;
	}

	/** A shift begins: its nurses come, and the next one is planned. */
	#beginShift(shift: number): void {
		const { shifts } = this.#ward;
		this.#shift = shift;
		this.nurses.staff(shifts[shift].nurses ?? Number.POSITIVE_INFINITY);
		const clocks = shifts.map(({ fromClockMin }) => fromClockMin);
		this.#sim.schedule(this.#eShift, nextClock(this.#sim.now + 1, this.#clock.startClockMin, clocks));
	}

	#shiftChanges(): void {
		const { shifts, warmUpMin } = this.#ward;
		const { nurseMin } = this.totals();
		this.#observer.shiftEnds?.(this.#shift, this.#sim.now - warmUpMin, nurseMin - this.#shiftFrom);
		this.#shiftFrom = nurseMin;
		this.#beginShift((this.#shift + 1) % shifts.length);
	}

	#dayEnds(): void {
		this.#observer.dayEnds?.(this.#day, this);
		this.#day++;
		this.#sim.schedule(this.#eDay, this.#sim.now + minutesADay);
	}
}
