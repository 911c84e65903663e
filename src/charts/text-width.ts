/**
 * Width of a text in px, estimated from shares of the font size, since a chart is drawn without a screen.
 * A little generous, so that labels which should not touch do not.
 */
export function textWidth(text: string, fontSizePx: number): number {
	let ems = 0;
	for (const character of text) ems += characterWidth(character);
	return ems * fontSizePx;
}

function characterWidth(character: string): number {
	if ("iljtfI.,:;|!'() ".includes(character)) return 0.36;
	if ("mwMW%".includes(character)) return 0.94;
	if (character >= "\u2E80") return 1.05;
	return 0.62;
}

/** The text, or as much of it as fits, with an ellipsis. */
export function fittedText(
	text: string,
	fontSizePx: number,
	roomPx: number,
): string {
	if (textWidth(text, fontSizePx) <= roomPx) return text;
	const characters = [...text];
	while (
		characters.length > 1 &&
		textWidth(`${characters.join("")}…`, fontSizePx) > roomPx
	)
		characters.pop();
	return `${characters.join("").trimEnd()}…`;
}
