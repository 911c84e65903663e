import { Trace } from "../../engine/index.ts";
import type {
	Assumption,
	BedsResult,
	CostResult,
	ItemSupply,
	PolicyResult,
	RuleResult,
	StoreResult,
	SupplyResult,
	WardSummary,
} from "../../results/index.ts";
import { dayOfKind, type WardScenario } from "../../scenario/index.ts";
import { wilson } from "../../statistics/index.ts";
import { minutesADay, minutesAWeek } from "../../vocabulary/index.ts";
import { meanLength } from "../../ward/index.ts";
import { assumptionsOf } from "../kit/assumptions.ts";
import { keyed, picked } from "../kit/named.ts";
import { regimenLine } from "../kit/regimen-line.ts";
import { supplyCautions } from "./cautions.ts";
import { type Found, orderRules } from "./rules/find-rules.ts";
import type { SupplyGathering } from "./run/gathering.ts";
import { pieceCounts } from "./run/layout.ts";
import { playable } from "./run/ward-counts.ts";

/** Puts the answer together from the parts that were gathered. Throws RangeError where a block is missing. */
export function supplyResult(gathered: SupplyGathering, found: Found, version: string): SupplyResult {
	gathered.complete();
	const { ward, layout } = gathered;
	const result = {
		format: "slackwater/supply@1",
		scenario: summaryOf(ward, version),
		trace: traceOf(gathered, found),
		items: ward.stores.map((_, i) => itemSupply(gathered, i, found.rules[i])),
		orders: found.orders,
		beds: bedsOf(gathered),
		nurses: ward.shifts.map((shift, i) => ({ ...shift, hours: gathered.spread(layout.shifts + i) })),
		waste: {
			liquidMl: gathered.spread(layout.liquid),
			solutionMl: gathered.spread(layout.solution),
			weightKg: gathered.spread(layout.weight),
			unweighed: ward.stores.filter(({ weightG }) => weightG === null).map(({ name }) => name),
		},
		cost: costOf(gathered, found),
		policies: policiesOf(gathered),
		assumptions: wardAssumptions(ward),
	} as const;
	return { ...result, cautions: supplyCautions(ward, result) };
}

function summaryOf(ward: WardScenario, version: string): WardSummary {
	const { arrivals, length, horizonMin } = ward;
	return {
		...picked(ward, "title", "seed", "start", "startClockMin", "horizonMin", "warmUpMin"),
		...picked(ward, "replications", "units", "full"),
		version,
		days: horizonMin / minutesADay,
		weeks: Math.ceil(horizonMin / minutesAWeek),
		chance: ward.chance ? "on" : "off",
		kinds: ward.kinds.map(({ id, share, dressing: { regimens, canisterMl, sourceMl }, solution }) => {
			const filled = regimens.some(({ fillMl }) => fillMl > 0)
				? { sourceMl, solution }
				: { sourceMl: null, solution: null };
			return { id, share, regimen: regimenLine(regimens[0]), canisterMl, ...filled };
		}),
		arrivalsPerWeek:
			arrivals === null ? null : arrivals.factors.reduce((sum, factor) => sum + factor, 0) * arrivals.perDay,
		meanLengthMin: length === null ? null : meanLength(length),
		currency: ward.prices?.currency ?? null,
		pricesAsOf: ward.prices?.asOf ?? null,
	};
}

function traceOf({ ward, layout }: SupplyGathering, found: Found): SupplyResult["trace"] {
	const trace = new Trace();
	const { events } = playable(ward, layout, orderRules(found))(0, trace);
	return { events, hash: trace.hash };
}

function itemSupply(gathered: SupplyGathering, i: number, rule: RuleResult | null): ItemSupply {
	const { ward, layout } = gathered;
	const item = ward.stores[i];
	const places = layout.items[i];
	const demand = (at: { total: number; days: number; weeks: number }) => ({
		total: gathered.count(at.total),
		days: gathered.series(at.days, layout.days),
		weeks: gathered.series(at.weeks, layout.weeks),
	});
	return {
		item: item.name,
		...picked(item, "kind", "sizeMl", "pack", "price", "stock"),
		demand: { ...demand(places.demand), causes: places.causes.map((at) => ({ cause: at.cause, ...demand(at) })) },
		store: rule === null ? null : storeOf(gathered, i, rule),
	};
}

