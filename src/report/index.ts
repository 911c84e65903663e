/** Reports: one output format a file, a pure function from a result to text. */
export { dayCalendar, supplyCalendar } from "./calendar.ts";
export { cautionSentences } from "./caution.ts";
export { compareHtml } from "./compare-html.ts";
export { compareJson } from "./compare-json.ts";
export { compareJsonSchema } from "./compare-schema.ts";
export { compareSvg } from "./compare-svg.ts";
export { compareTables } from "./compare-tables.ts";
export { dayTables } from "./csv.ts";
export { dayJsonSchema } from "./day-schema.ts";
export { debriefHtml } from "./debrief-html.ts";
export { debriefJson } from "./debrief-json.ts";
export { debriefJsonSchema } from "./debrief-schema.ts";
export { supplyBundle } from "./fhir.ts";
export { reportHtml } from "./html.ts";
export { dayJson } from "./json.ts";

export { supplyTables } from "./supply-csv.ts";
export { supplyHtml } from "./supply-html.ts";
export { supplyJson } from "./supply-json.ts";
export { supplyJsonSchema } from "./supply-schema.ts";
export { daySvg } from "./svg.ts";
export { sweepHtml } from "./sweep-html.ts";
export { sweepJson } from "./sweep-json.ts";
export { sweepJsonSchema } from "./sweep-schema.ts";
export { sweepSvg } from "./sweep-svg.ts";
export { sweepTables } from "./sweep-tables.ts";
