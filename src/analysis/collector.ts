import type { Scenario } from "../scenario/index.ts";
import {
	type CanisterReason,
	type Condition,
	conditions,
	type DressingProcess,
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

/** Replications are summed in blocks of this many; block k holds replications k·size … (k + 1)·size − 1. */
export const blockSize = 50;
export const halfHourMin = 30;
/** Canister and source changes are followed one by one up to this ordinal. */
const ordinals = 64;

/** Minutes between the points at which the content of the canister is sampled. */
export function levelStep(horizonMin: number): number {
	return Math.max(halfHourMin, Math.ceil(horizonMin / 96));
}

/** Sums of one block: the moments of every total, and of the alarms of each condition, for each dressing. */
export interface BlockSums {
	readonly totals: readonly (readonly Moments[])[];
	readonly alarms: readonly (readonly Moments[])[];
}

/** Counts of any number of replications of one dressing: they merge exactly, in any order. */
interface DressingCounts {
	readonly totals: readonly HistogramParts[];
	readonly canisterChanges: readonly HistogramParts[];
	readonly sourceChanges: readonly HistogramParts[];
	readonly levels: readonly HistogramParts[];
	/** By condition, then half-hour: replications in which such an alarm starts in it. */
	readonly alarmBins: readonly Int32Array[];
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
}

class DressingCollector {
	readonly totals = totalNames.map((name) => new Histogram(totalBins[name]));
	readonly canisterChanges: Histogram[] = [];
	readonly sourceChanges: Histogram[] = [];
	readonly levels: Histogram[];
	readonly alarmBins: Int32Array[];
	readonly lastIn: Int32Array[];
	readonly alarmCount = new Int32Array(conditions.length);
	spells: Spell[] = [];
	offTooLong = 0;
	canisters = 0;
	sources = 0;
	nextSample = 0;
	/** Changes in the days at home. */
	readonly atHome = { canister: 0, source: 0, kit: 0 };

	constructor(horizonMin: number) {
		const bins = Math.ceil(horizonMin / halfHourMin);
		this.levels = Array.from(
			{ length: Math.floor(horizonMin / levelStep(horizonMin)) + 1 },
			() => new Histogram(1),
		);
		this.alarmBins = conditions.map(() => new Int32Array(bins));
		this.lastIn = conditions.map(() => new Int32Array(bins).fill(-1));
	}
}

/** Takes in replications and keeps what the projection needs of them; memory does not grow with their number. */
export class Collector implements Observer {
	readonly #scenario: Scenario;
	readonly #step: number;
	readonly #dressings: readonly DressingCollector[];
	readonly #items: readonly SupplyItem[];
	readonly #supplies: readonly Histogram[];
	readonly #homeItems: readonly SupplyItem[];
	readonly #home: readonly Histogram[];
	#replication = 0;

	constructor(scenario: Scenario) {
		this.#scenario = scenario;
		this.#step = levelStep(scenario.horizonMin);
		this.#dressings = scenario.dressings.map(
			() => new DressingCollector(scenario.horizonMin),
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
		let replications = 0;
		for (let block = first; block < last; block++) {
			const sums: BlockSums = {
				totals: this.#dressings.map(() => totalNames.map(noMoments)),
				alarms: this.#dressings.map(() => conditions.map(noMoments)),
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
		};
	}

	#begin(replication: number): void {
		this.#replication = replication;
		for (const dressing of this.#dressings) {
			dressing.alarmCount.fill(0);
			dressing.spells.length = 0;
			dressing.canisters = 0;
			dressing.sources = 0;
			dressing.nextSample = 0;
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
				dressing.levels[dressing.nextSample++].add(process.liquid.canister);
			const totals = totalsOf(process, horizonMin);
			totalNames.forEach((name, i) => {
				dressing.totals[i].add(totals[name]);
				addTo(sums.totals[index][i], totals[name]);
			});
			conditions.forEach((_, i) => {
				addTo(sums.alarms[index][i], dressing.alarmCount[i]);
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
		) {
			dressing.levels[dressing.nextSample].add(
				process.canisterAt(dressing.nextSample * this.#step),
			);
			dressing.nextSample++;
		}
	}

	phase(index: number, phase: Phase, start: number): void {
		if (phase === "change") this.#noteHome(index, "kit", start);
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

	alarmStarts(index: number, condition: Condition, at: number): void {
		const dressing = this.#dressings[index];
		const i = conditions.indexOf(condition);
		const bin = Math.floor(at / halfHourMin);
		dressing.alarmCount[i]++;
		if (dressing.lastIn[i][bin] === this.#replication) return;
		dressing.lastIn[i][bin] = this.#replication;
		dressing.alarmBins[i][bin]++;
	}

	alarmEnds(): void {}

	canisterChange(index: number, _reason: CanisterReason, at: number): void {
		const dressing = this.#dressings[index];
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

function note(times: Histogram[], ordinal: number, at: number): void {
	if (ordinal >= ordinals) return;
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
		levels: parts(dressing.levels),
		alarmBins: dressing.alarmBins,
		offTooLong: dressing.offTooLong,
	};
}
