/** Scenario files: schema, defaults, reading YAML and JSON, problems as data. */
export type { Load } from "./expand-kinds.ts";
export { fullScenario } from "./full.ts";
export { dayScenarioSchema, scenarioJsonSchema, schemaText, wardScenarioSchema } from "./json-schema.ts";
export { mostPoints, readSweep } from "./keys/sweep.ts";
export { fewReplications, outputCaution, settingCautions } from "./meaning/cautions.ts";
export { dayOfKind } from "./meaning/day-of-kind.ts";
export { defaults } from "./meaning/defaults.ts";
export { expectedEvents, maxExpectedEvents } from "./meaning/events.ts";
export { usualDepth, usualDwellMin, usualSuctionMin } from "./meaning/practice.ts";
export type { HiddenCause, RehearsalPlan } from "./meaning/rehearsal-plan.ts";
export type { Care, Dressing, Happening, Regimen, RegimenPatch, Scenario, SweepGrid } from "./meaning/scenario.ts";
export { settingsText } from "./meaning/scenario.ts";
export type { StoreItem, TherapyLength, WardScenario } from "./meaning/ward.ts";
export { type Checked, checkScenario, readScenario } from "./read.ts";
export { checkWard, isWard, readWard, type WardOverrides } from "./read-ward.ts";
export { type Problem, sentence, UnusableInput } from "./reading/problem.ts";
export { maxScenarioBytes, scenarioText, tooLarge } from "./reading/text.ts";
export { withConstant } from "./vary.ts";
