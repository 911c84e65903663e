import { JSDOM } from "jsdom";
import {
	compareHtml,
	compareTables,
	dayCalendar,
	dayTables,
	reportHtml,
	supplyBundle,
	supplyCalendar,
	supplyHtml,
	supplyTables,
	sweepHtml,
	sweepTables,
} from "../../src/report/index.ts";
import {
	type CompareDrawings,
	type CompareResult,
	compareJson,
	type DayResult,
	dayJson,
	type SupplyResult,
	type SweepResult,
	supplyJson,
	sweepJson,
} from "../../src/results/index.ts";
import { readScenario, readWard, type Scenario, type WardScenario } from "../../src/scenario/index.ts";
import {
	armsOf,
	blockCount,
	compareDrawings,
	compareResult,
	comparisonStudy,
	dayResult,
	drawnOf,
	findRules,
	type GroupSums,
	orderRules,
	ProjectionGathering,
	runBlocks,
	runWardBlocks,
	type Study,
	StudyGathering,
	StudyRunner,
	SupplyGathering,
	sensitivityOf,
	sensitivityStudy,
	studyTasks,
	supplyResult,
	sweepPlan,
	sweepResult,
	sweepStudy,
	wardBlocks,
} from "../../src/studies/index.ts";
import { type AxisName, mainMeasures, measureNames } from "../../src/vocabulary/index.ts";

/** What the page tells of a day at the minute of a cursor. */
export { readingsAt as writtenAt } from "../../src/page/day/reading.ts";

const { document } = new JSDOM("").window;
const version = "1.2.3";

/** What a command wrote, and the scenario it was asked about. */
export interface Written<Result> {
	readonly scenario: Scenario;
	/** Out of the JSON as it was printed. */
	readonly result: Result;
	readonly html: string;
	readonly tables: { readonly [file: string]: string };
}

export interface WrittenDay extends Written<DayResult> {
	readonly calendar: string;
}

export function writtenDay(text: string): WrittenDay {
	const scenario = readScenario(text);
	const gathered = new ProjectionGathering(scenario);
	gathered.add(runBlocks(scenario, 0, blockCount(scenario)));
	const result = dayResult(scenario, gathered, version);
	return {
		scenario,
		result: JSON.parse(dayJson(result)),
		html: reportHtml(result, document),
		tables: dayTables(result),
		calendar: dayCalendar(result),
	};
}

export interface WrittenComparison extends Written<CompareResult> {
	readonly drawings: CompareDrawings;
}

/** `all` measures, or those that a reader gets who asks for none; with what the answer rests on where `rests`. */
export function writtenComparison(text: string, all: boolean, rests: boolean): WrittenComparison {
	const scenario = readScenario(text);
	const arms = armsOf(scenario);
	const [sums] = ran(comparisonStudy(arms), blockCount(scenario));
	if (sums === undefined) throw new Error("no group was run");
	const drawn = drawnOf(
		arms.map((arm) => arm.scenario),
		scenario.replications,
	);
	const varied = rests ? sensitivityStudy(arms) : null;
	const result = compareResult(scenario, arms, sums, {
		measures: all ? measureNames : mainMeasures,
		targets: [],
		restsOn: varied === null ? null : sensitivityOf(arms, varied, ran(varied.study, blockCount(scenario))),
		drawn,
		version,
	});
	const drawings = compareDrawings(arms, drawn.replication, version);
	return {
		scenario,
		result: JSON.parse(compareJson(result)),
		html: compareHtml(result, drawings, document),
		tables: compareTables(result),
		drawings,
	};
}

function ran(study: Study, blocks: number): readonly GroupSums[] {
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	for (const task of studyTasks(study, 0, blocks)) gathering.add(runner.run(task));
	return gathering.groups(blocks);
}

export interface WrittenWard {
	readonly scenario: WardScenario;
	readonly result: SupplyResult;
	readonly html: string;
	readonly tables: { readonly [file: string]: string };
	readonly calendar: string;
	readonly bundle: string;
}

export function writtenWard(text: string): WrittenWard {
	const scenario = readWard(text);
	const rules = findRules(scenario);
	const gathered = new SupplyGathering(scenario);
	gathered.add(runWardBlocks(scenario, orderRules(rules), 0, wardBlocks(scenario)));
	const result = supplyResult(gathered, rules, version);
	return {
		scenario,
		result: JSON.parse(supplyJson(result)),
		html: supplyHtml(result, document),
		tables: supplyTables(result),
		calendar: supplyCalendar(result),
		bundle: supplyBundle(result),
	};
}

/** Where `along` names an axis, with a curve along it. */
export function writtenSweep(text: string, along: AxisName | null): Written<SweepResult> {
	const scenario = readScenario(text);
	if (scenario.sweep === null) throw new Error("the scenario has no grid");
	const plan = sweepPlan(scenario, scenario.sweep);
	const result = sweepResult(plan, ran(sweepStudy(plan), blockCount(scenario)), new Map(), {
		measures: mainMeasures.filter((measure) => measure !== "cost" || scenario.prices !== null),
		constraints: [],
		efficient: [],
		curve: along,
		version,
	});
	return {
		scenario,
		result: JSON.parse(sweepJson(result)),
		html: sweepHtml(result, document),
		tables: sweepTables(result),
	};
}
