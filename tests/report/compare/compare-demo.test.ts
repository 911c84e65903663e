import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { version } from "../../../src/cli/files/own.ts";
import { reportFiles } from "../../../src/cli/threads/report-files.ts";
import { differenceRow } from "../../../src/report/compare/pairs/difference-rows.ts";
import { pairsOf } from "../../../src/report/compare/pairs/pairs.ts";
import type { CompareResult } from "../../../src/results/index.ts";
import { readScenario } from "../../../src/scenario/index.ts";
import {
	armsOf,
	blockCount,
	compareDrawings,
	compareResult,
	comparisonStudy,
	StudyGathering,
	StudyRunner,
	studyTasks,
} from "../../../src/studies/index.ts";
import { mainMeasures } from "../../../src/vocabulary/index.ts";
import { differenceDecimals } from "../../../src/words/index.ts";

const folder = "reports/compare-thigh";
const kept = (name: string) => readFileSync(`${folder}/${name}`, "utf8");
const result: CompareResult = JSON.parse(kept("compare.json"));
const scenario = readScenario(readFileSync("scenarios/compare-thigh.yaml", "utf8"));
const arms = armsOf(scenario, ["short", "long"]);
const again =
	"(slackwater compare scenarios/compare-thigh.yaml --between short,long --out reports/compare-thigh renews it)";

test(`the comparison in reports/ has the numbers of this version ${again}`, () => {
	const study = comparisonStudy(arms);
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	const blocks = blockCount(scenario);
	for (const task of studyTasks(study, 0, blocks)) gathering.add(runner.run(task));
	const now = compareResult(scenario, arms, gathering.groups(blocks)[0], {
		measures: mainMeasures,
		targets: [],
		restsOn: result.restsOn,
		drawn: result.trace,
		version: version(),
	});
	expect(JSON.parse(JSON.stringify(now))).toEqual(result);
});

test("a time under suction of 1374.3 min is not told to a hundredth because the difference of two is", () => {
	const [pair] = pairsOf(result);
	const one = pair?.of(pair.whole, "underSuctionMin");
	if (pair === undefined || one === undefined) throw new Error("no such difference");
	expect(differenceDecimals(one)).toBe(2);
	expect(differenceRow(one, pair).decimals).toEqual([1, 1]);
});

test(`its report is drawn as this version draws it ${again}`, () => {
	const files = reportFiles({
		kind: "compare",
		result,
		drawings: compareDrawings(arms, result.trace.replication, version()),
	});
	expect(Object.keys(files).sort()).toEqual(readdirSync(folder).sort());
	for (const [name, text] of Object.entries(files))
		expect(kept(name) === text, `${folder}/${name} is stale`).toBe(true);
});
