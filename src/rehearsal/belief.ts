import type { CauseName } from "../scenario/index.ts";
import { causeNames } from "./causes.ts";
import type { Course } from "./course.ts";
import type { DepthShown } from "./dressing-words.ts";
import { type Place, places } from "./places.ts";

/** What shows without a look, as a belief takes note of it. */
export interface Shown {
	readonly atMin: number;
	/** `signBits` of the bedside. */
	readonly signs: number;
	readonly depth: DepthShown;
}

/**
 * How likely each kind of cause is, likeliest first, and that nothing is wrong now. A bleed that has stopped is still one:
 * it counts until a clinician has it.
 */
export interface Likelihoods {
	readonly causes: readonly {
		readonly cause: CauseName;
		readonly probability: number;
	}[];
	readonly nothing: number;
	/** Number of equally likely courses that this rests on: with few of them the probabilities are coarse. */
	readonly courses: number;
}

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
		const alarms = this.#note(
			(course) => alarmsOf(course.signs(course.row(atMin))) === standing,
		);
		const all = this.#note((course) => {
			const row = course.row(atMin);
			return (
				course.signs(row) === signs &&
				(course.depth(row, atMin) === "held") === held
			);
		});
		return alarms && all;
	}

	/** Takes note of what a look found. */
	find(place: Place, code: number, atMin: number): boolean {
		return this.#note(
			(course) => codeOf(course.findings(course.row(atMin)), place) === code,
		);
	}

	/** Takes note that help came at `atMin` and left the patient again: there is no bleed it would have seen to. */
	helpLeft(atMin: number): boolean {
		const bled = 1 << causeNames.indexOf("bleeding");
		return this.#note(
			(course) => (course.wrong(course.row(atMin)) & bled) === 0,
		);
	}

	/** The probability that a look at `place` that ends at `atMin` shows a cause. */
	chance(place: Place, atMin: number): number {
		return this.#share((course) => {
			const code = codeOf(course.findings(course.row(atMin)), place);
			return shows(place, code);
		});
	}

	at(atMin: number): Likelihoods {
		const causes = causeNames
			.map((cause, index) => ({
				cause,
				probability: this.#share(
					(course) => (course.wrong(course.row(atMin)) & (1 << index)) !== 0,
				),
			}))
			.filter(({ probability }) => probability > 0)
			.sort((a, b) => b.probability - a.probability);
		const nothing = this.#share(
			(course) => course.wrong(course.row(atMin)) === 0,
		);
		return { causes, nothing, courses: this.effectiveCourses };
	}

	/** Number of courses that equal weights would make as sure: 1 / Σ share². */
	get effectiveCourses(): number {
		const sum = this.#sum;
		return (
			1 / this.#weights.reduce((all, weight) => all + (weight / sum) ** 2, 0)
		);
	}

	/** The probability, before anything was seen, of all that has been seen. */
	get ofAllSeen(): number {
		return this.#sum;
	}

	get #sum(): number {
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
		const kept = this.#weights.map((weight, i) =>
			weight > 0 && fits(this.#courses[i]) ? weight : 0,
		);
		if (!kept.some((weight) => weight > 0)) return false;
		this.#weights = kept;
		return true;
	}
}

type Fits = (course: Course) => boolean;

/** One bit an alarm that stands, without the phase it was raised in. */
function alarmsOf(signs: number): number {
	let bits = 0;
	for (let i = 1; i < 9; i++)
		if (((signs >> (3 * i)) & 7) !== 0) bits |= 1 << i;
	return bits;
}

const codeOf = (findings: number, place: Place) =>
	(findings >> (2 * places.indexOf(place))) & 3;

/** Whether the number of a finding shows a cause; a look along the edge that can tell nothing is numbered 2. */
export const shows = (place: Place, code: number): boolean =>
	place === "edge" ? code === 1 : code > 0;
