/** Physics of air and liquid under a foam dressing: units, constants with provenance and range, pure functions with their equation above. */
export {
	canHold,
	depthAfter,
	depthIntegral,
	equilibriumDepth,
	leakFlow,
	pumpFlow,
	timeConstant,
	timeToDepth,
} from "./air.ts";
export type { ConstantFact, ConstantName, Constants, Provenance, Range } from "./constants.ts";
export { constantFacts, constantNames, constantsWith } from "./constants.ts";
export { supportedDigits } from "./digits.ts";
export { airToThin, deepestHeld, drawdownMin } from "./drawdown.ts";
export { conductance, type Draining, drainedAfter, levelAfter, timeToDrained, timeToLevel, weeping } from "./liquid.ts";
export { mixDraining, mixLinear } from "./mixing.ts";
export { gaussLegendre8 } from "./quadrature.ts";
export { bracketedRoot } from "./root.ts";
export { convert, dimensionNames, type Reading, readQuantity, sameDimension, unitsLike, unitsOf } from "./units.ts";
