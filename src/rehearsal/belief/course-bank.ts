import { Substream } from "../../engine/index.ts";
import { depthAfter } from "../../physics/index.ts";
import type { Deed } from "../../results/index.ts";
import type { Placed } from "../causes/cause.ts";
import { Bedside } from "../shift/bedside.ts";
import { causeCounts, drawSome, hazardsOf } from "../shift/draw-case.ts";
import { codesOf } from "../shift/findings.ts";
import { type Case, shiftOf } from "../shift/shift.ts";
import { type DepthShown, depthShown } from "../shift/view.ts";

/** Courses run for each kind of cause, and for two at once. */
export interface BankSize {
	readonly perCause: number;
	readonly pairs: number;
}

/** Enough for a debrief: a few hundred milliseconds. */
export const usualBank: BankSize = { perCause: 200, pairs: 400 };

/**
 * Possible courses of a shift, each with the probability it stands for: none wrong, one cause of each kind with its
 * moment spread evenly, two at once, and in all of them what the trainee did. The seed is fixed, so that the same dressing
 * gives the same bank.
 */
export function courseBank(of: Case, size: BankSize = usualBank, deeds: readonly Deed[] = []): Course[] {
	const shift = shiftOf(of);
	const bedside = new Bedside(shift);
	const course = (placed: readonly Placed[], weight: number) =>
		new Course(bedside, placed, shift.horizonMin, weight, deeds);
	if (size.perCause === 0 && size.pairs === 0) return [course([], 1)];
	const hazards = hazardsOf(of);
	const sum = hazards.reduce((all, { weight }) => all + weight, 0);
	if (sum === 0) return [course([], 1)];
	const courses = [course([], causeCounts.none)];
	hazards.forEach((hazard, index) => {
		const stream = new Substream("course bank", hazard.cause, index);
		const weight = (causeCounts.one * hazard.weight) / sum / size.perCause;
		for (let i = 0; i < size.perCause; i++)
			courses.push(course([hazard.draw(evenly(i, size.perCause, stream))], weight));
	});
	if (hazards.length === 1) return courses;
	const stream = new Substream("course bank", "pairs", 0);
	for (let i = 0; i < size.pairs; i++) {
		const pair = drawSome(2, hazards, () => stream.uniform());
		courses.push(course(pair, causeCounts.two / size.pairs));
	}
	return courses;
}

/** Uniform numbers, the first of which is the middle of the i-th of n equal parts. */
function evenly(i: number, n: number, stream: Substream): () => number {
	let first = true;
	return () => {
		if (!first) return stream.uniform();
		first = false;
		return (i + 0.5) / n;
	};
}

/** One possible course of a shift, tabled from event to event; depth runs in a curve between two of them. */
export class Course {
	/** Share of all courses that this one stands for. */
	readonly weight: number;
	readonly #rows: CourseRow[] = [];

	/** Runs the shift once, with the deeds done at their times. */
	constructor(bedside: Bedside, placed: readonly Placed[], horizonMin: number, weight: number, deeds: readonly Deed[]) {
		this.weight = weight;
		bedside.begin(placed);
		const steps = deeds.flatMap((deed) => bedside.stepsOf(deed));
		let taken = 0;
		for (let at = 0; at < horizonMin; ) {
			bedside.advance(at);
			while (taken < steps.length && steps[taken].atMin <= at) steps[taken++].take();
			this.#rows.push(rowAt(at, bedside));
			at = Math.min(bedside.nextTime, steps[taken]?.atMin ?? Number.POSITIVE_INFINITY);
		}
	}

	/** The row in force at `atMin`. */
	row(atMin: number): CourseRow {
		let [low, high] = [0, this.#rows.length - 1];
		while (low < high) {
			const middle = (low + high + 1) >> 1;
			if (this.#rows[middle].fromMin <= atMin) low = middle;
			else high = middle - 1;
		}
		return this.#rows[low];
	}
}

type CourseRow = ReturnType<typeof rowAt>;

/** What there is from an event on, until the next. */
const rowAt = (fromMin: number, bedside: Bedside) => ({
	fromMin,
	signs: bedside.signBits,
	findings: codesOf(bedside),
	wrong: bedside.wrongBits,
	/** Depth at the event, where it runs to, with which time constant, and the set depth. */
	depthMmHg: bedside.process.depthAt(fromMin),
	towards: bedside.process.air.towards,
	tau: bedside.process.air.tau,
	setMmHg: bedside.process.regimen.depthMmHg,
});

/** How depth shows at a time of the row. */
export function depthIn({ fromMin, depthMmHg, towards, tau, setMmHg }: CourseRow, atMin: number): DepthShown {
	const depth = tau === Number.POSITIVE_INFINITY ? depthMmHg : depthAfter(atMin - fromMin, depthMmHg, towards, tau);
	return depthShown(depth, setMmHg);
}
