/** Discrete-event simulation: calendar, clock, random substreams, resources, trace. Knows nothing of wounds. */
export { Calendar } from "./calendar.ts";
export { exponential, gamma2, lognormal, normal } from "./draw.ts";
export { type Job, Resource } from "./resource.ts";
export { type EventId, Simulation } from "./simulation.ts";
export { Substream } from "./substream.ts";
export { firstParting, nameHash, type Parting, Trace, TraceLog } from "./trace.ts";
