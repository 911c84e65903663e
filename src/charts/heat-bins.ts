/** A span of time with the probability that at least one alarm starts in it. */
export interface HeatBin {
	readonly startMin: number;
	readonly endMin: number;
	readonly probability: number;
}

/** Width of a cell in minutes: half-hours for a day, hours for three, whole days beyond. */
export function cellMinutes(horizonMin: number): number {
	if (horizonMin <= 26 * 60) return 30;
	return horizonMin <= 3 * 1440 ? 60 : 1440;
}

/**
 * Neighbouring bins merged into cells. Only the chance of each half-hour is known, so a cell takes them as independent:
 * P = 1 − Π(1 − p). Where one alarm makes the next less likely this is a little low, where alarms cluster a little high.
 */
export function mergedBins(
	bins: readonly HeatBin[],
	cellMin: number,
): HeatBin[] {
	const cells: {
		startMin: number;
		endMin: number;
		none: number;
		count: number;
		only: number;
	}[] = [];
	for (const bin of bins) {
		const last = cells.at(-1);
		if (last !== undefined && bin.endMin - last.startMin <= cellMin + 1e-9)
			cells[cells.length - 1] = {
				...last,
				endMin: bin.endMin,
				none: last.none * (1 - bin.probability),
				count: last.count + 1,
			};
		else
			cells.push({
				startMin: bin.startMin,
				endMin: bin.endMin,
				none: 1 - bin.probability,
				count: 1,
				only: bin.probability,
			});
	}
	return cells.map((cell) => ({
		startMin: cell.startMin,
		endMin: cell.endMin,
		probability: cell.count === 1 ? cell.only : 1 - cell.none,
	}));
}
