/** Scenario files: schema, defaults, reading YAML and JSON, problems as data. */

export {
	fewReplications,
	outputCaution,
	settingCautions,
} from "./cautions.ts";
export { dayOfKind } from "./day-of-kind.ts";
export { defaults } from "./defaults.ts";
export { expectedEvents, maxExpectedEvents } from "./events.ts";
export { fullScenario } from "./full.ts";
export {
	dayScenarioSchema,
	scenarioJsonSchema,
	schemaText,
	wardScenarioSchema,
} from "./json-schema.ts";
export { settingsText } from "./merge.ts";
export { usualDepth, usualDwellMin, usualSuctionMin } from "./practice.ts";
export { type Problem, sentence, UnusableInput } from "./problem.ts";
export {
	type Checked,
	checkScenario,
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
	Dressing,
	Happening,
	Regimen,
	RegimenPatch,
	Scenario,
	SweepGrid,
	Tissue,
} from "./scenario.ts";
export { mostPoints } from "./schema-sweep.ts";
export { maxScenarioBytes, scenarioText, tooLarge } from "./text.ts";
export { deepestHeld, withConstant } from "./vary.ts";
export {
	dayMin,
	type StoreItem,
	type StoreKind,
	type TherapyLength,
	type WardScenario,
	weekMin,
} from "./ward.ts";
