import { type EventId, Resource, Simulation } from "../../engine/index.ts";
import type { Deed } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { DressingProcess, eventPriority, type Observer, unobserved } from "../../therapy/index.ts";
import type { Act, CauseName, Condition, Phase, TroubleEnd } from "../../vocabulary/index.ts";
import { conditions, phases } from "../../vocabulary/index.ts";
import type { Placed } from "../causes/cause.ts";
import { causeOf, causes } from "../causes/causes.ts";
import { actFacts } from "../places/acts.ts";
import type { Bed, Trouble } from "../places/bed.ts";

/** An alarm that stands. */
export interface StandingAlarm {
	readonly condition: Condition;
	readonly sinceMin: number;
	/** The phase in which it was raised. */
	readonly raisedIn: Phase;
}

const mostPlaced = 4;

/**
 * One dressing of a shift with what is hidden in it: the same engine and process as a day's, in which causes come and go
 * by their times and are mended by hand. Knows everything; what a trainee may know of it is decided in `view.ts` and by
 * the sights of causes. `begin` sets it back for another course.
 */
export class Bedside implements Bed {
	readonly process: DressingProcess;
	troubles: Trouble[] = [];
	/** Kinds of cause that the last act mended. */
	mended: readonly CauseName[] = [];
	/** When the present phase began. */
	phaseSince = 0;
	stopped = false;
	readonly #done = new Map<Act, number>();
	readonly #sim = new Simulation();
	/** In the order of `conditions`. */
	readonly #standing = conditions.map((): StandingAlarm | null => null);
	readonly #horizonMin: number;
	readonly #onsets: readonly EventId[];
	readonly #endings: readonly EventId[];
	#placed: readonly Placed[] = [];
	/** A clinician has the patient. */
	#handedOver = false;

	/** `shift` is the scenario of `shiftOf`. */
	constructor(shift: Scenario, recorder: Observer = unobserved) {
		this.#horizonMin = shift.horizonMin;
		const sim = this.#sim;
		this.process = new DressingProcess(
			sim,
			shift,
			0,
			new Resource(Number.POSITIVE_INFINITY, sim),
			this.#observer(recorder),
		);
		const events = (happens: string, happen: (index: number) => void) =>
			Array.from({ length: mostPlaced }, (_, i) =>
				sim.event(`hidden cause ${i + 1} ${happens}`, eventPriority.scripted, () => happen(i)),
			);
		this.#onsets = events("comes", (i) => this.#comes(i));
		this.#endings = events("goes", (i) => this.#goes(i));
	}

	get now(): number {
		return this.#sim.now;
	}

	/** When anything happens next, hidden or not; Infinity for nothing more. */
	get nextTime(): number {
		return this.#sim.nextTime;
	}

	get alarms(): StandingAlarm[] {
		return this.#standing.filter((alarm) => alarm !== null);
	}

	get standing(): Condition[] {
		return this.alarms.map(({ condition }) => condition);
	}

