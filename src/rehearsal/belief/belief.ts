import type { Likelihoods } from "../../results/index.ts";
import { conditions, type Place } from "../../vocabulary/index.ts";
import { causes } from "../causes/causes.ts";
import { codeIn, type Finding, showsCause } from "../shift/findings.ts";
import type { Shown } from "../shift/view.ts";
import { type Course, depthIn } from "./course-bank.ts";

/**
 * What one may believe to be wrong, by Bayes' rule:
 *
 *     P(course | seen) ∝ P(course) · P(seen | course)
 *
 * over the courses of a bank. A course is played out to the end, so what it shows is certain: P(seen | course) is 1 where
 * it would have shown just what was seen, and 0 where not.
 */
export class Belief {
	readonly #courses: readonly Course[];
	#weights: number[];
	/** What was seen, newest first. */
	readonly #seen: Fits[] = [];

	constructor(courses: readonly Course[]) {
		this.#courses = courses;
		this.#weights = courses.map(({ weight }) => weight);
	}

	/**
	 * Takes note of what shows: the phase, the alarms with the phases in which they were raised, whether depth is held.
	 * Which alarms stand weighs more than the rest, where no course shows all of it.
	 */
	see({ atMin, signs, depth }: Shown): boolean {
		const held = depth === "held";
		const standing = alarmsOf(signs);
		const alarms = this.#note((course) => alarmsOf(course.row(atMin).signs) === standing);
		const all = this.#note((course) => {
			const row = course.row(atMin);
			return row.signs === signs && (depthIn(row, atMin) === "held") === held;
		});
		return alarms && all;
	}

	/** Takes note of what a look found. */
	find({ place, code }: Finding, atMin: number): boolean {
		return this.#note((course) => codeIn(course.row(atMin).findings, place) === code);
	}

	/** Takes note that help came at `atMin` and left the patient again: nothing is wrong that a clinician would have seen to. */
	helpLeft(atMin: number): boolean {
		const kept = causes.reduce((bits, { forClinician }, i) => (forClinician ? bits | (1 << i) : bits), 0);
		return this.#note((course) => (course.row(atMin).wrong & kept) === 0);
	}

	/** The probability that a look at `place` that ends at `atMin` shows a cause. */
	chance(place: Place, atMin: number): number {
		return this.#share((course) => showsCause(place, codeIn(course.row(atMin).findings, place)));
	}

	at(atMin: number): Likelihoods {
		const believed = causes
			.map(({ name }, index) => ({
				cause: name,
				probability: this.#share((course) => (course.row(atMin).wrong & (1 << index)) !== 0),
			}))
			.filter(({ probability }) => probability > 0)
			.sort((a, b) => b.probability - a.probability);
		const nothing = this.#share((course) => course.row(atMin).wrong === 0);
		return { causes: believed, nothing, courses: this.effectiveCourses };
	}

	/** Number of courses that equal weights would make as sure: 1 / Σ share². */
	get effectiveCourses(): number {
		const sum = this.ofAllSeen;
		return 1 / this.#weights.reduce((all, weight) => all + (weight / sum) ** 2, 0);
	}

	/** The probability, before anything was seen, of all that has been seen. */
	get ofAllSeen(): number {
		return this.#weights.reduce((all, weight) => all + weight, 0);
	}

	#share(holds: (course: Course) => boolean): number {
		let [some, all] = [0, 0];
		for (let i = 0; i < this.#weights.length; i++) {
			const weight = this.#weights[i];
			if (weight === 0) continue;
			all += weight;
			if (holds(this.#courses[i])) some += weight;
		}
		return some / all;
	}

	/**
	 * Keeps the courses in which this is so. Where that leaves none, the model holds the whole of what was seen for
	 * impossible, or the bank is too coarse for it: then the newest counts most, and what was seen before is taken along,
	 * newest first, as far as a course is left. False then.
	 */
	#note(fits: Fits): boolean {
		this.#seen.unshift(fits);
		if (this.#keep(fits)) return true;
		this.#weights = this.#courses.map(({ weight }) => weight);
		for (const earlier of this.#seen) this.#keep(earlier);
		return false;
	}

	/** False, and nothing changed, where no course would be left. */
	#keep(fits: Fits): boolean {
		const kept = this.#weights.map((weight, i) => (weight > 0 && fits(this.#courses[i]) ? weight : 0));
		if (!kept.some((weight) => weight > 0)) return false;
		this.#weights = kept;
		return true;
	}
}

type Fits = (course: Course) => boolean;

/** One bit an alarm that stands, without the phase it was raised in. */
function alarmsOf(signs: number): number {
	let bits = 0;
	for (let i = 1; i <= conditions.length; i++) if (((signs >> (3 * i)) & 7) !== 0) bits |= 1 << i;
	return bits;
}
