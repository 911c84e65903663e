/** What `page` has written into the file beside the program: the scenario it opens with. */
export interface OwnData {
	readonly version: string;
	readonly scenario: string;
}

/** Reads it from the page; throws where the file was damaged. */
export function ownData(document: Document): OwnData {
	const text = document.getElementById("workbench-data")?.textContent ?? "";
	const data = JSON.parse(text) as OwnData; // the command page has written it
	return { version: String(data.version), scenario: String(data.scenario) };
}
