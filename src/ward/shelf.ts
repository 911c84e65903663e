import { type EventId, lognormal, type Simulation, type Substream } from "../engine/index.ts";
import type { StoreItem } from "../scenario/index.ts";
import { never } from "../therapy/base/clock.ts";
import { eventPriority } from "../therapy/base/event-priority.ts";
import { orderMoment, type WeekClock } from "./order-moment.ts";

/** When an order is due (on the shelf and on order, less what is waited for, at or below `reorder`) and what it brings that to. */
export interface OrderRule {
	readonly reorder: number;
	readonly upTo: number;
}

/** Is told what happens to a shelf, as far as it listens. Times are those of the simulation. */
export interface ShelfTold {
	ordered?(pieces: number, atMin: number, arrivesMin: number): void;
	received?(pieces: number, atMin: number): void;
	expired?(pieces: number, atMin: number): void;
	/** Somebody who found the shelf empty has got a piece. */
	waited?(minutes: number): void;
}

/** Somebody who found the shelf empty. */
export interface Waiting {
	readonly since: number;
	readonly late: () => void;
}

/**
 * One item of the stores: lots that are used oldest first and expire, and the orders that refill them in whole packs.
 * Until it opens it gives whatever is asked and counts nothing, as the stores before a simulation's start.
 *
 *     opening + received = used + expired + on hand,    position = on hand + on order − waiting
 */
export class Shelf {
	opening = 0;
	received = 0;
	used = 0;
	expired = 0;
	onHand = 0;
	onOrder = 0;
	/** Minutes with nothing on the shelf, up to when it was last filled or closed. */
	emptyMin = 0;
	#emptySince = never;
	readonly #sim: Simulation;
	readonly #item: StoreItem;
	readonly #rule: OrderRule | null;
	readonly #clock: WeekClock;
	readonly #lead: Substream | null;
	readonly #told: ShelfTold;
	readonly #lots: { pieces: number; readonly expires: number }[] = [];
	readonly #coming: { readonly pieces: number; readonly at: number }[] = [];
	readonly #waiting: Waiting[] = [];
	readonly #eDelivery: EventId;
	readonly #eExpiry: EventId;
	readonly #eOrder: EventId;
	readonly #eReview: EventId;
	#isOpen = false;

