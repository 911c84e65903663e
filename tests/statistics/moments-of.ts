import { addTo, type Moments, mergeInto, noMoments } from "../../src/statistics/index.ts";

/** What values come to, summed in blocks of `size` that are merged in order; in one where no size is given. */
export function momentsOf(values: readonly number[], size = Math.max(1, values.length)): Moments {
	const all = noMoments();
	for (let at = 0; at < values.length; at += size) {
		const block = noMoments();
		for (const value of values.slice(at, at + size)) addTo(block, value);
		mergeInto(all, block);
	}
	return all;
}
