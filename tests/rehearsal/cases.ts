import { readdirSync, readFileSync } from "node:fs";
import { asCase, type Case } from "../../src/rehearsal/shift/shift.ts";
import { type HiddenCause, type RehearsalPlan, readScenario, type Scenario } from "../../src/scenario/index.ts";
import { withDressing } from "../therapy/example.ts";

const folder = new URL("../../scenarios/", import.meta.url);

/** The case files of the project, by name. */
export const caseNames = readdirSync(folder).filter((name) => name.startsWith("rehearse-"));
export const caseText = (name: string) => readFileSync(new URL(name, folder), "utf8");
export const caseFile = (name: string) => readScenario(caseText(name));

const plan: RehearsalPlan = {
	dressing: 0,
	brief: "A patient to look after.",
	transferMin: null,
	told: [],
	pace: null,
	help: null,
	hides: [],
};

/** Eight hours of the reference dressing, with these causes hidden. */
export function hiding(
	hides: readonly HiddenCause[],
	rest: Partial<RehearsalPlan> = {},
	scenario: Partial<Scenario> = {},
): Case {
	return asCase(
		withDressing(
			{},
			{
				title: "A shift",
				horizonMin: 480,
				care: {
					response: { dayMin: 4, nightMin: 7, spread: 0.6 },
					roundsClockMin: [180, 420, 660, 900, 1140, 1380],
					turningMin: 240,
					nurses: null,
					dressingChange: null,
					avoid: { handOver: [], meals: [], smallHours: [] },
				},
				rehearsal: { ...plan, hides, ...rest },
				...scenario,
			},
		),
	);
}

/** A bank too small to believe, for tests that do not look at beliefs. */
export const small = { perCause: 1, pairs: 1 };

/** The least bank: the course in which nothing is wrong, alone. */
export const least = { perCause: 0, pairs: 0 };

/** Smaller numbers in the suite, the full ones with LONG=1. */
export const often = (short: number, long: number) => (process.env.LONG === "1" ? long : short);
