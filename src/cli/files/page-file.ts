import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { ownFile } from "./own.ts";

const named: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** A text as it stands in HTML. */
const htmlText = (text: string): string => text.replace(/[&<>"]/gu, (sign) => named[sign] ?? sign);

/** The parts of the workbench that the build has made: its script, which is its worker too, and what its style sheet adds to a report's. */
const part = (name: string) => readFileSync(ownFile(`dist/page/${name}`), "utf8");

/** What the file says of itself, and the scenarios that it opens with. */
export interface PageData {
	readonly format: "slackwater/workbench@1";
	readonly version: string;
	readonly title: string;
	/** Text of a day. */
	readonly scenario: string;
	/** Text of a ward, and of the files that it names, by the name that stands in it. */
	readonly ward: string;
	readonly beside: { readonly [name: string]: string };
	/** The view that is looked at first. */
	readonly opens: "Day" | "Stores";
}

/** `workbench.html`: one file that asks for nothing. The policy allows its own script by its hash, and a worker made of that script. */
export function pageFile(data: PageData, reportStyle: string): string {
	const script = part("main.bundle.js").trim();
	const style = `${reportStyle}\n${part("workbench.bundle.css").trim()}`;
	const hash = createHash("sha256").update(script).digest("base64");
	const policy = `default-src 'none'; script-src 'sha256-${hash}'; worker-src blob:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'`;
	return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${htmlText(data.title)}: workbench</title>
<!-- ${notices(part("main.bundle.js.LEGAL.txt"))} -->
<style>${style}</style>
<script type="application/json" id="workbench-data">${dataText(data)}</script>
</head>
<body>
<p>This page needs a browser that runs scripts. It runs only its own, and asks for nothing outside this file.</p>
<script>${script}</script>
</body>
</html>
`;
}

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

/** JSON in which nothing can end the element that it stands in. */
const dataText = (data: PageData) => JSON.stringify(data).replaceAll("<", "\\u003c");

type PageMark = Pick<PageData, "format" | "version" | "title">;

/** What a file that `page` has written says of itself; null where it is something else. */
export function pageDataIn(html: string): PageMark | null {
	const [, text] = /<script type="application\/json" id="workbench-data">([^<]*)<\/script>/u.exec(html) ?? [];
	if (text === undefined) return null;
	try {
		const data = JSON.parse(text) as Partial<PageMark> | null; // looked at, not trusted
		return data?.format === "slackwater/workbench@1" && typeof data.title === "string"
			? { format: data.format, version: String(data.version), title: data.title }
			: null;
	} catch {
		return null;
	}
}
