import type { Spread } from "../results/index.ts";

/** '−3.2', '550', '0.64': as many digits as `decimals` allows (tens where it is −1), a true minus, no trailing zeros. */
export function plainNumber(value: number, decimals: number): string {
	const step = 10 ** Math.max(0, -decimals);
	const text = String(Number((Math.abs(value) / step).toFixed(Math.max(0, decimals))) * step);
	return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** Digits after the point that a volume deserves: tenths below 10 mL, whole mL above. */
const volumeDecimals = (volumeMl: number): number => (Math.abs(volumeMl) < 9.95 ? 1 : 0);

/** '4.3', '550': the number of a volume in mL. */
export const volumeNumber = (volumeMl: number): string => plainNumber(volumeMl, volumeDecimals(volumeMl));

/** '4.3 mL', '550 mL', and litres from 10 L: '12.4 L'. */
export function volumeWords(volumeMl: number): string {
	if (Math.abs(volumeMl) >= 10_000) return `${plainNumber(volumeMl / 1000, 1)} L`;
	return `${volumeNumber(volumeMl)} mL`;
}

/** The signed value that the trade writes: depth 125 is '−125 mmHg'. */
export const depthWords = (depthMmHg: number): string => `${plainNumber(-depthMmHg, 0)} mmHg`;

/** '1 fill', '11 fills', '2.5 fills'. */
export function counted(count: number, one: string, many = `${one}s`): string {
	const number = plainNumber(count, 1);
	return `${number} ${number === "1" ? one : many}`;
}

const smallNumbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** 'one', 'ten', '11': a whole number inside a sentence. */
export const numberWord = (count: number): string => smallNumbers[count] ?? String(count);

/** '18 %', '<1 %', '>99 %'; exact 0 and 1 are written as they are. */
export function percentWords(probability: number): string {
	if (probability > 0 && probability < 0.01) return "<1 %";
	if (probability < 1 && probability > 0.99) return ">99 %";
	return `${Math.round(probability * 100)} %`;
}

/** 'between 4 and 12 mL', or '9 mL' where both ends read alike. */
export function rangeWords(low: number, high: number, number: (value: number) => string, unit = ""): string {
	const [from, to] = [number(low), number(high)];
	const tail = unit === "" ? "" : ` ${unit}`;
	return from === to ? `${to}${tail}` : `between ${from} and ${to}${tail}`;
}

/** ' (between 520 mL and 560 mL)', or nothing where both ends read alike. */
export function spreadRange(spread: Pick<Spread, "p10" | "p90">, words: (value: number) => string): string {
	const [low, high] = [words(spread.p10), words(spread.p90)];
	return low === high ? "" : ` (between ${low} and ${high})`;
}

/** Digits after the point that show three figures of the largest of some numbers: 0 from 100, 1 from 10, 2 from 1 … 6 at most. */
export function threeFigures(values: readonly number[]): number {
	const most = Math.max(0, ...values.filter(Number.isFinite).map(Math.abs));
	if (most === 0) return 0;
	return Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(most))));
}

/** '11.2 mL', '11.2' where it has no unit; what is no number is 'none'. */
export function figureWords(value: number, decimals: number, unit: string): string {
	if (!Number.isFinite(value)) return "none";
	const number = plainNumber(value, decimals);
	return unit === "" ? number : `${number} ${unit}`;
}

/** 'Washes, a day': a measure with its unit, as a heading. */
export const measureHeading = (label: string, unit: string): string => (unit === "" ? label : `${label}, ${unit}`);

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
