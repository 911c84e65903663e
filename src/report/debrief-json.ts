import type { Debrief } from "../rehearsal/index.ts";
import { cautionSentences } from "./caution.ts";
import { debriefJsonSchema } from "./debrief-schema.ts";
import { canonicalJson } from "./json.ts";

/** `debrief.json`: format `slackwater/debrief@1`, with the cautions. */
export const debriefJson = (debrief: Debrief): string =>
	canonicalJson({ ...debrief, cautions: cautionSentences }, debriefJsonSchema);
