import type { Scenario, WardScenario } from "../scenario/index.ts";
import type { OrderRule } from "../ward/index.ts";
import { type Study, type StudyPart, StudyRunner, type StudyTask } from "./compare/study.ts";
import { type RunPart, runBlocks } from "./day/collector.ts";
import { type SearchPart, searchBlocks } from "./supply/rules/rule-part.ts";
import type { SearchPlan } from "./supply/rules/rule-plan.ts";
import { runWardBlocks } from "./supply/run/collector.ts";
import type { SupplyPart } from "./supply/run/supply-part.ts";

/** Blocks `first` … `last` − 1 of a day or of a ward. */
export interface BlockTask {
	readonly first: number;
	readonly last: number;
}

/** Work that can be dealt out to threads: what all of them need to know, and what a task is and comes to. */
export type Job =
	| { readonly kind: "day"; readonly scenario: Scenario }
	| { readonly kind: "study"; readonly study: Study }
	| { readonly kind: "search"; readonly ward: WardScenario; readonly plan: SearchPlan }
	| { readonly kind: "ward"; readonly ward: WardScenario; readonly rules: readonly OrderRule[] };

export interface JobKinds {
	readonly day: { readonly task: BlockTask; readonly part: RunPart };
	readonly study: { readonly task: StudyTask; readonly part: StudyPart };
	readonly search: { readonly task: BlockTask; readonly part: SearchPart };
	readonly ward: { readonly task: BlockTask; readonly part: SupplyPart };
}

type Progress = (replications: number) => void;

export type Work<K extends keyof JobKinds> = (task: JobKinds[K]["task"], progress?: Progress) => JobKinds[K]["part"];

/** The function that does the tasks of a job, wherever it runs. */
export function workOn<K extends keyof JobKinds>(job: Extract<Job, { readonly kind: K }>): Work<K>;
export function workOn(job: Job): Work<"day"> | Work<"study"> | Work<"search"> | Work<"ward"> {
	switch (job.kind) {
		case "day":
			return ({ first, last }: BlockTask, progress?: Progress) => runBlocks(job.scenario, first, last, progress);
		case "study": {
			const runner = new StudyRunner(job.study);
			return (task: StudyTask, progress?: Progress) => runner.run(task, progress);
		}
		case "search":
			return ({ first, last }: BlockTask, progress?: Progress) =>
				searchBlocks(job.ward, job.plan, first, last, progress);
		case "ward":
			return ({ first, last }: BlockTask, progress?: Progress) =>
				runWardBlocks(job.ward, job.rules, first, last, progress);
	}
}
