import type { Scenario } from "../../scenario/index.ts";
import type { Blocked, HistogramParts, Moments } from "../../statistics/index.ts";
import { addTo, blocksIn, Histogram, noMoments, partsOf, replicationsIn } from "../../statistics/index.ts";
import { type DressingProcess, type Observer, TherapyDay } from "../../therapy/index.ts";
import type { CanisterReason, Condition, Phase, SourceReason } from "../../vocabulary/index.ts";
import { conditions, totalNames } from "../../vocabulary/index.ts";
import { mostWithin, type Spell } from "../trace/off-spells.ts";
import { totalsOf } from "../trace/totals.ts";
import { AlarmStarts, DressingCounts, type DressingParts, halfHourMin, levelStep, roundTimes } from "./counts.ts";
import { homeItems, needsOf, type SupplyItem, supplyItems } from "./supplies.ts";
import { Courses, mostLookedAt } from "./typical-day.ts";

/** Replications are summed in blocks of this many; block k holds replications k·size … (k + 1)·size − 1. */
export const blockSize = 50;

export const blocked = ({ replications }: Scenario): Blocked => ({ size: blockSize, replications });

/** How many blocks a scenario's replications make. */
export const blockCount = (scenario: Scenario): number => blocksIn(blocked(scenario));

/** Canister and source changes are followed one by one up to this ordinal, fills up to another. */
const ordinals = 64;
const fillOrdinals = 512;

/** Sums of one block: the moments of every total, and of the alarms of each condition, for each dressing. */
interface BlockSums {
	readonly totals: readonly (readonly Moments[])[];
	readonly alarms: readonly (readonly Moments[])[];
	/** Of the alarms that nothing listed brings. */
	readonly byChance: readonly (readonly Moments[])[];
}

export interface RunPart {
	readonly firstBlock: number;
	readonly replications: number;
	readonly blocks: readonly BlockSums[];
	readonly dressings: readonly DressingParts[];
	readonly supplies: readonly HistogramParts[];
	/** Of what is sent home; empty where nobody goes. */
	readonly home: readonly HistogramParts[];
	/** The courses of those of the first replications that are in this part, by dressing. */
	readonly courses: readonly { readonly replication: number; readonly dressings: readonly Float64Array[] }[];
}

/** One dressing: what is counted of all replications, and where the present one stands. */
class DressingCollector {
	readonly counts: DressingCounts;
	readonly histograms: DressingCounts["histograms"];
	readonly alarms: AlarmStarts;
	readonly byChance: AlarmStarts;
	/** Times of the alarms of the present replication. */
	readonly alarmTimes: number[] = [];
	readonly spells: Spell[] = [];
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

	constructor(scenario: Scenario) {
		this.counts = new DressingCounts(scenario);
		this.histograms = this.counts.histograms;
		this.alarms = new AlarmStarts(this.counts.alarmBins);
		this.byChance = new AlarmStarts(this.counts.chanceBins);
	}

	begin(replication: number): void {
		this.alarms.count.fill(0);
		this.byChance.count.fill(0);
		this.alarmTimes.length = 0;
		this.spells.length = 0;
		this.courses = replication < mostLookedAt ? new Courses(this.histograms.levels.length) : null;
		this.courses?.begin(this.alarmTimes);
		this.canisters = 0;
		this.sources = 0;
		this.needs = 0;
		this.full = false;
		this.filled = 0;
		this.nextSample = 0;
		this.nextRound = 0;
		this.atHome.canister = 0;
		this.atHome.source = 0;
		this.atHome.kit = 0;
	}
}

