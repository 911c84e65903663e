import { existsSync, lstatSync, mkdtempSync, readdirSync, readFileSync, rmdirSync, statSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import type { Problem } from "../../scenario/index.ts";
import type { Typed } from "../options/options.ts";
import { CouldNotFinish, codeOf, reasonOf, refuse } from "../terminal/failure.ts";
import { fileName, quoted } from "../terminal/quoted.ts";
import { uninterrupted } from "./uninterrupted.ts";

/** Commands that write a report. */
const reportKinds = ["day", "compare", "sweep", "supply", "drill"] as const;
export type ReportKind = (typeof reportKinds)[number];

/**
 * The folder of a report: as it was named, else `usual` in out/; null where none is written. Adds to `problems` what keeps it
 * from being written there. Throws CouldNotFinish where the disk is full already.
 */
export async function folderFor(
	kind: ReportKind,
	{ out, json, force }: Typed,
	usual: string | null,
	title: string | null,
	problems: Problem[],
): Promise<string | null> {
	const folder = out ?? (json === true || usual === null ? null : join("out", usual));
	if (folder !== null) await uninterrupted(() => checkFolder(folder, kind, title, force === true, problems));
	return folder;
}

/**
 * Adds to `problems` what keeps a report of `title` from being written to `folder`: a file in its place, another scenario's
 * report, foreign files, a place where nothing can be written. Where `title` is null the scenario could not be read, and
 * whose report is there does not matter yet.
 */
function checkFolder(
	folder: string,
	kind: ReportKind,
	title: string | null,
	force: boolean,
	problems: Problem[],
): void {
	const taken = (received: string) =>
		refuse(problems, "--out", "a new folder, or one with an earlier report of this scenario", received);
	const shown = fileName(folder);
	if (folder === "") {
		taken("an empty name");
		return;
	}
	try {
		const status = statSync(folder, { throwIfNoEntry: false });
		if (status === undefined && lstatSync(folder, { throwIfNoEntry: false }))
			taken(`${shown}, which is a link to nothing`);
		else if (status?.isDirectory() === false) taken(`${shown}, which is a file`);
		else if (status !== undefined) {
			const names = readdirSync(folder).filter((name) => !name.startsWith("."));
			const there = reportIn(folder);
			const same = there?.kind === kind && there.title === title;
			const other = there?.kind === kind ? "" : `, written by ${there?.kind}`;
			if (names.length > 0 && !force && title !== null && !same)
				taken(
					there === null
						? `${shown}, which holds other files (--force writes there all the same)`
						: `${shown}, which holds the report of ${quoted(there.title)}${other} (--force overwrites it)`,
				);
		}
		// Permissions alone do not tell: only trying does. It is not tried for an input that will be refused.
		if (problems.length === 0) tryPlace(folder);
	} catch (error) {
		throwIfDiskFails(error, folder);
		refuse(problems, "--out", "a folder that reports can be written to", `${shown}: ${reasonOf(error)}`);
	}
}

/** Makes a folder at the nearest place that is there already, and takes it away again. Throws what the system says against it. */
export function tryPlace(folder: string): void {
	const place = resolve(folder);
	const parent = dirname(place);
	if (!existsSync(place) && parent !== place) tryPlace(parent);
	else rmdirSync(mkdtempSync(join(place, ".trial-")));
}

/** Throws CouldNotFinish where it is the disk that is full or broken; what else is against a folder is for the user to mend. */
export function throwIfDiskFails(error: unknown, folder: string): void {
	if (["ENOSPC", "EDQUOT", "EIO"].includes(codeOf(error)))
		throw new CouldNotFinish(`the report could not be written to ${fileName(folder)}: ${reasonOf(error)}`);
}

/** The report that a folder holds; null where it holds none. */
function reportIn(folder: string): { readonly kind: ReportKind; readonly title: string } | null {
	for (const kind of reportKinds) {
		// The file that holds its result, and the part of it that has the title.
		const [result, about] = kind === "drill" ? ["debrief", "case"] : [kind, "scenario"];
		const title = titleIn(join(folder, `${result}.json`), about);
		if (title !== null) return { kind, title };
	}
	return null;
}

function titleIn(path: string, about: string): string | null {
	try {
		if (!statSync(path).isFile()) return null;
		const result: unknown = JSON.parse(readFileSync(path, "utf8"));
		const part = (result as Record<string, { title?: unknown }> | null)?.[about]; // looked at, not trusted
		return typeof part?.title === "string" ? part.title : null;
	} catch {
		return null;
	}
}
