import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { maxScenarioBytes, type Problem, scenarioText, tooLarge } from "../../scenario/index.ts";
import { codeOf, reasonOf } from "../terminal/failure.ts";

const standardInput = 0;

/** The text of a scenario file, or what keeps it from being read. A file is refused by its size before it is read. */
export function readScenarioFile(file: string): { readonly text: string } | { readonly problem: Problem } {
	const unreadable = (received: string): { problem: Problem } => ({
		problem: { path: "", expected: "a scenario file that can be read", received },
	});
	// Opening /dev/stdin by its name fails where it is a socket, which it is under some parents.
	const given = file === "-" || file === "/dev/stdin";
	let handle = standardInput;
	try {
		if (!given) handle = openSync(file, "r");
	} catch (error) {
		return unreadable(`nothing: ${reasonOf(error)}`);
	}
	try {
		const status = fstatSync(handle);
		if (status.isDirectory()) return unreadable("a folder");
		if (status.isFile() && status.size > maxScenarioBytes) return { problem: tooLarge(status.size) };
		// A pipe has no size: one byte more than is allowed is enough to know.
		const bytes = new Uint8Array(maxScenarioBytes + 1);
		let length = 0;
		for (let read = -1; read !== 0 && length < bytes.length; length += read) read = readSome(handle, bytes, length);
		if (length > maxScenarioBytes) return { problem: { ...tooLarge(length), received: "more" } };
		return { text: scenarioText(bytes.subarray(0, length)) };
	} catch (error) {
		return unreadable(`nothing: ${reasonOf(error)}`);
	} finally {
		if (!given) closeSync(handle);
	}
}

/** Reads what there is, waiting for it where a parent left its pipe in a mode that does not wait. */
function readSome(handle: number, bytes: Uint8Array, from: number): number {
	for (;;) {
		try {
			return readSync(handle, bytes, from, bytes.length - from, null);
		} catch (error) {
			if (codeOf(error) === "EOF") return 0;
			if (codeOf(error) !== "EAGAIN") throw error;
			Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 10);
		}
	}
}
