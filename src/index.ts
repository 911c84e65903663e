/** The library: read a scenario, trace its day, project many days, write the answer. The command line is `slackwater`. */

export { firstParting, type Parting, Trace, TraceLog } from "./engine/index.ts";
export { daySvg, dayTables, reportHtml } from "./report/index.ts";
export type { DayResult } from "./results/index.ts";
export { dayJson, dayJsonSchema } from "./results/index.ts";
export {
	type Checked,
	checkScenario,
	fullScenario,
	type Problem,
	readScenario,
	type Scenario,
	scenarioJsonSchema,
	sentence,
	UnusableInput,
} from "./scenario/index.ts";
export { blockCount, dayResult, ProjectionGathering, runBlocks, type TracedDay, traceDay } from "./studies/index.ts";
