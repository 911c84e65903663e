import type { CompareDrawings, TracedDayResult } from "../../results/index.ts";
import type { Scenario } from "../../scenario/index.ts";
import { TherapyDay, unobserved } from "../../therapy/index.ts";
import { summaryOf } from "../day/summary.ts";
import { traceDay } from "../trace/trace-day.ts";
import type { Arm } from "./arms.ts";

/** What a move and the first cycle after it are looked at through. */
const firstHoursMin = 120;
/** Replications that are searched for a day on which two regimens part. */
const mostSearched = 1000;

/** The days that a comparison draws: of every regimen, and the first hours of the first two where they differ in how they begin or are moved. */
export function compareDrawings(arms: readonly Arm[], replication: number, version: string): CompareDrawings {
	return {
		days: arms.map(({ scenario }) => drawn(scenario, replication, version)),
		firstHours: firstHours(arms, version),
	};
}

function drawn(scenario: Scenario, replication: number, version: string): TracedDayResult {
	return {
		scenario: summaryOf(scenario, [], version),
		dressings: traceDay(scenario, undefined, replication).dressings,
	};
}

function firstHours(arms: readonly Arm[], version: string): CompareDrawings["firstHours"] {
	const begins = arms.map(({ scenario }) => scenario.dressings.map((dressing) => dressing.regimens[0].begin).join());
	const other = begins.findIndex((begin) => begin !== begins[0]);
	const moved = arms[0].scenario.happenings.some(({ what, atMin }) => what === "transfer" && atMin < firstHoursMin);
	if (other < 0 && !moved) return null;
	const two = [arms[0], arms[other < 0 ? 1 : other]].map(({ scenario }) => ({
		...scenario,
		horizonMin: Math.min(firstHoursMin, scenario.horizonMin),
	}));
	const leaks = two.map(leaksOf);
	const parting = leaks[0].findIndex((count, i) => count !== leaks[1][i]);
	return {
		replication: Math.max(0, parting),
		spanMin: two[0].horizonMin,
		regimens: [0, other < 0 ? 1 : other],
		days: two.map((scenario) => drawn(scenario, Math.max(0, parting), version)),
		leakShare: leaks.map((counts) => counts.filter((count) => count > 0).length / counts.length),
	};
}

/** Leaks of every replication. */
function leaksOf(scenario: Scenario): number[] {
	const day = new TherapyDay(scenario, unobserved);
	const searched = Math.min(scenario.replications, mostSearched);
	return Array.from({ length: searched }, (_, replication) => {
		day.run(replication, unobserved);
		return day.processes.reduce((sum, process) => sum + process.seal.count, 0);
	});
}