/** Takes in replications and keeps what the projection needs of them; memory does not grow with their number. */
class Collector implements Observer {
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
		this.#dressings = scenario.dressings.map(() => new DressingCollector(scenario));
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
			for (const replication of replicationsIn(block, blocked(this.#scenario))) {
				this.#replication = replication;
				for (const dressing of this.#dressings) dressing.begin(replication);
				day.run(replication, this);
				this.#end(day, sums);
				replications++;
				if (replication < mostLookedAt)
					courses.push({
						replication,
						dressings: this.#dressings.flatMap((dressing) => dressing.courses?.values ?? []),
					});
			}
			blocks.push(sums);
			progress(replications);
		}
		return {
			firstBlock: first,
			replications,
			blocks,
			dressings: this.#dressings.map(({ counts }) => counts.parts()),
			supplies: partsOf(this.#supplies),
			home: partsOf(this.#home),
			courses,
		};
	}

	#end(day: TherapyDay, sums: BlockSums): void {
		const { horizonMin, constants } = this.#scenario;
		day.processes.forEach((process, index) => {
			const dressing = this.#dressings[index];
			// The last span ends with the horizon: a sample that falls on it is still to be taken.
			if (dressing.nextSample < dressing.histograms.levels.length) this.#sample(dressing, process, horizonMin);
			dressing.histograms.atEnd[0].add(process.liquid.canister);
			const totals = totalsOf(process, horizonMin);
			totalNames.forEach((name, i) => {
				dressing.histograms.totals[i].add(totals[name]);
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
				dressing.counts.offTooLong++;
		});
		this.#items.forEach((item, i) => {
			this.#supplies[i].add(needsOf(item, day));
		});
		this.#homeItems.forEach(({ kind, dressings }, i) => {
			// The dressing that is worn goes along; a fresh canister and a source do too.
			const first = kind === "kit" ? 0 : 1;
			this.#home[i].add(
				dressings.reduce(
					(sum, index) => sum + first + (kind === "line" || kind === "port" ? 0 : this.#dressings[index].atHome[kind]),
					0,
				),
			);
		});
	}

	span(index: number, process: DressingProcess, _start: number, end: number): void {
		const dressing = this.#dressings[index];
		while (dressing.nextSample * this.#step < end && dressing.nextSample < dressing.histograms.levels.length)
			this.#sample(dressing, process, dressing.nextSample * this.#step);
		// Just before the round: a span that ends with it comes before what is done at it.
		while (this.#rounds[dressing.nextRound] <= end) {
			const at = this.#rounds[dressing.nextRound];
			dressing.histograms.rounds[dressing.nextRound++].add(process.canisterAt(at));
		}
	}

	#sample(dressing: DressingCollector, process: DressingProcess, atMin: number): void {
		const point = dressing.nextSample++;
		const canisterMl = process.canisterAt(atMin);
		dressing.histograms.levels[point].add(canisterMl);
		dressing.courses?.note(point, atMin, canisterMl, process.exudateAt(atMin));
	}

	phase(index: number, phase: Phase, start: number): void {
		if (phase === "change") this.#noteHome(index, "kit", start);
		if (phase === "fill") {
			const dressing = this.#dressings[index];
			note(dressing.histograms.fills, dressing.filled++, start, fillOrdinals);
		}
	}

	#noteHome(index: number, kind: "canister" | "source" | "kit", at: number): void {
		const { home } = this.#scenario;
		if (home !== null && at >= home.fromMin && at < home.fromMin + home.forMin) this.#dressings[index].atHome[kind]++;
	}

	pause(): void {}

	notice(): void {}

	alarmStarts(index: number, condition: Condition, at: number, listed: boolean): void {
		const dressing = this.#dressings[index];
		const i = conditions.indexOf(condition);
		const bin = Math.floor(at / halfHourMin);
		dressing.alarmTimes.push(at);
		dressing.alarms.note(i, bin, this.#replication);
		if (!listed) dressing.byChance.note(i, bin, this.#replication);
		if (condition === "canister-at-capacity") {
			dressing.full = true;
			note(dressing.histograms.canisterNeeds, dressing.needs++, at);
		}
	}

	alarmEnds(): void {}

	canisterChange(index: number, reason: CanisterReason, at: number, due: number): void {
		const dressing = this.#dressings[index];
		if (!dressing.full && reason === "round") note(dressing.histograms.canisterNeeds, dressing.needs++, due);
		dressing.full = false;
		note(dressing.histograms.canisterChanges, dressing.canisters++, at);
		this.#noteHome(index, "canister", at);
	}

	sourceChange(index: number, _reason: SourceReason, at: number): void {
		const dressing = this.#dressings[index];
		note(dressing.histograms.sourceChanges, dressing.sources++, at);
		this.#noteHome(index, "source", at);
	}

	offSuction(index: number, start: number, end: number): void {
		this.#dressings[index].spells.push({ start, end });
	}

	breach(): void {}
}

function note(times: Histogram[], ordinal: number, at: number, most = ordinals): void {
	if (ordinal >= most) return;
	if (times.length <= ordinal) times.push(new Histogram(0.1));
	times[ordinal].add(at);
}

/** Runs the replications of the blocks `first` … `last` − 1. `progress` is told, after each block, how many replications are done. */
export function runBlocks(
	scenario: Scenario,
	first: number,
	last: number,
	progress?: (replications: number) => void,
): RunPart {
	const collector = new Collector(scenario);
	return collector.runBlocks(new TherapyDay(scenario, collector), first, last, progress);
}
