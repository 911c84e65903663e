import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";

/** Bytes that are read of a file, by whatever call, while a piece of work is done. */
export async function bytesRead(file: string, work: () => Promise<void>): Promise<number> {
	const { openSync, readSync, readFileSync } = fs;
	const handles = new Set<number>();
	let bytes = 0;
	Object.assign(fs, {
		openSync: (...given: Parameters<typeof openSync>) => {
			const handle = openSync(...given);
			if (given[0] === file) handles.add(handle);
			else handles.delete(handle); // the number of one that was closed
			return handle;
		},
		readSync: (...given: Parameters<typeof readSync>) => {
			const read = readSync(...given);
			if (handles.has(given[0])) bytes += read;
			return read;
		},
		readFileSync: (...given: Parameters<typeof readFileSync>) => {
			const whole = readFileSync(...given);
			if (given[0] === file) bytes += whole.length;
			return whole;
		},
	});
	syncBuiltinESMExports();
	try {
		await work();
	} finally {
		Object.assign(fs, { openSync, readSync, readFileSync });
		syncBuiltinESMExports();
	}
	return bytes;
}
