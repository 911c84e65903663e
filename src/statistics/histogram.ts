/** What travels between workers: bins in any order. */
export interface HistogramParts {
	readonly width: number;
	readonly bins: readonly {
		readonly bin: number;
		readonly count: number;
		readonly least: number;
		readonly greatest: number;
	}[];
}

/**
 * A histogram of fixed-width bins, kept sparse: counts are exact, and every bin keeps the least and the greatest value
 * that fell into it. Parts merge exactly and in any order; memory grows with the bins in use, not with the values.
 */
export class Histogram {
	readonly width: number;
	count = 0;
	readonly #place = new Map<number, number>();
	readonly #counts: number[] = [];
	readonly #least: number[] = [];
	readonly #greatest: number[] = [];

	constructor(width: number) {
		this.width = width;
	}

	add(value: number): void {
		this.#put(Math.floor(value / this.width), 1, value, value);
	}

	merge(parts: HistogramParts): void {
		for (const { bin, count, least, greatest } of parts.bins) this.#put(bin, count, least, greatest);
	}

	parts(): HistogramParts {
		const bins = [...this.#place].map(([bin, at]) => ({
			bin,
			count: this.#counts[at],
			least: this.#least[at],
			greatest: this.#greatest[at],
		}));
		return { width: this.width, bins };
	}

	/**
	 * Quantiles of the values, for each p of a rising list, by linear interpolation between order statistics at (n − 1)·p
	 * (type 7 of Hyndman and Fan 1996), so that the error stays below one bin and a constant stays itself. NaN for an
	 * empty histogram.
	 */
	quantiles(ps: readonly number[]): number[] {
		const statistic = this.#statistics();
		return ps.map((p) => {
			if (this.count === 0) return Number.NaN;
			const place = (this.count - 1) * p;
			const rank = Math.floor(place);
			const low = statistic(rank);
			const part = place - rank;
			return part === 0 ? low : low + (statistic(rank + 1) - low) * part;
		});
	}

	/** The same values in bins of a greater width (a multiple of this one's), in rising order. */
	gathered(width: number): HistogramParts["bins"] {
		const into = new Histogram(width);
		const per = Math.round(width / this.width);
		for (const { bin, count, least, greatest } of this.parts().bins)
			into.#put(Math.floor(bin / per), count, least, greatest);
		return into.parts().bins.toSorted((a, b) => a.bin - b.bin);
	}

	/** The values at the given ranks, counted from 1 and rising, to within one bin. */
	orderStatistics(ranks: readonly number[]): number[] {
		const statistic = this.#statistics();
		return ranks.map((rank) => statistic(rank - 1));
	}

	/** How often the most frequent value came (to 1e-9, which is rounding), where its bin holds that value alone; else 0. */
	get mostFrequent(): number {
		let most = 0;
		for (const [, at] of this.#place)
			if (this.#greatest[at] - this.#least[at] <= 1e-9 && this.#counts[at] > most) most = this.#counts[at];
		return most;
	}

	/** The value at a rank from 0; those within a bin are spread evenly between its least and its greatest. Ranks rise from call to call. */
	#statistics(): (rank: number) => number {
		const bins = [...this.#place].sort((a, b) => a[0] - b[0]);
		let before = 0;
		let next = 0;
		return (rank) => {
			// Ranks come in rising order, but one step back may be needed between two of them.
			while (next > 0 && rank < before) before -= this.#counts[bins[--next][1]];
			while (rank >= before + this.#counts[bins[next][1]]) before += this.#counts[bins[next++][1]];
			const at = bins[next][1];
			const least = this.#least[at];
			const inside = this.#counts[at] - 1;
			return inside === 0 ? least : least + ((this.#greatest[at] - least) * (rank - before)) / inside;
		};
	}

	#put(bin: number, count: number, least: number, greatest: number): void {
		this.count += count;
		const at = this.#place.get(bin);
		if (at === undefined) {
			this.#place.set(bin, this.#counts.length);
			this.#counts.push(count);
			this.#least.push(least);
			this.#greatest.push(greatest);
			return;
		}
		this.#counts[at] += count;
		if (least < this.#least[at]) this.#least[at] = least;
		if (greatest > this.#greatest[at]) this.#greatest[at] = greatest;
	}
}
