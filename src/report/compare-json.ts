import type { CompareResult } from "../analysis/compare-result.ts";
import { compareJsonSchema } from "./compare-schema.ts";
import { canonicalJson } from "./json.ts";

/** `compare.json`. */
export const compareJson = (result: CompareResult): string =>
	canonicalJson(result, compareJsonSchema);