function storeOf(gathered: SupplyGathering, i: number, rule: RuleResult): StoreResult {
	const { days, items } = gathered.layout;
	const { replications } = gathered.ward;
	const places = items[i];
	const daily = (first: number) => Array.from({ length: days }, (_, day) => gathered.tallies[first + day].mean);
	const outByDay = daily(places.outByDay);
	const probability = outByDay.at(-1) ?? 0;
	const asked = gathered.tallies[places.demand.total].mean;
	return {
		rule,
		onHand: gathered.series(places.onHand, days),
		outOnDay: daily(places.outOnDay),
		outByDay,
		stockOut: { probability, ...wilson(Math.round(probability * replications), replications) },
		ready: gathered.spread(places.ready),
		fillRate: asked === 0 ? null : 1 - gathered.tallies[places.short].mean / asked,
		offHours: gathered.spread(places.offHours),
		...keyed(pieceCounts, (name) => gathered.count(places[name])),
	};
}

function bedsOf(gathered: SupplyGathering): BedsResult {
	const { layout } = gathered;
	const all = layout.warmDays + layout.days;
	const begun = gathered.tallies[layout.begun].mean;
	return {
		firstDay: layout.warmDays === 0 ? 0 : -layout.warmDays,
		inBed: gathered.series(layout.inBed, all),
		waiting: gathered.series(layout.waiting, all),
		...keyed(["arrived", "begun", "left", "turnedAway"], (name) => gathered.count(layout[name])),
		meanInBed: gathered.spread(layout.meanInBed),
		shareWaited: begun === 0 ? 0 : gathered.tallies[layout.waited].mean / begun,
		meanWaitMin: gathered.spread(layout.meanWait),
		therapyDays: gathered.spread(layout.therapyDays),
	};
}

function costOf(gathered: SupplyGathering, { plenty }: Found): CostResult | null {
	const { ward, layout } = gathered;
	if (ward.prices === null) return null;
	const items = ward.stores.flatMap(({ name: item, price }, i) => {
		if (price === null) return [];
		const used = gathered.count(layout.items[i].used);
		const expiredMean = gathered.tallies[layout.items[i].expired].mean;
		return [{ item, price, used, expiredMean, needed: plenty?.used[i] ?? used }];
	});
	if (items.length === 0) return null;
	return {
		currency: ward.prices.currency,
		asOf: ward.prices.asOf,
		items,
		unpriced: ward.stores.filter(({ price }) => price === null).map(({ name }) => name),
		total: gathered.spread(layout.cost),
		totalNeeded: plenty?.cost ?? gathered.spread(layout.cost),
	};
}

function policiesOf(gathered: SupplyGathering): PolicyResult[] {
	const { ward, layout } = gathered;
	const priced = ward.stores.some(({ price }) => price !== null);
	const [today] = layout.policies;
	const varianceOf = ({ cost, costDifference }: typeof today) => ({
		paired: gathered.variance(costDifference),
		independent: gathered.variance(cost) + gathered.variance(today.cost),
	});
	return layout.policies.map((places, i) => ({
		name: i === 0 ? "today's mix" : ward.policies[i - 1].name,
		cost: priced ? gathered.spread(places.cost) : null,
		difference: priced && i > 0 ? gathered.spread(places.costDifference) : null,
		variance: priced && i > 0 ? varianceOf(places) : null,
		items: ward.stores.map(({ name }, item) => ({ item: name, used: gathered.count(places.used + item) })),
		nurseHours: gathered.spread(places.nurseHours),
		nurseHoursDifference: i === 0 ? null : gathered.spread(places.nurseHoursDifference),
	}));
}

/** The constants that any kind of dressing uses, once each, then what the file left to the defaults. */
function wardAssumptions(ward: WardScenario): Assumption[] {
	const byName = new Map<string, Assumption>();
	for (const { dressing } of ward.kinds)
		for (const assumption of assumptionsOf({ ...dayOfKind(ward, dressing), defaulted: ward.defaulted }))
			byName.set(assumption.name, assumption);
	return [...byName.values()];
}
