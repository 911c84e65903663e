import {
	existsSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	renameSync,
	rmSync,
	statSync,
	writeFileSync,
} from "node:fs";
import { dirname, join, resolve } from "node:path";
import type { Problem } from "../scenario/index.ts";
import { CouldNotFinish, reasonOf } from "./failure.ts";

/** Adds to `problems` what keeps a report of `title` from being written to `folder`: a file in its place, another scenario's report, foreign files. */
export function checkFolder(
	folder: string,
	title: string,
	force: boolean,
	problems: Problem[],
): void {
	const refuse = (
		received: string,
		expected = "a new folder, or one with an earlier report of this scenario",
	) => problems.push({ path: "--out", expected, received });
	let names: string[];
	try {
		if (!existsSync(folder)) return;
		if (!statSync(folder).isDirectory()) {
			refuse(`${folder}, which is a file`);
			return;
		}
		names = readdirSync(folder).filter((name) => !name.startsWith("."));
	} catch (error) {
		refuse(`${folder}: ${reasonOf(error)}`);
		return;
	}
	if (force || names.length === 0) return;
	const there = titleOf(folder);
	if (there === null)
		refuse(
			`${folder}, which holds other files (--force writes there all the same)`,
		);
	else if (there !== title)
		refuse(
			`${folder}, which holds the report of ${JSON.stringify(there)} (--force overwrites it)`,
		);
}

/** The title of the scenario whose report a folder holds; null where it holds none. */
function titleOf(folder: string): string | null {
	try {
		const day: unknown = JSON.parse(
			readFileSync(join(folder, "day.json"), "utf8"),
		);
		const scenario = (day as { scenario?: { title?: unknown } } | null)
			?.scenario; // looked at, not trusted
		return typeof scenario?.title === "string" ? scenario.title : null;
	} catch {
		return null;
	}
}

/** Writes the files beside their folder, then moves them in: nothing half-written is ever seen under its name. Throws CouldNotFinish. */
export function writeFolder(
	folder: string,
	files: Readonly<Record<string, string>>,
): void {
	const target = resolve(folder);
	const beside = `${target}.partial-${process.pid}`;
	try {
		mkdirSync(dirname(target), { recursive: true });
		rmSync(beside, { recursive: true, force: true });
		mkdirSync(beside);
		for (const [name, text] of Object.entries(files))
			writeFileSync(join(beside, name), text);
		if (existsSync(target))
			for (const name of Object.keys(files))
				renameSync(join(beside, name), join(target, name));
		else renameSync(beside, target);
	} catch (error) {
		throw new CouldNotFinish(
			`the report could not be written to ${folder}: ${reasonOf(error)}`,
		);
	} finally {
		rmSync(beside, { recursive: true, force: true });
	}
}
