import studentQuantile from "@stdlib/stats-base-dists-t-quantile";
import type { FrequencyTableParts } from "../../../statistics/index.ts";

/** A share of the time, with half of its 95 % interval; null where too few groups tell. */
export interface Share {
	readonly mean: number;
	readonly half: number | null;
}

/**
 * Ready rate, the share of the time with a piece on the shelf, for every reorder point.
 *
 * Where nobody's waiting changes what is asked for and nothing expires, orders do not depend on the reorder point r: the
 * pieces on the shelf less those that are waited for are r more than they would be with 0. So one trial with 0 tells of
 * all (Hadley and Whitin 1963, Analysis of Inventory Systems, from memory), and the share for r is that of the time with
 * more than −r. Where pieces expire, each of a list of reorder points has a trial of its own, and what lies between two
 * is on the line between them.
 */
export class ReadyRates {
	/** By group, then by reorder point: seconds with a piece on the shelf. */
	readonly #ready: readonly Float64Array[];
	readonly #seconds: readonly number[];

	constructor(net: readonly FrequencyTableParts[], seconds: readonly number[], levels: readonly number[] | null) {
		this.#seconds = seconds;
		this.#ready = levels === null ? (net.length === 0 ? [] : shifted(net)) : tried(net, levels);
	}

	/** From this reorder point on nothing changes any more. */
	get most(): number {
		return (this.#ready[0]?.length ?? 1) - 1;
	}

	/** The share of all time of the groups, with Student's interval over them: that of a ratio of sums, each group's part one value. */
	share(groups: readonly number[], reorder: number): Share {
		const at = Math.min(this.most, reorder);
		const used = groups.filter((group) => this.#seconds[group] > 0);
		const whole = used.reduce((sum, group) => sum + this.#seconds[group], 0);
		if (whole === 0) return { mean: 1, half: null };
		const ready = used.reduce((sum, g) => sum + this.#ready[g][at], 0);
		const mean = ready / whole;
		if (used.length < 2) return { mean, half: null };
		const squares = used.reduce((sum, group) => {
			const off = this.#ready[group][at] - mean * this.#seconds[group];
			return sum + off * off;
		}, 0);
		const variance = (used.length / (used.length - 1)) * squares;
		const t = studentQuantile(0.975, used.length - 1);
		return { mean, half: (t * Math.sqrt(variance)) / whole };
	}

	/** The least reorder point that comes to a share, by a measure of it. */
	least(groups: readonly number[], wanted: number, of: (share: Share) => number): number {
		for (let reorder = 0; reorder < this.most; reorder++)
			if (of(this.share(groups, reorder)) >= wanted - 1e-12) return reorder;
		return this.most;
	}
}

function shifted(net: readonly FrequencyTableParts[]): Float64Array[] {
	// Parts begin with the least value.
	const least = Math.min(1, ...net.map(([first]) => first ?? 1));
	const most = 1 - least;
	return net.map((parts) => {
		const ready = new Float64Array(most + 1);
		for (let i = 0; i < parts.length; i += 2) ready[Math.max(0, 1 - parts[i])] += parts[i + 1];
		for (let r = 1; r <= most; r++) ready[r] += ready[r - 1];
		return ready;
	});
}

function tried(net: readonly FrequencyTableParts[], levels: readonly number[]): Float64Array[] {
	const most = levels.at(-1) ?? 0;
	return net.map((parts) => {
		const at = new Map<number, number>();
		for (let i = 0; i < parts.length; i += 2) at.set(parts[i], parts[i + 1]);
		const ready = new Float64Array(most + 1);
		levels.forEach((level, i) => {
			const next = levels[i + 1] ?? level;
			const [low, high] = [at.get(level) ?? 0, at.get(next) ?? 0];
			for (let r = level; r <= next; r++)
				ready[r] = next === level ? low : low + ((high - low) * (r - level)) / (next - level);
		});
		return ready;
	});
}
