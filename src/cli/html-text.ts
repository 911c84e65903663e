const named: Readonly<Record<string, string>> = {
	"&": "&amp;",
	"<": "&lt;",
	">": "&gt;",
	'"': "&quot;",
};

/** A text as it stands in HTML. */
export const htmlText = (text: string): string =>
	text.replace(/[&<>"]/gu, (sign) => named[sign] ?? sign);
