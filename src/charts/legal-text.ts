/** Characters that XML 1.0 forbids even when escaped (production [2] Char of the W3C recommendation). */
const illegal = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

/** The text with a replacement sign for each character that no XML file may hold, lone surrogates included. */
export const legalText = (text: string): string =>
	text.replace(illegal, "\uFFFD");
