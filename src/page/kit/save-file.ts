import type { HtmlMaker } from "../../report/kit/html-element.ts";
import { pressed } from "./controls.ts";

/** A button that hands a text to the reader as a file, where there is one; nothing is sent anywhere. */
export const saveButton = (
	html: HtmlMaker,
	words: string,
	name: string | (() => string),
	text: () => string | null,
): HTMLButtonElement =>
	pressed(html, words, () => {
		const said = text();
		if (said !== null) saveFile(html, typeof name === "string" ? name : name(), said);
	});

function saveFile(html: HtmlMaker, name: string, text: string): void {
	const address = URL.createObjectURL(new Blob([text], { type: "text/plain;charset=utf-8" }));
	const link = html("a", { href: address, download: name });
	html.document.body.append(link);
	link.click();
	link.remove();
	setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** The title as the beginning of a file's name. */
export const fileStem = (title: string): string =>
	title
		.toLowerCase()
		.normalize("NFKD")
		.replace(/[^a-z0-9]+/gu, "-")
		.replace(/^-+|-+$/gu, "")
		.slice(0, 60) || "scenario";
