import {
	findRules,
	orderRules,
	runWardBlocks,
	SupplyGathering,
	supplyResult,
	wardBlocks,
} from "../analysis/index.ts";
import { checkWard } from "../scenario/index.ts";
import type { Desk } from "./answer-orders.ts";
import type { Answer, Order } from "./orders.ts";
import { loaderOf } from "./ward-files.ts";

/** The weeks of a ward, as `supply` simulates them. After the first block it says what that came to; what comes last is the whole. */
export async function runStores(
	{ sheet, carried, version }: Extract<Order, { kind: "stores" }>,
	desk: Desk,
): Promise<Answer | null> {
	const taken = new Set<string>();
	const load = loaderOf(sheet, carried, (name) => taken.add(name));
	const { ward, problems, notes, data } = checkWard(sheet.text, load);
	desk.say({
		kind: "checked",
		problems,
		notes: [
			...notes,
			...[...taken].map(
				(name) =>
					`${name} did not come with the ward; the file of that name that this page carries is used.`,
			),
		],
		rehearsed: false,
		regimens: [],
	});
	if (ward === null) return { kind: "nothing" };
	const progress = (done: number) =>
		desk.say({ kind: "progress", done, of: ward.replications });
	progress(0);
	const rules = findRules(ward);
	const gathering = new SupplyGathering(ward);
	const blocks = wardBlocks(ward);
	let done = 0;
	for (let block = 0; block < blocks; block++) {
		const part = runWardBlocks(ward, orderRules(rules), block, block + 1);
		gathering.add(part);
		done += part.replications;
		progress(done);
		if (block === 0 && blocks > 1) {
			const first = new SupplyGathering({ ...ward, replications: done });
			first.add(part);
			desk.say({
				kind: "stores",
				result: supplyResult(first, rules, version),
				whole: null,
			});
		}
		if (!(await desk.goOn())) return null;
	}
	return {
		kind: "stores",
		result: supplyResult(gathering, rules, version),
		whole: JSON.stringify(data, null, 2),
	};
}
