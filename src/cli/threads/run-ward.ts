import type { WardScenario } from "../../scenario/index.ts";
import { type Found, RuleSearch, type SupplyPart, wardBlock, wardBlocks } from "../../studies/index.ts";
import { minutesADay } from "../../vocabulary/index.ts";
import type { OrderRule } from "../../ward/index.ts";
import { type Effort, runJob, spans } from "./run-job.ts";

/** The tasks of a run, about eight: few enough to keep what is sent small, enough to keep several threads busy to the end. */
const wardTasks = (first: number, last: number) => spans(first, last, Math.max(1, Math.ceil((last - first) / 8)));

/** Dressing-days of a ward's replications, about. */
const daysOf = (ward: WardScenario, replications: number): number =>
	(replications * (ward.units ?? ward.beds.length + 20) * (ward.horizonMin + ward.warmUpMin)) / minutesADay;

/** Looks for the order rules of a ward over all of its replications, on as many threads as they are worth. */
export async function searchRules(ward: WardScenario, effort: Effort): Promise<Found> {
	const search = new RuleSearch(ward);
	const done = Math.min(search.firstBlock * wardBlock, ward.replications);
	const tasks = wardTasks(search.firstBlock, wardBlocks(ward));
	await runJob<"search">({ kind: "search", ward, plan: search.plan }, tasks, {
		...effort,
		days: daysOf(ward, ward.replications - done),
		total: ward.replications,
		done,
		counted: "order rules, replications",
		size: (part) => part.replications,
		take: (part) => search.add(part),
	});
	return search.found();
}

/** Runs the blocks `first` … `last` − 1 of a ward on as many threads as they are worth; parts are handed to `take` as they come. */
export async function runWard(
	ward: WardScenario,
	rules: readonly OrderRule[],
	[first, last]: readonly [first: number, last: number],
	effort: Effort,
	take: (part: SupplyPart) => void,
): Promise<void> {
	const total = Math.min((last - first) * wardBlock, ward.replications);
	await runJob<"ward">({ kind: "ward", ward, rules }, wardTasks(first, last), {
		...effort,
		days: daysOf(ward, total * (2 + ward.policies.length)),
		total,
		size: (part) => part.replications,
		take,
	});
}
