import { plainNumber } from "./numbers.ts";

/** '31 s', '5.8 min', '17 min', '2 h 30 min', '3 d 4 h': as much as a reader at the bedside uses. */
export function durationWords(durationMin: number): string {
	if (durationMin < 0) return `−${durationWords(-durationMin)}`;
	if (durationMin < 1) {
		const seconds = Math.round(durationMin * 60);
		return seconds === 60 ? "1 min" : `${seconds} s`;
	}
	if (durationMin < 9.95) return `${Number(durationMin.toFixed(1))} min`;
	const minutes = Math.round(durationMin);
	if (minutes < 60) return `${minutes} min`;
	if (minutes < 48 * 60) return joined(Math.floor(minutes / 60), "h", minutes % 60, "min");
	const hours = Math.round(durationMin / 60);
	return joined(Math.floor(hours / 24), "d", hours % 24, "h");
}

const joined = (large: number, largeUnit: string, small: number, smallUnit: string): string =>
	small === 0 ? `${large} ${largeUnit}` : `${large} ${largeUnit} ${small} ${smallUnit}`;

/** '2 h', '3.5 h', '50 min': a period as a regimen is spoken of. */
export function periodWords(minutes: number): string {
	return minutes >= 60 && minutes % 6 === 0 && minutes < 48 * 60
		? `${plainNumber(minutes / 60, 1)} h`
		: durationWords(minutes);
}
