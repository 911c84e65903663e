import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import {
	maxScenarioBytes,
	type Problem,
	scenarioText,
	tooLarge,
} from "../scenario/index.ts";
import { reasonOf } from "./failure.ts";

/** The text of a scenario file, or what keeps it from being read. A file is refused by its size before it is read. */
export function readScenarioFile(
	file: string,
): { readonly text: string } | { readonly problem: Problem } {
	const unreadable = (received: string): { problem: Problem } => ({
		problem: {
			path: "",
			expected: "a scenario file that can be read",
			received,
		},
	});
	let handle: number;
	try {
		handle = openSync(file, "r");
	} catch (error) {
		return unreadable(`${file}: ${reasonOf(error)}`);
	}
	try {
		const status = fstatSync(handle);
		if (status.isDirectory())
			return unreadable(`${file}: it is a folder, not a file`);
		if (status.isFile() && status.size > maxScenarioBytes)
			return { problem: tooLarge(status.size) };
		// A pipe has no size: one byte more than is allowed is enough to know.
		const bytes = new Uint8Array(maxScenarioBytes + 1);
		let length = 0;
		for (let read = -1; read !== 0 && length < bytes.length; length += read)
			read = readSync(handle, bytes, length, bytes.length - length, null);
		if (length > maxScenarioBytes)
			return { problem: { ...tooLarge(length), received: "more" } };
		return { text: scenarioText(bytes.subarray(0, length)) };
	} catch (error) {
		return unreadable(`${file}: ${reasonOf(error)}`);
	} finally {
		closeSync(handle);
	}
}