	/** The shift begins, with at most four hidden causes. */
	begin(placed: readonly Placed[]): void {
		const { process } = this;
		this.#sim.reset();
		this.#standing.fill(null);
		this.phaseSince = 0;
		this.#placed = placed.slice(0, mostPlaced);
		this.stopped = false;
		this.#done.clear();
		this.#handedOver = false;
		this.troubles = this.#placed.map(({ cause }) => ({ cause, onsetMin: null, endMin: null, endedBy: null }));
		process.reset(0);
		let prepared = false;
		this.#placed.forEach((hidden, i) => {
			const cause = causeOf(hidden.cause);
			if (cause.prepare !== undefined) {
				cause.prepare(hidden, process);
				prepared = true;
			} else if (hidden.onsetMin < this.#horizonMin) this.#sim.schedule(this.#onsets[i], hidden.onsetMin);
		});
		if (!prepared) return;
		// A pump start takes the air volume anew, which depends on what the canister holds.
		process.switchOff(true);
		process.switchOff(false);
		process.source.look();
	}

	/** Lets the shift run to `atMin`, what happens at that instant included; not beyond its end. */
	advance(atMin: number): void {
		this.#sim.runThrough(Math.min(atMin, this.#horizonMin));
	}

	/** Keeps which alarms stand and since when the phase runs, and hands everything on to `recorder`. */
	#observer(recorder: Observer): Observer {
		return {
			...unobserved,
			alarmStarts: (_, condition, sinceMin) => {
				this.#showsItself(condition, sinceMin);
				this.#standing[conditions.indexOf(condition)] = { condition, sinceMin, raisedIn: this.process.phase };
			},
			alarmEnds: (dressing, condition, ...ending) => {
				this.#standing[conditions.indexOf(condition)] = null;
				recorder.alarmEnds(dressing, condition, ...ending);
			},
			span: (...ran) => recorder.span(...ran),
			phase: (dressing, phase, start, end) => {
				this.phaseSince = end;
				recorder.phase(dressing, phase, start, end);
			},
			pause: (dressing, reason, start, end) => {
				if (end > start) recorder.pause(dressing, reason, start, end);
			},
			notice: (...noticed) => recorder.notice(...noticed),
			canisterChange: (...change) => recorder.canisterChange(...change),
			sourceChange: (...change) => recorder.sourceChange(...change),
			offSuction: (...spell) => recorder.offSuction(...spell),
		};
	}

	present(cause: CauseName): boolean {
		return this.troubles.some((trouble) => trouble.cause === cause && isPresent(trouble));
	}

	/** Somebody has to see to it: it is there, or it is for a clinician and, stopped or not, none has seen it. */
	isOpen(trouble: Trouble): boolean {
		if (isPresent(trouble)) return true;
		return trouble.onsetMin !== null && !this.#handedOver && causeOf(trouble.cause).forClinician === true;
	}

	isWrong(cause: CauseName): boolean {
		return this.troubles.some((trouble) => trouble.cause === cause && this.isOpen(trouble));
	}

	/** Kinds of cause that are wrong. */
	get wrong(): CauseName[] {
		return causes.map(({ name }) => name).filter((name) => this.isWrong(name));
	}

	/** One bit a kind that is wrong, in the order of `causes`. */
	get wrongBits(): number {
		let bits = 0;
		for (const trouble of this.troubles) if (this.isOpen(trouble)) bits |= 1 << causes.indexOf(causeOf(trouble.cause));
		return bits;
	}

	#comes(index: number): void {
		const hidden = this.#placed[index];
		const cause = causeOf(hidden.cause);
		// What befalls a dressing that is just being changed befalls nothing.
		if (!(cause.possible?.(this) ?? this.process.phase !== "change")) return;
		cause.begin?.(hidden, this);
		this.troubles[index].onsetMin = this.now;
		if (!("lastsMin" in hidden)) return;
		const goesMin = this.now + hidden.lastsMin;
		if (goesMin < this.#horizonMin) this.#sim.schedule(this.#endings[index], goesMin);
	}

	/** The cause is gone by itself. */
	#goes(index: number): void {
		const trouble = this.troubles[index];
		if (trouble.endMin !== null) return;
		const hidden = this.#placed[index];
		causeOf(hidden.cause).end?.(hidden, this);
		this.#end((one) => one === trouble, "by-itself");
	}

	/** What an alarm shows to be there has come about, hidden or of itself. */
	#showsItself(condition: Condition, atMin: number): void {
		const cause = causes.find(({ showsAs }) => showsAs === condition)?.name;
		if (cause === undefined) return;
		const waiting = this.troubles.find((trouble) => trouble.cause === cause && trouble.onsetMin === null);
		if (waiting !== undefined) waiting.onsetMin = atMin;
		else this.troubles.push({ cause, onsetMin: atMin, endMin: null, endedBy: null });
	}

	/** Ends those of the troubles that are there; which kinds these were. */
	#end(those: (trouble: Trouble) => boolean, endedBy: TroubleEnd): CauseName[] {
		const ended = this.troubles.filter((trouble) => isPresent(trouble) && those(trouble));
		for (const trouble of ended) {
			trouble.endMin = this.now;
			trouble.endedBy = endedBy;
		}
		return ended.map(({ cause }) => cause);
	}

	switchOff(off: boolean): void {
		if (off === this.stopped) return;
		this.stopped = off;
		this.process.switchOff(off);
	}

	doneMin(act: Act): number {
		return this.#done.get(act) ?? Number.NEGATIVE_INFINITY;
	}

	/** What a deed does, and when: its beginning, its last minutes, for which the pump stands still, its end. */
	stepsOf({ act, startMin, endMin }: Deed): { atMin: number; take(): void }[] {
		const { begin, last } = actFacts[act];
		const lastMin = last?.minutes(this.process.constants) ?? 0;
		return [
			{ atMin: startMin, take: () => begin?.(this) },
			...(lastMin > 0 ? [{ atMin: endMin - lastMin, take: () => last?.begin(this.process) }] : []),
			{ atMin: endMin, take: () => this.#finishAct(act) },
		];
	}

	/** Does it, from now on: lets the time pass that it takes. */
	do(deed: Deed): void {
		for (const { atMin, take } of this.stepsOf(deed)) {
			this.advance(atMin);
			take();
		}
	}

	#finishAct(act: Act): void {
		actFacts[act].finish?.(this);
		this.#done.set(act, this.now);
		this.mended = this.#end(({ cause }) => causeOf(cause).mendedBy.includes(act), "mended");
	}

	/** A clinician has taken over. */
	handOver(): void {
		this.#end(() => true, "handed-over");
		this.#handedOver = true;
	}

	/** The phase and the alarms with the phase in which each was raised: three bits each. Depth is not in it. */
	get signBits(): number {
		let bits = 1 + phases.indexOf(this.process.phase);
		this.#standing.forEach((alarm, i) => {
			if (alarm !== null) bits |= (1 + phases.indexOf(alarm.raisedIn)) << (3 * (i + 1));
		});
		return bits;
	}
}

const isPresent = ({ onsetMin, endMin }: Trouble) => onsetMin !== null && endMin === null;
