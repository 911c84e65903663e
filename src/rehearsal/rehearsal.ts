import type { CauseName, Scenario } from "../scenario/index.ts";
import { type Condition, isNight } from "../therapy/index.ts";
import type { Act } from "./acts.ts";
import { Bedside, type Placed } from "./bedside.ts";
import { causeNames } from "./causes.ts";
import { clockText } from "./clock-text.ts";
import { type BankSize, usualBank } from "./course-bank.ts";
import { debriefOf } from "./debrief.ts";
import type { Debrief, Ended, Revealed } from "./debrief-data.ts";
import { doneWords, plainCondition } from "./done-words.ts";
import { findingWords } from "./finding-words.ts";
import { causesShown } from "./findings.ts";
import type { Entry } from "./log.ts";
import { actMinutes, lookMinutes } from "./minutes.ts";
import { placedCauses } from "./placed-causes.ts";
import type { Place } from "./places.ts";
import { asCase, type Case, shiftOf } from "./shift.ts";
import { ShiftRecorder, type SoFar } from "./shift-recorder.ts";
import { shownAt } from "./shown.ts";
import { type View, viewOf } from "./view.ts";

/** What comes back from every look, act and wait. */
export interface Answer {
	/** What is seen, or what came of it, in sentences. */
	readonly words: string;
	/** What could be seen or heard to happen meanwhile, in order. */
	readonly meanwhile: readonly Happened[];
	readonly view: View;
}

export interface Happened {
	readonly atMin: number;
	readonly clock: string;
	readonly words: string;
}

const longestWaitMin = 24 * 60;

/**
 * A shift in which something is wrong and the trainee has to find out what. Pure: time passes only in `look`, `act`,
 * `wait` and `next`, each of which has an answer in every state, and the same seed and calls give the same debrief.
 * What is hidden is kept in private fields: nothing that a caller can read gives it away before the debrief. It is long
 * because time, what is heard meanwhile and the log are one state that every call moves on.
 */
export class Rehearsal {
	readonly title: string;
	readonly brief: string;
	/** Suggested pace, times real time; null: none. */
	readonly pace: number | null;
	readonly #case: Case;
	/** How many courses the debrief reckons with. */
	readonly #bank: BankSize;
	readonly #bedside: Bedside;
	readonly #recorder: ShiftRecorder;
	readonly #placed: readonly Placed[];
	readonly #log: Entry[] = [];
	/** What the trainee will be told, in order, and how much of it has been. */
	readonly #tell: readonly { readonly atMin: number; readonly says: string }[];
	#toldCount = 0;
	readonly #signs = new Map<Condition, number[]>();
	#calledMin: number | null = null;
	#cameMin: number | null = null;
	#comesMin = Number.POSITIVE_INFINITY;
	#ended: Ended | null = null;
	readonly #known: readonly Revealed[];
	#debrief: Debrief | null = null;

	/** Throws RangeError where the scenario has no `rehearsal:` part. */
	/** `known`: what had given the case away before the shift began. */
	constructor(
		scenario: Scenario,
		seed: string,
		bank: BankSize = usualBank,
		known: readonly Revealed[] = [],
	) {
		this.#bank = bank;
		this.#known = known;
		this.#case = { ...asCase(scenario), seed };
		const { rehearsal } = this.#case;
		this.title = scenario.title;
		this.brief = rehearsal.brief;
		this.pace = rehearsal.pace;
		const shift = shiftOf(this.#case);
		this.#recorder = new ShiftRecorder(shift);
		this.#bedside = new Bedside(shift, this.#recorder);
		this.#placed = placedCauses(rehearsal.hides, rehearsal.transferMin, seed);
		const moved =
			rehearsal.transferMin === null
				? []
				: [
						{
							atMin: rehearsal.transferMin,
							says: "The patient has been lifted over to another bed.",
						},
					];
		this.#tell = [...rehearsal.told, ...moved].sort(
			(a, b) => a.atMin - b.atMin,
		);
		this.#bedside.begin(this.#placed);
		this.#run(0, []);
	}

	get over(): boolean {
		return this.#ended !== null;
	}

	view(): View {
		return viewOf(
			this.#bedside,
			this.#case,
			this.#tell.slice(0, this.#toldCount),
			this.over,
		);
	}

