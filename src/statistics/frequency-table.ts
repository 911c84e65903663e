/** How often each whole number came: what travels between workers and machines, as value, count, value, count … by rising value. */
export type FrequencyTableParts = readonly number[];

/**
 * Counts of whole numbers, kept sparse. Counts are exact, so that tallies merge exactly and in any order, and mean and
 * quantiles come from them alone; memory grows with the different values, not with how many came.
 */
export class FrequencyTable {
	count = 0;
	readonly #counts = new Map<number, number>();

	add(value: number, times = 1): void {
		this.count += times;
		this.#counts.set(value, (this.#counts.get(value) ?? 0) + times);
	}

	merge(parts: FrequencyTableParts): void {
		for (let i = 0; i < parts.length; i += 2) this.add(parts[i], parts[i + 1]);
	}

	parts(): FrequencyTableParts {
		return [...this.#counts].sort((a, b) => a[0] - b[0]).flat();
	}

	/** Exact while the sum of the values is below 2^53; 0 for an empty tally. */
	get mean(): number {
		let sum = 0;
		for (const [value, times] of this.#counts) sum += value * times;
		return this.count === 0 ? 0 : sum / this.count;
	}

	/**
	 * For each p of a rising list the least value that at least a share p of all do not exceed (type 1 of Hyndman and Fan
	 * 1996): whole pieces stay whole. 0 for an empty tally.
	 */
	quantiles(ps: readonly number[]): number[] {
		const rows = [...this.#counts].sort((a, b) => a[0] - b[0]);
		let at = -1;
		let reached = 0;
		return ps.map((p) => {
			// A hair off, so that 0.9·10 is 9 and not the next.
			const wanted = p * this.count - 1e-9;
			while (at + 1 < rows.length && (at < 0 || reached < wanted)) {
				at++;
				reached += rows[at][1];
			}
			return rows[at]?.[0] ?? 0;
		});
	}
}
