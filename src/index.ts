/** The library: read a scenario, trace its day, project many days, write the answer. The command line is `slackwater`. */
export {
	blockCount,
	type DayResult,
	dayResult,
	ProjectionGathering,
	runBlocks,
	type TracedDay,
	traceDay,
} from "./analysis/index.ts";
export { firstParting, type Parting, Trace, TraceLog } from "./engine/index.ts";
export {
	dayJson,
	dayJsonSchema,
	daySvg,
	dayTables,
	reportHtml,
} from "./report/index.ts";
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
