import type { Debrief } from "../results/index.ts";
import type { Scenario } from "../scenario/index.ts";
import type { Act, CauseName, Place, Revealed, ShiftEnd } from "../vocabulary/index.ts";
import { type BankSize, usualBank } from "./belief/course-bank.ts";
import { debriefOf } from "./debrief/debrief.ts";
import type { Entry } from "./debrief/shift-record.ts";
import { placeFacts } from "./places/places.ts";
import { actMinutes } from "./places/takings.ts";
import type { Bedside } from "./shift/bedside.ts";
import { type Finding, findingAt, findingWords } from "./shift/findings.ts";
import { type Happened, RunningShift } from "./shift/running-shift.ts";
import { asCase, type Case } from "./shift/shift.ts";
import { doneWords } from "./shift/shift-words.ts";
import { shownAt, type View, viewOf } from "./shift/view.ts";

/** What comes back from every look, act and wait. */
export interface Answer {
	/** What is seen, or what came of it, in sentences. */
	readonly words: string;
	/** What could be seen or heard to happen meanwhile, in order. */
	readonly meanwhile: readonly Happened[];
	readonly view: View;
}

export type SoFar = ReturnType<Rehearsal["soFar"]>;

/** The longest that can be waited for at once. */
export const longestWaitMin = 1440;

/**
 * A shift in which something is wrong and the trainee has to find out what. Pure: time passes only in `look`, `act`,
 * `wait` and `next`, each of which has an answer in every state, and the same seed and calls give the same debrief.
 * What is hidden is kept in private fields: nothing that a caller can read gives it away before the debrief.
 */
export class Rehearsal {
	readonly title: string;
	readonly brief: string;
	/** Suggested pace, times real time; null: none. */
	readonly pace: number | null;
	readonly #case: Case;
	readonly #bank: BankSize;
	readonly #known: readonly Revealed[];
	readonly #shift: RunningShift;
	readonly #bedside: Bedside;
	readonly #log: Entry[] = [];
	#debrief: Debrief | null = null;

	/**
	 * Throws RangeError where the scenario has no `rehearsal:` part. `bank`: how many courses the debrief reckons with;
	 * `known`: what had given the case away before the shift began.
	 */
	constructor(scenario: Scenario, seed: string, bank: BankSize = usualBank, known: readonly Revealed[] = []) {
		this.#bank = bank;
		this.#known = known;
		this.#case = { ...asCase(scenario), seed };
		const { brief, pace } = this.#case.rehearsal;
		this.title = scenario.title;
		this.brief = brief;
		this.pace = pace;
		this.#shift = new RunningShift(this.#case);
		this.#bedside = this.#shift.bedside;
	}

	get over(): boolean {
		return this.#shift.ended !== null;
	}

	view(): View {
		return viewOf(this.#bedside, this.#case, this.#shift.told, this.over);
	}

	/** The shift so far, as one who stood at the bedside and wrote down what showed would have it. */
	soFar() {
		const { recorder } = this.#shift;
		return {
			curve: recorder.shown(this.#bedside.process),
			/** `endMin` null: it stands. */
			alarms: [
				...recorder.ended,
				...this.#bedside.alarms.map(({ condition, sinceMin }) => ({ condition, startMin: sinceMin, endMin: null })),
			],
			taken: this.#log.map(({ kind, what, startMin, endMin }) => ({ kind, what, startMin, endMin })),
		};
	}

	/** Looks at a place; takes its minutes. */
	look(place: Place): Answer {
		return this.#unlessOver((meanwhile) => {
			const [bedside, shift] = [this.#bedside, this.#shift];
			const { now: startMin, standing: alarms } = bedside;
			const whole = shift.run(startMin + placeFacts[place].minutes, meanwhile);
			const finding = whole ? findingAt(place, bedside) : null;
			const answer = finding === null ? this.#overWords : findingWords(finding, bedside);
			const found = finding === null ? [] : this.#foundIn(finding);
			const shown = shownAt(bedside);
			const endMin = bedside.now;
			this.#log.push({ kind: "look", what: place, startMin, endMin, answer, alarms, finding, shown, found });
			return answer;
		});
	}

	/** Does something; takes its minutes. */
	act(act: Act): Answer {
		return this.#unlessOver((meanwhile) => {
			const [bedside, shift] = [this.#bedside, this.#shift];
			const { now: startMin, standing: alarms, stopped: wasStopped, wrong } = bedside;
			const again = act === "call-help" && shift.calledMin !== null;
			// Who takes the dressing off sees the wound and what lay on it, before and after.
			const seen: { atMin: number; finding: Finding }[] = [];
			const sight = () => {
				if (act === "new-dressing") seen.push({ atMin: bedside.now, finding: findingAt("dressing", bedside) });
				return seen.slice(-1).flatMap(({ finding }) => this.#foundIn(finding));
			};
			const before = sight();
			const endsMin = startMin + actMinutes(act, this.#case.constants);
			const done = bedside.stepsOf({ act, startMin, endMin: endsMin }).every(({ atMin, take }) => {
				const runs = shift.run(atMin, meanwhile);
				if (runs) take();
				return runs;
			});
			let found: readonly CauseName[] = [];
			let answer = this.#overWords;
			if (done) {
				if (act === "call-help") shift.call();
				found = [...new Set([...before, ...sight()])];
				answer = doneWords(act, bedside.standing, { wasStopped, again, found });
				shift.run(bedside.now, meanwhile);
			}
			const { now: endMin, standing } = bedside;
			const ended = alarms.filter((condition) => !standing.includes(condition));
			const came = done ? { mended: bedside.mended, seen } : { mended: [], seen: [] };
			const noted = { startMin, endMin, answer, alarms, done, ...came, found, ended, wasStopped, wrong };
			this.#log.push({ kind: "act", what: act, ...noted });
			return answer;
		});
	}

	/** Lets minutes pass; one that is no number of 0 or more passes none. */
	wait(minutes: number): Answer {
		return this.#unlessOver((meanwhile) => {
			const passes = Number.isFinite(minutes) ? Math.min(longestWaitMin, Math.max(0, minutes)) : 0;
			this.#shift.run(this.#bedside.now + passes, meanwhile);
			return this.over ? this.#overWords : "Time passes.";
		});
	}

	/** Lets time pass until something can be seen or heard to happen. */
	next(): Answer {
		return this.#unlessOver((meanwhile) => {
			while (meanwhile.length === 0 && !this.over) this.#shift.run(this.#shift.nextMin, meanwhile);
			return this.over ? this.#overWords : "Time passes.";
		});
	}

	/** Ends the rehearsal, where it is not over, and says everything. */
	debrief(): Debrief {
		this.#debrief ??= debriefOf({ ...this.#shift.finish(), log: this.#log, bank: this.#bank, known: this.#known });
		return this.#debrief;
	}

	/** Kinds of cause that a finding shows and that are there. */
	#foundIn({ shows }: Finding): CauseName[] {
		return shows.filter((cause) => this.#bedside.isWrong(cause));
	}

	/** What comes of it, in words, or only that it is over. */
	#unlessOver(take: (meanwhile: Happened[]) => string): Answer {
		const meanwhile: Happened[] = [];
		const words = this.over ? this.#overWords : take(meanwhile);
		return { words, meanwhile, view: this.view() };
	}

	get #overWords(): string {
		return overWords[this.#shift.ended ?? "shift-over"];
	}
}

const overWords: { readonly [E in ShiftEnd]: string } = {
	"shift-over": "The shift is over.",
	"handed-over": "The patient is in a clinician's hands: the rehearsal is over.",
	left: "The rehearsal has been ended.",
};
