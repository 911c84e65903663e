import { dayMin, type WardScenario } from "../scenario/index.ts";
import { type OrderRule, WardRun, type WardTotals } from "../therapy/index.ts";
import { Histogram, type HistogramParts } from "./histogram.ts";
import { addTo, type Moments, noMoments } from "./moments.ts";
import { type SupplyLayout, supplyLayout } from "./supply-layout.ts";
import { Tally, type TallyParts } from "./tally.ts";
import { WardCounts } from "./ward-counts.ts";

/** Replications are summed in blocks of this many, which are merged by index. */
export const wardBlock = 5;

/** What a span of blocks comes to; plain data, fit for a thread or a file. */
export interface SupplyPart {
	readonly firstBlock: number;
	readonly replications: number;
	/** By block, then by place in the layout's measures. */
	readonly sums: readonly (readonly Moments[])[];
	readonly tallies: readonly TallyParts[];
	readonly measures: readonly HistogramParts[];
}

/** How many blocks a ward's replications make. */
export const wardBlocks = (ward: WardScenario): number =>
	Math.ceil(ward.replications / wardBlock);

interface Played {
	readonly run: WardRun;
	readonly counts: WardCounts;
}

/** Plays the replications of a ward and keeps what the answer needs of them; memory grows with items and days, not with replications. */
class SupplyCollector {
	readonly #ward: WardScenario;
	readonly #layout: SupplyLayout;
	readonly #tallies: readonly Tally[];
	readonly #measures: readonly Histogram[];
	readonly #main: Played;
	/** Today's mix and the policies, each with stores that lack nothing. */
	readonly #policies: readonly Played[];

	constructor(ward: WardScenario, rules: readonly OrderRule[]) {
		this.#ward = ward;
		this.#layout = supplyLayout(ward);
		this.#tallies = Array.from(
			{ length: this.#layout.tallies },
			() => new Tally(),
		);
		this.#measures = this.#layout.measures.map((width) => new Histogram(width));
		const today = ward.kinds.map(({ dressing }) => dressing);
		const played = (
			dressings: typeof today,
			orders: readonly OrderRule[] | null,
		): Played => {
			const counts = new WardCounts(ward, this.#layout);
			return { run: new WardRun(ward, dressings, orders, counts), counts };
		};
		this.#main = played(today, rules);
		this.#policies =
			ward.policies.length === 0
				? []
				: [today, ...ward.policies.map((policy) => [...policy.dressings])].map(
						(dressings) => played(dressings, null),
					);
	}

	/** Runs the blocks `first` … `last` − 1 and returns what they come to. */
	runBlocks(
		first: number,
		last: number,
		progress: (replications: number) => void = () => {},
	): SupplyPart {
		const sums: Moments[][] = [];
		let replications = 0;
		for (let block = first; block < last; block++) {
			const moments = this.#layout.measures.map(noMoments);
			const end = Math.min((block + 1) * wardBlock, this.#ward.replications);
			for (let r = block * wardBlock; r < end; r++) {
				this.#play(r, moments);
				replications++;
			}
			sums.push(moments);
			progress(replications);
		}
		return {
			firstBlock: first,
			replications,
			sums,
			tallies: this.#tallies.map((tally) => tally.parts()),
			measures: this.#measures.map((histogram) => histogram.parts()),
		};
	}

	#play(replication: number, moments: readonly Moments[]): void {
		const note = (place: number, value: number) => {
			this.#measures[place].add(value);
			addTo(moments[place], value);
		};
		const { run, counts } = this.#main;
		counts.reset();
		run.run(replication);
		const totals = since(counts.base, run.totals());
		this.#noteItems(this.#main, note);
		this.#noteBeds(counts, totals, note);
		this.#noteWaste(run, totals, note);
		this.#notePolicies(replication, note);
	}

	#noteItems({ run, counts }: Played, note: Note): void {
		const { items, days } = this.#layout;
		const tally = this.#tallies;
		items.forEach((places, item) => {
			const shelf = run.storeroom.shelves[item];
			const sum = new Int32Array(days);
			places.causes.forEach((cause, i) => {
				const daily = counts.demand[item][i];
				for (let day = 0; day < days; day++) sum[day] += daily[day];
				this.#noteSeries(cause, daily);
			});
			this.#noteSeries(places.demand, sum);
			let out = 0;
			let short = 0;
			for (let day = 0; day < days; day++) {
				short += counts.short[item][day];
				if (counts.short[item][day] > 0) out = 1;
				tally[places.onHand + day].add(counts.onHand[item][day]);
				tally[places.outOnDay + day].add(counts.short[item][day] > 0 ? 1 : 0);
				tally[places.outByDay + day].add(out);
			}
			tally[places.short].add(short);
			tally[places.substituted].add(counts.substitutes[item]);
			tally[places.ordered].add(counts.orders[item]);
			tally[places.received].add(shelf.received);
			tally[places.used].add(shelf.used);
			tally[places.expired].add(shelf.expired);
			tally[places.endStock].add(shelf.onHand);
			note(places.offHours, counts.offMin[item] / 60);
			note(places.ready, 1 - shelf.emptyMin / this.#ward.horizonMin);
		});
	}

	#noteSeries(
		places: {
			readonly total: number;
			readonly days: number;
			readonly weeks: number;
		},
		daily: Int32Array,
	): void {
		let total = 0;
		let week = 0;
		daily.forEach((pieces, day) => {
			total += pieces;
			week += pieces;
			this.#tallies[places.days + day].add(pieces);
			if (day % 7 === 6 || day === daily.length - 1) {
				this.#tallies[places.weeks + Math.floor(day / 7)].add(week);
				week = 0;
			}
		});
		this.#tallies[places.total].add(total);
	}

