import type { Scenario } from "../scenario/index.ts";
import {
	type CanisterReason,
	type Condition,
	conditions,
	type DressingProcess,
	nextClock,
	type Observer,
	type Phase,
	type SourceReason,
	type TherapyDay,
} from "../therapy/index.ts";
import { Histogram, type HistogramParts } from "./histogram.ts";
import { addTo, type Moments, noMoments } from "./moments.ts";
import { mostWithin, type Spell } from "./off-spells.ts";
import {
	homeItems,
	needsOf,
	type SupplyItem,
	supplyItems,
} from "./supplies.ts";
import { totalBins, totalNames, totalsOf } from "./totals.ts";
import { Courses, mostLookedAt } from "./typical-day.ts";

/** Replications are summed in blocks of this many; block k holds replications k·size … (k + 1)·size − 1. */
export const blockSize = 50;
export const halfHourMin = 30;
/** Canister and source changes are followed one by one up to this ordinal, fills up to another. */
const ordinals = 64;
const fillOrdinals = 512;

/** Minutes between the points at which the content of the canister is sampled. */
export function levelStep(horizonMin: number): number {
	return Math.max(halfHourMin, Math.ceil(horizonMin / 96));
}

/** Minutes from the start of every round after it, within the horizon. */
export function roundTimes({
	care,
	startClockMin,
	horizonMin,
}: Pick<Scenario, "care" | "startClockMin" | "horizonMin">): number[] {
	const times: number[] = [];
	const next = (from: number) =>
		nextClock(from, startClockMin, care.roundsClockMin);
	// A round is at a whole minute, and the next one at least a minute later.
	for (let at = next(0); at < horizonMin; at = next(at + 1))
		if (at > 0) times.push(at);
	return times;
}

/** Sums of one block: the moments of every total, and of the alarms of each condition, for each dressing. */
export interface BlockSums {
	readonly totals: readonly (readonly Moments[])[];
	readonly alarms: readonly (readonly Moments[])[];
	/** Of the alarms that nothing listed brings. */
	readonly byChance: readonly (readonly Moments[])[];
}

/** Counts of any number of replications of one dressing: they merge exactly, in any order. */
interface DressingCounts {
	readonly totals: readonly HistogramParts[];
	readonly canisterChanges: readonly HistogramParts[];
	readonly sourceChanges: readonly HistogramParts[];
	readonly canisterNeeds: readonly HistogramParts[];
	readonly fills: readonly HistogramParts[];
	readonly levels: readonly HistogramParts[];
	readonly rounds: readonly HistogramParts[];
	readonly atEnd: readonly HistogramParts[];
	/** By condition, then half-hour: replications in which such an alarm starts in it. */
	readonly alarmBins: readonly Int32Array[];
	/** The same of those that nothing listed brings. */
	readonly chanceBins: readonly Int32Array[];
	/** Replications with more time off suction than the caution allows. */
	readonly offTooLong: number;
}

export interface RunPart {
	readonly firstBlock: number;
	readonly replications: number;
	readonly blocks: readonly BlockSums[];
	readonly dressings: readonly DressingCounts[];
	readonly supplies: readonly HistogramParts[];
	/** Of what is sent home; empty where nobody goes. */
	readonly home: readonly HistogramParts[];
	/** The courses of those of the first replications that are in this part, by dressing. */
	readonly courses: readonly {
		readonly replication: number;
		readonly dressings: readonly Float64Array[];
	}[];
}

class DressingCollector {
	readonly totals = totalNames.map((name) => new Histogram(totalBins[name]));
	readonly canisterChanges: Histogram[] = [];
	readonly sourceChanges: Histogram[] = [];
	readonly canisterNeeds: Histogram[] = [];
	readonly fills: Histogram[] = [];
	readonly levels: Histogram[];
	readonly rounds: Histogram[];
	readonly atEnd = new Histogram(1);
	readonly alarms: AlarmStarts;
	readonly byChance: AlarmStarts;
	/** Times of the alarms of the present replication. */
	readonly alarmTimes: number[] = [];
	spells: Spell[] = [];
	offTooLong = 0;
	canisters = 0;
	sources = 0;
	needs = 0;
	/** The canister is at capacity. */
	full = false;
	filled = 0;
	nextSample = 0;
	nextRound = 0;
	/** Followed in the first replications only. */
	courses: Courses | null = null;
	/** Changes in the days at home. */
	readonly atHome = { canister: 0, source: 0, kit: 0 };

	constructor(horizonMin: number, rounds: number) {
		const bins = Math.ceil(horizonMin / halfHourMin);
		this.levels = Array.from(
			{ length: Math.floor(horizonMin / levelStep(horizonMin)) + 1 },
			() => new Histogram(1),
		);
		this.rounds = Array.from({ length: rounds }, () => new Histogram(1));
		this.alarms = new AlarmStarts(bins);
		this.byChance = new AlarmStarts(bins);
	}
}

