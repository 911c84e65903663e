import type { WardScenario } from "../../../scenario/index.ts";
import { addTo, type Moments, noMoments, replicationsIn } from "../../../statistics/index.ts";
import { minutesADay } from "../../../vocabulary/index.ts";
import type { OrderRule } from "../../../ward/index.ts";
import { patientCounts, pieceCounts, type SupplyLayout } from "./layout.ts";
import { SupplyCounts, type SupplyPart, wardBlocked } from "./supply-part.ts";
import { playable } from "./ward-counts.ts";

type Played = ReturnType<ReturnType<typeof playable>>;

/** Plays the replications of a ward and keeps what the answer needs of them; memory grows with items and days, not with replications. */
class SupplyCollector extends SupplyCounts {
	readonly #ward: WardScenario;
	readonly #main: ReturnType<typeof playable>;
	/** Today's mix and the policies, each with stores that lack nothing. */
	readonly #policies: readonly ReturnType<typeof playable>[];
	/** Of the present block. */
	#moments: readonly Moments[] = [];

	constructor(ward: WardScenario, rules: readonly OrderRule[]) {
		super(ward);
		this.#ward = ward;
		this.#main = playable(ward, this.layout, rules);
		const policies = this.layout.policies.length === 0 ? [] : [undefined, ...ward.policies];
		this.#policies = policies.map((policy) => playable(ward, this.layout, null, policy && [...policy.dressings]));
	}

	/** Plays so many replications; their moments, by place in the layout's measures. */
	play(replications: readonly number[]): readonly Moments[] {
		this.#moments = this.layout.measures.map(noMoments);
		for (const replication of replications) this.#play(replication);
		return this.#moments;
	}

	#play(replication: number): void {
		const played = this.#main(replication);
		this.#noteItems(played);
		this.#noteBeds(played);
		this.#noteWaste(played);
		this.#notePolicies(replication);
	}

	#note(place: number, value: number): void {
		this.measures[place].add(value);
		addTo(this.#moments[place], value);
	}

	#noteItems({ shelves, seen }: Played): void {
		const { items, days } = this.layout;
		const tally = this.tallies;
		items.forEach((places, item) => {
			const { received, used, expired, onHand: endStock, emptyMin } = shelves[item];
			const sum = new Int32Array(days);
			places.causes.forEach((cause, i) => {
				const daily = seen.demand[item][i];
				for (let day = 0; day < days; day++) sum[day] += daily[day];
				this.#noteSeries(cause, daily);
			});
			this.#noteSeries(places.demand, sum);
			let out = 0;
			let short = 0;
			for (let day = 0; day < days; day++) {
				const shortToday = seen.short[item][day];
				short += shortToday;
				if (shortToday > 0) out = 1;
				tally[places.onHand + day].add(seen.onHand[item][day]);
				tally[places.outOnDay + day].add(shortToday > 0 ? 1 : 0);
				tally[places.outByDay + day].add(out);
			}
			const [substituted, ordered] = [seen.substitutes[item], seen.orders[item]];
			const pieces = { short, substituted, ordered, received, used, expired, endStock };
			for (const name of pieceCounts) tally[places[name]].add(pieces[name]);
			this.#note(places.offHours, seen.offMin[item] / 60);
			this.#note(places.ready, 1 - emptyMin / this.#ward.horizonMin);
		});
	}

	#noteSeries(places: SupplyLayout["items"][number]["demand"], daily: Int32Array): void {
		const tally = this.tallies;
		let total = 0;
		let week = 0;
		daily.forEach((pieces, day) => {
			total += pieces;
			week += pieces;
			tally[places.days + day].add(pieces);
			if (day % 7 === 6 || day === daily.length - 1) {
				tally[places.weeks + Math.floor(day / 7)].add(week);
				week = 0;
			}
		});
		tally[places.total].add(total);
	}

	#noteBeds({ seen, totals }: Played): void {
		const layout = this.layout;
		const tally = this.tallies;
		seen.inBed.forEach((patients, day) => {
			tally[layout.inBed + day].add(patients);
			tally[layout.waiting + day].add(seen.waiting[day]);
		});
		const patients = { ...totals, begun: seen.begun, waited: seen.waits };
		for (const name of patientCounts) tally[layout[name]].add(patients[name]);
		this.#note(layout.meanInBed, totals.therapyMin / this.#ward.horizonMin);
		this.#note(layout.meanWait, seen.begun === 0 ? 0 : seen.waitMin / seen.begun);
		this.#note(layout.therapyDays, totals.therapyMin / minutesADay);
		this.#ward.shifts.forEach((_, shift) => {
			this.#note(layout.shifts + shift, this.#hoursOf(seen, shift));
		});
	}

	/** Hands-on hours of one whole shift: those of all such shifts, in proportion to their minutes. */
	#hoursOf(seen: Played["seen"], shift: number): number {
		const { shifts } = this.#ward;
		const next = shifts[(shift + 1) % shifts.length].fromClockMin;
		const length = (next - shifts[shift].fromClockMin + minutesADay) % minutesADay || minutesADay;
		const minutes = seen.shiftMin[shift];
		return minutes === 0 ? 0 : (seen.shiftNurseMin[shift] * (length / minutes)) / 60;
	}

	#noteWaste({ shelves, totals }: Played): void {
		const { liquid, solution, weight, cost } = this.layout;
		const sumOf = (of: (item: WardScenario["stores"][number]) => number | null) =>
			this.#ward.stores.reduce((sum, item, i) => sum + (shelves[i].used + shelves[i].expired) * (of(item) ?? 0), 0);
		this.#note(liquid, totals.toCanisterMl);
		this.#note(solution, totals.solutionWastedMl);
		// Liquid at 1 g/mL.
		const weightG = sumOf((item) => item.weightG) + (totals.toCanisterMl + totals.solutionWastedMl);
		this.#note(weight, weightG / 1000);
		const price = sumOf((item) => item.price);
		this.#note(cost, price);
	}

	#notePolicies(replication: number): void {
		let today = { cost: 0, hours: 0 };
		this.#policies.forEach((play, i) => {
			const places = this.layout.policies[i];
			const { shelves, totals } = play(replication);
			let cost = 0;
			this.#ward.stores.forEach(({ price }, item) => {
				const { used } = shelves[item];
				this.tallies[places.used + item].add(used);
				cost += used * (price ?? 0);
			});
			const hours = totals.nurseMin / 60;
			if (i === 0) today = { cost, hours };
			this.#note(places.cost, cost);
			this.#note(places.costDifference, cost - today.cost);
			this.#note(places.nurseHours, hours);
			this.#note(places.nurseHoursDifference, hours - today.hours);
		});
	}
}

/** Runs the blocks `first` … `last` − 1 of a ward. `progress` is told, after each block, how many replications are done. */
export function runWardBlocks(
	ward: WardScenario,
	rules: readonly OrderRule[],
	first: number,
	last: number,
	progress: (replications: number) => void = () => {},
): SupplyPart {
	const collector = new SupplyCollector(ward, rules);
	const sums: (readonly Moments[])[] = [];
	let replications = 0;
	for (let block = first; block < last; block++) {
		const played = replicationsIn(block, wardBlocked(ward));
		sums.push(collector.play(played));
		replications += played.length;
		progress(replications);
	}
	return { firstBlock: first, replications, sums, ...collector.parts() };
}
