import type { SupplyResult } from "../../src/results/index.ts";
import { readWard } from "../../src/scenario/index.ts";
import {
	findRules,
	orderRules,
	runWardBlocks,
	SupplyGathering,
	supplyResult,
	wardBlocks,
} from "../../src/studies/index.ts";
import { smallWard } from "./small-ward.ts";

let made: SupplyResult | null = null;

/** The result of the small ward, worked out once. */
export function smallResult(): SupplyResult {
	if (made !== null) return made;
	const ward = readWard(smallWard());
	const found = findRules(ward);
	const gathered = new SupplyGathering(ward);
	gathered.add(runWardBlocks(ward, orderRules(found), 0, wardBlocks(ward)));
	made = supplyResult(gathered, found, "0.0.0");
	return made;
}
