/**
 * Distance of two words: insertions, deletions, replacements and swaps of neighbours (optimal string alignment,
 * Damerau 1964, from memory).
 */
export function distance(a: string, b: string): number {
	let beforeLast: number[] = [];
	let last = Array.from({ length: b.length + 1 }, (_, j) => j);
	for (let i = 1; i <= a.length; i++) {
		const row = [i];
		for (let j = 1; j <= b.length; j++) {
			const replaced = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
			let least = Math.min(replaced, (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
			const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
			if (swapped) least = Math.min(least, (beforeLast[j - 2] ?? 0) + 1);
			row.push(least);
		}
		beforeLast = last;
		last = row;
	}
	return last[b.length] ?? 0;
}

/** The word that was probably meant; undefined where none is near (a third of its letters, at least one, may be wrong). */
export function nearest(word: string, words: readonly string[]): string | undefined {
	if (word.length > 64) return undefined;
	const plain = (text: string) => text.toLowerCase().replace(/[\s_-]/gu, "");
	const ranked = words
		.map((candidate) => ({ candidate, off: distance(plain(word), plain(candidate)) }))
		.filter(({ candidate, off }) => off <= Math.max(1, Math.floor(candidate.length / 3)) && off < candidate.length)
		.sort((a, b) => a.off - b.off);
	return ranked[0]?.candidate;
}
