import { appendFileSync, existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Study, StudyPart, StudyTask } from "../../studies/index.ts";
import { CouldNotFinish, reasonOf } from "../terminal/failure.ts";
import { fileName } from "../terminal/quoted.ts";
import { shortDigest } from "./kept-file.ts";

/** The name of a task among those of its study. */
export const taskKey = ({ group, first, last }: StudyTask) => `${group}:${first}-${last}`;

/**
 * What is finished of a long study, kept in its report's folder while it runs: one part a line in a hidden file that is named
 * after the study, so that the same command goes on where it was stopped and another study is not taken for it. Every line
 * opens with its checksum: one that was cut off or damaged is passed over, and its part is worked out again.
 */
export class Unfinished {
	readonly parts = new Map<string, StudyPart>();
	readonly #study: string;
	readonly #path: string;
	readonly #folder: string;

	/** Throws CouldNotFinish where what was kept cannot be read. */
	constructor(folder: string, study: Study, version: string) {
		this.#study = shortDigest(JSON.stringify([version, study]));
		this.#folder = folder;
		this.#path = join(folder, `.unfinished-${this.#study}.jsonl`);
		if (existsSync(this.#path)) this.#read();
	}

	#read(): void {
		for (const line of this.#kept().split("\n")) {
			const json = line.slice(line.indexOf(" ") + 1);
			if (line !== this.#line(json)) continue;
			const part: StudyPart = JSON.parse(json); // its checksum vouches for its form
			this.parts.set(taskKey(part.task), part);
		}
	}

	#kept(): string {
		try {
			return readFileSync(this.#path, "utf8");
		} catch (error) {
			throw new CouldNotFinish(`what is finished could not be read in ${fileName(this.#folder)}: ${reasonOf(error)}`);
		}
	}

	/** The checksum is of this study: a line of another's is passed over too. */
	#line(json: string): string {
		return `${shortDigest(this.#study + json)} ${json}`;
	}

	note(part: StudyPart): void {
		try {
			mkdirSync(this.#folder, { recursive: true });
			// The line before may have been cut off: each begins anew.
			appendFileSync(this.#path, `\n${this.#line(JSON.stringify(part))}\n`);
		} catch (error) {
			throw new CouldNotFinish(`what is finished could not be kept in ${fileName(this.#folder)}: ${reasonOf(error)}`);
		}
	}

	/** The report is written: nothing is unfinished. */
	remove(): void {
		rmSync(this.#path, { force: true });
	}
}
