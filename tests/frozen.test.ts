import { readFileSync } from "node:fs";
import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { version } from "../src/cli/files/own.ts";
import { daySvg, dayTables, reportHtml } from "../src/report/index.ts";
import { dayJson } from "../src/results/index.ts";
import { readScenario } from "../src/scenario/index.ts";
import { blockCount, dayResult, ProjectionGathering, runBlocks } from "../src/studies/index.ts";
import { files } from "./frozen/files.ts";
import { traces } from "./frozen/traces.ts";

const read = (file: string) => readScenario(readFileSync(file, "utf8"));

describe("what is frozen", () => {
	test("the trace of every scenario under twenty seeds, event by event", async () => {
		await expect(`${traces(files, 20).join("\n")}\n`).toMatchFileSnapshot("frozen/traces.txt");
	});
	test("the demo in reports/ is what this version writes (npm start renews it)", () => {
		const scenario = read("scenarios/thigh-short-dwell.yaml");
		const gathering = new ProjectionGathering(scenario);
		gathering.add(runBlocks(scenario, 0, blockCount(scenario)));
		const result = dayResult(scenario, gathering, version());
		const { document } = new JSDOM("<!doctype html><html lang='en'><head></head><body></body></html>").window;
		const written: Record<string, string> = {
			"day.json": dayJson(result),
			"day.svg": daySvg(result, document),
			"report.html": reportHtml(result, document),
			...dayTables(result),
		};
		for (const [name, text] of Object.entries(written)) {
			const kept = readFileSync(`reports/thigh-short-dwell/${name}`, "utf8");
			expect(kept === text, `reports/thigh-short-dwell/${name} is stale`).toBe(true);
		}
	});
});
