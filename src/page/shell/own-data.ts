import type { Beside } from "../editor/history.ts";

/** What `page` has written into the file beside the program: the scenarios it opens with. */
export interface OwnData {
	readonly version: string;
	/** Text of a day. */
	readonly scenario: string;
	/** Text of a ward, and the files that it names. */
	readonly ward: string;
	readonly beside: Beside;
	readonly opens: "Day" | "Stores";
}

/** Reads it from the page; throws where the file was damaged. */
export function ownData(document: Document): OwnData {
	const text = document.getElementById("workbench-data")?.textContent ?? "";
	const data = JSON.parse(text) as OwnData; // the command page has written it
	return {
		version: String(data.version),
		scenario: String(data.scenario),
		ward: String(data.ward),
		beside: { ...data.beside },
		opens: data.opens === "Stores" ? "Stores" : "Day",
	};
}