/** Starts of alarms by condition: how many in a replication, and in how many replications one falls into a half-hour. */
class AlarmStarts {
	readonly bins: Int32Array[];
	readonly count = new Int32Array(conditions.length);
	readonly #lastIn: Int32Array[];

	constructor(bins: number) {
		this.bins = conditions.map(() => new Int32Array(bins));
		this.#lastIn = conditions.map(() => new Int32Array(bins).fill(-1));
	}

	note(condition: number, bin: number, replication: number): void {
		this.count[condition]++;
		if (this.#lastIn[condition][bin] === replication) return;
		this.#lastIn[condition][bin] = replication;
		this.bins[condition][bin]++;
	}
}

/** Takes in replications and keeps what the projection needs of them; memory does not grow with their number. */
export class Collector implements Observer {
	readonly #scenario: Scenario;
	readonly #step: number;
	/** Times of the rounds that a content is looked up for. */
	readonly #rounds: readonly number[];
	readonly #dressings: readonly DressingCollector[];
	readonly #items: readonly SupplyItem[];
	readonly #supplies: readonly Histogram[];
	readonly #homeItems: readonly SupplyItem[];
	readonly #home: readonly Histogram[];
	#replication = 0;

	constructor(scenario: Scenario) {
		this.#scenario = scenario;
		this.#step = levelStep(scenario.horizonMin);
		this.#rounds = roundTimes(scenario);
		this.#dressings = scenario.dressings.map(
			() => new DressingCollector(scenario.horizonMin, this.#rounds.length),
		);
		this.#items = supplyItems(scenario);
		this.#supplies = this.#items.map(() => new Histogram(1));
		this.#homeItems = homeItems(scenario);
		this.#home = this.#homeItems.map(() => new Histogram(1));
	}

	/** Runs the blocks `first` … `last` − 1 and returns what they come to. */
	runBlocks(
		day: TherapyDay,
		first: number,
		last: number,
		progress: (replications: number) => void = () => {},
	): RunPart {
		const blocks: BlockSums[] = [];
		const courses: RunPart["courses"][number][] = [];
		let replications = 0;
		for (let block = first; block < last; block++) {
			const sums: BlockSums = {
				totals: this.#dressings.map(() => totalNames.map(noMoments)),
				alarms: this.#dressings.map(() => conditions.map(noMoments)),
				byChance: this.#dressings.map(() => conditions.map(noMoments)),
			};
			const end = Math.min(
				(block + 1) * blockSize,
				this.#scenario.replications,
			);
			for (
				let replication = block * blockSize;
				replication < end;
				replication++
			) {
				this.#begin(replication);
				day.run(replication, this);
				this.#end(day, sums);
				replications++;
				if (replication < mostLookedAt)
					courses.push({
						replication,
						dressings: this.#dressings.flatMap(
							(dressing) => dressing.courses?.values ?? [],
						),
					});
			}
			blocks.push(sums);
			progress(replications);
		}
		return {
			firstBlock: first,
			replications,
			blocks,
			dressings: this.#dressings.map(countsOf),
			supplies: this.#supplies.map((histogram) => histogram.parts()),
			home: this.#home.map((histogram) => histogram.parts()),
			courses,
		};
	}

