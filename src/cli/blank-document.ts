import { JSDOM } from "jsdom";

/** A document that lends its elements to a report. */
export const blankDocument = (): Document =>
	new JSDOM("<!doctype html><html lang='en'><head></head><body></body></html>")
		.window.document;
