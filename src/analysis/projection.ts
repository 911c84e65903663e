import type { Scenario } from "../scenario/index.ts";
import { conditions } from "../therapy/index.ts";
import { type AlarmWindows, alarmWindows } from "./alarm-windows.ts";
import {
	blockSize,
	halfHourMin,
	levelStep,
	type RunPart,
} from "./collector.ts";
import type {
	AlarmProjection,
	ChangeTime,
	DressingProjection,
	HomeSupplies,
	LevelBand,
	Projection,
	Spread,
	Supply,
	TotalName,
} from "./day-result.ts";
import { Histogram, type HistogramParts } from "./histogram.ts";
import { halfWidth, wilson } from "./interval.ts";
import { type Moments, mergeInto, noMoments } from "./moments.ts";
import { percentiles, spread } from "./spread.ts";
import {
	homeItems,
	type SupplyItem,
	supplyItems,
	supplyOf,
} from "./supplies.ts";
import { totalBins, totalNames } from "./totals.ts";

interface Merged {
	readonly totals: Histogram[];
	readonly totalMoments: Moments[];
	readonly canisterChanges: Histogram[];
	readonly sourceChanges: Histogram[];
	readonly levels: Histogram[];
	readonly alarmBins: Int32Array[];
	readonly alarmMoments: Moments[];
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
	readonly #merged: Merged[];
	readonly #supplies: Histogram[];
	readonly #home: Histogram[];
	readonly #waiting = new Map<number, RunPart>();
	#nextBlock = 0;
	#replications = 0;

	constructor(scenario: Scenario) {
		this.#scenario = scenario;
		this.#merged = scenario.dressings.map(() => ({
			totals: totalNames.map((name) => new Histogram(totalBins[name])),
			totalMoments: totalNames.map(noMoments),
			canisterChanges: [],
			sourceChanges: [],
			levels: [],
			alarmBins: conditions.map(
				() => new Int32Array(Math.ceil(scenario.horizonMin / halfHourMin)),
			),
			alarmMoments: conditions.map(noMoments),
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
			});
		}
		part.dressings.forEach((counts, index) => {
			const merged = this.#merged[index];
			mergeAll(merged.totals, counts.totals);
			mergeAll(merged.canisterChanges, counts.canisterChanges);
			mergeAll(merged.sourceChanges, counts.sourceChanges);
			mergeAll(merged.levels, counts.levels);
			counts.alarmBins.forEach((bins, i) => {
				for (let bin = 0; bin < bins.length; bin++)
					merged.alarmBins[i][bin] += bins[bin];
			});
			merged.offTooLong += counts.offTooLong;
		});
		mergeAll(this.#supplies, part.supplies);
		mergeAll(this.#home, part.home);
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
			sourceChanges: this.#changeTimes(merged.sourceChanges),
			alarms: conditions.map((condition, i) => ({
				condition,
				...this.#alarms(merged.alarmBins[i], merged.alarmMoments[i]),
			})),
			canisterLevel: this.#levels(merged.levels),
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

	#alarms(
		counts: Int32Array,
		moments: Moments,
	): Omit<AlarmProjection, "condition"> {
		const days = this.#scenario.horizonMin / 1440;
		const half = halfWidth(moments);
		const bins = Array.from(counts, (hits, bin) => ({
			startMin: bin * halfHourMin,
			endMin: Math.min((bin + 1) * halfHourMin, this.#scenario.horizonMin),
			probability: hits / this.#replications,
			...wilson(hits, this.#replications),
		}));
		const windows: AlarmWindows = alarmWindows(bins);
		return {
			meanPerDay: moments.mean / days,
			halfWidth95: half === null ? null : half / days,
			bins,
			windows,
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

function mergeAll(into: Histogram[], parts: readonly HistogramParts[]): void {
	parts.forEach((part, i) => {
		if (into.length <= i) into.push(new Histogram(part.width));
		into[i].merge(part);
	});
}
