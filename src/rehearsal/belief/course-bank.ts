import { Substream } from "../../engine/index.ts";
import type { Deed } from "../../results/index.ts";
import type { Hazard, Placed } from "../causes/cause.ts";
import { Bedside } from "../shift/bedside.ts";
import { causeCounts, hazardsOf, pick } from "../shift/draw-case.ts";
import { type Case, shiftOf } from "../shift/shift.ts";
import { Course } from "./course.ts";

/** Courses run for each kind of cause, and for two at once. */
export interface BankSize {
	readonly perCause: number;
	readonly pairs: number;
}

/** Enough for a debrief: a few hundred milliseconds. */
export const usualBank: BankSize = { perCause: 200, pairs: 400 };

/**
 * Possible courses of a shift, each with the probability it stands for: none wrong, one cause of each kind with its
 * moment spread evenly, two at once, and in all of them what the trainee did. The seed is fixed, so that the same dressing gives the same bank.
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
		for (let i = 0; i < size.perCause; i++)
			courses.push(
				course(
					[hazard.draw(evenly(i, size.perCause, stream))],
					(causeCounts.one * hazard.weight) / sum / size.perCause,
				),
			);
	});
	if (hazards.length === 1) return courses;
	const stream = new Substream("course bank", "pairs", 0);
	for (let i = 0; i < size.pairs; i++) courses.push(course(pair(hazards, stream), causeCounts.two / size.pairs));
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

function pair(hazards: readonly Hazard[], stream: Substream): Placed[] {
	const uniform = () => stream.uniform();
	const first = pick(hazards, uniform());
	const others = hazards.filter((_, index) => index !== first);
	return [hazards[first].draw(uniform), others[pick(others, uniform())].draw(uniform)];
}
