import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { constants, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll } from "vitest";
import { run } from "../../src/cli/program.ts";
import { sentence } from "../../src/scenario/index.ts";

export const root = fileURLToPath(new URL("../../", import.meta.url));
export const scenarios = join(root, "scenarios");
export const names = readdirSync(scenarios).filter((name) => name.endsWith(".yaml"));
export const scenario = (name: string) => join(scenarios, `${name}.yaml`);
export const main = join(root, "dist", "cli", "main.js");

export interface Ran {
	readonly status: number | null;
	readonly signal: NodeJS.Signals | null;
	readonly out: string;
	readonly err: string;
}

/** What a shell calls the status of a process that ended so: 128 and the number of the signal. */
export const shellStatus = ({ status, signal }: Ran) =>
	status ?? (signal === null ? null : 128 + constants.signals[signal]);

export interface Spawning {
	readonly cwd?: string;
	readonly input?: string;
	readonly env?: Readonly<Record<string, string>>;
	/** Is given the process as soon as it runs. */
	readonly meanwhile?: (child: ChildProcess) => void;
}

/** Runs the built program in a process of its own. */
export function spawned(words: readonly string[], { cwd, input, env, meanwhile }: Spawning = {}): Promise<Ran> {
	if (!existsSync(main)) throw new Error("the program is not built: npm run build");
	return new Promise((resolve, reject) => {
		const child = spawn(process.execPath, [main, ...words], { cwd, env: { ...process.env, ...env } });
		let [out, err] = ["", ""];
		child.stdout.setEncoding("utf8").on("data", (text) => {
			out += text;
		});
		child.stderr.setEncoding("utf8").on("data", (text) => {
			err += text;
		});
		child.stdin.on("error", () => {}).end(input ?? "");
		child.on("error", reject).on("close", (status, signal) => resolve({ status, signal, out, err }));
		meanwhile?.(child);
	});
}

/** Runs a line of the shell in which $SLACKWATER is the built program. */
export function shell(line: string, cwd: string): Promise<Ran> {
	return new Promise((resolve, reject) => {
		const child = spawn("bash", ["-c", line], {
			cwd,
			env: { ...process.env, SLACKWATER: `${process.execPath} ${main}` },
		});
		let [out, err] = ["", ""];
		child.stdout.on("data", (text) => {
			out += text;
		});
		child.stderr.on("data", (text) => {
			err += text;
		});
		child.on("error", reject).on("close", (status, signal) => resolve({ status, signal, out, err }));
	});
}

/** Runs the program in this process: the same but for what the start of a process adds. */
export async function here(...words: string[]): Promise<Ran> {
	let [out, err] = ["", ""];
	// By hand: the runner's own spies are never let go, which a hundred thousand runs cannot afford.
	const stop = [
		listen(process.stdout, (text) => {
			out += text;
		}),
		listen(process.stderr, (text) => {
			err += text;
		}),
	];
	try {
		return { status: await run(words), signal: null, out, err };
	} finally {
		for (const one of stop) one();
	}
}

/** Hands what is written to a stream to `take` instead, until the function that it returns is called. */
function listen(stream: NodeJS.WriteStream, take: (text: string | Uint8Array) => void): () => void {
	const { write } = stream;
	stream.write = (text: string | Uint8Array) => {
		take(text);
		return true;
	};
	return () => {
		stream.write = write;
	};
}

const folders: string[] = [];
afterAll(() => {
	for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A temporary folder that goes when the tests of the file are done. */
export function temporary(): string {
	const folder = mkdtempSync(join(tmpdir(), "slackwater-test-"));
	folders.push(folder);
	return folder;
}

export function written(folder: string, name: string, text: string): string {
	const file = join(folder, name);
	writeFileSync(file, text);
	return file;
}

/** Every file of a folder, by name; a folder in it is there as its name alone. */
export const filesOf = (folder: string): Record<string, string> =>
	Object.fromEntries(
		readdirSync(folder, { withFileTypes: true })
			.sort((a, b) => (a.name < b.name ? -1 : 1))
			.map((entry) => [entry.name, entry.isFile() ? readFileSync(join(folder, entry.name), "utf8") : ""]),
	);

export const reportNames = [
	"alarm-bins.csv",
	"alarms.csv",
	"assumptions.csv",
	"changes.csv",
	"day.ics",
	"day.json",
	"day.svg",
	"phases.csv",
	"report.html",
	"schedule.csv",
	"totals.csv",
];

export const lines = (text: string) => text.split("\n").slice(0, -1);

/** Whether a text is a sentence of the program's own: where, expected, received. */
export const isSentence = (line: string) =>
	new RegExp(sentence({ path: ".+", expected: ".+", received: ".+" })).test(line) &&
	!/\bat .*:\d+:\d+|Error:|commander/.test(line);
