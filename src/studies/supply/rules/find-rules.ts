import type { CountSpread, PlannedOrder, RuleResult, Spread } from "../../../results/index.ts";
import type { StoreItem, WardScenario } from "../../../scenario/index.ts";
import {
	InBlockOrder,
	mergeInto,
	noMoments,
	partsOf,
	reorderPoint,
	replicationsIn,
} from "../../../statistics/index.ts";
import { minutesADay } from "../../../vocabulary/index.ts";
import type { OrderRule } from "../../../ward/index.ts";
import { countSpread, spread } from "../../kit/spread.ts";
import { wardBlocked, wardBlocks } from "../run/supply-part.ts";
import { planOrders } from "./plan-orders.ts";
import { ReadyRates, type Share } from "./ready-rates.ts";
import type { SearchPart } from "./rule-part.ts";
import { groupsPerHalf, SearchCollector, SearchSums, searchBlocks, searchGroups } from "./rule-part.ts";
import type { ItemPlan, SearchPlan } from "./rule-plan.ts";
import { keptReplications, leadMoments, protectionDays, searchedMin, tailOf } from "./rule-plan.ts";
import { countBefore, type Demand, demandOf } from "./ward-demand.ts";

/** What a search comes to: everything that a run of the ward needs before it begins. */
export interface Found {
	/** The order rules of every item, given or found, with what they rest on; null for one of unlimited stock. */
	readonly rules: readonly (RuleResult | null)[];
	readonly orders: readonly PlannedOrder[];
	/**
	 * The same weeks with stores that lack nothing: pieces used, and their cost, null where no item has a price. null where
	 * no item is limited, since then the run itself is that.
	 */
	readonly plenty: { readonly used: readonly CountSpread[]; readonly cost: Spread | null } | null;
}

/** The first blocks of so many therapy days settle how much an order brings, and what is kept. */
const pilotTherapyDays = 12_000;

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);
const halves = [range(0, groupsPerHalf), range(groupsPerHalf, searchGroups)] as const;
const everyGroup = range(0, searchGroups);

/**
 * Looks for the order rules of a ward, over all of its replications. The first blocks are played here, when it is made,
 * and settle `plan`; the others may be played anywhere (`searchBlocks`) and added in any order. Memory does not grow with
 * replications beyond the sums of their blocks.
 */
