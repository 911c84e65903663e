/** Reports: one output format a file, a pure function from a result to text. */
export { dayCalendar, supplyCalendar } from "./calendar.ts";
export { cautionInALine, cautionSentences } from "./caution.ts";
export { dayTables } from "./csv.ts";
export { dayJsonSchema } from "./day-schema.ts";
export { supplyBundle } from "./fhir.ts";
export { reportHtml } from "./html.ts";
export { dayJson } from "./json.ts";
export { reportStyle } from "./report-style.ts";
export { supplyTables } from "./supply-csv.ts";
export { supplyHtml } from "./supply-html.ts";
export { supplyJson } from "./supply-json.ts";
export { supplyJsonSchema } from "./supply-schema.ts";
export { daySvg } from "./svg.ts";
