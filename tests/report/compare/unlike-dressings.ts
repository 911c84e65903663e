import type { CompareResult, RestsOn } from "../../../src/results/index.ts";
import { readScenario, type Scenario } from "../../../src/scenario/index.ts";
import {
	type Arm,
	armsOf,
	blockCount,
	compareResult,
	comparisonStudy,
	StudyGathering,
	StudyRunner,
	studyTasks,
} from "../../../src/studies/index.ts";
import { mainMeasures } from "../../../src/vocabulary/index.ts";

/** Two dressings of one patient that have nothing in common: areas, depths, fills, canisters, and one is stepped down. */
const unlike = `
slackwater: 1
title: Two unlike dressings over two days
seed: unlike-2
start: 2026-03-03T13:30
horizon: 48 h
replications: 50
dressings:
  - id: calf
    patient: bed-2
    wound: { tissue: soft-tissue, area: 90 cm2, exudate: 0.8 mL/cm2/d }
    foam: [{ area: 120 cm2, thickness: 1.0 cm }]
    regimen: { depth: -125 mmHg, fill: 25 mL, dwell: 5 min, suction: 2 h }
    unit: { canister: 500 mL, source: 500 mL }
  - id: flank
    patient: bed-2
    wound: { tissue: necrotic-soft-tissue, area: 500 cm2, exudate: 1.1 mL/cm2/d }
    foam: [{ area: 600 cm2, thickness: 1.5 cm }]
    regimen:
      - { depth: -150 mmHg, fill: 190 mL, dwell: 10 min, suction: 3.5 h }
      - { from: 24.5 h, depth: -100 mmHg, fill: none }
happenings:
  - { at: 4.5 h, dressing: calf, what: off, for: 45 min }
compare:
  now: {}
  longer: { dwell: 15 min }
  calf-deep: { dressing: calf, depth: -150 mmHg }
  flank-less: { dressing: flank, fill: 120 mL }
  small: { canister: 300 mL }
  alike: { depth: -100 mmHg, fill: 40 mL, dwell: 8 min, suction: 3 h, canister: 500 mL, source: 800 mL }
`;

export const unlikeScenario = (): Scenario => readScenario(unlike);

/** Some of its regimens against each other, as the engine finds them. */
export function unlikeComparison(
	names: readonly string[] | null = null,
	scenario = unlikeScenario(),
	restsOn: RestsOn | null = null,
): CompareResult {
	const arms: readonly Arm[] = armsOf(scenario, names);
	const study = comparisonStudy(arms);
	const gathering = new StudyGathering(study);
	const runner = new StudyRunner(study);
	const blocks = blockCount(scenario);
	for (const task of studyTasks(study, 0, blocks)) gathering.add(runner.run(task));
	return compareResult(scenario, arms, gathering.groups(blocks)[0], {
		measures: mainMeasures,
		targets: [],
		restsOn,
		drawn: { replication: 0, typicalOf: null },
		version: "0",
	});
}
