import type { WardScenario } from "../../../scenario/index.ts";
import {
	addTo,
	FrequencyTable,
	Histogram,
	type Moments,
	mergeEach,
	noMoments,
	partsOf,
	replicationsIn,
} from "../../../statistics/index.ts";
import { minutesADay, minutesAWeek } from "../../../vocabulary/index.ts";
import { supplyLayout } from "../run/layout.ts";
import { wardBlock, wardBlocked } from "../run/supply-part.ts";
import { type SearchPlan, searchedMin } from "./rule-plan.ts";
import { tryShelf } from "./shelf-trial.ts";
import { countBefore, type Demand, demandOf } from "./ward-demand.ts";

/** Blocks take turns in two halves; a half has this many groups, whose differences tell how sure a sum is. */
export const groupsPerHalf = 16;
export const searchGroups = 2 * groupsPerHalf;

/** Even blocks are of the first half, odd ones of the second; within it groups take turns. */
export const groupOf = (block: number): number => (block % 2) * groupsPerHalf + (Math.floor(block / 2) % groupsPerHalf);

/** What a search adds up over all of its blocks: it merges exactly, in any order. */
export class SearchSums {
	/** Seconds of demand that each group has been tried with. */
	readonly seconds = Array.from({ length: searchGroups }, () => 0);
	/** By item, then by group; never filled for an item of unlimited stock. */
	readonly net: readonly (readonly FrequencyTable[])[];
	/** By item, pieces asked for on each day. */
	readonly daily: readonly FrequencyTable[];
	/** By item, pieces used in the time shown, one value a replication. */
	readonly used: readonly FrequencyTable[];
	readonly costs: Histogram;

	constructor(ward: WardScenario) {
		this.net = ward.stores.map(() => this.seconds.map(() => new FrequencyTable()));
		this.daily = ward.stores.map(() => new FrequencyTable());
		this.used = ward.stores.map(() => new FrequencyTable());
		const layout = supplyLayout(ward);
		this.costs = new Histogram(layout.measures[layout.cost]);
	}

	merge(parts: Readonly<ReturnType<SearchSums["parts"]>>): void {
		parts.seconds.forEach((seconds, group) => {
			this.seconds[group] += seconds;
		});
		parts.net.forEach((groups, item) => {
			mergeEach(this.net[item], groups);
		});
		mergeEach(this.daily, parts.daily);
		mergeEach(this.used, parts.used);
		this.costs.merge(parts.costs);
	}

	parts() {
		return {
			seconds: this.seconds,
			net: this.net.map(partsOf),
			daily: partsOf(this.daily),
			used: partsOf(this.used),
			costs: this.costs.parts(),
		};
	}
}

/** What a span of blocks adds to the search for order rules; plain data, fit for a thread. */
export interface SearchPart extends Readonly<ReturnType<SearchSums["parts"]>> {
	readonly firstBlock: number;
	readonly replications: number;
	/** Cost of a replication, by block. */
	readonly cost: readonly Moments[];
	/** Demand that is kept whole: by replication from the first of the blocks on, then by item. */
	readonly courses: Demand;
}

/** A shelf is played for so long before its minutes count, at the most; whole weeks, as days of the week go on. */
const leadInMin = 12 * minutesAWeek;

/** The `n`-th number between 0 and 1 of van der Corput's sequence (1935): as even as a growing list can be. */
export function evenly(n: number): number {
	let at = 0;
	for (let rest = n, part = 0.5; rest > 0; rest = Math.floor(rest / 2)) {
		at += part * (rest % 2);
		part /= 2;
	}
	return at;
}

/** Takes in blocks of demand and adds up what a search needs of them; memory does not grow with replications. */
export class SearchCollector extends SearchSums {
	readonly #ward: WardScenario;
	readonly #plan: SearchPlan;
	readonly #first: number;
	readonly #cost: Moments[] = [];
	readonly #courses: (readonly Float64Array[])[] = [];
	/** By item, pieces that expired in all trials. */
	readonly expired: number[];

	constructor(ward: WardScenario, plan: SearchPlan, firstBlock: number) {
		super(ward);
		this.#ward = ward;
		this.#plan = plan;
		this.#first = firstBlock;
		this.expired = ward.stores.map(() => 0);
	}

