import {
	blockSize,
	type GroupSums,
	type Study,
	StudyGathering,
	type StudyPart,
	type StudyTask,
	studyTasks,
} from "../analysis/index.ts";
import { Progress } from "./progress.ts";
import { runJob } from "./run-job.ts";

/** A study that is run in one go or further and further, until what it is run for is known. */
export class StudyRun {
	readonly #study: Study;
	readonly #gathering: StudyGathering;
	readonly #workers: number | undefined;
	readonly #quiet: boolean;
	#blocks = 0;

	constructor(study: Study, workers: number | undefined, quiet: boolean) {
		this.#study = study;
		this.#gathering = new StudyGathering(study);
		this.#workers = workers;
		this.#quiet = quiet;
	}

	/**
	 * Runs on to `blocks` blocks of every group. Parts that `finished` holds are not run again; those that are run are told
	 * to `note`.
	 */
	async to(
		blocks: number,
		finished: ReadonlyMap<string, StudyPart> = new Map(),
		note: (part: StudyPart) => void = () => {},
	): Promise<readonly GroupSums[]> {
		const tasks = studyTasks(this.#study, this.#blocks, blocks);
		const [known, open] = [tasks.filter(has), tasks.filter((t) => !has(t))];
		function has(task: StudyTask): boolean {
			return finished.has(taskKey(task));
		}
		const total = tasks.reduce((sum, task) => sum + this.#size(task), 0);
		const progress = new Progress(total, this.#quiet);
		let done = 0;
		const gather = (part: StudyPart) => {
			this.#gathering.add(part);
			done += this.#size(part.task);
			progress.update(done);
		};
		try {
			for (const task of known) {
				const part = finished.get(taskKey(task));
				if (part !== undefined) gather(part);
			}
			const [{ horizonMin, dressings }] = this.#study.arms;
			await runJob<"study">({ kind: "study", study: this.#study }, open, {
				workers: this.#workers,
				days:
					open.reduce((sum, task) => sum + this.#size(task), 0) *
					dressings.length *
					(horizonMin / 1440),
				take: (part) => {
					note(part);
					gather(part);
				},
				progress: () => {},
			});
		} finally {
			progress.stop();
		}
		this.#blocks = blocks;
		return this.#gathering.groups(blocks);
	}

	/** Replications of all arms that a task runs, at the most. */
	#size({ group, first, last }: StudyTask): number {
		const replications = Math.min(
			(last - first) * blockSize,
			this.#study.arms[0].replications,
		);
		return replications * this.#study.groups[group].length;
	}
}

/** The name of a task among those of its study. */
export const taskKey = ({ group, first, last }: StudyTask) =>
	`${group}:${first}-${last}`;
