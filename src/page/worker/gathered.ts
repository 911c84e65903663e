import { blockCount, type GroupSums, type Study, StudyGathering, StudyRunner } from "../../studies/index.ts";
import type { Desk } from "./desk.ts";

/** What the groups of a study come to, block by block, so that a newer order can stop it: null then. `done` is told how many groups are. */
export async function gathered(
	study: Study,
	desk: Pick<Desk<never>, "goOn">,
	done: (groups: number) => void = () => {},
): Promise<GroupSums[] | null> {
	const runner = new StudyRunner(study);
	const gathering = new StudyGathering(study);
	const blocks = blockCount(study.arms[0]);
	for (const [group] of study.groups.entries()) {
		for (let block = 0; block < blocks; block++) {
			gathering.add(runner.run({ group, first: block, last: block + 1 }));
			if (!(await desk.goOn())) return null;
		}
		done(group + 1);
	}
	return gathering.groups(blocks);
}
