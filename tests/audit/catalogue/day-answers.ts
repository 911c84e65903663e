import { type Entry, entry, fixedWords } from "../check.ts";
import { fixed } from "../holes.ts";
import { listed, type Said } from "../pattern.ts";
import type { DressingScope } from "../scope.ts";
import { conditionName } from "../vocabulary.ts";
import {
	isLate,
	isPlanned,
	likeliestSaid,
	listingSaid,
	listingsOf,
	soundsAt,
	soundsSaid,
	takeoverOf,
	varies,
} from "./day-words.ts";
import { regimenSaid } from "./regimen.ts";

const many = ({ result }: DressingScope): number => result.projection.replications;
const hasFill = ({ dressing }: DressingScope): boolean => dressing.regimens.some(({ fillMl }) => fillMl > 0);

const least = 0.05;
const nearlyAll = 0.95;

const firstNeed = ({ projection }: DressingScope) => {
	const [need] = projection.canisterNeeds;
	return need === undefined || need.probabilityWithinHorizon < least ? null : need;
};

/** A need told in its three ways: certain, likely, or on some days only. */
function needTold(scope: DressingScope, way: "sure" | "likely" | "some"): unknown[][] {
	const need = firstNeed(scope);
	if (need === null) return [];
	const own = !varies(scope) ? "sure" : need.probabilityWithinHorizon >= nearlyAll ? "likely" : "some";
	return own !== way
		? []
		: [
				[
					...(way === "some" ? [need.probabilityWithinHorizon] : []),
					[need.p10Min, need.p90Min],
					likeliestSaid(need, scope.scenario),
				],
			];
}

const canister: Entry<DressingScope>[] = [
	entry(
		"Canister: [[{text}]][[{text}]] before {clock}[[ ({percent})]]; {ml}{mlspread} of its {ml} will be in it.",
		(scope) => {
			if (firstNeed(scope) !== null) return [];
			const { p10Ml, p50Ml, p90Ml } = scope.projection.canisterAtEnd;
			const sure = !varies(scope);
			// One that is listed comes all the same.
			const further = listingsOf(scope).some(({ what }) => what === "canister-change") ? "further " : "";
			return [
				[
					sure ? `no ${further}change` : undefined,
					sure ? undefined : `no ${further}change likely`,
					scope.scenario.horizonMin,
					scope.projection.canisterNeeds[0]?.probabilityWithinHorizon,
					p50Ml,
					[p10Ml, p90Ml],
					scope.dressing.canisterMl,
				],
			];
		},
	),
	entry("Canister: needs changing {range}[[, likeliest {said}]].", (scope) => needTold(scope, "sure")),
	entry("Canister: likely to need changing {range}[[, likeliest {said}]].", (scope) => needTold(scope, "likely")),
	entry("Canister: may need changing ({percent}); if so, {range}[[, likeliest {said}]].", (scope) =>
		needTold(scope, "some"),
	),
	entry("Over the whole time {between} changes.", (scope) => {
		const { p10, p90 } = scope.projection.totals.canisterChanges;
		return firstNeed(scope) === null || p90 < 1.5 ? [] : [[[p10, p90]]];
	}),
];

const solution: Entry<DressingScope>[] = [
	entry(
		"Solution: {ml} in {count:fill}{mlspread}; have {word} {ml} {text}[[ beside the one that hangs, with {ml} left]], {text} until {clock}.",
		(scope) => solutionValues(scope, "good"),
	),
	entry(
		"Solution: {ml} in {count:fill}{mlspread}; have {word} {ml} {text}[[ beside the one that hangs, with {ml} left]]; the {text} is renewed {range}[[ in {percent} of the days]].",
		(scope) => solutionValues(scope, "renewed"),
	),
	entry("Did not come back: {ml} of the solution{mlspread}.", (scope) => {
		const { p10, p50, p90 } = scope.projection.totals.notReturnedMl;
		return hasFill(scope) ? [[p50, [p10, p90]]] : [];
	}),
];

