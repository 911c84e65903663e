import type { Recorder } from "../analysis/index.ts";
import { type EventId, Resource, Simulation } from "../engine/index.ts";
import type { CauseName, HiddenCause, Scenario } from "../scenario/index.ts";
import {
	type Condition,
	conditions,
	DressingProcess,
	order,
} from "../therapy/index.ts";
import type { Act } from "./acts.ts";
import {
	BedsideObserver,
	phases,
	type StandingAlarm,
} from "./bedside-observer.ts";
import { causeNames, explainedBy } from "./causes.ts";
import { findingAt } from "./findings.ts";
import { type Place, places } from "./places.ts";

/** How a trouble came to its end. */
export type TroubleEnd = "mended" | "by-itself" | "handed-over";

/** A cause in its course: when it came, and when and how it went. */
export interface Trouble {
	readonly cause: CauseName;
	onsetMin: number | null;
	endMin: number | null;
	endedBy: TroubleEnd | null;
}

/** A hidden cause with its moment drawn. */
export type Placed = HiddenCause & { readonly onsetMin: number };

const mostPlaced = 4;

/**
 * One dressing of a shift with what is hidden in it: the same engine and process as a day's, in which causes come and go
 * by their times and are mended by hand. Knows everything; what a trainee may know of it is decided in `view.ts` and
 * `findings.ts`. `begin` sets it back for another course. It is long because causes that come and hands that mend them
 * change the same few flags of one dressing.
 */
export class Bedside {
	readonly process: DressingProcess;
	/** In order of appearance: the hidden causes first. */
	troubles: Trouble[] = [];
	/** Switched off, by the trainee or by somebody else. */
	stopped = false;
	/** Blood has run into the canister since it was put in. */
	bloodCollected = false;
	/** A corner of the film is up. */
	cornerUp = false;
	readonly #sim = new Simulation();
	readonly #observer: BedsideObserver;
	readonly #horizonMin: number;
	readonly #onsets: readonly EventId[];
	readonly #endings: readonly EventId[];
	#placed: readonly Placed[] = [];
	/** A clinician has the patient. */
	#handedOver = false;

