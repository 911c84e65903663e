import type { Scenario } from "../scenario/index.ts";
import { conditions } from "../therapy/index.ts";
import { type AlarmWindows, alarmWindows } from "./alarm-windows.ts";
import {
	blockSize,
	halfHourMin,
	levelStep,
	type RunPart,
	roundTimes,
} from "./collector.ts";
import type {
	AlarmProjection,
	ChangeTime,
	DressingProjection,
	HomeSupplies,
	LevelBand,
	Projection,
	RoundLevel,
	Spread,
	Supply,
	TotalName,
} from "./day-result.ts";
import { Histogram, type HistogramParts } from "./histogram.ts";
import { halfWidth, wilson } from "./interval.ts";
import { likelyTimes } from "./likely-times.ts";
import { type Moments, mergeInto, noMoments } from "./moments.ts";
import { percentiles, spread } from "./spread.ts";
import {
	homeItems,
	type SupplyItem,
	supplyItems,
	supplyOf,
} from "./supplies.ts";
import { totalBins, totalNames } from "./totals.ts";
import { nearestToMedian } from "./typical-day.ts";

interface Merged {
	readonly totals: Histogram[];
	readonly totalMoments: Moments[];
	readonly canisterChanges: Histogram[];
	readonly sourceChanges: Histogram[];
	readonly canisterNeeds: Histogram[];
	readonly fills: Histogram[];
	readonly levels: Histogram[];
	readonly rounds: Histogram[];
	readonly atEnd: Histogram[];
	readonly alarmBins: Int32Array[];
	readonly alarmMoments: Moments[];
	readonly chanceBins: Int32Array[];
	readonly chanceMoments: Moments[];
	offTooLong: number;
}

/** How many blocks a scenario's replications make. */
export function blockCount(scenario: Scenario): number {
	return Math.ceil(scenario.replications / blockSize);
}

/**
 * Gathers the parts of a run into a projection. Parts come in any order; sums are merged by block, so that the answer
 * is the same to the last bit however the blocks were dealt out. Throws RangeError where a block is missing or comes twice.
 */
export class ProjectionGathering {
	readonly #scenario: Scenario;
	readonly #roundTimes: readonly number[];
	readonly #merged: Merged[];
	readonly #supplies: Histogram[];
	readonly #home: Histogram[];
	/** Of the first replications, in their order: the courses of every dressing. */
	readonly #courses: (readonly Float64Array[])[] = [];
	readonly #waiting = new Map<number, RunPart>();
	#nextBlock = 0;
	#replications = 0;

