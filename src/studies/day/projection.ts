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
} from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import {
	Histogram,
	halfWidth,
	InBlockOrder,
	type Moments,
	mergeEach,
	mergeMoments,
	noMoments,
	wilson,
} from "../../statistics/index.ts";
import { conditions, type TotalName, totalNames } from "../../vocabulary/index.ts";
import { percentiles, spread } from "../kit/spread.ts";
import { type AlarmWindows, alarmWindows } from "./alarm-windows.ts";
import { blockCount, type RunPart } from "./collector.ts";
import { DressingCounts, halfHourMin, levelStep, roundTimes } from "./counts.ts";
import { likelyTimes } from "./likely-times.ts";
import { homeItems, type SupplyItem, supplyItems, supplyOf } from "./supplies.ts";
import { nearestToMedian } from "./typical-day.ts";

/** What all replications of one dressing come to: counts, and moments that are merged by block. */
class DressingSums {
	readonly counts: DressingCounts;
	readonly totals = totalNames.map(noMoments);
	readonly alarms = conditions.map(noMoments);
	readonly byChance = conditions.map(noMoments);

	constructor(scenario: Scenario) {
		this.counts = new DressingCounts(scenario);
	}
}

/**
 * Gathers the parts of a run into a projection. Parts come in any order; sums are merged by block, so that the answer
 * is the same to the last bit however the blocks were dealt out. Throws RangeError where a block is missing or comes twice.
 */
export class ProjectionGathering {
	readonly #scenario: Scenario;
	readonly #roundTimes: readonly number[];
	readonly #dressings: readonly DressingSums[];
	readonly #supplies: Histogram[];
	readonly #home: Histogram[];
	/** Of the first replications, in their order: the courses of every dressing. */
	readonly #courses: (readonly Float64Array[])[] = [];
	readonly #parts = new InBlockOrder<RunPart>((part) => this.#take(part));
	#replications = 0;

	constructor(scenario: Scenario) {
		this.#scenario = scenario;
		this.#roundTimes = roundTimes(scenario);
		this.#dressings = scenario.dressings.map(() => new DressingSums(scenario));
		this.#supplies = supplyItems(scenario).map(() => new Histogram(1));
		this.#home = homeItems(scenario).map(() => new Histogram(1));
	}

	add(part: RunPart): void {
		this.#parts.add(part.firstBlock, part.blocks.length, part);
	}

	#take(part: RunPart): void {
		this.#replications += part.replications;
		for (const block of part.blocks)
			this.#dressings.forEach(({ totals, alarms, byChance }, index) => {
				mergeMoments(totals, block.totals[index]);
				mergeMoments(alarms, block.alarms[index]);
				mergeMoments(byChance, block.byChance[index]);
			});
		this.#dressings.forEach(({ counts }, index) => {
			counts.merge(part.dressings[index]);
		});
		mergeEach(this.#supplies, part.supplies);
		mergeEach(this.#home, part.home);
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
		this.#parts.complete(blockCount(this.#scenario));
		return {
			replications: this.#replications,
			dressings: this.#dressings.map((sums, index) => this.#dressing(sums, index)),
		};
	}

	supplies(): Supply[] {
		return this.#rows(supplyItems(this.#scenario), this.#supplies);
	}

	/** What to send home; null where nobody goes. */
	home(): HomeSupplies | null {
		const { home } = this.#scenario;
		return home === null ? null : { ...home, supplies: this.#rows(homeItems(this.#scenario), this.#home) };
	}

	#rows(items: readonly SupplyItem[], needs: readonly Histogram[]): Supply[] {
		return items.map((item, i) => {
			const [p50, p90] = needs[i].quantiles([0.5, 0.9]);
			return supplyOf(item, Math.ceil(p50), Math.ceil(p90), this.#scenario);
		});
	}

	/** Share of replications of a dressing that are off suction for longer than the caution allows. */
	offTooLong(index: number): number {
		return this.#dressings[index].counts.offTooLong / this.#replications;
	}

	#dressing(sums: DressingSums, index: number): DressingProjection {
		const { histograms } = sums.counts;
		const totals = Object.fromEntries(
			totalNames.map((name, i) => [name, spread(histograms.totals[i], sums.totals[i])]),
		);
		return {
			id: this.#scenario.dressings[index].id,
			totals: totals as { [N in TotalName]: Spread }, // fromEntries forgets the names that totalNames lists
			canisterChanges: this.#changeTimes(histograms.canisterChanges),
			canisterNeeds: this.#changeTimes(histograms.canisterNeeds).map((time, i) => ({
				...time,
				windows: likelyTimes(histograms.canisterNeeds[i], this.#replications),
			})),
			fills: this.#changeTimes(histograms.fills),
			rounds: this.#roundTimes.map((atMin, i) => ({ atMin, ...contentOf(histograms.rounds[i]) })),
			sourceChanges: this.#changeTimes(histograms.sourceChanges),
			alarms: conditions.map((condition, i) => ({ condition, ...this.#alarms(sums, i) })),
			canisterLevel: this.#levels(histograms.levels),
			canisterAtEnd: contentOf(histograms.atEnd[0]),
		};
	}

	#changeTimes(times: readonly Histogram[]): ChangeTime[] {
		return times.map((histogram, i) => {
			const [p10Min, p50Min, p90Min] = histogram.quantiles(percentiles);
			return { ordinal: i + 1, p10Min, p50Min, p90Min, probabilityWithinHorizon: histogram.count / this.#replications };
		});
	}

	#alarms({ counts, alarms, byChance }: DressingSums, i: number): Omit<AlarmProjection, "condition"> {
		const bins = Array.from(counts.alarmBins[i], (hits, bin) => ({
			startMin: bin * halfHourMin,
			endMin: Math.min((bin + 1) * halfHourMin, this.#scenario.horizonMin),
			probability: hits / this.#replications,
			...wilson(hits, this.#replications),
			chance: counts.chanceBins[i][bin] / this.#replications,
		}));
		const windows: AlarmWindows = alarmWindows(bins);
		return { ...this.#perDay(alarms[i]), byChance: this.#perDay(byChance[i]), bins, windows };
	}

	#perDay(moments: Moments): AlarmProjection["byChance"] {
		const days = this.#scenario.horizonMin / 1440;
		const half = halfWidth(moments);
		return { meanPerDay: moments.mean / days, halfWidth95: half === null ? null : half / days };
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
