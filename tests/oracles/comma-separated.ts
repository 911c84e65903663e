// RFC 4180, section 2, rules 1 to 7 (quoted; erratum 5714, no blank after a closing quote, was read).

/** Oracle: a reader that takes nothing but the grammar: CRLF after every record, quotes doubled, nothing behind a closing quote. */
export function records(text: string): string[][] {
	const rows: string[][] = [];
	let row: string[] = [];
	let at = 0;
	while (at < text.length) {
		let cell = "";
		if (text[at] === '"') {
			for (at++; text[at] !== '"' || text[at + 1] === '"'; at++) {
				if (at >= text.length) throw new RangeError("a quote stays open");
				if (text[at] === '"') at++;
				cell += text[at];
			}
			at++;
		} else {
			const [plain] = /^[^",\r\n]*/u.exec(text.slice(at)) ?? [""];
			cell = plain;
			at += plain.length;
		}
		row.push(cell);
		if (text[at] === ",") at++;
		else if (text.startsWith("\r\n", at)) {
			rows.push(row);
			row = [];
			at += 2;
		} else throw new RangeError(`neither comma nor line end at ${at}`);
	}
	if (row.length > 0) throw new RangeError("the last record has no line end");
	return rows;
}
