const width = 100;

/** A sentence broken into lines, each after `lead`, with a line end. */
export function wrapped(text: string, lead = ""): string {
	let lines = "";
	let line = lead;
	for (const word of text.split(" ")) {
		const gap = line === lead ? "" : " ";
		if (line !== lead && line.length + gap.length + word.length > width) {
			lines += `${line}\n`;
			line = `${lead}${word}`;
		} else line += gap + word;
	}
	return `${lines}${line}\n`;
}
