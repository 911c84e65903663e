// Writes down everything that the built program says and writes: every command on every kept scenario, wrong input included.
//   npm run build && node tests/same-bytes/outputs.mjs AFTER [DIST]
// DIST is the built program, that of the project where none is named; AFTER is a new folder, with one folder a run. A change
// that only rearranges the program must leave every byte as it was: compare.mjs tells. What a page holds of the program itself
// is cut out (own-words.mjs). It takes some minutes on two cores.
import { spawn } from "node:child_process";
import {
	cpSync,
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	realpathSync,
	rmSync,
	symlinkSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { ownWords } from "./own-words.mjs";
import { runs } from "./runs.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const here = import.meta.dirname;
const [target, dist = join(root, "dist")] = process.argv.slice(2);
if (target === undefined || existsSync(target) || !existsSync(dist)) {
	console.error("node tests/same-bytes/outputs.mjs AFTER [DIST], where AFTER is not there yet and DIST is built");
	process.exit(2);
}

/** A place where the built program finds what lies beside it in the package, wherever it was built. */
const place = realpathSync(mkdtempSync(join(tmpdir(), "slackwater-")));
const beside = (name) => join(place, "package", name);
cpSync(dist, beside("dist"), { recursive: true });
for (const name of ["node_modules", "scenarios", "package.json"]) symlinkSync(join(root, name), beside(name));
cpSync(join(here, "library.mjs"), beside("library.mjs"));
const { bin } = JSON.parse(readFileSync(beside("package.json"), "utf8"));
const terminal = pathToFileURL(join(here, "terminal.mjs")).href;

/** Runs one step; what it said, and its status. */
function ran({ words, script, input = "", columns }, cwd) {
	const shown = columns === undefined ? [] : ["--import", terminal];
	const program = beside(script ?? bin.slackwater);
	return new Promise((resolve, reject) => {
		const child = spawn(process.execPath, [...shown, program, ...words], {
			cwd,
			// Nothing of the machine's own.
			env: { PATH: process.env.PATH, TZ: "UTC", COLUMNS: `${columns ?? ""}` },
		});
		const [out, err] = [[], []];
		child.stdout.on("data", (bytes) => out.push(bytes));
		child.stderr.on("data", (bytes) => err.push(bytes));
		child.stdin.on("error", () => {}).end(input); // it may not want to read
		child
			.on("error", reject)
			.on("close", (status, signal) =>
				resolve({ stdout: Buffer.concat(out), stderr: Buffer.concat(err), status: `${status ?? signal}\n` }),
			);
	});
}

function write(path, bytes) {
	mkdirSync(dirname(path), { recursive: true });
	writeFileSync(path, bytes);
}

/** Runs the steps of a run one after the other in a folder of their own, and writes down all that comes of it. */
async function keep({ name, steps, files = {} }, number) {
	const cwd = join(place, String(number));
	mkdirSync(cwd);
	symlinkSync(join(root, "scenarios"), join(cwd, "scenarios"));
	for (const [file, text] of Object.entries(files)) writeFileSync(join(cwd, file), text);
	const kept = join(target, name);
	let said = "";
	for (const [i, step] of steps.entries()) {
		const { words } = step;
		const told = await ran({ ...step, words: typeof words === "function" ? words(said) : words }, cwd);
		said = told.stdout.toString();
		const before = steps.length === 1 ? "" : `${i + 1}.`;
		for (const [what, bytes] of Object.entries(told)) write(join(kept, `${before}${what}`), bytes);
	}
	for (const entry of readdirSync(cwd, { recursive: true, withFileTypes: true })) {
		const path = join(entry.parentPath, entry.name);
		const file = relative(cwd, path);
		if (!entry.isFile() || file in files) continue;
		const bytes = readFileSync(path);
		const isPage = file.endsWith(".html");
		write(join(kept, "files", file), isPage ? ownWords(bytes.toString()) : bytes);
	}
	rmSync(cwd, { recursive: true });
}

const all = runs();
const names = all.map(({ name }) => name);
const twice = names.filter((name, i) => names.indexOf(name) !== i);
if (twice.length > 0) throw new Error(`named twice: ${twice.join("; ")}`);

/** Types have no bytes of their own; their names do. */
write(
	join(target, "names of the library's types"),
	[
		...new Set(
			readFileSync(beside("dist/index.d.ts"), "utf8")
				.replaceAll(/\/\*[\s\S]*?\*\/|"[^"]*"/gu, "")
				.match(/\b[A-Z]\w*/gu),
		),
	]
		.sort()
		.join("\n"),
);
const open = all.entries();
const worker = async () => {
	for (const [number, run] of open) await keep(run, number);
};
try {
	await Promise.all([worker(), worker()]);
} finally {
	rmSync(place, { recursive: true });
}
console.log(`${all.length} runs are in ${target}`);
