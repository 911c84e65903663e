// Compares two folders that outputs.mjs has written, byte for byte: node tests/same-bytes/compare.mjs BEFORE AFTER
// Every file that differs, is missing or is new is listed, with the first line that differs. Exit status 1 where there is any.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const [before, after] = process.argv.slice(2);
if (after === undefined) {
	console.error("node tests/same-bytes/compare.mjs BEFORE AFTER");
	process.exit(2);
}

/** Paths of all files of a folder. */
const filesIn = (folder) =>
	readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((entry) => !entry.isDirectory())
		.map((entry) => join(entry.parentPath, entry.name))
		.map((path) => path.slice(join(folder, "/").length));

/** Where two texts part, and what stands there in each: lines of a report can be long. */
function parting(old, now) {
	const [oldLines, nowLines] = [old.split("\n"), now.split("\n")];
	const line = oldLines.findIndex((text, i) => text !== nowLines[i]);
	const at = line < 0 ? oldLines.length : line;
	const [a, b] = [oldLines[at], nowLines[at]];
	let column = 0;
	while (column < (a ?? "").length && a[column] === b?.[column]) column++;
	const shown = (text) =>
		text === undefined
			? "(the file has ended)"
			: `${column > 60 ? "…" : ""}${text.slice(Math.max(0, column - 60), column + 100)}`;
	return `line ${at + 1}, column ${column + 1}\n  - ${shown(a)}\n  + ${shown(b)}`;
}

const [olds, news] = [before, after].map((folder) => new Set(filesIn(folder)));
if (olds.size === 0) throw new Error(`there is nothing in ${before}`);
const all = [...new Set([...olds, ...news])].sort();
const told = all.flatMap((file) => {
	if (!news.has(file)) return [`missing: ${file}`];
	if (!olds.has(file)) return [`new: ${file}`];
	const [old, now] = [before, after].map((at) => readFileSync(join(at, file)));
	return old.equals(now) ? [] : [`differs: ${file}: ${parting(old.toString(), now.toString())}`];
});
for (const one of told) console.log(one);
console.log(
	told.length === 0 ? `The same: all ${olds.size} files.` : `Not the same: ${told.length} of ${all.length} files.`,
);
process.exit(told.length === 0 ? 0 : 1);
