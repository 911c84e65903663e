import { type Simulation, Substream } from "../engine/index.ts";
import type { Dressing, WardScenario } from "../scenario/index.ts";
import { purposeNumber } from "../therapy/base/purposes.ts";
import type { Stores } from "../therapy/base/stores.ts";
import type { DemandCause, PieceKind } from "../vocabulary/index.ts";
import type { WeekClock } from "./order-moment.ts";
import { type OrderRule, Shelf, type Waiting } from "./shelf.ts";

/** Is told what happens in the stores, as far as it listens; `item` is the place in the ward's list. Times are those of the simulation. */
export interface StoresTold {
	/** `atOnce`: there was one; `substituted`: another size was used. */
	asked?(item: number, cause: DemandCause, atMin: number, atOnce: boolean, substituted: boolean): void;
	ordered?(item: number, pieces: number, atMin: number, arrivesMin: number): void;
	/** A therapy was off for so long because the item was out. */
	waited?(item: number, minutes: number): void;
}

/** What one kind of dressing uses: places in the ward's list of items; null where it uses none. */
export type ItemsOfKind = { readonly [K in PieceKind]: number | null };

/** All shelves of a ward, and what one dressing may ask of them. */
export class Storeroom {
	readonly shelves: readonly Shelf[];
	readonly #ward: WardScenario;
	readonly #sim: Simulation;
	readonly #told: StoresTold;

	/** `rules` null: nothing is ever lacking. */
	constructor(
		sim: Simulation,
		ward: WardScenario,
		rules: readonly OrderRule[] | null,
		clock: WeekClock,
		told: StoresTold,
	) {
		this.#sim = sim;
		this.#ward = ward;
		this.#told = told;
		this.shelves = ward.stores.map(
			(item, i) =>
				new Shelf(
					sim,
					item,
					rules === null ? null : rules[i],
					clock,
					ward.chance ? new Substream(ward.seed, item.name, purposeNumber("stores.lead")) : null,
					{ ordered: (...order) => told.ordered?.(i, ...order), waited: (minutes) => told.waited?.(i, minutes) },
				),
		);
	}

	reset(replication: number): void {
		for (const shelf of this.shelves) shelf.reset(replication);
	}

	/** The stores of one dressing. */
	of(items: ItemsOfKind): Stores {
		const waiting = new Map<PieceKind, { shelf: Shelf; entry: Waiting }>();
		const sizeOf = (item: number) => this.#ward.stores[item].sizeMl ?? 0;
		return {
			take: (kind, cause, late) => {
				const item = items[kind];
				if (item === null) return 0;
				const shelf = this.shelves[item];
				const other = this.#ward.stores[item].substitute;
				const atOnce = shelf.take();
				const substituted = !atOnce && other !== null && this.shelves[other].take();
				this.#told.asked?.(item, cause, this.#sim.now, atOnce, substituted);
				if (atOnce) return sizeOf(item);
				if (substituted) return sizeOf(other);
				const entry = shelf.wait(() => {
					waiting.delete(kind);
					late(sizeOf(item));
				});
				waiting.set(kind, { shelf, entry });
				return null;
			},
			has: (kind) => {
				const item = items[kind];
				if (item === null || this.shelves[item].has) return true;
				const other = this.#ward.stores[item].substitute;
				return other !== null && this.shelves[other].has;
			},
			withdraw: (kind) => {
				const waits = waiting.get(kind);
				waits?.shelf.withdraw(waits.entry);
				waiting.delete(kind);
			},
		};
	}
}

/** Which items a dressing of the ward uses. */
export function itemsOf(ward: WardScenario, kind: number, dressing: Dressing): ItemsOfKind {
	const fills = dressing.regimens.some(({ fillMl }) => fillMl > 0);
	const place = (wanted: PieceKind, sizeMl: number | null, solution: string | null) => {
		const at = ward.stores.findIndex(
			(item) => item.kind === wanted && item.sizeMl === sizeMl && item.solution === solution,
		);
		return at < 0 ? null : at;
	};
	return {
		canister: place("canister", dressing.canisterMl, null),
		solution: fills ? place("solution", dressing.sourceMl, ward.kinds[kind].solution) : null,
		kit: place("kit", null, null),
		port: place("port", null, null),
		line: fills ? place("line", null, null) : null,
	};
}
