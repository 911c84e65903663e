import { randomBytes } from "node:crypto";
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { CouldNotFinish, reasonOf } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { uninterrupted } from "./uninterrupted.ts";

/** Writes files, and lets no interrupt come in the middle. Throws CouldNotFinish. */
export const writeFolder = (folder: string, files: Readonly<Record<string, string>>): Promise<void> =>
	uninterrupted(() => write(folder, files));

/** Writes all files under another name, then moves them: nothing half-written is ever seen under its own. */
function write(folder: string, files: Readonly<Record<string, string>>): void {
	const target = resolve(folder);
	// Inside a folder that is there, so that both are on one disk; else beside it, so that the folder appears whole.
	const near = existsSync(target) ? target : dirname(target);
	const partial = join(near, `.partial-${randomBytes(6).toString("hex")}`);
	try {
		mkdirSync(near, { recursive: true });
		mkdirSync(partial);
		for (const [name, text] of Object.entries(files)) writeFileSync(join(partial, name), text, { flush: true });
		if (existsSync(target) || !appears(partial, target))
			for (const name of Object.keys(files)) renameSync(join(partial, name), join(target, name));
	} catch (error) {
		throw new CouldNotFinish(`the report could not be written to ${fileName(folder)}: ${reasonOf(error)}`);
	} finally {
		rmSync(partial, { recursive: true, force: true });
	}
}

/** Gives a folder its name; false where another run was there first. */
function appears(partial: string, target: string): boolean {
	try {
		renameSync(partial, target);
		return true;
	} catch (error) {
		if (existsSync(target)) return false;
		throw error;
	}
}
