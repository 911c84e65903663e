/** A number, and the two 32-bit words that it is made of. */
export const bits = new Float64Array(1);
export const words = new Int32Array(bits.buffer);
bits[0] = 1;
/** Where the machine puts the word with sign and exponent. */
export const highWord = words[1] === 0 ? 0 : 1;
/** ln 2 as a high part with zeros at its end, and the rest. */
export const ln2High = 0.6931471803691238;
export const ln2Low = 1.9082149292705877e-10;
