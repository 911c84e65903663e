/** Reports: one output format a file, a pure function from a result to text. */
export { cautionInALine, cautionSentences } from "./caution.ts";
export { dayTables } from "./csv.ts";
export { dayJsonSchema } from "./day-schema.ts";
export { debriefHtml, debriefSections, debriefStyle } from "./debrief-html.ts";
export { debriefJson } from "./debrief-json.ts";
export { debriefJsonSchema } from "./debrief-schema.ts";
export { reportHtml } from "./html.ts";
export { dayJson } from "./json.ts";
export { reportStyle } from "./report-style.ts";
export { daySvg } from "./svg.ts";
