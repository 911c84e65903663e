const mostOctets = 75;

/**
 * Lines folded after RFC 5545, 3.1: none longer than 75 octets of UTF-8, the space at the head of a folded one counted in,
 * and never inside a sign. (The library folds one octet too late, since it leaves that space out.)
 */
export function folded(text: string): string {
	const lines = text.replaceAll("\r\n ", "").split("\r\n");
	return lines.map(foldedLine).join("\r\n");
}

function foldedLine(line: string): string {
	let out = "";
	let octets = 0;
	for (const sign of line) {
		const size = octetsOf(sign.codePointAt(0) ?? 0);
		if (octets + size > mostOctets) {
			out += "\r\n ";
			octets = 1;
		}
		out += sign;
		octets += size;
	}
	return out;
}

/** Octets of a code point in UTF-8. */
const octetsOf = (point: number): number =>
	point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
