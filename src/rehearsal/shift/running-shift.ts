import type { RehearsalPlan } from "../../scenario/index.ts";
import type { Condition, ShiftEnd } from "../../vocabulary/index.ts";
import type { Placed } from "../causes/cause.ts";
import { causeOf } from "../causes/causes.ts";
import { Bedside } from "./bedside.ts";
import { placedCauses } from "./draw-case.ts";
import { ShiftRecorder } from "./recorder.ts";
import { type Case, helpComesMin, shiftOf } from "./shift.ts";
import { clockText, plain } from "./shift-words.ts";

/** Something that could be seen or heard to happen. */
export interface Happened {
	readonly atMin: number;
	readonly clock: string;
	readonly words: string;
}

/** A shift as it runs: time, alarms as they are heard, what the trainee is told, and help that was called. */
export class RunningShift {
	readonly bedside: Bedside;
	readonly recorder: ShiftRecorder;
	readonly placed: readonly Placed[];
	/** When each alarm was raised. */
	readonly signs = new Map<Condition, number[]>();
	calledMin: number | null = null;
	cameMin: number | null = null;
	ended: ShiftEnd | null = null;
	readonly #case: Case;
	/** What the trainee will be told, in order, and how much of it has been. */
	readonly #tell: RehearsalPlan["told"];
	#toldCount = 0;
	#comesMin = Number.POSITIVE_INFINITY;

	constructor(of: Case) {
		this.#case = of;
		const { hides, told, transferMin } = of.rehearsal;
		const shift = shiftOf(of);
		this.recorder = new ShiftRecorder(shift);
		this.bedside = new Bedside(shift, this.recorder);
		this.placed = placedCauses(hides, transferMin, of.seed);
		const moved =
			transferMin === null ? [] : [{ atMin: transferMin, says: "The patient has been lifted over to another bed." }];
		this.#tell = [...told, ...moved].sort((a, b) => a.atMin - b.atMin);
		this.bedside.begin(this.placed);
		this.run(0, []);
	}

	get told(): RehearsalPlan["told"] {
		return this.#tell.slice(0, this.#toldCount);
	}

	/** When anything happens next, hidden or not, or the shift ends. */
	get nextMin(): number {
		const told = this.#tell[this.#toldCount]?.atMin ?? Number.POSITIVE_INFINITY;
		return Math.min(this.#case.horizonMin, this.bedside.nextTime, told, this.#comesMin);
	}

	/** Lets time run to `toMin`, noting what can be seen to happen; false where the rehearsal was over before. */
	run(toMin: number, meanwhile: Happened[]): boolean {
		const { bedside } = this;
		const { horizonMin } = this.#case;
		for (;;) {
			const atMin = Math.min(toMin, Math.max(bedside.now, this.nextMin));
			const { signBits: before, standing: stood } = bedside;
			const { phase } = bedside.process;
			bedside.advance(atMin);
			if (bedside.signBits !== before) this.#note(phase, stood, meanwhile);
			this.#hear(meanwhile);
			if (this.ended !== null) return false;
			if (bedside.now >= horizonMin) {
				this.ended = "shift-over";
				return toMin <= horizonMin;
			}
			if (bedside.now >= toMin && this.nextMin > toMin) return true;
		}
	}

	/** Help sets out, and comes after the delay of the clock at which it was called. */
	call(): void {
		if (this.calledMin !== null) return;
		this.calledMin = this.bedside.now;
		this.#comesMin = helpComesMin(this.#case, this.calledMin);
	}

	/** Ends the shift, where it is not over: all that came of it. */
	finish() {
		this.ended ??= "left";
		const { placed, signs, calledMin, cameMin, ended } = this;
		const { troubles, now: endedMin, process } = this.bedside;
		process.finish();
		const day = this.recorder.day(0, process);
		const [off] = this.recorder.off; // suction
		return { of: this.#case, placed, troubles, signs, calledMin, cameMin, endedMin, ended, day, off };
	}

	/** What the trainee hears by now: what was to be told, and help that comes. */
	#hear(meanwhile: Happened[]): void {
		const { now } = this.bedside;
		for (const { says } of this.#tell.slice(this.#toldCount).filter(({ atMin }) => atMin <= now)) {
			this.#toldCount++;
			this.#happened(meanwhile, says);
		}
		if (this.#comesMin > now) return;
		this.#comesMin = Number.POSITIVE_INFINITY;
		this.cameMin = now;
		if (this.#needsHelp()) {
			this.bedside.handOver();
			this.ended = "handed-over";
			this.#happened(meanwhile, "A clinician is at the bedside and takes over.");
		} else
			this.#happened(
				meanwhile,
				"Help has come. Nothing is found that needs a clinician now, and the patient is left to you again.",
			);
	}

	/** Calling is right where something is or was for a clinician to see to, or where the case says so. */
	#needsHelp(): boolean {
		const { help } = this.#case.rehearsal;
		return help === null
			? this.bedside.troubles.some(({ cause, onsetMin }) => onsetMin !== null && causeOf(cause).forClinician)
			: help === "needed" && this.bedside.wrong.length > 0;
	}

	#note(phase: string, stood: readonly Condition[], meanwhile: Happened[]): void {
		const now = this.bedside.standing;
		for (const condition of now.filter((one) => !stood.includes(one))) {
			this.signs.set(condition, [...(this.signs.get(condition) ?? []), this.bedside.now]);
			this.#happened(meanwhile, `Alarm: ${plain(condition)}.`);
		}
		for (const condition of stood.filter((one) => !now.includes(one)))
			this.#happened(meanwhile, `The alarm ends: ${plain(condition)}.`);
		const after = this.bedside.process.phase;
		if (after !== phase)
			this.#happened(meanwhile, after === "change" ? "The dressing comes off." : `The ${after} begins.`);
	}

	#happened(meanwhile: Happened[], words: string): void {
		const atMin = this.bedside.now;
		meanwhile.push({ atMin, clock: clockText(atMin, this.#case.startClockMin), words });
	}
}
