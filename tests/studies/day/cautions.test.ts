import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readScenario } from "../../../src/scenario/index.ts";
import { blockCount, dayResult, ProjectionGathering, runBlocks } from "../../../src/studies/index.ts";
import { root } from "../../source.ts";

const abdomen = readFileSync(join(root, "scenarios", "abdomen-fistula.yaml"), "utf8");

test.each([
	["open-abdomen", "in an open abdomen ask where it stays"],
	["exposed-organ", "in a wound with exposed organs ask where it stays"],
])("solution that stays in a wound is asked after: %s", (tissue, words) => {
	const scenario = { ...readScenario(abdomen.replace("tissue: open-abdomen", `tissue: ${tissue}`)), replications: 5 };
	const gathering = new ProjectionGathering(scenario);
	gathering.add(runBlocks(scenario, 0, blockCount(scenario)));
	const { cautions } = dayResult(scenario, gathering, "1.2.3");
	expect(cautions.find(({ code }) => code === "not-returned")?.text).toContain(
		`do not come back to the canister: ${words}`,
	);
});
