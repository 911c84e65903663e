/** A spell off suction, minutes from the start. */
export interface Spell {
	readonly start: number;
	readonly end: number;
}

/** The most minutes off suction in any window of `windowMin`: it is reached in a window that ends with a spell. Spells are in order and apart. */
export function mostWithin(spells: readonly Spell[], windowMin: number): number {
	let most = 0;
	for (const { end } of spells) {
		let sum = 0;
		for (const spell of spells) sum += Math.max(0, Math.min(spell.end, end) - Math.max(spell.start, end - windowMin));
		most = Math.max(most, sum);
	}
	return most;
}
