import { rehearsalChart, shiftLine } from "../../src/charts/index.ts";
import type { Debrief } from "../../src/results/index.ts";
import { type Example, examplesOf } from "./example.ts";
import { dayResult } from "./fixture.ts";

type ShiftLine = Parameters<typeof shiftLine>[0];

/** A hand-made debrief of a morning: a kink that was found, a leak that was not. */
export function morning(): Pick<Debrief, "case" | "causes" | "log" | "day"> {
	const { dressings, scenario } = dayResult(
		[
			{
				horizonMin: 300,
				alarms: [
					{ condition: "suction-path-obstructed", priority: "medium", startMin: 88, endMin: 93, endedBy: "call" },
				],
			},
		],
		{ title: "A morning" },
	);
	const [day] = dressings;
	if (day === undefined) throw new Error("a day without a dressing");
	const entry = (kind: "look" | "act", what: Debrief["log"][number]["what"], startMin: number, endMin: number) => ({
		kind,
		what,
		startMin,
		endMin,
		clock: "",
		span: "",
		answer: "",
		needless: "",
		belief: null,
		believed: "",
	});
	const cause = {
		signMin: null,
		noticedMin: null,
		foundMin: null,
		foundAt: null,
		endedBy: null,
		minutesToNotice: null,
		minutesToFind: null,
		minutesToMend: null,
	};
	return {
		case: {
			title: "A morning",
			brief: "",
			seed: "hand",
			start: scenario.start,
			startClockMin: scenario.startClockMin,
			horizonMin: 300,
			endedMin: 300,
			ended: "shift-over",
			revealed: [],
		},
		causes: [
			{ ...cause, cause: "suction-line-kinked", words: "the suction line was kinked", onsetMin: 85, endMin: 93 },
			{ ...cause, cause: "seal-breach", words: "the seal leaked at the edge", onsetMin: 210, endMin: null },
			{ ...cause, cause: "source-empty", words: "the source of solution was empty", onsetMin: null, endMin: null },
		],
		log: [
			entry("look", "port", 89, 91),
			entry("look", "suction-line", 91, 92),
			entry("act", "free-suction-line", 92, 93),
			entry("act", "change-canister", 200, 203),
		],
		day: { ...day, regimen: { depthMmHg: 125, fillMl: 50 } },
	};
}

/** Half a shift: drawn down, washed once, an alarm that stands, a look and an act. */
const soFar: ShiftLine["soFar"] = {
	curve: {
		atMin: [0, 0.5, 20, 20, 21, 21, 31, 31, 32, 120],
		depthMmHg: [0, 125, 125, 0, 0, 0, 0, 0, 125, 125],
		filledMl: [0, 0, 0, 0, 50, 50, 50, 0, 0, 0],
	},
	alarms: [
		{ condition: "seal-leak", startMin: 40, endMin: 45 },
		{ condition: "depth-not-held", startMin: 110, endMin: null },
	],
	taken: [
		{ kind: "look", what: "edge", startMin: 41, endMin: 43 },
		{ kind: "act", what: "patch-edge", startMin: 43, endMin: 45 },
	],
};

export const halfAShift: ShiftLine = {
	title: "A morning",
	clock: { start: "2026-03-02T07:00", startClockMin: 420, horizonMin: 240 },
	nowMin: 120,
	regimen: { depthMmHg: 125, fillMl: 50 },
	soFar,
};

export const shiftExamples: readonly Example[] = [
	...examplesOf(rehearsalChart, { rehearsal: morning() }),
	...examplesOf(shiftLine, { "shift-line": halfAShift }),
];