export class RuleSearch {
	readonly plan: SearchPlan;
	/** The first block that is still to be played; equals the number of blocks where none is. */
	readonly firstBlock: number;
	readonly #ward: WardScenario;
	readonly #sums: SearchSums;
	readonly #cost = noMoments();
	readonly #courses: (readonly Float64Array[])[] = [];
	readonly #inOrder = new InBlockOrder<SearchPart>(({ cost, courses }) => {
		for (const moments of cost) mergeInto(this.#cost, moments);
		this.#courses.push(...courses);
	}, " of the search");

	constructor(ward: WardScenario) {
		this.#ward = ward;
		this.#sums = new SearchSums(ward);
		if (ward.stores.every(({ stock }) => stock === null)) {
			this.plan = { tailMin: 0, kept: 0, items: ward.stores.map(() => null) };
			this.firstBlock = wardBlocks(ward);
			return;
		}
		const tailMin = tailOf(ward);
		const blocks = pilot(ward, tailMin);
		this.plan = planOf(ward, tailMin, blocks);
		this.firstBlock = blocks.length;
		this.add(searched(ward, this.plan, blocks).part());
	}

	add(part: SearchPart): void {
		this.#inOrder.add(part.firstBlock, part.cost.length, part);
		this.#sums.merge(part);
	}

	/** What was found. Throws RangeError where a block is missing. */
	found(): Found {
		const ward = this.#ward;
		if (this.plan.kept === 0) return { rules: ward.stores.map(() => null), orders: [], plenty: null };
		this.#inOrder.complete(wardBlocks(ward));
		const rules = this.plan.items.map((plan, i) => (plan === null ? null : this.#ruleOf(ward.stores[i], i, plan)));
		const priced = ward.stores.some(({ price }) => price !== null);
		return {
			rules,
			orders: planOrders(ward, rules, this.#courses),
			plenty: { used: this.#sums.used.map(countSpread), cost: priced ? spread(this.#sums.costs, this.#cost) : null },
		};
	}

	#ruleOf(item: StoreItem, i: number, plan: ItemPlan): RuleResult {
		const { service } = item;
		const ready = new ReadyRates(partsOf(this.#sums.net[i]), this.#sums.seconds, plan.levels);
		const [first, second] = halves;
		const isSplit = second.some((group) => this.#sums.seconds[group] > 0);
		const judged = item.reorder !== null ? everyGroup : isSplit ? second : first;
		const leastOf = (groups: readonly number[], of: (share: Share) => number) =>
			item.reorder === null ? ready.least(groups, service, of) : null;
		const reorder = item.reorder ?? ready.least(first, service, meanOf);
		const shareOf = (level: number) => ready.share(judged, level).mean;
		const demand = this.#dailyDemand(i);
		const days = protectionDays(item);
		const point = reorderPoint(demand, { mean: days, sd: leadMoments(item.lead).sdMin / minutesADay }, service);
		const textBook = Math.max(0, Math.ceil(point - 1e-9));
		const step = Math.max(1, Math.round(0.15 * reorder));
		const ladder = [-2, -1, 0, 1, 2].map((steps) => reorder + steps * step).filter((level) => level >= 0);
		const { mean, half } = ready.share(judged, reorder);
		const isSure = ready.share(first, reorder).half !== null;
		return {
			reorder,
			upTo: reorder + plan.quantity,
			origin: item.reorder === null ? "found" : "given",
			service,
			low95: isSure ? leastOf(first, (share) => share.mean + (share.half ?? 0)) : null,
			high95: isSure ? leastOf(first, (share) => share.mean - (share.half ?? 0)) : null,
			otherHalf: isSplit ? leastOf(second, meanOf) : null,
			reached: {
				mean,
				low95: half === null ? null : Math.max(0, mean - half),
				high95: half === null ? null : Math.min(1, mean + half),
				onOtherHalf: item.reorder === null && isSplit,
			},
			demandPerDay: demand.mean,
			demandSdPerDay: demand.sd,
			exposureDays: days,
			textBook: { reorder: textBook, service: shareOf(textBook) },
			ladder: ladder.map((level) => ({ reorder: level, service: shareOf(level) })),
		};
	}

	/** Mean and standard deviation of the pieces asked for in a day. */
	#dailyDemand(item: number): { readonly mean: number; readonly sd: number } {
		const tally = this.#sums.daily[item];
		const { mean, count } = tally;
		const parts = tally.parts();
		let squares = 0;
		for (let i = 0; i < parts.length; i += 2) squares += parts[i + 1] * (parts[i] - mean) * (parts[i] - mean);
		return { mean, sd: count < 2 ? 0 : Math.sqrt(squares / (count - 1)) };
	}
}

const meanOf = ({ mean }: Share) => mean;

/** The demand of the first blocks, as many as make up the therapy days of a pilot. */
function pilot(ward: WardScenario, tailMin: number): Demand[] {
	const demand = demandOf(ward, tailMin);
	const blocks: Demand[] = [];
	let therapyMin = 0;
	for (let block = 0; block < wardBlocks(ward) && therapyMin < pilotTherapyDays * minutesADay; block++) {
		const courses: (readonly Float64Array[])[] = [];
		for (const replication of replicationsIn(block, wardBlocked(ward))) {
			const played = demand(replication);
			courses.push(played.timesMin);
			therapyMin += played.therapyMin;
		}
		blocks.push(courses);
	}
	return blocks;
}

function planOf(ward: WardScenario, tailMin: number, blocks: readonly Demand[]): SearchPlan {
	const all = blocks.flat();
	const spanMin = searchedMin(ward);
	const pieces = all.flat().reduce((sum, { length }) => sum + length, 0);
	const items = ward.stores.map((item, i): ItemPlan | null => {
		if (item.stock === null) return null;
		const asked = all.reduce((n, one) => n + countBefore(one[i], spanMin), 0);
		const weekly = (7 * asked * minutesADay) / (all.length * spanMin);
		// An order covers a week, in whole packs, unless the scenario says otherwise.
		const quantity =
			item.reorder !== null && item.upTo !== null
				? item.upTo - item.reorder
				: Math.max(1, Math.ceil(weekly / item.pack - 1e-9)) * item.pack;
		return { quantity, levels: null };
	});
	const free = { tailMin, kept: keptReplications(ward, pieces / all.length), items };
	return { ...free, items: withLevels(ward, free, blocks) };
}

/** The first blocks, searched. */
function searched(ward: WardScenario, plan: SearchPlan, blocks: readonly Demand[]): SearchCollector {
	const collector = new SearchCollector(ward, plan, 0);
	for (const block of blocks) collector.add(block);
	return collector;
}

/** Reorder points to be tried one by one, for items of which a piece expires before it is used. */
const mostLevels = 33;

function withLevels(ward: WardScenario, plan: SearchPlan, blocks: readonly Demand[]): SearchPlan["items"] {
	if (ward.stores.every(({ shelfMin }) => shelfMin === null)) return plan.items;
	const played = (items: SearchPlan["items"]) => searched(ward, { ...plan, items }, blocks);
	const perishable = plan.items.map((item, i) => (ward.stores[i].shelfMin === null ? null : item));
	const part = played(perishable).part();
	const tops = part.net.map((net, i) => {
		if (perishable[i] === null) return 0;
		const ready = new ReadyRates(net, part.seconds, null);
		return ready.least(everyGroup, ward.stores[i].service, meanOf);
	});
	const { expired } = played(perishable.map((item, i) => item && { ...item, levels: [tops[i] + item.quantity] }));
	return plan.items.map((item, i) => {
		if (item === null || expired[i] === 0) return item;
		const top = 2 * tops[i] + 2 * item.quantity + 8;
		const levels = range(0, mostLevels).map((n) => Math.round((n * top) / (mostLevels - 1)));
		return { ...item, levels: [...new Set(levels)] };
	});
}

/** Looks for the rules of a ward here, all blocks in a row. */
export function findRules(ward: WardScenario): Found {
	const search = new RuleSearch(ward);
	search.add(searchBlocks(ward, search.plan, search.firstBlock, wardBlocks(ward)));
	return search.found();
}

/** The rules that a run follows; what an item of unlimited stock gets is never looked at. */
export const orderRules = ({ rules }: Pick<Found, "rules">): OrderRule[] =>
	rules.map((rule) => rule ?? { reorder: 0, upTo: 1 });