	/** `shift` is the scenario of `shiftOf`. */
	constructor(shift: Scenario, recorder: Recorder | null = null) {
		this.#observer = new BedsideObserver(recorder, (condition, atMin) => {
			this.#showsItself(condition, atMin);
			return this.process.phase;
		});
		this.#horizonMin = shift.horizonMin;
		const sim = this.#sim;
		const nurses = new Resource(Number.POSITIVE_INFINITY, sim);
		this.process = new DressingProcess(sim, shift, 0, nurses, this.#observer);
		const slots = Array.from({ length: mostPlaced }, (_, i) => i);
		this.#onsets = slots.map((i) =>
			sim.event(`hidden cause ${i + 1} comes`, order.scripted, () =>
				this.#comes(i),
			),
		);
		this.#endings = slots.map((i) =>
			sim.event(`hidden cause ${i + 1} goes`, order.scripted, () =>
				this.#goes(i),
			),
		);
	}

	get now(): number {
		return this.#sim.now;
	}

	/** When anything happens next, hidden or not; Infinity for nothing more. */
	get nextTime(): number {
		return this.#sim.nextTime;
	}

	/** When the present phase began. */
	get phaseSince(): number {
		return this.#observer.phaseSince;
	}

	get alarms(): StandingAlarm[] {
		return this.#observer.standing.filter((alarm) => alarm !== null);
	}

	/** The shift begins, with at most four hidden causes. */
	begin(placed: readonly Placed[]): void {
		const { process } = this;
		this.#sim.reset();
		this.#observer.reset();
		this.#placed = placed.slice(0, mostPlaced);
		this.stopped = false;
		this.cornerUp = false;
		this.bloodCollected = false;
		this.#handedOver = false;
		this.troubles = this.#placed.map(({ cause }) => ({
			cause,
			onsetMin: null,
			endMin: null,
			endedBy: null,
		}));
		process.reset(0);
		let filled = false;
		this.#placed.forEach((hidden, i) => {
			if (hidden.cause === "canister-full" || hidden.cause === "source-empty") {
				if (hidden.cause === "canister-full")
					process.liquid.canister = hidden.holdsMl;
				else process.liquid.source = hidden.holdsMl;
				filled = true;
			} else if (hidden.onsetMin < this.#horizonMin)
				this.#sim.schedule(this.#onsets[i], hidden.onsetMin);
		});
		if (!filled) return;
		// A pump start takes the air volume anew, which depends on what the canister holds.
		process.switchOff(true);
		process.switchOff(false);
		process.source.look();
	}

	/** Lets the shift run to `atMin`, what happens at that instant included; not beyond its end. */
	advance(atMin: number): void {
		this.#sim.runThrough(Math.min(atMin, this.#horizonMin));
	}

	/** Books the last span and closes what is open. */
	finish(): void {
		this.process.finish();
	}

	// ── causes ─────────────────────────────────────────────────────────────────────────────────────────────────────

	/** Kinds that are wrong now. */
	present(cause: CauseName): boolean {
		return this.troubles.some(
			(trouble) =>
				trouble.cause === cause &&
				trouble.onsetMin !== null &&
				trouble.endMin === null,
		);
	}

	/** Kinds that somebody has to see to: those that are there, and a bleed, stopped or not, until a clinician has it. */
	isWrong(cause: CauseName): boolean {
		return this.present(cause) || (cause === "bleeding" && this.#bledUnseen);
	}

	/** One bit a kind that `isWrong`, in the order of `causeNames`. */
	get wrongBits(): number {
		let bits = this.#bledUnseen ? 1 << causeNames.indexOf("bleeding") : 0;
		for (const { cause, onsetMin, endMin } of this.troubles)
			if (onsetMin !== null && endMin === null)
				bits |= 1 << causeNames.indexOf(cause);
		return bits;
	}

	get #bledUnseen(): boolean {
		return (
			!this.#handedOver &&
			this.troubles.some(
				({ cause, onsetMin }) => cause === "bleeding" && onsetMin !== null,
			)
		);
	}

	#comes(index: number): void {
		const { process } = this;
		const hidden = this.#placed[index];
		// What befalls a dressing that is just being changed befalls nothing.
		if (process.phase === "change" && hidden.cause !== "bleeding") return;
		switch (hidden.cause) {
			case "fill-line-kinked":
				process.kink("fill");
				break;
			case "suction-line-kinked":
				process.kink("suction");
				break;
			case "port-clogged":
				process.port.add(hidden.share);
				break;
			case "seal-breach":
				process.breach(hidden.size);
				break;
			case "dressing-dislodged":
				process.breach(hidden.size);
				this.cornerUp = true;
				break;
			case "left-off":
				if (this.stopped) return;
				this.#switchOff(true);
				break;
			case "bleeding":
				process.bleed(hidden.volumeMl / hidden.lastsMin);
				this.bloodCollected = true;
				break;
			default: // canister and source show themselves when it is so far
				return;
		}
		this.troubles[index].onsetMin = this.now;
		if (!("lastsMin" in hidden)) return;
		const goesMin = this.now + hidden.lastsMin;
		if (goesMin < this.#horizonMin)
			this.#sim.schedule(this.#endings[index], goesMin);
	}

	/** The cause is gone by itself; an alarm that it raised stands on. */
	#goes(index: number): void {
		const { process } = this;
		const hidden = this.#placed[index];
		const trouble = this.troubles[index];
		if (trouble.endMin !== null) return;
		switch (hidden.cause) {
			case "fill-line-kinked":
				process.settle();
				process.fillKinked = false;
				process.replan();
				break;
			case "suction-line-kinked":
				process.settle();
				process.lineKinked = false;
				process.replan();
				// A path that opens is a pump start.
				process.portWork(true);
				process.portWork(false);
				break;
			case "left-off":
				this.#switchOff(false);
				break;
			case "bleeding":
				process.bleed(-hidden.volumeMl / hidden.lastsMin);
				break;
			default:
				return;
		}
		trouble.endMin = this.now;
		trouble.endedBy = "by-itself";
	}

	/** A canister that is full or a source that is empty has come about, hidden or of itself. */
	#showsItself(condition: Condition, atMin: number): void {
		const cause =
			condition === "canister-at-capacity"
				? "canister-full"
				: condition === "source-empty"
					? "source-empty"
					: null;
		if (cause === null) return;
		const waiting = this.troubles.find(
			(trouble) => trouble.cause === cause && trouble.onsetMin === null,
		);
		if (waiting !== undefined) waiting.onsetMin = atMin;
		else
			this.troubles.push({
				cause,
				onsetMin: atMin,
				endMin: null,
				endedBy: null,
			});
	}

	#switchOff(off: boolean): void {
		if (off === this.stopped) return;
		this.stopped = off;
		this.process.switchOff(off);
	}

	/** Ends the troubles of these kinds; which of them there were. */
	#end(causes: readonly CauseName[], endedBy: TroubleEnd): CauseName[] {
		const ended: CauseName[] = [];
		for (const trouble of this.troubles) {
			if (
				!causes.includes(trouble.cause) ||
				trouble.onsetMin === null ||
				trouble.endMin !== null
			)
				continue;
			trouble.endMin = this.now;
			trouble.endedBy = endedBy;
			ended.push(trouble.cause);
		}
		return ended;
	}

	// ── hands ──────────────────────────────────────────────────────────────────────────────────────────────────────

	/** What has to be done before the last minutes of an act, and how many those are; 0: nothing. */
	lastMinutesOf(act: Act): number {
		const k = this.process.constants;
		if (act === "new-port") return Math.min(k["port.pumpOff"], k["hands.port"]);
		return act === "change-canister"
			? Math.min(k["hands.round"], k["hands.canister"])
			: 0;
	}

	/** The act begins: a dressing change takes the dressing off at once. */
	beginAct(act: Act): void {
		if (act === "new-dressing") this.process.changeDressing();
	}

	/** The last minutes of the act begin, for which the pump stops. */
	beginLastMinutes(act: Act): void {
		const { process } = this;
		if (act === "new-port") process.portWork(true);
		else if (act === "change-canister") {
			process.settle();
			process.pause("round");
			process.replan();
		}
	}

	/** The act is done: which kinds of cause it mended. */
	finishAct(act: Act): CauseName[] {
		const { process } = this;
		switch (act) {
			case "free-suction-line": {
				const mended = this.#end(["suction-line-kinked"], "mended");
				const alarm = process.alarms.stands("suction-path-obstructed");
				// Debris in the port keeps the alarm standing.
				if (process.port.debris === 0 && (alarm || process.lineKinked))
					process.mendByCall("suction-path-obstructed", true);
				else if (process.lineKinked) {
					process.settle();
					process.lineKinked = false;
					process.replan();
				}
				return mended;
			}
			case "free-fill-line":
				process.mendByCall("fill-path-obstructed", true);
				return this.#end(["fill-line-kinked"], "mended");
			case "change-canister":
				this.bloodCollected = this.present("bleeding");
				process.canister.change(
					process.alarms.stands("canister-at-capacity")
						? "at-capacity"
						: "round",
					process.canister.size,
				);
				return this.#end(["canister-full"], "mended");
			case "change-source":
				process.source.renew(process.source.isEmpty ? "empty" : "round");
				return this.#end(["source-empty"], "mended");
			case "new-port":
				process.portWork(false);
				process.mendByCall("suction-path-obstructed", false);
				return this.#end(["suction-line-kinked", "port-clogged"], "mended");
			case "patch-edge":
				process.patch("call");
				this.cornerUp = false;
				return this.#end(["seal-breach", "dressing-dislodged"], "mended");
			case "pause":
				this.#switchOff(true);
				return [];
			case "resume":
				this.#switchOff(false);
				this.#clearUnexplained();
				return this.#end(["left-off"], "mended");
			case "new-dressing":
				this.cornerUp = false;
				return this.#end(
					[
						"fill-line-kinked",
						"suction-line-kinked",
						"port-clogged",
						"seal-breach",
						"dressing-dislodged",
					],
					"mended",
				);
			case "call-help":
				return [];
		}
	}

	/** Alarms whose causes are all gone end; the two that end by themselves are left alone. */
	#clearUnexplained(): void {
		const { process } = this;
		const explained: { readonly [C in Condition]: boolean } = {
			"canister-at-capacity": true,
			"source-empty": true,
			"suction-absent": true,
			"large-output": true,
			"suction-path-obstructed": process.lineKinked || process.port.debris > 0,
			"fill-path-obstructed": process.fillKinked,
			"seal-leak": this.#leaks,
			"depth-not-held": this.#leaks,
		};
		for (const condition of conditions) {
			if (explained[condition] || !process.alarms.stands(condition)) continue;
			process.settle();
			process.alarms.end(condition, "call");
			process.replan();
		}
	}

	get #leaks(): boolean {
		const { process } = this;
		return process.air.leak > process.constants["leak.sound"];
	}

	/** Somebody else has taken over. */
	handOver(): void {
		this.#end(causeNames, "handed-over");
		this.#handedOver = true;
	}

	// ── what can be told from outside, as numbers ──────────────────────────────────────────────────────────────────

	/** What a look at every place would find: two bits a place, in the order of `places`. */
	get findingBits(): number {
		let bits = 0;
		for (let i = 0; i < places.length; i++)
			bits |= this.finding(places[i]) << (2 * i);
		return bits;
	}

	finding(place: Place): number {
		return findingAt(place, this);
	}

	/** The phase and the alarms with the phase in which each was raised: three bits each. Depth is not in it. */
	get signBits(): number {
		let bits = 1 + phases.indexOf(this.process.phase);
		const { standing } = this.#observer;
		for (let i = 0; i < standing.length; i++) {
			const alarm = standing[i];
			if (alarm !== null)
				bits |= (1 + phases.indexOf(alarm.raisedIn)) << (3 * (i + 1));
		}
		return bits;
	}

	/** Whether a kind of cause may have raised an alarm that stands. */
	get suspects(): CauseName[] {
		return [
			...new Set(
				this.alarms.flatMap(({ condition }) => explainedBy[condition]),
			),
		];
	}
}
