import type { CountSeries, CountSpread, Spread } from "../../../results/index.ts";
import type { WardScenario } from "../../../scenario/index.ts";
import { InBlockOrder, type Moments, mergeMoments, noMoments, variance } from "../../../statistics/index.ts";
import { countSpread, spread } from "../../kit/spread.ts";
import { SupplyCounts, type SupplyPart, wardBlocks } from "./supply-part.ts";

/**
 * Gathers the parts of a ward's run. Parts come in any order: counts merge exactly, and sums are merged by block, so
 * that the answer is the same to the last bit however the blocks were dealt out. Throws RangeError where a block is
 * missing or comes twice.
 */
export class SupplyGathering extends SupplyCounts {
	readonly ward: WardScenario;
	readonly #moments: readonly Moments[];
	readonly #sums = new InBlockOrder<SupplyPart["sums"]>((blocks) => {
		for (const block of blocks) mergeMoments(this.#moments, block);
	});
	#replications = 0;

	constructor(ward: WardScenario) {
		super(ward);
		this.ward = ward;
		this.#moments = this.layout.measures.map(noMoments);
	}

	add(part: SupplyPart): void {
		if (part.sums.length === 0) return;
		this.#sums.add(part.firstBlock, part.sums.length, part.sums);
		this.merge(part);
		this.#replications += part.replications;
	}

	/** Throws RangeError where a block is missing. */
	get replications(): number {
		this.#sums.complete(wardBlocks(this.ward));
		return this.#replications;
	}

	count(place: number): CountSpread {
		return countSpread(this.tallies[place]);
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
		return this.tallies[place].mean;
	}

	spread(place: number): Spread {
		return spread(this.measures[place], this.#moments[place]);
	}

	/** Variance of a measure over the replications; 0 below two. */
	variance(place: number): number {
		const moments = this.#moments[place];
		return moments.count < 2 ? 0 : variance(moments);
	}
}
