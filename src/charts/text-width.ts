/**
 * Advance widths of ASCII from the space on, in hundredths of the font size: those of DejaVu Sans, the widest of the typefaces
 * that a system without others falls back to (measured in a browser).
 */
const widths = [
	32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64,
	64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 53, 100, 68, 69, 70, 77, 63,
	58, 77, 75, 29, 29, 66, 56, 86, 75, 79, 60, 79, 69, 63, 61, 73, 68, 99, 69,
	61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63, 63, 28, 28, 58,
	28, 97, 63, 61, 63, 63, 41, 52, 39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84,
];
const firstCode = 32;
/** A typeface may be wider still. */
const spare = 1.06;

/** Room in px that a text takes at the most, whatever its typeface, since a chart is drawn without a screen. */
export function textWidth(text: string, fontSizePx: number): number {
	let hundredths = 0;
	for (const character of text) hundredths += characterWidth(character);
	return (hundredths / 100) * fontSizePx * spare;
}

function characterWidth(character: string): number {
	const code = character.codePointAt(0) ?? 0;
	const width = widths[code - firstCode];
	if (width !== undefined) return width;
	if (code >= 0x2e80) return 105;
	return "½×≥≤±−→…".includes(character) ? 90 : 64;
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
