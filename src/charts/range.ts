/** 'between 4 and 12 mL', or '9 mL' where both ends read alike. */
export function rangeWords(
	low: number,
	high: number,
	number: (value: number) => string,
	unit = "",
): string {
	const [from, to] = [number(low), number(high)];
	const tail = unit === "" ? "" : ` ${unit}`;
	return from === to ? `${to}${tail}` : `between ${from} and ${to}${tail}`;
}
