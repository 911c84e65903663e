/** A span of time with the probability that at least one alarm starts in it. */
export interface HeatBin {
	readonly startMin: number;
	readonly endMin: number;
	readonly probability: number;
}

const stepsMin = [30, 60, 120, 240, 360, 720] as const;
const minutesADay = 1440;

/** Width of a cell in minutes: the shortest of which each takes at least `leastPx` of the room there is; a day at the most. */
export const cellMinutes = (
	horizonMin: number,
	roomPx: number,
	leastPx: number,
): number =>
	stepsMin.find((step) => (step / horizonMin) * roomPx >= leastPx) ??
	minutesADay;

/** 'a half-hour', 'an hour', '2 h', 'a day'. */
export function cellWords(cellMin: number): string {
	if (cellMin === 30) return "a half-hour";
	if (cellMin === 60) return "an hour";
	return cellMin === minutesADay ? "a day" : `${cellMin / 60} h`;
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