	#noteBeds(counts: WardCounts, totals: WardTotals, note: Note): void {
		const layout = this.#layout;
		const tally = this.#tallies;
		counts.inBed.forEach((patients, day) => {
			tally[layout.inBed + day].add(patients);
			tally[layout.waiting + day].add(counts.waiting[day]);
		});
		tally[layout.arrived].add(totals.arrived);
		tally[layout.begun].add(counts.begun);
		tally[layout.left].add(totals.left);
		tally[layout.turnedAway].add(totals.turnedAway);
		tally[layout.waited].add(counts.waits);
		note(layout.meanInBed, totals.therapyMin / this.#ward.horizonMin);
		note(
			layout.meanWait,
			counts.begun === 0 ? 0 : counts.waitMin / counts.begun,
		);
		note(layout.therapyDays, totals.therapyMin / dayMin);
		this.#ward.shifts.forEach((_, shift) => {
			note(layout.shifts + shift, this.#hoursOf(counts, shift));
		});
	}

	/** Hands-on hours of one whole shift: those of all such shifts, in proportion to their minutes. */
	#hoursOf(counts: WardCounts, shift: number): number {
		const { shifts } = this.#ward;
		const next = shifts[(shift + 1) % shifts.length].fromClockMin;
		const length =
			(next - shifts[shift].fromClockMin + dayMin) % dayMin || dayMin;
		const minutes = counts.shiftMin[shift];
		return minutes === 0
			? 0
			: (counts.shiftNurseMin[shift] * (length / minutes)) / 60;
	}

	#noteWaste(run: WardRun, totals: WardTotals, note: Note): void {
		const layout = this.#layout;
		const gone = this.#ward.stores.map((_, i) => {
			const { used, expired } = run.storeroom.shelves[i];
			return used + expired;
		});
		const sumOf = (of: (item: WardScenario["stores"][number]) => number) =>
			this.#ward.stores.reduce((sum, item, i) => sum + gone[i] * of(item), 0);
		const liquidMl = totals.toCanisterMl + totals.solutionWastedMl;
		note(layout.liquid, totals.toCanisterMl);
		note(layout.solution, totals.solutionWastedMl);
		// Liquid at 1 g/mL.
		note(
			layout.weight,
			(sumOf(({ weightG }) => weightG ?? 0) + liquidMl) / 1000,
		);
		note(
			layout.cost,
			sumOf(({ price }) => price ?? 0),
		);
	}

	#notePolicies(replication: number, note: Note): void {
		let today = { cost: 0, hours: 0 };
		this.#policies.forEach(({ run, counts }, i) => {
			const places = this.#layout.policies[i];
			counts.reset();
			run.run(replication);
			const totals = since(counts.base, run.totals());
			let cost = 0;
			this.#ward.stores.forEach(({ price }, item) => {
				const { used } = run.storeroom.shelves[item];
				this.#tallies[places.used + item].add(used);
				cost += used * (price ?? 0);
			});
			const hours = totals.nurseMin / 60;
			if (i === 0) today = { cost, hours };
			note(places.cost, cost);
			note(places.costDifference, cost - today.cost);
			note(places.nurseHours, hours);
			note(places.nurseHoursDifference, hours - today.hours);
		});
	}
}

type Note = (place: number, value: number) => void;

function since(base: WardTotals | null, now: WardTotals): WardTotals {
	if (base === null) return now;
	const entries = Object.entries(now) as [keyof WardTotals, number][]; // entries forgets the keys
	return Object.fromEntries(
		entries.map(([key, value]) => [key, value - base[key]]),
	) as unknown as WardTotals; // the same keys
}

/** Runs the blocks `first` … `last` − 1 of a ward. `progress` is told, after each block, how many replications are done. */
export function runWardBlocks(
	ward: WardScenario,
	rules: readonly OrderRule[],
	first: number,
	last: number,
	progress?: (replications: number) => void,
): SupplyPart {
	return new SupplyCollector(ward, rules).runBlocks(first, last, progress);
}