function solutionValues(scope: DressingScope, way: "good" | "renewed"): unknown[][] {
	if (!hasFill(scope)) return [];
	const { instilledMl, fills, sourceChanges } = scope.projection.totals;
	const first = scope.projection.sourceChanges.find(({ ordinal }) => ordinal === 1);
	const chance = first?.probabilityWithinHorizon ?? 0;
	if (chance < least !== (way === "good")) return [];
	const { sourceMl, sourceLeftMl } = scope.dressing;
	const used = sourceLeftMl !== null && sourceLeftMl < sourceMl;
	// Nine days in ten must get by with them: a part of a bag is a whole one.
	const bags = (used ? 0 : 1) + Math.ceil(sourceChanges.p90 - 1e-9);
	const head = [
		instilledMl.p50,
		fills.p50,
		[instilledMl.p10, instilledMl.p90],
		bags,
		sourceMl,
		bags === 1 ? "bag" : "bags",
		used ? sourceLeftMl : undefined,
	];
	return way === "good" || first === undefined
		? [[...head, used ? "which is good" : "good", scope.scenario.horizonMin]]
		: [
				[
					...head,
					used ? "one that hangs" : "first",
					[first.p10Min, first.p90Min],
					chance < nearlyAll ? chance : undefined,
				],
			];
}

/** What hangs on the unit when the day begins. */
const start: Entry<DressingScope>[] = [
	fixedWords(
		"The canister is taken to be empty and the bag full at the start.",
		(scope) => isFresh(scope) && hasFill(scope),
	),
	fixedWords("The canister is taken to be empty at the start.", (scope) => isFresh(scope) && !hasFill(scope)),
	entry(
		"The day starts with [[{ml} in the canister]][[{text}]][[ and {ml} left in the bag]][[ and a {text}]].",
		(scope) => {
			if (isFresh(scope)) return [];
			const { canisterHoldsMl: holds, sourceMl, sourceLeftMl } = scope.dressing;
			const left = hasFill(scope) && sourceLeftMl !== null && sourceLeftMl < sourceMl ? sourceLeftMl : undefined;
			return [
				[
					holds === 0 ? undefined : holds,
					holds === 0 ? "an empty canister" : undefined,
					left,
					hasFill(scope) && left === undefined ? "full bag" : undefined,
				],
			];
		},
	),
];

/** An empty canister and, where one is used, a full bag. */
function isFresh(scope: DressingScope): boolean {
	const { canisterHoldsMl, sourceMl, sourceLeftMl } = scope.dressing;
	return canisterHoldsMl === 0 && (!hasFill(scope) || sourceLeftMl === null || sourceLeftMl >= sourceMl);
}

const planned: Entry<DressingScope>[] = [
	entry("From the scenario: {said}[[; and {n} more on the clock below]].", (scope) => {
		const all = listingsOf(scope);
		return all.length === 0
			? []
			: [
					[
						listed(
							all.slice(0, 4).map((one): Said => {
								const sounds = soundsAt(scope, one);
								return [
									"{clock} {said}[[, {said}]]",
									one.atMin,
									listingSaid(one),
									sounds === null ? undefined : soundsSaid(sounds),
								];
							}),
							"; ",
						),
						all.length > 4 ? all.length - 4 : undefined,
					],
				];
	}),
	fixedWords(
		"Alarms that these bring are not counted as chance.",
		(scope) =>
			scope.scenario.chance &&
			many(scope) > 1 &&
			listingsOf(scope).some((one) => one.what === "off" || !isPlanned(one)),
	),
	entry(
		"Set for {clock}, {said} takes over at {clock}: the cycle that runs at its time is finished first, and is supplied for.",
		(scope) => late(scope).map(({ regimen, atMin }) => [regimen.fromMin, regimenSaid(regimen), atMin]),
	),
	entry("That is {duration} after going home: bring it forward, or send solution along.", (scope) => {
		const { home } = scope.scenario;
		return home === null
			? []
			: late(scope)
					.filter(({ atMin }) => atMin > home.fromMin)
					.map(({ atMin }) => [atMin - home.fromMin]);
	}),
];

/** Regimens that take over later than they are set for. */
const late = (scope: DressingScope) =>
	scope.dressing.regimens.flatMap((regimen, i) => {
		const atMin = i === 0 ? null : takeoverOf(scope, i);
		return atMin === null || !isLate(regimen, atMin) ? [] : [{ regimen, atMin }];
	});

/** Windows in which chance brings an alarm with more than 5 % in a half-hour: derived from the half-hours themselves. */
function windowsOf({ projection }: DressingScope) {
	return projection.alarms
		.flatMap(({ condition, bins }) => {
			const windows: { condition: string; startMin: number; endMin: number; peak: number }[] = [];
			let open = false;
			for (const { startMin, endMin, chance } of bins) {
				const last = windows.at(-1);
				const isLikely = chance > 0.05;
				if (isLikely && open && last !== undefined)
					windows[windows.length - 1] = { ...last, endMin, peak: Math.max(last.peak, chance) };
				else if (isLikely) windows.push({ condition, startMin, endMin, peak: chance });
				open = isLikely;
			}
			return windows;
		})
		.toSorted((a, b) => b.peak - a.peak || a.startMin - b.startMin);
}

