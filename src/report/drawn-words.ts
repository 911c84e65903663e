import { counted } from "../charts/index.ts";

/** Which day is drawn, and how it was chosen, in a sentence. */
export function drawnWords({
	trace: { replication, typicalOf },
}: {
	readonly trace: {
		readonly replication: number;
		readonly typicalOf: number | null;
	};
}): string {
	return typicalOf === null
		? `Drawn is replication ${replication}, as asked for.`
		: `Drawn is replication ${replication}, of the first ${counted(typicalOf, "replication")} the one whose courses of canister content, exudate and alarms, all taken together, lie nearest the median.`;
}
