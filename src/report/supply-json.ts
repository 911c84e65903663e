import type { SupplyResult } from "../analysis/supply-result.ts";
import { canonicalJson } from "./json.ts";
import { supplyJsonSchema } from "./supply-schema.ts";

/** The canonical text of a ward's weeks: the same result gives the same bytes. */
export const supplyJson = (result: SupplyResult): string =>
	canonicalJson(result, supplyJsonSchema);
