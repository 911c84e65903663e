/** What is needed to turn minutes into dates. */
interface Start {
	readonly start: string;
}

/** The wall clock at a time; read in UTC only to count: no zone is meant. */
function wallClock(atMin: number, { start }: Start): string {
	const at = new Date(`${start}:00Z`);
	at.setUTCMinutes(at.getUTCMinutes() + Math.round(atMin));
	return at.toISOString();
}

/** `2026-03-05`. */
export const dateAt = (atMin: number, start: Start): string =>
	wallClock(atMin, start).slice(0, 10);

/** `2026-03-05T14:00`. */
export const dateTimeAt = (atMin: number, start: Start): string =>
	wallClock(atMin, start).slice(0, 16);
