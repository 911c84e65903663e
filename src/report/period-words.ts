import { durationWords, plainNumber } from "../charts/index.ts";

/** '2 h', '3.5 h', '50 min': a period as a regimen is spoken of. */
export function periodWords(minutes: number): string {
	return minutes >= 60 && minutes % 6 === 0 && minutes < 48 * 60
		? `${plainNumber(minutes / 60, 1)} h`
		: durationWords(minutes);
}
