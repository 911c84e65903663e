/**
 * The notices of the packages that went into a bundle, each paragraph once: most of them share all but a line or two.
 * `text` is what the bundler collects, comment by comment; what comes back can stand in a comment of HTML.
 */
export function notices(text: string): string {
	const paragraphs = text
		.replaceAll(/^ {2}(?:\/\*\*?|\*\/|\*) ?/gmu, "")
		.split(/\n\s*\n/u)
		.map((paragraph) => paragraph.trim());
	return [...new Set(paragraphs)]
		.filter((paragraph) => paragraph !== "")
		.join("\n\n")
		.replaceAll("--", "- -");
}
