import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isSentence, lines, temporary, written } from "../cli/program.ts";
import { bounded } from "./bounded.ts";
import { scenarioText } from "./grammar.ts";

/** Files that are tried: `LONG=1` tries fifty times as many. */
const count = process.env.LONG === undefined ? 2000 : 100_000;
const folder = temporary();
let tried = 0;
const seen = { sound: 0, refused: 0 };

describe("any scenario file", () => {
	test("is run or refused in sentences: status 0 or 2, in bounded time and memory, and check and day agree", async () => {
		await fc.assert(
			fc.asyncProperty(scenarioText, async (text) => {
				const file = written(folder, "any.yaml", text);
				const checked = await bounded("check", file);
				expect(checked.status, checked.err).toBeOneOf([0, 2]);
				// What check refuses, day reads by the same code: one in eight is tried.
				tried++;
				const tries = checked.status === 0 || tried % 8 === 0;
				const run = ["--replications", "2", "--json", "--quiet"];
				const day = tries ? await bounded("day", file, ...run) : checked;
				if (checked.status === 0) expect(day.status, day.err).toBe(0);
				expect(day.status, day.err).toBeOneOf([0, 2]);
				if (tries && day.status === 0) {
					seen.sound++;
					expect(JSON.parse(day.out).format).toBe("slackwater/day@1");
				}
				for (const { status, err } of [checked, day]) {
					if (status !== 2) continue;
					seen.refused++;
					expect(lines(err).length).toBeGreaterThan(0);
					for (const line of lines(err)) expect(line).toSatisfy(isSentence);
				}
			}),
			{ numRuns: count, seed: 512, endOnFailure: true },
		);
		// The grammar reaches both sides.
		expect(seen.sound).toBeGreaterThan(count / 20);
		expect(seen.refused).toBeGreaterThan(count / 5);
	}, 7_200_000);
});
