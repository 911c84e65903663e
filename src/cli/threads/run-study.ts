import type { GroupSums, Study, StudyPart, StudyTask } from "../../studies/index.ts";
import { blockSize, StudyGathering, studyTasks } from "../../studies/index.ts";
import { taskKey } from "../files/unfinished.ts";
import { type Effort, runJob } from "./run-job.ts";

/**
 * A study that is run in one go or further and further, until what it is run for is known: the function that runs it on to
 * `blocks` blocks of every group. Parts that `finished` holds are not run again; those that are run are told to `note`.
 */
export function studyRun(study: Study, effort: Effort) {
	const gathering = new StudyGathering(study);
	const [{ replications, horizonMin, dressings }] = study.arms;
	/** Replications of all arms that a task runs, at the most. */
	const size = ({ group, first, last }: StudyTask): number =>
		Math.min((last - first) * blockSize, replications) * study.groups[group].length;
	const sizeOf = (tasks: readonly StudyTask[]): number => tasks.reduce((sum, task) => sum + size(task), 0);
	let begun = 0;
	return async (
		blocks: number,
		finished: ReadonlyMap<string, StudyPart> = new Map(),
		note: (part: StudyPart) => void = () => {},
	): Promise<readonly GroupSums[]> => {
		const tasks = studyTasks(study, begun, blocks);
		const open = tasks.filter((task) => !finished.has(taskKey(task)));
		for (const task of tasks) {
			const part = finished.get(taskKey(task));
			if (part !== undefined) gathering.add(part);
		}
		await runJob<"study">({ kind: "study", study }, open, {
			...effort,
			days: sizeOf(open) * dressings.length * (horizonMin / 1440),
			total: sizeOf(tasks),
			done: sizeOf(tasks) - sizeOf(open),
			size: ({ task }) => size(task),
			take: (part) => {
				note(part);
				gathering.add(part);
			},
		});
		begun = blocks;
		return gathering.groups(blocks);
	};
}
