import type { Scenario } from "../../scenario/index.ts";
import { clockOf, type DressingProcess, isNight, type Observer, type TherapyDay } from "../../therapy/index.ts";
import {
	avoidedTimes,
	type Condition,
	callsNurse,
	conditions,
	measureFact,
	measureNames,
	placeOf,
	totalNames,
} from "../../vocabulary/index.ts";
import { priceOf } from "../day/supplies.ts";
import { totalsOf } from "../trace/totals.ts";

/** Two calls for one patient within this time could have been one errand. */
const togetherMin = 15;
const shiftMin = 720;
const firstShiftClock = 420;

/** The owners of measures: every dressing, and all of them together where there are several. */
export function ownersOf(scenario: Scenario): string[] {
	const ids = scenario.dressings.map((dressing) => dressing.id);
	return ids.length > 1 ? [...ids, "all"] : ids;
}

/** Watches one replication after another and gives every measure of it, for every owner. */
export class MeasureReader implements Observer {
	/** Row by row: the measures of the first owner, of the second, … */
	readonly values: Float64Array;
	readonly #scenario: Scenario;
	readonly #alarms: Int32Array[];
	readonly #byDay: Int32Array;
	readonly #byNight: Int32Array;
	readonly #avoided: Int32Array[];
	readonly #calls: number[][];
	readonly #firstChange: Float64Array;
	readonly #firstFull: Float64Array;
	readonly #firstShiftEnd: number;

	constructor(scenario: Scenario) {
		const owners = ownersOf(scenario).length;
		const { dressings, startClockMin } = scenario;
		this.#scenario = scenario;
		this.values = new Float64Array(owners * measureNames.length);
		this.#alarms = dressings.map(() => new Int32Array(conditions.length));
		this.#byDay = new Int32Array(dressings.length);
		this.#byNight = new Int32Array(dressings.length);
		this.#avoided = dressings.map(() => new Int32Array(avoidedTimes.length));
		this.#calls = dressings.map(() => []);
		this.#firstChange = new Float64Array(dressings.length);
		this.#firstFull = new Float64Array(dressings.length);
		this.#firstShiftEnd = shiftMin - (clockOf(startClockMin - firstShiftClock) % shiftMin);
	}

	begin(): void {
		for (const counts of this.#alarms) counts.fill(0);
		for (const counts of this.#avoided) counts.fill(0);
		for (const calls of this.#calls) calls.length = 0;
		this.#byDay.fill(0);
		this.#byNight.fill(0);
		this.#firstChange.fill(this.#scenario.horizonMin);
		this.#firstFull.fill(Number.POSITIVE_INFINITY);
	}

	/** Works the measures of the replication out that has just been run. */
	read(day: TherapyDay): Float64Array {
		const { dressings } = this.#scenario;
		dressings.forEach((_, index) => {
			this.#ofDressing(index, day.processes[index]);
		});
		if (dressings.length > 1) this.#ofAll();
		return this.values;
	}

	#ofDressing(index: number, process: DressingProcess): void {
		const { values } = this;
		const at = index * measureNames.length;
		const totals = totalsOf(process, this.#scenario.horizonMin);
		totalNames.forEach((name, i) => {
			values[at + i] = totals[name];
		});
		conditions.forEach((_, i) => {
			values[at + places.alarms + i] = this.#alarms[index][i];
		});
		values[at + places.byDay] = this.#byDay[index];
		values[at + places.byNight] = this.#byNight[index];
		avoidedTimes.forEach((_, i) => {
			values[at + places.avoided + i] = this.#avoided[index][i];
		});
		values[at + places.together] = this.#together(index);
		values[at + places.firstChange] = this.#firstChange[index];
		values[at + places.lastsShift] = this.#firstFull[index] < this.#firstShiftEnd ? 0 : 1;
		values[at + places.cost] = priceOf(this.#scenario, index, process);
	}

	/** Sums; means of shares; the soonest canister. */
	#ofAll(): void {
		const { values } = this;
		const count = this.#scenario.dressings.length;
		const all = count * measureNames.length;
		for (let i = 0; i < measureNames.length; i++) {
			let sum = 0;
			let least = Number.POSITIVE_INFINITY;
			for (let index = 0; index < count; index++) {
				const value = values[index * measureNames.length + i];
				sum += value;
				if (value < least) least = value;
			}
			values[all + i] = adds[i] ? sum : i === places.share ? sum / count : least;
		}
	}

	/** Calls of a dressing that come close to one for another dressing of the same patient. */
	#together(index: number): number {
		const { dressings } = this.#scenario;
		if (dressings.length < 2) return 0;
		let close = 0;
		for (const call of this.#calls[index]) {
			const met = this.#calls.some(
				(others, other) =>
					other !== index &&
					dressings[other].patient === dressings[index].patient &&
					others.some((at) => Math.abs(at - call) <= togetherMin),
			);
			if (met) close++;
		}
		return close;
	}

	alarmStarts(index: number, condition: Condition, at: number): void {
		this.#alarms[index][conditions.indexOf(condition)]++;
		const clock = this.#scenario.startClockMin + at;
		if (isNight(clock)) this.#byNight[index]++;
		else this.#byDay[index]++;
		if (condition === "canister-at-capacity") this.#firstFull[index] = Math.min(this.#firstFull[index], at);
		if (!callsNurse(condition)) return;
		this.#calls[index].push(at);
		const { avoid } = this.#scenario.care;
		avoidedTimes.forEach((time, i) => {
			if (avoid[time].some((span) => within(clockOf(clock), span))) this.#avoided[index][i]++;
		});
	}

	canisterChange(index: number, _reason: unknown, at: number): void {
		this.#firstChange[index] = Math.min(this.#firstChange[index], at);
	}

	span(): void {}

	phase(): void {}

	pause(): void {}

	notice(): void {}

	alarmEnds(): void {}

	sourceChange(): void {}

	offSuction(): void {}

	breach(): void {}
}

/** Whether the values of several dressings add up, by place. */
const adds = measureNames.map((name) => measureFact(name).adds);

/** Where each measure stands among those of an owner. */
const places = {
	share: placeOf("meanExudateShare"),
	alarms: placeOf(`alarms.${conditions[0]}`),
	byDay: placeOf("alarmsByDay"),
	byNight: placeOf("alarmsByNight"),
	avoided: placeOf(`callsIn.${avoidedTimes[0]}`),
	together: placeOf("callsTogether"),
	firstChange: placeOf("firstCanisterChangeMin"),
	lastsShift: placeOf("canisterLastsShift"),
	cost: placeOf("cost"),
};

/** Whether a time of the day lies in a stretch of it, which may run over midnight. */
function within(clockMin: number, { fromMin, toMin }: { readonly fromMin: number; readonly toMin: number }): boolean {
	return fromMin < toMin ? clockMin >= fromMin && clockMin < toMin : clockMin >= fromMin || clockMin < toMin;
}