	/** What has shown since the shift began, and what the trainee has done. */
	soFar(): SoFar {
		return {
			curve: this.#recorder.shown(this.#bedside.process),
			alarms: [
				...this.#recorder.ended,
				...this.#bedside.alarms.map(({ condition, sinceMin }) => ({
					condition,
					startMin: sinceMin,
					endMin: null,
				})),
			],
			taken: this.#log.map(({ kind, what, startMin, endMin }) => ({
				kind,
				what,
				startMin,
				endMin,
			})),
		};
	}

	/** Looks at a place; takes its minutes. */
	look(place: Place): Answer {
		if (this.over) return this.#answer(this.#overWords, []);
		const startMin = this.#bedside.now;
		const alarms = this.#standing();
		const meanwhile: Happened[] = [];
		const whole = this.#run(startMin + lookMinutes(place), meanwhile);
		const code = whole ? this.#bedside.finding(place) : null;
		const words =
			code === null
				? this.#overWords
				: findingWords(place, code, this.#bedside);
		this.#log.push({
			kind: "look",
			what: place,
			startMin,
			endMin: this.#bedside.now,
			answer: words,
			alarms,
			code,
			shown: shownAt(this.#bedside),
			found:
				code === null
					? []
					: causesShown(place, code).filter((cause) =>
							this.#bedside.isWrong(cause),
						),
		});
		return this.#answer(words, meanwhile);
	}

	/** Does something; takes its minutes. */
	act(act: Act): Answer {
		if (this.over) return this.#answer(this.#overWords, []);
		const bedside = this.#bedside;
		const startMin = bedside.now;
		const alarms = this.#standing();
		const wrong = this.#wrong();
		const wasStopped = bedside.stopped;
		const again = act === "call-help" && this.#calledMin !== null;
		const sight = () => ({
			atMin: bedside.now,
			code: bedside.finding("dressing"),
		});
		const seen = act === "new-dressing" ? [sight()] : [];
		const shows = (code: number) =>
			causesShown("dressing", code).filter((cause) => bedside.isWrong(cause));
		const found = new Set(seen.flatMap(({ code }) => shows(code)));
		const meanwhile: Happened[] = [];
		const last = bedside.lastMinutesOf(act);
		const endMin = startMin + actMinutes(act, this.#case.constants);
		bedside.beginAct(act);
		let whole = this.#run(endMin - last, meanwhile);
		if (whole && last > 0) {
			bedside.beginLastMinutes(act);
			whole = this.#run(endMin, meanwhile);
		}
		let mended: CauseName[] = [];
		let words = this.#overWords;
		if (whole) {
			mended = bedside.finishAct(act);
			if (act === "call-help") this.#call();
			if (act === "new-dressing") {
				seen.push(sight());
				for (const cause of shows(bedside.finding("dressing")))
					found.add(cause);
			}
			words = doneWords(act, this.#standing(), {
				wasStopped,
				again,
				blood: found.has("bleeding"),
			});
			this.#run(bedside.now, meanwhile);
		}
		const standing = this.#standing();
		this.#log.push({
			kind: "act",
			what: act,
			startMin,
			endMin: bedside.now,
			answer: words,
			alarms,
			done: whole,
			mended,
			seen: whole ? seen : [],
			found: whole ? [...found] : [],
			served:
				mended.length > 0 ||
				(act !== "pause" &&
					act !== "call-help" &&
					alarms.some(
						(condition) =>
							condition !== "suction-absent" && !standing.includes(condition),
					)) ||
				(act === "pause" && wrong.includes("bleeding") && !wasStopped) ||
				(act === "resume" && wasStopped),
			wrong,
		});
		return this.#answer(words, meanwhile);
	}

	/** Lets minutes pass; one that is no number of 0 or more passes none. */
	wait(minutes: number): Answer {
		if (this.over) return this.#answer(this.#overWords, []);
		const meanwhile: Happened[] = [];
		const passes = Number.isFinite(minutes)
			? Math.min(longestWaitMin, Math.max(0, minutes))
			: 0;
		this.#run(this.#bedside.now + passes, meanwhile);
		return this.#answer(
			this.over ? this.#overWords : "Time passes.",
			meanwhile,
		);
	}

	/** Lets time pass until something can be seen or heard to happen. */
	next(): Answer {
		if (this.over) return this.#answer(this.#overWords, []);
		const meanwhile: Happened[] = [];
		while (meanwhile.length === 0 && !this.over)
			this.#run(this.#nextMin(), meanwhile);
		return this.#answer(
			this.over ? this.#overWords : "Time passes.",
			meanwhile,
		);
	}

	/** Ends the rehearsal, where it is not over, and says everything. */
	debrief(): Debrief {
		if (this.#debrief !== null) return this.#debrief;
		this.#ended ??= "left";
		this.#bedside.finish();
		this.#debrief = debriefOf({
			of: this.#case,
			bank: this.#bank,
			placed: this.#placed,
			troubles: this.#bedside.troubles,
			log: this.#log,
			signs: this.#signs,
			calledMin: this.#calledMin,
			cameMin: this.#cameMin,
			endedMin: this.#bedside.now,
			ended: this.#ended,
			known: this.#known,
			day: this.#recorder.day(0, this.#bedside.process),
			off: this.#recorder.off[0] ?? [],
		});
		return this.#debrief;
	}

	// ── time ───────────────────────────────────────────────────────────────────────────────────────────────────────

	/** When anything happens next, hidden or not, or the shift ends. */
	#nextMin(): number {
		const told = this.#tell[this.#toldCount]?.atMin ?? Number.POSITIVE_INFINITY;
		return Math.min(
			this.#case.horizonMin,
			this.#bedside.nextTime,
			told,
			this.#comesMin,
		);
	}

	/** Lets time run to `toMin`, noting what can be seen to happen; false where the rehearsal was over before. */
	#run(toMin: number, meanwhile: Happened[]): boolean {
		const bedside = this.#bedside;
		const { horizonMin } = this.#case;
		for (;;) {
			const atMin = Math.min(toMin, Math.max(bedside.now, this.#nextMin()));
			const before = bedside.signBits;
			const stood = this.#standing();
			const { phase } = bedside.process;
			bedside.advance(atMin);
			if (bedside.signBits !== before) this.#note(phase, stood, meanwhile);
			this.#hear(meanwhile);
			if (this.over) return false;
			if (bedside.now >= horizonMin) {
				this.#ended = "shift-over";
				return toMin <= horizonMin;
			}
			if (bedside.now >= toMin && this.#nextMin() > toMin) return true;
		}
	}

	/** What the trainee hears by now: what was to be told, and help that comes. */
	#hear(meanwhile: Happened[]): void {
		const now = this.#bedside.now;
		for (
			let next = this.#tell[this.#toldCount];
			next !== undefined && next.atMin <= now;
			next = this.#tell[this.#toldCount]
		) {
			this.#toldCount++;
			this.#happened(meanwhile, next.says);
		}
		if (this.#comesMin > now) return;
		this.#comesMin = Number.POSITIVE_INFINITY;
		this.#cameMin = now;
		if (this.#needsHelp()) {
			this.#bedside.handOver();
			this.#ended = "handed-over";
			this.#happened(
				meanwhile,
				"A clinician is at the bedside and takes over.",
			);
		} else
			this.#happened(
				meanwhile,
				"Help has come. Nothing is found that needs a clinician now, and the patient is left to you again.",
			);
	}

	#note(
		phase: string,
		stood: readonly Condition[],
		meanwhile: Happened[],
	): void {
		const now = this.#standing();
		for (const condition of now.filter((one) => !stood.includes(one))) {
			this.#signs.set(condition, [
				...(this.#signs.get(condition) ?? []),
				this.#bedside.now,
			]);
			this.#happened(meanwhile, `Alarm: ${plainCondition(condition)}.`);
		}
		for (const condition of stood.filter((one) => !now.includes(one)))
			this.#happened(
				meanwhile,
				`The alarm ends: ${plainCondition(condition)}.`,
			);
		const after = this.#bedside.process.phase;
		if (after !== phase)
			this.#happened(
				meanwhile,
				after === "change" ? "The dressing comes off." : `The ${after} begins.`,
			);
	}

	#happened(meanwhile: Happened[], words: string): void {
		const atMin = this.#bedside.now;
		meanwhile.push({
			atMin,
			clock: clockText(atMin, this.#case.startClockMin),
			words,
		});
	}

	// ── answers ────────────────────────────────────────────────────────────────────────────────────────────────────

	#answer(words: string, meanwhile: readonly Happened[]): Answer {
		return { words, meanwhile, view: this.view() };
	}

	get #overWords(): string {
		switch (this.#ended) {
			case "handed-over":
				return "The patient is in a clinician's hands: the rehearsal is over.";
			case "left":
				return "The rehearsal has been ended.";
			default:
				return "The shift is over.";
		}
	}

	#standing(): Condition[] {
		return this.#bedside.alarms.map(({ condition }) => condition);
	}

	#wrong(): CauseName[] {
		return causeNames.filter((cause) => this.#bedside.isWrong(cause));
	}

	/** Calling is right where there is or was bleeding, or where the case says so. */
	#needsHelp(): boolean {
		const { help } = this.#case.rehearsal;
		return help === null
			? this.#bedside.troubles.some(
					({ cause, onsetMin }) => cause === "bleeding" && onsetMin !== null,
				)
			: help === "needed" && this.#wrong().length > 0;
	}

	/** Help sets out, and comes after the delay of the clock at which it was called. */
	#call(): void {
		if (this.#calledMin !== null) return;
		const now = this.#bedside.now;
		this.#calledMin = now;
		const { dayMin, nightMin } = this.#case.care.response;
		const night = isNight(this.#case.startClockMin + now);
		this.#comesMin = now + (night ? nightMin : dayMin);
	}
}

/** Begins a rehearsal of a scenario with a `rehearsal:` part; throws RangeError for one without. */
export const startRehearsal = (
	scenario: Scenario,
	seed: string,
	bank: BankSize = usualBank,
): Rehearsal => new Rehearsal(scenario, seed, bank);
