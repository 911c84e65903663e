import { JSDOM } from "jsdom";
import { expect, test } from "vitest";
import { dayWidthPx, rehearsalChart } from "../../src/charts/index.ts";
import type { Debrief } from "../../src/rehearsal/index.ts";
import { dayResult } from "./fixture.ts";

const document = new JSDOM("").window.document;

/** A hand-made debrief of a morning: a kink that was found, a leak that was not. */
function morning(): Pick<Debrief, "case" | "causes" | "log" | "day"> {
	const { dressings, scenario } = dayResult(
		[
			{
				horizonMin: 300,
				alarms: [
					{
						condition: "suction-path-obstructed",
						priority: "medium",
						startMin: 88,
						endMin: 93,
						endedBy: "call",
					},
				],
			},
		],
		{ title: "A morning" },
	);
	const [day] = dressings;
	if (day === undefined) throw new Error("a day without a dressing");
	const entry = (
		kind: "look" | "act",
		what: Debrief["log"][number]["what"],
		startMin: number,
		endMin: number,
	) => ({
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
			{
				...cause,
				cause: "suction-line-kinked",
				words: "the suction line was kinked",
				onsetMin: 85,
				endMin: 93,
			},
			{
				...cause,
				cause: "seal-breach",
				words: "the seal leaked at the edge",
				onsetMin: 210,
				endMin: null,
			},
			{
				...cause,
				cause: "source-empty",
				words: "the source of solution was empty",
				onsetMin: null,
				endMin: null,
			},
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

const drawn = () =>
	rehearsalChart(morning(), document, { idPrefix: "example" });

test("rehearsal", async () => {
	const file = document.implementation.createDocument(
		"http://www.w3.org/2000/svg",
		"svg",
	);
	file.documentElement.replaceWith(file.adoptNode(drawn()));
	await expect(
		`${file.documentElement.outerHTML.replaceAll(/></g, ">\n<")}\n`,
	).toMatchFileSnapshot("gallery/rehearsal.svg");
});

test("a rehearsal's chart says in words what was hidden, what stood and what was done", () => {
	const words = drawn().querySelector("desc")?.textContent ?? "";
	expect(words).toContain("Hidden: 08:25 the suction line was kinked");
	expect(words).toContain("Alarms: 08:28 suction path obstructed, 5 min");
	expect(words).toContain("Looks: 08:29 port; 08:31 suction line");
	expect(words).toContain("08:32 free suction line");
	expect(words).not.toContain("source of solution"); // it never came about
});

test("what was hidden to the end of the shift reaches the end of the axis", () => {
	const bars = [...drawn().querySelectorAll("rect.alarm-edge")].map((bar) =>
		["x", "width"].map((name) => Number(bar.getAttribute(name))),
	);
	expect(bars).toHaveLength(2);
	const [, last] = bars;
	expect((last?.[0] ?? 0) + (last?.[1] ?? 0)).toBeCloseTo(dayWidthPx - 34, 1);
});
