const minutesADay = 1440;

/** '07:00' for 420, whatever the day. */
export function clockWords(clockMin: number): string {
	const minute =
		((Math.round(clockMin) % minutesADay) + minutesADay) % minutesADay;
	const two = (value: number): string => String(value).padStart(2, "0");
	return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

/** Minutes from the left end of a clock of 24 h that begins at `fromMin`, in 0 … 1440. */
export const onClock = (clockMin: number, fromMin: number): number =>
	(((clockMin - fromMin) % minutesADay) + minutesADay) % minutesADay;

/** A span of at most 24 h on that clock: two pieces where it passes the end, none where it is empty. */
export function clockPieces(
	startMin: number,
	endMin: number,
	fromMin: number,
): { readonly from: number; readonly to: number }[] {
	const length = Math.min(endMin - startMin, minutesADay);
	if (!(length >= 0)) return [];
	const from = onClock(startMin, fromMin);
	const to = from + length;
	return to <= minutesADay
		? [{ from, to }]
		: [
				{ from, to: minutesADay },
				{ from: 0, to: to - minutesADay },
			];
}
