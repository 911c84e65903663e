import { htmlElement, unbroken } from "./html-element.ts";

/** A paragraph of plain text; a number and its unit stay on one line. */
export const paragraph = (document: Document, text: string): HTMLElement =>
	htmlElement(document, "p", {}, unbroken(text));
