/** Scenario files: schema, defaults, reading YAML and JSON, problems as data. */

export { dayOfKind } from "./day-of-kind.ts";
export { type Default, defaults } from "./defaults.ts";
export { expectedEvents, maxExpectedEvents } from "./events.ts";
export { fullScenario } from "./full.ts";
export {
	dayScenarioSchema,
	scenarioJsonSchema,
	schemaText,
	wardScenarioSchema,
} from "./json-schema.ts";
export { type Problem, sentence, UnusableInput } from "./problem.ts";
export {
	type Checked,
	checkScenario,
	type ReadOptions,
	readScenario,
} from "./read.ts";
export { readSweep } from "./read-sweep.ts";
export {
	type CheckedWard,
	checkWard,
	isWard,
	type Load,
	readWard,
	type WardOverrides,
} from "./read-ward.ts";
export type {
	CauseName,
	HiddenCause,
	RehearsalPlan,
} from "./rehearsal-plan.ts";
export type {
	Care,
	Defaulted,
	Difficulty,
	Drawdown,
	Dressing,
	Happening,
	Prices,
	Regimen,
	RegimenPatch,
	Scenario,
	Slough,
	Solution,
	SweepGrid,
	Tissue,
} from "./scenario.ts";
export { mostPoints } from "./schema-sweep.ts";
export { maxScenarioBytes, scenarioText, tooLarge } from "./text.ts";
export type { Format } from "./tree.ts";
export { deepestHeld, withConstant } from "./vary.ts";
export {
	dayMin,
	type NurseShift,
	type Policy,
	type StoreItem,
	type StoreKind,
	storeKinds,
	type TherapyLength,
	type WardKind,
	type WardScenario,
	weekdays,
	weekMin,
} from "./ward.ts";
