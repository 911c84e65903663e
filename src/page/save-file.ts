import { htmlElement } from "../report/html-element.ts";

/** Hands a text to the reader as a file; nothing is sent anywhere. */
export function saveFile(document: Document, name: string, text: string): void {
	const address = URL.createObjectURL(
		new Blob([text], { type: "text/plain;charset=utf-8" }),
	);
	const link = htmlElement(document, "a", { href: address, download: name });
	document.body.append(link);
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