export const alarmWindows = windowsOf;

const byChance = (scope: DressingScope): string | undefined => (listingsOf(scope).length > 0 ? "by chance" : undefined);

const windowSaid = ({ condition, startMin, endMin, peak }: ReturnType<typeof windowsOf>[number]): Said => [
	"{range}: {text}, up to {percent} in a half-hour",
	[startMin, endMin],
	conditionName(condition),
	peak,
];

const perDay = (value: number) => fixed(value, value < 1 ? 2 : 1);

const alarms: Entry<DressingScope>[] = [
	entry("An alarm[[ {text}]] is likeliest {said}[[; then {said}]].", (scope) => {
		const [peak, next] = windowsOf(scope);
		return !varies(scope) || peak === undefined
			? []
			: [
					[
						byChance(scope),
						windowSaid(peak),
						next !== undefined && next.peak >= peak.peak / 2 ? windowSaid(next) : undefined,
					],
				];
	}),
	entry("No alarm came[[ {text}]] in any of {count:replication}.", (scope) =>
		varies(scope) && commonest(scope) === null ? [[byChance(scope), fixed(many(scope), 0)]] : [],
	),
	entry("No time stands out for alarms[[ {text}]]: no half-hour passes 5 %.", (scope) =>
		varies(scope) && windowsOf(scope).length === 0 && commonest(scope) !== null ? [[byChance(scope)]] : [],
	),
	entry("The commonest is {text}, [[about {n} in 24 h ({between})]][[{n} in 24 h]].", (scope) => {
		const one = commonest(scope);
		if (!varies(scope) || windowsOf(scope).length > 0 || one === null) return [];
		const { meanPerDay: mean, halfWidth95: half } = one.byChance;
		return [
			half === null
				? [conditionName(one.condition), undefined, undefined, perDay(mean)]
				: [
						conditionName(one.condition),
						perDay(mean),
						[perDay(Math.max(0, mean - half)), perDay(mean + half)],
						undefined,
					],
		];
	}),
	fixedWords("No alarm comes.", (scope) => !varies(scope) && scope.day.alarms.length === 0),
	entry("[[{text}]][[{word}]] {text}: {said}[[ and {word} more]].", (scope) => {
		const { alarms: all } = scope.day;
		if (varies(scope) || all.length === 0) return [];
		const one = all.length === 1;
		return [
			[
				one ? "One" : undefined,
				one ? undefined : all.length,
				one ? "alarm" : "alarms",
				listed(
					all
						.slice(0, 3)
						.map(({ startMin, condition }): Said => ["{clock} {text}", startMin, conditionName(condition)]),
				),
				all.length > 3 ? all.length - 3 : undefined,
			],
		];
	}),
];

/** The condition that chance brings most often; null where it brings none. */
function commonest({ projection }: DressingScope) {
	const [most] = projection.alarms.toSorted((a, b) => b.byChance.meanPerDay - a.byChance.meanPerDay);
	return most === undefined || most.byChance.meanPerDay === 0 ? null : most;
}

/** What a reader at the bedside comes for. */
export const dayAnswers: Entry<DressingScope>[] = [
	fixedWords(
		"Chance is off: nothing fails by itself and nothing varies, so there are no ranges.",
		({ scenario }) => !scenario.chance,
	),
	fixedWords("One replication only: there are no ranges.", (scope) => scope.scenario.chance && many(scope) === 1),
	fixedWords("Run more to see them.", (scope) => scope.scenario.chance && many(scope) === 1),
	entry("Only {count:replication}: the ranges are rough.", (scope) =>
		varies(scope) && many(scope) < 50 ? [[fixed(many(scope), 0)]] : [],
	),
	...start,
	...canister,
	...solution,
	...planned,
	...alarms,
	fixedWords(
		"Off suction outside fills and dwells: hardly at all.",
		({ projection }) => projection.totals.offSuctionMin.p90 < 0.05,
	),
	entry("Off suction outside fills and dwells: {duration}{durationspread}.", ({ projection }) => {
		const { p10, p50, p90 } = projection.totals.offSuctionMin;
		return p90 < 0.05 ? [] : [[p50, [p10, p90]]];
	}),
];
