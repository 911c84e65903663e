import type { Moments } from "./moments.ts";

/** Moments of many values at once that were all seen equally often. */
export interface VectorMomentsParts {
	readonly count: number;
	readonly mean: readonly number[];
	/** Sums of squared deviations from the mean. */
	readonly squares: readonly number[];
}

/**
 * Count, mean, and sums of squared deviations of a vector of values: the formulas of `moments.ts`, value by value. The last
 * bits depend on the order, so blocks are merged by index.
 */
export class VectorMoments {
	count = 0;
	readonly mean: Float64Array;
	readonly squares: Float64Array;

	constructor(length: number) {
		this.mean = new Float64Array(length);
		this.squares = new Float64Array(length);
	}

	parts(): VectorMomentsParts {
		return { count: this.count, mean: Array.from(this.mean), squares: Array.from(this.squares) };
	}

	add(values: Float64Array): void {
		const n = ++this.count;
		for (let i = 0; i < values.length; i++) {
			const delta = values[i] - this.mean[i];
			this.mean[i] += delta / n;
			this.squares[i] += delta * (values[i] - this.mean[i]);
		}
	}

	/** The moments of one of the values. */
	at(place: number): Moments {
		return { count: this.count, mean: this.mean[place], squares: this.squares[place] };
	}

	merge(block: VectorMomentsParts): void {
		const [a, b] = [this.count, block.count];
		if (b === 0) return;
		const n = a + b;
		for (let i = 0; i < this.mean.length; i++) {
			const delta = block.mean[i] - this.mean[i];
			this.mean[i] += (delta * b) / n;
			this.squares[i] += block.squares[i] + (delta * delta * a * b) / n;
		}
		this.count = n;
	}
}
