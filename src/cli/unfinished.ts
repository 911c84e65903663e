import { createHash } from "node:crypto";
import {
	appendFileSync,
	existsSync,
	mkdirSync,
	readFileSync,
	rmSync,
} from "node:fs";
import { join } from "node:path";
import type { Study, StudyPart } from "../analysis/index.ts";
import { CouldNotFinish, reasonOf } from "./failure.ts";
import { fileName } from "./quoted.ts";
import { taskKey } from "./run-study.ts";

/**
 * What is finished of a long study, kept in its report's folder while it runs: one part a line in a hidden file that is named
 * after the study, so that the same command goes on where it was stopped and another study is not taken for it.
 */
export class Unfinished {
	readonly parts = new Map<string, StudyPart>();
	readonly #path: string;
	readonly #folder: string;

	constructor(folder: string, study: Study, version: string) {
		const name = createHash("sha256")
			.update(JSON.stringify([version, study]))
			.digest("hex")
			.slice(0, 16);
		this.#folder = folder;
		this.#path = join(folder, `.unfinished-${name}.jsonl`);
		if (existsSync(this.#path)) this.#read();
	}

	/** Lines that were cut off in the middle are passed over: their parts are worked out again. */
	#read(): void {
		const text = readFileSync(this.#path, "utf8");
		for (const line of text.split("\n")) {
			try {
				const part: StudyPart = JSON.parse(line); // the name of the file vouches for its form
				this.parts.set(taskKey(part.task), part);
			} catch {}
		}
		if (!text.endsWith("\n")) appendFileSync(this.#path, "\n");
	}

	note(part: StudyPart): void {
		try {
			mkdirSync(this.#folder, { recursive: true });
			appendFileSync(this.#path, `${JSON.stringify(part)}\n`);
		} catch (error) {
			throw new CouldNotFinish(
				`what is finished could not be kept in ${fileName(this.#folder)}: ${reasonOf(error)}`,
			);
		}
	}

	/** The report is written: nothing is unfinished. */
	remove(): void {
		rmSync(this.#path, { force: true });
	}
}
