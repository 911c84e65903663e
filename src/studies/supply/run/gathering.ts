import type { CountSeries, CountSpread, Spread } from "../../../results/index.ts";
import type { WardScenario } from "../../../scenario/index.ts";
import { InBlockOrder, type Moments, mergeMoments, noMoments, variance } from "../../../statistics/index.ts";
import { keyed } from "../../kit/named.ts";
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

	constructor(ward: WardScenario) {
		super(ward);
		this.ward = ward;
		this.#moments = this.layout.measures.map(noMoments);
	}

	add(part: SupplyPart): void {
		if (part.sums.length === 0) return;
		this.#sums.add(part.firstBlock, part.sums.length, part.sums);
		this.merge(part);
	}

	/** Throws RangeError where a block is missing. */
	complete(): void {
		this.#sums.complete(wardBlocks(this.ward));
	}

	count(place: number): CountSpread {
		return countSpread(this.tallies[place]);
	}

	/** `length` counts that stand one after another, in columns. */
	series(first: number, length: number): CountSeries {
		const counts = Array.from({ length }, (_, i) => this.count(first + i));
		return keyed(["mean", "p10", "p50", "p90"], (name) => counts.map((one) => one[name]));
	}

	spread(place: number): Spread {
		return spread(this.measures[place], this.#moments[place]);
	}

	/** Variance of a measure over the replications; 0 below two. */
	variance(place: number): number {
		return this.ward.replications < 2 ? 0 : variance(this.#moments[place]);
	}
}
