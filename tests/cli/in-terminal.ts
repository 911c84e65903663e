import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { main, root } from "./program.ts";

const python = join(root, "tests", "cli", "pseudo-terminal.py");

/** Whether a terminal can be made here; where it cannot, the tests that need one say so aloud. */
export const canTerminal =
	spawnSync("python3", ["-c", "import pty, fcntl, termios, os; os.waitstatus_to_exitcode"]).status === 0;
if (!canTerminal)
	console.warn("SKIPPED: the program in a real terminal. There is no python3 (3.9 or later) with a pty here.");

export interface Shown {
	readonly status: number | null;
	/** What the terminal was sent, with line ends of this project. */
	readonly text: string;
}

/** Runs a command in a terminal that is `columns` wide. */
export function inTerminal(
	command: readonly string[],
	{
		columns,
		cwd = root,
		env = {},
	}: { readonly columns: number; readonly cwd?: string; readonly env?: Readonly<Record<string, string | undefined>> },
): Shown {
	const { status, stdout } = spawnSync("python3", [python, String(columns), ...command], {
		cwd,
		encoding: "utf8",
		env: { ...process.env, TERM: "xterm", NO_COLOR: undefined, ...env },
	});
	return { status, text: stdout.replaceAll("\r\n", "\n") };
}

/** The built program as words of a command. */
export const program = (...words: readonly string[]): string[] => [process.execPath, main, ...words];
