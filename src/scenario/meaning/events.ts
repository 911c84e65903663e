import type { Constants } from "../../physics/index.ts";
import { minutesADay } from "../../vocabulary/index.ts";
import { dayOfKind } from "./day-of-kind.ts";
import type { Dressing, Regimen, Scenario } from "./scenario.ts";
import type { WardScenario } from "./ward.ts";

/** Most events of one replication that a scenario may lead to. */
export const maxExpectedEvents = 2_000_000;

/** The same of a ward over weeks. */
export const maxWardEvents = 1e9;

const perCycle = 14; // four phases, the drawdown, levels reached, alarm timers, debris
const perFault = 10; // fault, alarm, call, hands, repair, restart
const perBurst = 6;
const perMove = 3;

/**
 * A rough upper estimate of the events of one replication: cycles, bursts, turns, rounds, blocks, faults, renewals,
 * happenings. Only its order of magnitude counts; it may be Infinity.
 */
export function expectedEvents(scenario: Scenario): number {
	return scenario.dressings.reduce(
		(sum, dressing) => sum + ofDressing(dressing, scenario),
		scenario.happenings.length * perFault,
	);
}

/** The same of a ward: of the kinds in their shares, for every patient that there may be. */
export function expectedWardEvents(ward: WardScenario): number {
	const { arrivals, beds, census, kinds, units } = ward;
	const shares = kinds.reduce((sum, { share }) => sum + share, 0);
	const days = (ward.horizonMin + ward.warmUpMin) / minutesADay;
	const perDay = kinds.reduce(
		(sum, { share, dressing }) =>
			sum + (share / shares) * expectedEvents({ ...dayOfKind(ward, dressing), horizonMin: minutesADay }),
		0,
	);
	const arriving = arrivals === null ? 0 : arrivals.perDay * Math.max(...arrivals.factors) * days;
	const patients = arriving + beds.length + census.reduce((sum, count) => sum + count, 0);
	return Math.min(units ?? Number.POSITIVE_INFINITY, patients) * days * perDay;
}

function ofDressing(dressing: Dressing, scenario: Scenario): number {
	const { care, chance, constants: c, horizonMin: span } = scenario;
	const days = span / minutesADay;
	const cycles = Math.max(...dressing.regimens.map((regimen) => span / cycleMin(regimen, c)));
	const fillMl = Math.max(...dressing.regimens.map((regimen) => regimen.fillMl));
	const outputMl = (dressing.exudateMlPerDay * 3 + (dressing.outflow?.totalMlPerDay ?? 0)) * days;
	const renewals =
		(cycles * fillMl + outputMl) / dressing.canisterMl +
		(cycles * fillMl) / dressing.sourceMl +
		span / (c["source.hang"] * 60);
	const seal = c[`difficulty.${dressing.difficulty}`] * (1 + c["breach.age"] * (dressing.ageMin / minutesADay + days));
	const faults = chance
		? seal * (c["breach.dry"] * days * 24 + cycles * wetBreaches(dressing, c)) + c["kink.rate"] * days * 24
		: 0;
	const blocks = chance ? span / (c["exudate.block"] * 60) + span / (c["debris.every"] * 60) : 0;
	const moves = days * care.roundsClockMin.length + (care.turningMin === null ? 0 : span / care.turningMin);
	return (
		cycles * perCycle +
		days * (dressing.outflow?.burstsPerDay ?? 0) * perBurst +
		(moves + blocks) * perMove +
		(faults + renewals + changes(care.dressingChange, span) + 1) * perFault
	);
}

/** Infinity for suction alone. */
const cycleMin = (regimen: Regimen, c: Constants) =>
	regimen.fillMl === 0
		? Number.POSITIVE_INFINITY
		: regimen.fillMl / c["fill.flow"] + regimen.dwellMin + regimen.suctionMin;

const longestRise = 60; // minutes over which the hazard of a wet dressing grows

/** Breaches of one wet spell: the Weibull hazard of the longest, an ordinary seal of age 0. */
function wetBreaches(dressing: Dressing, c: Constants): number {
	const [scale, shape] = [c["breach.wetScale"], c["breach.wetShape"]];
	const capacityMl = c["foam.capacity"] * dressing.foamVolumeMl;
	return Math.max(
		...dressing.regimens.map(({ fillMl, dwellMin }) => {
			if (fillMl === 0) return 0;
			const wetMin = fillMl / c["fill.flow"] + dwellMin + c["drain.limit"];
			const rise = Math.min(wetMin, longestRise) / scale;
			const held = Math.max(0, wetMin - longestRise) / scale;
			const over = Math.min(1, Math.max(0, fillMl - capacityMl) / capacityMl);
			return (rise ** shape + shape * rise ** (shape - 1) * held) * Math.exp(c["breach.overfill"] * over);
		}),
	);
}

function changes(change: Scenario["care"]["dressingChange"], span: number) {
	if (change === null) return 0;
	return "everyMin" in change ? span / change.everyMin : change.atMin.length;
}