	/** `rule` null: nothing is ever lacking. `lead` null: lead times are their median. */
	constructor(
		sim: Simulation,
		item: StoreItem,
		rule: OrderRule | null,
		clock: WeekClock,
		lead: Substream | null,
		told: ShelfTold,
	) {
		this.#sim = sim;
		this.#item = item;
		this.#rule = item.stock === null ? null : rule;
		this.#clock = clock;
		this.#lead = item.lead.spread > 0 ? lead : null;
		this.#told = told;
		const event = (name: string, priority: number, action: () => void) =>
			sim.event(`${item.name}: ${name}`, priority, action);
		this.#eDelivery = event("delivery", eventPriority.delivery, () => this.#arrives());
		this.#eExpiry = event("expiry", eventPriority.expiry, () => this.#expires());
		this.#eOrder = event("orders go out", eventPriority.stores, () => this.#send());
		this.#eReview = event("shelf is looked at", eventPriority.stores, () => {
			sim.schedule(this.#eReview, sim.now + (item.reviewMin ?? 0));
			this.#due();
		});
	}

	reset(replication: number): void {
		this.#lead?.reset(replication);
		Object.assign(this, { opening: 0, received: 0, used: 0, expired: 0, onHand: 0, onOrder: 0, emptyMin: 0 });
		this.#emptySince = never;
		this.#lots.length = 0;
		this.#coming.length = 0;
		this.#waiting.length = 0;
		this.#isOpen = false;
	}

	/** The count begins, with what the item has in stock, all of it new. */
	open(): void {
		this.#isOpen = true;
		if (this.#rule === null) return;
		const stock = this.#item.stock ?? 0;
		this.opening = stock;
		if (stock > 0) this.#put(stock);
		else this.#emptySince = this.#sim.now;
		if (this.#item.reviewMin === null) this.#due();
		else this.#sim.schedule(this.#eReview, this.#sim.now);
	}

	get waiting(): number {
		return this.#waiting.length;
	}

	get has(): boolean {
		return !this.#isOpen || this.#rule === null || this.onHand > 0;
	}

	/** Takes one piece; false where there is none. */
	take(): boolean {
		if (!this.#isOpen) return true;
		if (this.#rule === null) {
			// Unlimited: it comes as it is used.
			this.received++;
			this.used++;
			return true;
		}
		if (this.onHand === 0) return false;
		this.#give();
		if (this.#item.reviewMin === null) this.#due();
		return true;
	}

	/** Waits for a piece, behind all others; returns the entry for `withdraw`. */
	wait(late: () => void): Waiting {
		const entry = { since: this.#sim.now, late };
		this.#waiting.push(entry);
		if (this.#item.reviewMin === null) this.#due();
		return entry;
	}

	withdraw(entry: Waiting): void {
		const at = this.#waiting.indexOf(entry);
		if (at < 0) return;
		this.#told.waited?.(this.#sim.now - entry.since);
		this.#waiting.splice(at, 1);
	}

	/** Tells of everybody who still waits, as at the horizon. */
	close(): void {
		this.#isFilled();
		for (const { since } of this.#waiting) this.#told.waited?.(this.#sim.now - since);
	}

	#give(): void {
		this.onHand--;
		this.used++;
		if (this.onHand === 0) this.#emptySince = this.#sim.now;
		const [oldest] = this.#lots;
		oldest.pieces--;
		if (oldest.pieces > 0) return;
		this.#lots.shift();
		this.#planExpiry();
	}

	#put(pieces: number): void {
		this.onHand += pieces;
		this.#isFilled();
		this.#lots.push({ pieces, expires: this.#sim.now + (this.#item.shelfMin ?? Number.POSITIVE_INFINITY) });
		this.#planExpiry();
	}

	/** Books the minutes with nothing on the shelf, where there was nothing. */
	#isFilled(): void {
		if (this.#emptySince >= 0) this.emptyMin += this.#sim.now - this.#emptySince;
		this.#emptySince = never;
	}

	#planExpiry(): void {
		const [oldest] = this.#lots;
		if (oldest === undefined || oldest.expires === Number.POSITIVE_INFINITY) this.#sim.cancel(this.#eExpiry);
		else this.#sim.schedule(this.#eExpiry, oldest.expires);
	}

	#expires(): void {
		const lot = this.#lots.shift();
		if (lot === undefined) return;
		this.onHand -= lot.pieces;
		if (this.onHand === 0) this.#emptySince = this.#sim.now;
		this.expired += lot.pieces;
		this.#planExpiry();
		this.#told.expired?.(lot.pieces, this.#sim.now);
		if (this.#item.reviewMin === null) this.#due();
	}

	get #position(): number {
		return this.onHand + this.onOrder - this.#waiting.length;
	}

	/** Orders where the position calls for it: at once, or with the next orders that go out. */
	#due(): void {
		const rule = this.#rule;
		if (rule === null || this.#position > rule.reorder) return;
		const at = orderMoment(this.#sim.now, this.#item, this.#clock);
		if (at <= this.#sim.now) this.#send();
		else if (!this.#sim.isPending(this.#eOrder)) this.#sim.schedule(this.#eOrder, at);
	}

	#send(): void {
		const rule = this.#rule;
		const lacking = rule === null ? 0 : rule.upTo - this.#position;
		if (lacking <= 0) return;
		const { pack, lead } = this.#item;
		const pieces = Math.ceil(lacking / pack) * pack;
		const now = this.#sim.now;
		const leadMin = this.#lead === null ? lead.medianMin : lognormal(this.#lead, lead.medianMin, lead.spread);
		const at = now + leadMin;
		this.onOrder += pieces;
		let place = this.#coming.length;
		while (place > 0 && this.#coming[place - 1].at > at) place--;
		this.#coming.splice(place, 0, { pieces, at });
		this.#told.ordered?.(pieces, now, at);
		if (at <= now) this.#arrives();
		else this.#sim.schedule(this.#eDelivery, this.#coming[0].at);
	}

	#arrives(): void {
		const now = this.#sim.now;
		for (let next = this.#coming[0]; next !== undefined && next.at <= now; next = this.#coming[0]) {
			this.#coming.shift();
			this.onOrder -= next.pieces;
			this.received += next.pieces;
			this.#put(next.pieces);
			this.#told.received?.(next.pieces, now);
		}
		if (this.#coming.length > 0) this.#sim.schedule(this.#eDelivery, this.#coming[0].at);
		while (this.onHand > 0) {
			const first = this.#waiting.shift();
			if (first === undefined) break;
			this.#give();
			this.#told.waited?.(now - first.since);
			first.late();
		}
		if (this.#item.reviewMin === null) this.#due();
	}
}
