const least = -1074;
const table = new Float64Array(1024 - least);
let power = Number.MIN_VALUE;
for (let i = 0; i < table.length; i++) {
	table[i] = power;
	power *= 2;
}

/** 2^k, exact, for a whole k of −1074…1023. */
export function powerOfTwo(k: number): number {
	return table[k - least];
}
