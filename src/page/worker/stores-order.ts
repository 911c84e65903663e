import type { SupplyResult } from "../../results/index.ts";
import { checkWard, type WardScenario } from "../../scenario/index.ts";
import {
	findRules,
	orderRules,
	RuleSearch,
	runWardBlocks,
	SupplyGathering,
	searchBlocks,
	supplyResult,
	wardBlock,
	wardBlocks,
} from "../../studies/index.ts";
import { loaderOf } from "../editor/ward-files.ts";
import type { Desk } from "./desk.ts";
import type { Answer, OrderOf } from "./orders.ts";

/** The weeks of a ward, as `supply` simulates them. After the first block it says what that came to; what comes last is the whole. */
export async function runStores({ sheet, carried, version }: OrderOf<"stores">, desk: Desk): Promise<Answer | null> {
	const taken = new Set<string>();
	const load = loaderOf(sheet, carried, (name) => taken.add(name));
	const { ward, problems, notes, data } = checkWard(sheet.text, load);
	const borrowed = [...taken].map(
		(name) => `${name} did not come with the ward; the file of that name that this page carries is used.`,
	);
	desk.say({ kind: "checked", problems, notes: [...notes, ...borrowed], rehearsed: false, regimens: [] });
	if (ward === null) return { kind: "nothing" };
	// Half of the work looks for the order rules, the other half follows them.
	const progress = (searched: number, played: number) =>
		desk.say({ kind: "progress", done: (searched + played) / 2, of: ward.replications });
	progress(0, 0);
	const blocks = wardBlocks(ward);
	if (blocks > 1) {
		desk.say({ kind: "stores", result: preliminary({ ...ward, replications: wardBlock }, version), whole: null });
		if (!(await desk.goOn())) return null;
	}
	const search = new RuleSearch(ward);
	for (let block = search.firstBlock; block < blocks; block++) {
		search.add(searchBlocks(ward, search.plan, block, block + 1));
		progress(Math.min((block + 1) * wardBlock, ward.replications), 0);
		if (!(await desk.goOn())) return null;
	}
	const found = search.found();
	const gathering = new SupplyGathering(ward);
	let done = 0;
	for (let block = 0; block < blocks; block++) {
		const part = runWardBlocks(ward, orderRules(found), block, block + 1);
		gathering.add(part);
		done += part.replications;
		progress(ward.replications, done);
		if (!(await desk.goOn())) return null;
	}
	return { kind: "stores", result: supplyResult(gathering, found, version), whole: JSON.stringify(data, null, 2) };
}

/** What the first block alone comes to, rules and all. */
function preliminary(ward: WardScenario, version: string): SupplyResult {
	const found = findRules(ward);
	const gathering = new SupplyGathering(ward);
	gathering.add(runWardBlocks(ward, orderRules(found), 0, 1));
	return supplyResult(gathering, found, version);
}
