/** Reports: one output format a file, a pure function from a result to text. */
export { dayCalendar, supplyCalendar } from "./calendar.ts";
export { compareHtml } from "./compare/compare-html.ts";
export { compareTables } from "./compare/compare-tables.ts";
export { compareSvg } from "./compare/difference-section.ts";
export { daySvg } from "./day/day-svg.ts";
export { dayTables } from "./day/day-tables.ts";
export { reportHtml } from "./day/report-html.ts";
export { debriefHtml } from "./debrief/debrief-html.ts";
export { supplyBundle } from "./supply/fhir.ts";
export { supplyHtml } from "./supply/supply-html.ts";
export { supplyTables } from "./supply/supply-tables.ts";
export { sweepSvg } from "./sweep/design-map-section.ts";
export { sweepHtml } from "./sweep/sweep-html.ts";
export { sweepTables } from "./sweep/sweep-tables.ts";