	#begin(replication: number): void {
		this.#replication = replication;
		for (const dressing of this.#dressings) {
			dressing.alarms.count.fill(0);
			dressing.byChance.count.fill(0);
			dressing.alarmTimes.length = 0;
			dressing.courses =
				replication < mostLookedAt ? new Courses(dressing.levels.length) : null;
			dressing.courses?.begin(dressing.alarmTimes);
			dressing.spells.length = 0;
			dressing.canisters = 0;
			dressing.sources = 0;
			dressing.needs = 0;
			dressing.full = false;
			dressing.filled = 0;
			dressing.nextSample = 0;
			dressing.nextRound = 0;
			dressing.atHome.canister = 0;
			dressing.atHome.source = 0;
			dressing.atHome.kit = 0;
		}
	}

	#end(day: TherapyDay, sums: BlockSums): void {
		const { horizonMin, constants } = this.#scenario;
		day.processes.forEach((process, index) => {
			const dressing = this.#dressings[index];
			// The last span ends with the horizon: a sample that falls on it is still to be taken.
			if (dressing.nextSample < dressing.levels.length)
				this.#sample(dressing, process, horizonMin);
			dressing.atEnd.add(process.liquid.canister);
			const totals = totalsOf(process, horizonMin);
			totalNames.forEach((name, i) => {
				dressing.totals[i].add(totals[name]);
				addTo(sums.totals[index][i], totals[name]);
			});
			conditions.forEach((_, i) => {
				addTo(sums.alarms[index][i], dressing.alarms.count[i]);
				addTo(sums.byChance[index][i], dressing.byChance.count[i]);
			});
			if (
				process.off.minutes > constants["off.caution"] &&
				mostWithin(dressing.spells, 1440) > constants["off.caution"]
			)
				dressing.offTooLong++;
		});
		this.#items.forEach((item, i) => {
			this.#supplies[i].add(needsOf(item, day));
		});
		this.#homeItems.forEach(({ kind, dressings }, i) => {
			// The dressing that is worn goes along; a fresh canister and a source do too.
			const first = kind === "kit" ? 0 : 1;
			this.#home[i].add(
				dressings.reduce(
					(sum, index) =>
						sum +
						first +
						(kind === "line" || kind === "port"
							? 0
							: this.#dressings[index].atHome[kind]),
					0,
				),
			);
		});
	}

	span(
		index: number,
		process: DressingProcess,
		_start: number,
		end: number,
	): void {
		const dressing = this.#dressings[index];
		while (
			dressing.nextSample * this.#step < end &&
			dressing.nextSample < dressing.levels.length
		)
			this.#sample(dressing, process, dressing.nextSample * this.#step);
		// Just before the round: a span that ends with it comes before what is done at it.
		while (this.#rounds[dressing.nextRound] <= end) {
			const at = this.#rounds[dressing.nextRound];
			dressing.rounds[dressing.nextRound++].add(process.canisterAt(at));
		}
	}

	#sample(
		dressing: DressingCollector,
		process: DressingProcess,
		atMin: number,
	): void {
		const point = dressing.nextSample++;
		const canisterMl = process.canisterAt(atMin);
		dressing.levels[point].add(canisterMl);
		dressing.courses?.note(point, atMin, canisterMl, process.exudateAt(atMin));
	}

	phase(index: number, phase: Phase, start: number): void {
		if (phase === "change") this.#noteHome(index, "kit", start);
		if (phase === "fill") {
			const dressing = this.#dressings[index];
			note(dressing.fills, dressing.filled++, start, fillOrdinals);
		}
	}

	#noteHome(
		index: number,
		kind: "canister" | "source" | "kit",
		at: number,
	): void {
		const { home } = this.#scenario;
		if (home !== null && at >= home.fromMin && at < home.fromMin + home.forMin)
			this.#dressings[index].atHome[kind]++;
	}

	pause(): void {}

	notice(): void {}

	alarmStarts(
		index: number,
		condition: Condition,
		at: number,
		listed: boolean,
	): void {
		const dressing = this.#dressings[index];
		const i = conditions.indexOf(condition);
		const bin = Math.floor(at / halfHourMin);
		dressing.alarmTimes.push(at);
		dressing.alarms.note(i, bin, this.#replication);
		if (!listed) dressing.byChance.note(i, bin, this.#replication);
		if (condition === "canister-at-capacity") {
			dressing.full = true;
			note(dressing.canisterNeeds, dressing.needs++, at);
		}
	}

	alarmEnds(): void {}

	canisterChange(
		index: number,
		reason: CanisterReason,
		at: number,
		due: number,
	): void {
		const dressing = this.#dressings[index];
		if (!dressing.full && reason === "round")
			note(dressing.canisterNeeds, dressing.needs++, due);
		dressing.full = false;
		note(dressing.canisterChanges, dressing.canisters++, at);
		this.#noteHome(index, "canister", at);
	}

	sourceChange(index: number, _reason: SourceReason, at: number): void {
		const dressing = this.#dressings[index];
		note(dressing.sourceChanges, dressing.sources++, at);
		this.#noteHome(index, "source", at);
	}

	offSuction(index: number, start: number, end: number): void {
		this.#dressings[index].spells.push({ start, end });
	}

	breach(): void {}
}

function note(
	times: Histogram[],
	ordinal: number,
	at: number,
	most = ordinals,
): void {
	if (ordinal >= most) return;
	if (times.length <= ordinal) times.push(new Histogram(0.1));
	times[ordinal].add(at);
}

function countsOf(dressing: DressingCollector): DressingCounts {
	const parts = (histograms: readonly Histogram[]) =>
		histograms.map((histogram) => histogram.parts());
	return {
		totals: parts(dressing.totals),
		canisterChanges: parts(dressing.canisterChanges),
		sourceChanges: parts(dressing.sourceChanges),
		canisterNeeds: parts(dressing.canisterNeeds),
		fills: parts(dressing.fills),
		levels: parts(dressing.levels),
		rounds: parts(dressing.rounds),
		atEnd: parts([dressing.atEnd]),
		alarmBins: dressing.alarms.bins,
		chanceBins: dressing.byChance.bins,
		offTooLong: dressing.offTooLong,
	};
}
