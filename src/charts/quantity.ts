/** '−3.2', '550', '0.64': as many digits as `decimals` allows (tens where it is −1), a true minus, no trailing zeros. */
export function plainNumber(value: number, decimals: number): string {
	const step = 10 ** Math.max(0, -decimals);
	const text = String(
		Number((Math.abs(value) / step).toFixed(Math.max(0, decimals))) * step,
	);
	return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** Digits after the point that a volume deserves: tenths below 10 mL, whole mL above. */
const volumeDecimals = (volumeMl: number): number =>
	Math.abs(volumeMl) < 9.95 ? 1 : 0;

/** '4.3', '550': the number of a volume in mL. */
export const volumeNumber = (volumeMl: number): string =>
	plainNumber(volumeMl, volumeDecimals(volumeMl));

/** '4.3 mL', '550 mL', and litres from 10 L: '12.4 L'. */
export function volumeWords(volumeMl: number): string {
	if (Math.abs(volumeMl) >= 10_000)
		return `${plainNumber(volumeMl / 1000, 1)} L`;
	return `${volumeNumber(volumeMl)} mL`;
}

/** The signed value that the trade writes: depth 125 is '−125 mmHg'. */
export const depthWords = (depthMmHg: number): string =>
	`${plainNumber(-depthMmHg, 0)} mmHg`;

/** '1 fill', '11 fills', '2.5 fills'. */
export function counted(count: number, one: string, many = `${one}s`): string {
	const number = plainNumber(count, 1);
	return `${number} ${number === "1" ? one : many}`;
}

const smallNumbers = [
	"no",
	"one",
	"two",
	"three",
	"four",
	"five",
	"six",
	"seven",
	"eight",
	"nine",
	"ten",
];

/** 'one', 'ten', '11': a whole number inside a sentence. */
export const numberWord = (count: number): string =>
	smallNumbers[count] ?? String(count);
