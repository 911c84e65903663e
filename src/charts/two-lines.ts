/** A name on two lines, broken at the space nearest its middle. */
export function twoLines(text: string): [string, string] {
	const words = text.split(" ");
	if (words.length < 2) return [text, ""];
	const half = words.length === 2 ? 1 : Math.ceil(words.length / 2);
	return [words.slice(0, half).join(" "), words.slice(half).join(" ")];
}
