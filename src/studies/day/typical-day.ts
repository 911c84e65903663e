/** Replications among which the typical day is looked for. */
export const mostLookedAt = 400;

/** What is followed of a dressing through a day: content of the canister, exudate so far, alarms so far. */
const courses = 3;

/**
 * The courses of one replication of one dressing: canister content, exudate that has come (mL) and alarms so far, each
 * at the same equal steps, one course after the other.
 */
export class Courses {
	readonly values: Float64Array;
	readonly #points: number;
	#alarms: readonly number[] = [];
	#past = 0;

	constructor(points: number) {
		this.#points = points;
		this.values = new Float64Array(courses * points);
	}

	/** Alarm times in rising order; the list may still grow. */
	begin(alarms: readonly number[]): void {
		this.#alarms = alarms;
		this.#past = 0;
	}

	note(point: number, atMin: number, canisterMl: number, exudateMl: number): void {
		while (this.#past < this.#alarms.length && this.#alarms[this.#past] <= atMin) this.#past++;
		this.values[point] = canisterMl;
		this.values[this.#points + point] = exudateMl;
		this.values[2 * this.#points + point] = this.#past;
	}
}

/**
 * Which of several days lies nearest the median: for every course the area between it and the course of the medians, in
 * units of the mean such area, added up over courses and owners (dressings, under every regimen). A day is what its
 * owners gave. The first of equals; 0 where nothing varies.
 */
export function nearestToMedian(days: readonly (readonly Float64Array[])[]): number {
	const [first] = days;
	if (first === undefined) return 0;
	const distance = new Float64Array(days.length);
	first.forEach(({ length }, owner) => {
		const points = length / courses;
		for (let course = 0; course < courses; course++) {
			const areas = new Float64Array(days.length);
			const column = new Float64Array(days.length);
			for (let at = course * points; at < (course + 1) * points; at++) {
				for (let day = 0; day < days.length; day++) column[day] = days[day][owner][at];
				const median = medianOf(column);
				for (let day = 0; day < days.length; day++) areas[day] += Math.abs(days[day][owner][at] - median);
			}
			const mean = areas.reduce((sum, area) => sum + area, 0) / days.length;
			// Areas of rounding alone tell nothing apart.
			if (mean > 1e-9) for (let day = 0; day < days.length; day++) distance[day] += areas[day] / mean;
		}
	});
	let nearest = 0;
	for (let day = 1; day < days.length; day++) if (distance[day] < distance[nearest]) nearest = day;
	return nearest;
}

function medianOf(values: Float64Array): number {
	const sorted = values.toSorted();
	const half = sorted.length >> 1;
	return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}
