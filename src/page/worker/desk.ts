import { checkScenario, type Scenario } from "../../scenario/index.ts";
import { summaryOf } from "../../studies/day/summary.ts";
import type { GroupSums, Study } from "../../studies/index.ts";
import { blockCount, StudyGathering, StudyRunner, traceDay } from "../../studies/index.ts";
import type { Answer } from "./orders.ts";

/** What an order's work is given: how to answer, and whether a newer order has come meanwhile. */
export interface Desk {
	/** Sends an answer that is not the last. */
	readonly say: (answer: Answer) => void;
	/** Lets newer orders be heard; false where one has come and this one is of no use any more. */
	readonly goOn: () => Promise<boolean>;
}

/** Checks the text and says what is wrong with it; null where it cannot be run. */
export function checkOrder(text: string, desk: Desk): Scenario | null {
	const { scenario, problems, notes } = checkScenario(text);
	const rehearsed = scenario?.rehearsal !== undefined;
	const regimens = scenario?.compare.map(({ name }) => name) ?? [];
	desk.say({ kind: "checked", problems, notes, rehearsed, regimens });
	return scenario;
}

/** The scenario with fewer replications, where fewer are allowed. */
export const atMost = (scenario: Scenario, most: number | null): Scenario =>
	most === null || scenario.replications <= most ? scenario : { ...scenario, replications: most };

/** The day of one replication, without its projection. */
export const tracedDay = (scenario: Scenario, replication: number, version: string) => ({
	scenario: summaryOf(scenario, [], version),
	dressings: traceDay(scenario, undefined, replication).dressings,
});

/** What the groups of a study come to, block by block, so that a newer order can stop it: null then. `done` is told how many groups are. */
export async function gathered(
	study: Study,
	desk: Desk,
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
