import type { WardScenario } from "../scenario/index.ts";
import type { Spread } from "./day-result.ts";
import { Histogram } from "./histogram.ts";
import { type Moments, mergeInto, noMoments, variance } from "./moments.ts";
import { percentiles, spread } from "./spread.ts";
import { type SupplyPart, wardBlocks } from "./supply-collector.ts";
import { type SupplyLayout, supplyLayout } from "./supply-layout.ts";
import type { CountSeries, CountSpread } from "./supply-result.ts";
import { Tally } from "./tally.ts";

/**
 * Gathers the parts of a ward's run. Parts come in any order: counts merge exactly, and sums are merged by block, so
 * that the answer is the same to the last bit however the blocks were dealt out. Throws RangeError where a block is
 * missing or comes twice.
 */
export class SupplyGathering {
	readonly ward: WardScenario;
	readonly layout: SupplyLayout;
	readonly #tallies: readonly Tally[];
	readonly #measures: readonly Histogram[];
	readonly #moments: readonly Moments[];
	readonly #waiting = new Map<number, SupplyPart["sums"]>();
	#nextBlock = 0;
	#replications = 0;

	constructor(ward: WardScenario) {
		this.ward = ward;
		this.layout = supplyLayout(ward);
		this.#tallies = Array.from(
			{ length: this.layout.tallies },
			() => new Tally(),
		);
		this.#measures = this.layout.measures.map((width) => new Histogram(width));
		this.#moments = this.layout.measures.map(noMoments);
	}

	add(part: SupplyPart): void {
		if (part.sums.length === 0) return;
		if (part.firstBlock < this.#nextBlock || this.#waiting.has(part.firstBlock))
			throw new RangeError(`block ${part.firstBlock} came twice`);
		part.tallies.forEach((parts, i) => {
			this.#tallies[i].merge(parts);
		});
		part.measures.forEach((parts, i) => {
			this.#measures[i].merge(parts);
		});
		this.#replications += part.replications;
		this.#waiting.set(part.firstBlock, part.sums);
		for (
			let next = this.#waiting.get(this.#nextBlock);
			next !== undefined;
			next = this.#waiting.get(this.#nextBlock)
		) {
			this.#waiting.delete(this.#nextBlock);
			for (const block of next)
				block.forEach((moments, i) => {
					mergeInto(this.#moments[i], moments);
				});
			this.#nextBlock += next.length;
		}
	}

	/** Throws RangeError where a block is missing. */
	get replications(): number {
		const blocks = wardBlocks(this.ward);
		if (this.#nextBlock !== blocks)
			throw new RangeError(`block ${this.#nextBlock} of ${blocks} is missing`);
		return this.#replications;
	}

	count(place: number): CountSpread {
		const tally = this.#tallies[place];
		const [p10, p50, p90] = tally.quantiles(percentiles);
		return { mean: tally.mean, p10, p50, p90 };
	}

	/** `length` counts that stand one after another. */
	series(first: number, length: number): CountSeries {
		const columns = Array.from({ length }, (_, i) => this.count(first + i));
		return {
			mean: columns.map(({ mean }) => mean),
			p10: columns.map(({ p10 }) => p10),
			p50: columns.map(({ p50 }) => p50),
			p90: columns.map(({ p90 }) => p90),
		};
	}

	mean(place: number): number {
		return this.#tallies[place].mean;
	}

	spread(place: number): Spread {
		return spread(this.#measures[place], this.#moments[place]);
	}

	/** Variance of a measure over the replications; 0 below two. */
	variance(place: number): number {
		const moments = this.#moments[place];
		return moments.count < 2 ? 0 : variance(moments);
	}
}