	constructor(scenario: Scenario) {
		this.#scenario = scenario;
		this.#roundTimes = roundTimes(scenario);
		this.#merged = scenario.dressings.map(() => ({
			totals: totalNames.map((name) => new Histogram(totalBins[name])),
			totalMoments: totalNames.map(noMoments),
			canisterChanges: [],
			sourceChanges: [],
			canisterNeeds: [],
			fills: [],
			levels: [],
			rounds: [],
			atEnd: [],
			alarmBins: emptyBins(scenario),
			alarmMoments: conditions.map(noMoments),
			chanceBins: emptyBins(scenario),
			chanceMoments: conditions.map(noMoments),
			offTooLong: 0,
		}));
		this.#supplies = supplyItems(scenario).map(() => new Histogram(1));
		this.#home = homeItems(scenario).map(() => new Histogram(1));
	}

	add(part: RunPart): void {
		if (part.firstBlock < this.#nextBlock || this.#waiting.has(part.firstBlock))
			throw new RangeError(`block ${part.firstBlock} came twice`);
		this.#waiting.set(part.firstBlock, part);
		for (
			let next = this.#waiting.get(this.#nextBlock);
			next !== undefined;
			next = this.#waiting.get(this.#nextBlock)
		) {
			this.#waiting.delete(this.#nextBlock);
			this.#take(next);
			this.#nextBlock += next.blocks.length;
		}
	}

	#take(part: RunPart): void {
		this.#replications += part.replications;
		for (const block of part.blocks) {
			this.#merged.forEach((merged, index) => {
				block.totals[index].forEach((moments, i) => {
					mergeInto(merged.totalMoments[i], moments);
				});
				block.alarms[index].forEach((moments, i) => {
					mergeInto(merged.alarmMoments[i], moments);
				});
				block.byChance[index].forEach((moments, i) => {
					mergeInto(merged.chanceMoments[i], moments);
				});
			});
		}
		part.dressings.forEach((counts, index) => {
			const merged = this.#merged[index];
			mergeAll(merged.totals, counts.totals);
			mergeAll(merged.canisterChanges, counts.canisterChanges);
			mergeAll(merged.sourceChanges, counts.sourceChanges);
			mergeAll(merged.canisterNeeds, counts.canisterNeeds);
			mergeAll(merged.fills, counts.fills);
			mergeAll(merged.levels, counts.levels);
			mergeAll(merged.rounds, counts.rounds);
			mergeAll(merged.atEnd, counts.atEnd);
			addBins(merged.alarmBins, counts.alarmBins);
			addBins(merged.chanceBins, counts.chanceBins);
			merged.offTooLong += counts.offTooLong;
		});
		mergeAll(this.#supplies, part.supplies);
		mergeAll(this.#home, part.home);
		this.#courses.push(...part.courses.map(({ dressings }) => dressings));
	}

	/** How many of the first replications the typical day was looked for among. */
	get lookedAt(): number {
		return this.#courses.length;
	}

	/** The replication whose courses lie nearest the median, of all dressings together. */
	typical(): number {
		return nearestToMedian(this.#courses);
	}

	projection(): Projection {
		const blocks = blockCount(this.#scenario);
		if (this.#nextBlock !== blocks)
			throw new RangeError(`block ${this.#nextBlock} of ${blocks} is missing`);
		return {
			replications: this.#replications,
			dressings: this.#merged.map((merged, index) =>
				this.#dressing(merged, index),
			),
		};
	}

	supplies(): Supply[] {
		return this.#rows(supplyItems(this.#scenario), this.#supplies);
	}

	/** What to send home; null where nobody goes. */
	home(): HomeSupplies | null {
		const { home } = this.#scenario;
		return home === null
			? null
			: {
					...home,
					supplies: this.#rows(homeItems(this.#scenario), this.#home),
				};
	}

	#rows(items: readonly SupplyItem[], needs: readonly Histogram[]): Supply[] {
		return items.map((item, i) => {
			const [p50, p90] = needs[i].quantiles([0.5, 0.9]);
			return supplyOf(item, Math.ceil(p50), Math.ceil(p90), this.#scenario);
		});
	}

	/** Share of replications of a dressing that are off suction for longer than the caution allows. */
	offTooLong(index: number): number {
		return this.#merged[index].offTooLong / this.#replications;
	}

	#dressing(merged: Merged, index: number): DressingProjection {
		const totals = Object.fromEntries(
			totalNames.map((name, i) => [
				name,
				spread(merged.totals[i], merged.totalMoments[i]),
			]),
		);
		return {
			id: this.#scenario.dressings[index].id,
			totals: totals as { [N in TotalName]: Spread }, // fromEntries forgets the names that totalNames lists
			canisterChanges: this.#changeTimes(merged.canisterChanges),
			canisterNeeds: this.#changeTimes(merged.canisterNeeds).map((time, i) => ({
				...time,
				windows: likelyTimes(merged.canisterNeeds[i], this.#replications),
			})),
			fills: this.#changeTimes(merged.fills),
			rounds: this.#roundTimes.map((atMin, i) => ({
				atMin,
				...contentOf(merged.rounds[i]),
			})),
			sourceChanges: this.#changeTimes(merged.sourceChanges),
			alarms: conditions.map((condition, i) => ({
				condition,
				...this.#alarms(merged, i),
			})),
			canisterLevel: this.#levels(merged.levels),
			canisterAtEnd: contentOf(merged.atEnd[0]),
		};
	}

	#changeTimes(times: readonly Histogram[]): ChangeTime[] {
		return times.map((histogram, i) => {
			const [p10Min, p50Min, p90Min] = histogram.quantiles(percentiles);
			return {
				ordinal: i + 1,
				p10Min,
				p50Min,
				p90Min,
				probabilityWithinHorizon: histogram.count / this.#replications,
			};
		});
	}

	#alarms(merged: Merged, i: number): Omit<AlarmProjection, "condition"> {
		const bins = Array.from(merged.alarmBins[i], (hits, bin) => ({
			startMin: bin * halfHourMin,
			endMin: Math.min((bin + 1) * halfHourMin, this.#scenario.horizonMin),
			probability: hits / this.#replications,
			...wilson(hits, this.#replications),
			chance: merged.chanceBins[i][bin] / this.#replications,
		}));
		const windows: AlarmWindows = alarmWindows(bins);
		return {
			...this.#perDay(merged.alarmMoments[i]),
			byChance: this.#perDay(merged.chanceMoments[i]),
			bins,
			windows,
		};
	}

	#perDay(moments: Moments): AlarmProjection["byChance"] {
		const days = this.#scenario.horizonMin / 1440;
		const half = halfWidth(moments);
		return {
			meanPerDay: moments.mean / days,
			halfWidth95: half === null ? null : half / days,
		};
	}

	#levels(levels: readonly Histogram[]): LevelBand {
		const columns = levels.map((histogram) => histogram.quantiles(percentiles));
		return {
			stepMin: levelStep(this.#scenario.horizonMin),
			p10Ml: columns.map((column) => column[0]),
			p50Ml: columns.map((column) => column[1]),
			p90Ml: columns.map((column) => column[2]),
		};
	}
}

function contentOf(contents: Histogram): Omit<RoundLevel, "atMin"> {
	const [p10Ml, p50Ml, p90Ml] = contents.quantiles(percentiles);
	return { p10Ml, p50Ml, p90Ml };
}

const emptyBins = ({ horizonMin }: Scenario): Int32Array[] =>
	conditions.map(() => new Int32Array(Math.ceil(horizonMin / halfHourMin)));

function addBins(
	into: readonly Int32Array[],
	counts: readonly Int32Array[],
): void {
	counts.forEach((bins, i) => {
		for (let bin = 0; bin < bins.length; bin++) into[i][bin] += bins[bin];
	});
}

function mergeAll(into: Histogram[], parts: readonly HistogramParts[]): void {
	parts.forEach((part, i) => {
		if (into.length <= i) into.push(new Histogram(part.width));
		into[i].merge(part);
	});
}
