import { basename } from "node:path";

/** The name of a scenario's file without its ending; null where that is no name for a folder. */
export function scenarioStem(file: string): string | null {
	const name = basename(file).replace(/\.(ya?ml|json)$/i, "");
	return ["", ".", "..", "-"].includes(name) ? null : name;
}
