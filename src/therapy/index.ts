/** The dressing and its therapy unit: phases, hazards, alarms, care; turns a scenario into replications. */
export { clockOf, isNight, nextClock } from "./base/clock.ts";
export { eventPriority } from "./base/event-priority.ts";
export { type Observer, unobserved } from "./base/observer.ts";
export { DressingProcess } from "./dressing.ts";
export { TherapyDay } from "./replication.ts";
