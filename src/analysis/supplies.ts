import type { Scenario } from "../scenario/index.ts";
import type { TherapyDay } from "../therapy/index.ts";
import type { Supply } from "./day-result.ts";

/** An item of the stores, and the dressings that use it. */
export interface SupplyItem {
	readonly item: string;
	readonly kind: "canister" | "source" | "line" | "kit" | "port";
	readonly dressings: readonly number[];
}

/** What a scenario uses, one row an item: canisters and solution by size, a fill line, kits, ports. */
export function supplyItems(scenario: Scenario): SupplyItem[] {
	const rows: SupplyItem[] = [];
	const bySize = (
		kind: "canister" | "source",
		sizes: readonly (number | null)[],
		name: string,
	) => {
		for (const size of [...new Set(sizes)]) {
			if (size === null) continue;
			rows.push({
				item: `${name} ${size} mL`,
				kind,
				dressings: sizes.flatMap((s, index) => (s === size ? [index] : [])),
			});
		}
	};
	const filled = scenario.dressings.map((dressing) =>
		dressing.regimens.some((regimen) => regimen.fillMl > 0),
	);
	bySize(
		"canister",
		scenario.dressings.map((dressing) => dressing.canisterMl),
		"canister",
	);
	bySize(
		"source",
		scenario.dressings.map((dressing, index) =>
			filled[index] ? dressing.sourceMl : null,
		),
		scenario.solution.named ? scenario.solution.name : "solution",
	);
	const withFill = filled.flatMap((fill, index) => (fill ? [index] : []));
	if (withFill.length > 0)
		rows.push({ item: "fill line", kind: "line", dressings: withFill });
	const all = scenario.dressings.map((_, index) => index);
	rows.push(
		{ item: "dressing kit", kind: "kit", dressings: all },
		{ item: "suction port", kind: "port", dressings: all },
	);
	return rows;
}

/** How many of the item one replication used: one at the start and one at every change; ports beyond those in the kits. */
export function needsOf(item: SupplyItem, day: TherapyDay): number {
	let sum = 0;
	for (const index of item.dressings) {
		const process = day.processes[index];
		switch (item.kind) {
			case "canister":
				sum += 1 + process.canister.changes;
				break;
			case "source":
				sum += 1 + process.source.changes;
				break;
			case "line":
				sum += 1;
				break;
			case "kit":
				sum += 1 + process.dressingChanges;
				break;
			case "port":
				sum += process.portsReplaced;
		}
	}
	return sum;
}

/** A row of the report: median and P90, packs rounded up where the scenario has pack sizes. */
export function supplyOf(
	item: SupplyItem,
	p50: number,
	p90: number,
	scenario: Scenario,
): Supply {
	const packSize =
		item.kind === "port" ? null : (scenario.packs[item.kind] ?? null);
	return {
		item: item.item,
		p50,
		p90,
		packSize,
		packs: packSize === null ? null : Math.ceil(p90 / packSize),
	};
}