	/** The next block: demand of its replications, by item. */
	add(courses: Demand): void {
		const block = this.#first + this.#cost.length;
		const spanMin = searchedMin(this.#ward);
		const moments = noMoments();
		courses.forEach((items, i) => {
			if (block * wardBlock + i < this.#plan.kept) this.#courses.push(items);
			let cost = 0;
			this.#ward.stores.forEach(({ price }, item) => {
				const used = countBefore(items[item], this.#ward.horizonMin);
				this.used[item].add(used);
				cost += used * (price ?? 0);
			});
			this.costs.add(cost);
			addTo(moments, cost);
		});
		this.#cost.push(moments);
		const endMin = courses.length * spanMin;
		const group = groupOf(block);
		this.seconds[group] += Math.round(endMin * 60);
		this.#ward.stores.forEach((_, item) => {
			const times = chained(courses, item, spanMin);
			this.#countDays(times, endMin, item);
			this.#play(times, endMin, item, block);
		});
	}

	part(): SearchPart {
		return {
			firstBlock: this.#first,
			replications: this.#cost.reduce((sum, { count }) => sum + count, 0),
			...this.parts(),
			cost: this.#cost,
			courses: this.#courses,
		};
	}

	#countDays(times: Float64Array, endMin: number, item: number): void {
		const counts = new Int32Array(Math.max(1, Math.round(endMin / minutesADay)));
		for (const at of times) counts[Math.floor(at / minutesADay)]++;
		for (const count of counts) this.daily[item].add(count);
	}

	/**
	 * Plays a block on one shelf. Before it counts, the end of the block is played, and the shelf begins with as much as
	 * comes next in an even sequence: a shelf that always begins full would look better than one in the middle of its weeks.
	 */
	#play(times: Float64Array, endMin: number, place: number, block: number): void {
		const plan = this.#plan.items[place];
		if (plan === null) return;
		const { quantity, levels } = plan;
		const item = this.#ward.stores[place];
		const leadIn = endMin % minutesAWeek === 0 ? Math.min(endMin, leadInMin) : endMin;
		const from = countBefore(times, endMin - leadIn);
		const before = times.subarray(from).map((at) => at - (endMin - leadIn));
		const timesMin = [...before, ...times.map((at) => at + leadIn)];
		const course = { timesMin, endMin: endMin + leadIn };
		const begins = quantity - Math.floor(quantity * evenly(Math.floor(block / 2)));
		const tally = this.net[place][groupOf(block)];
		const seed = this.#ward.chance ? `${this.#ward.seed}: levels` : null;
		const play = (reorder: number, shelfMin: number | null, count: (pieces: number, seconds: number) => void) => {
			const net = (pieces: number, fromMin: number, toMin: number) => {
				if (toMin <= leadIn) return;
				// Whole seconds of the clock, so that spans add up exactly in any order.
				const seconds = Math.round((toMin - leadIn) * 60) - Math.round((Math.max(fromMin, leadIn) - leadIn) * 60);
				if (seconds > 0) count(pieces, seconds);
			};
			const rule = { reorder, upTo: reorder + quantity };
			const stocked = { ...item, stock: reorder + begins, shelfMin };
			return tryShelf(stocked, rule, this.#ward, course, seed, { run: block, net });
		};
		if (levels === null) play(0, null, (pieces, seconds) => tally.add(pieces, seconds));
		else
			for (const level of levels) {
				const { shelf } = play(level, item.shelfMin, (pieces, seconds) => {
					if (pieces > 0) tally.add(level, seconds);
				});
				this.expired[place] += shelf.expired;
			}
	}
}

/** The demand of one item in replications that follow each other. */
function chained(courses: Demand, item: number, spanMin: number): Float64Array {
	const within = courses.map((items) => items[item].subarray(0, countBefore(items[item], spanMin)));
	const times = new Float64Array(within.reduce((sum, { length }) => sum + length, 0));
	let at = 0;
	within.forEach((part, i) => {
		for (const time of part) times[at++] = time + i * spanMin;
	});
	return times;
}

/** Searches the blocks `first` … `last` − 1 of a ward. `progress` is told, after each block, how many replications are done. */
export function searchBlocks(
	ward: WardScenario,
	plan: SearchPlan,
	first: number,
	last: number,
	progress: (replications: number) => void = () => {},
): SearchPart {
	const demand = demandOf(ward, plan.tailMin);
	const collector = new SearchCollector(ward, plan, first);
	let done = 0;
	for (let block = first; block < last; block++) {
		const courses = replicationsIn(block, wardBlocked(ward)).map((replication) => demand(replication).timesMin);
		collector.add(courses);
		done += courses.length;
		progress(done);
	}
	return collector.part();
}
