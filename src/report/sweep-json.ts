import type { SweepResult } from "../analysis/sweep-result.ts";
import { canonicalJson } from "./json.ts";
import { sweepJsonSchema } from "./sweep-schema.ts";

/** `sweep.json`. */
export const sweepJson = (result: SweepResult): string =>
	canonicalJson(result, sweepJsonSchema);
