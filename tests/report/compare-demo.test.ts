import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
	armsOf,
	blockCount,
	type CompareResult,
	compareDrawings,
	compareResult,
	comparisonStudy,
	mainMeasures,
	StudyGathering,
	StudyRunner,
	studyTasks,
} from "../../src/analysis/index.ts";
import { reportFiles } from "../../src/cli/report-files.ts";
import { version } from "../../src/cli/version.ts";
import { decimalsOfMeans, rowOf } from "../../src/report/compare-parts.ts";
import { differenceDecimals } from "../../src/report/verdict-words.ts";
import { readScenario } from "../../src/scenario/index.ts";

const folder = "reports/compare-thigh";
const kept = (name: string) => readFileSync(`${folder}/${name}`, "utf8");
const result: CompareResult = JSON.parse(kept("compare.json"));
const scenario = readScenario(
	readFileSync("scenarios/compare-thigh.yaml", "utf8"),
);
const arms = armsOf(scenario, ["short", "long"]);
const again =
	"(slackwater compare scenarios/compare-thigh.yaml --between short,long --out reports/compare-thigh renews it)";

test(`the comparison in reports/ has the numbers of this version ${again}`, () => {
	const study = comparisonStudy(arms);
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	const blocks = blockCount(scenario);
	for (const task of studyTasks(study, 0, blocks))
		gathering.add(runner.run(task));
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
	const one = result.differences.find(
		({ measure }) => measure === "underSuctionMin",
	);
	if (one === undefined) throw new Error("no such difference");
	expect(differenceDecimals(one)).toBe(2);
	expect(decimalsOfMeans(one, result)).toEqual([1, 1]);
	expect(rowOf(one, result).decimals).toEqual([1, 1]);
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
