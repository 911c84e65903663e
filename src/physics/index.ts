/** Physics of air and liquid under a foam dressing: units, constants with provenance, pure functions with their equation above. */
export { type ConstantFact, type ConstantName, type Constants, constantFacts, constantNames, constantsWith, type Provenance } from "./constants.ts";
