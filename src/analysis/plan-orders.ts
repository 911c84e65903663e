import { dayMin } from "../scenario/index.ts";
import { tryShelf } from "./shelf-trial.ts";
import type { SupplyGathering } from "./supply-gathering.ts";
import type { PlannedOrder, RuleResult } from "./supply-result.ts";

/** The middle of a day stands for when its pieces are used. */
const middayMin = dayMin / 2;

/**
 * The orders that the rules ask for on a median course of demand, in order of time; and for each, how likely it is
 * that without it (and the later ones) the item runs out before the delivery after it, or by the end.
 */
export function planOrders(
	gathered: SupplyGathering,
	rules: readonly (RuleResult | null)[],
): PlannedOrder[] {
	const { ward, layout } = gathered;
	const orders = ward.stores.flatMap((item, i): PlannedOrder[] => {
		const rule = rules[i];
		const { stock } = item;
		if (rule === null || rule === undefined || stock === null) return [];
		const { cumulative } = layout.items[i];
		const times: number[] = [];
		for (let day = 0; day < layout.days; day++) {
			const reached = gathered.count(cumulative + day).p50;
			while (times.length < reached) times.push(day * dayMin + middayMin);
		}
		const placed: { pieces: number; atMin: number; arrivesMin: number }[] = [];
		const course = { timesMin: times, endMin: ward.horizonMin };
		tryShelf(item, rule, ward, course, null, {
			ordered: (pieces, atMin, arrivesMin) =>
				placed.push({ pieces, atMin, arrivesMin }),
			received() {},
			expired() {},
			waited() {},
		});
		let there = stock;
		return placed.map((order, n) => {
			const next = placed[n + 1]?.arrivesMin ?? ward.horizonMin;
			const day = Math.min(
				layout.days - 1,
				Math.max(0, Math.floor(Math.min(next, ward.horizonMin) / dayMin) - 1),
			);
			const probability = gathered.shareAbove(cumulative + day, there);
			there += order.pieces;
			return {
				item: item.name,
				atMin: order.atMin,
				arrivesMin: order.arrivesMin,
				packs: order.pieces / item.pack,
				packSize: item.pack,
				pieces: order.pieces,
				cost:
					item.price === null
						? null
						: Math.round(order.pieces * item.price * 100) / 100,
				without: { byMin: (day + 1) * dayMin, probability },
			};
		});
	});
	return orders.sort((a, b) => a.atMin - b.atMin);
}
