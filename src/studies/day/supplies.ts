import type { Supply } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import type { DressingProcess, TherapyDay } from "../../therapy/index.ts";
import { schedulesOf } from "../trace/schedule.ts";

/** An item of the stores, and the dressings that use it. */
export interface SupplyItem {
	readonly item: string;
	readonly kind: (typeof kinds)[number];
	readonly dressings: readonly number[];
}

/** What a scenario uses, one row an item: canisters and solution by size, a fill line, kits, ports. */
export function supplyItems(scenario: Scenario): SupplyItem[] {
	const rows: SupplyItem[] = [];
	const bySize = (kind: "canister" | "source", sizes: readonly (number | null)[], name: string) => {
		for (const size of [...new Set(sizes)]) {
			if (size === null) continue;
			rows.push({
				item: `${name} ${size} mL`,
				kind,
				dressings: sizes.flatMap((s, index) => (s === size ? [index] : [])),
			});
		}
	};
	const filled = scenario.dressings.map((dressing) => dressing.regimens.some((regimen) => regimen.fillMl > 0));
	bySize(
		"canister",
		scenario.dressings.map((dressing) => dressing.canisterMl),
		"canister",
	);
	bySize(
		"source",
		scenario.dressings.map((dressing, index) => (filled[index] ? dressing.sourceMl : null)),
		scenario.solution.named ? scenario.solution.name : "solution",
	);
	const withFill = filled.flatMap((fill, index) => (fill ? [index] : []));
	if (withFill.length > 0) rows.push({ item: "fill line", kind: "line", dressings: withFill });
	const all = scenario.dressings.map((_, index) => index);
	rows.push(
		{ item: "dressing kit", kind: "kit", dressings: all },
		{ item: "suction port", kind: "port", dressings: all },
	);
	return rows;
}

/** How many of the item one replication used, over the dressings that use it. */
export function needsOf(item: SupplyItem, day: TherapyDay): number {
	return item.dressings.reduce((sum, index) => sum + piecesOf(item.kind, day.processes[index]), 0);
}

/**
 * Pieces that one dressing used: one at the start and one at every change; ports beyond those in the kits. A canister or
 * a source that was in use before the start was taken from the stores before it.
 */
function piecesOf(kind: SupplyItem["kind"], process: DressingProcess): number {
	switch (kind) {
		case "canister":
			return (process.canisterWasNew ? 1 : 0) + process.canister.changes;
		case "source":
			return (process.sourceWasNew ? 1 : 0) + process.source.changes;
		case "line":
			return 1;
		case "kit":
			return 1 + process.change.count;
		case "port":
			return process.port.replaced;
	}
}

/** What the pieces of one dressing cost, those that have a price; 0 without prices. */
export function priceOf(scenario: Scenario, index: number, process: DressingProcess): number {
	const { prices, dressings } = scenario;
	if (prices === null) return 0;
	const filled = dressings[index].regimens.some(({ fillMl }) => fillMl > 0);
	return kinds.reduce(
		(sum, kind) =>
			(kind === "source" || kind === "line") && !filled
				? sum
				: sum + (prices.items[kind] ?? 0) * piecesOf(kind, process),
		0,
	);
}

const kinds = ["canister", "source", "line", "kit", "port"] as const;

/** A row of the report: median and P90, packs rounded up where the scenario has pack sizes. */
export function supplyOf(item: SupplyItem, p50: number, p90: number, scenario: Scenario): Supply {
	const packSize = item.kind === "port" ? null : (scenario.packs[item.kind] ?? null);
	return { item: item.item, p50, p90, packSize, packs: packSize === null ? null : Math.ceil(p90 / packSize) };
}

/** What may have to be sent home: canisters, kits, and solution where a regimen with fill is really in force by then, which may be longer than its time. */
export function homeItems(scenario: Scenario): SupplyItem[] {
	const { home } = scenario;
	if (home === null) return [];
	const end = home.fromMin + home.forMin;
	const schedules = schedulesOf(scenario);
	const fills = scenario.dressings.map(({ regimens }, index) => {
		const { takeovers } = schedules[index];
		return [{ regimen: 0, atMin: 0 }, ...takeovers].some(
			({ regimen, atMin }, i, list) =>
				regimens[regimen].fillMl > 0 && atMin < end && (list[i + 1]?.atMin ?? end) > home.fromMin,
		);
	});
	return supplyItems(scenario).flatMap((item) => {
		if (item.kind === "canister" || item.kind === "kit") return [item];
		const dressings = item.dressings.filter((index) => fills[index]);
		return item.kind === "source" && dressings.length > 0 ? [{ ...item, dressings }] : [];
	});
}
