import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { beforeAll, describe, expect, test, vi } from "vitest";
import { Unfinished } from "../../src/cli/files/unfinished.ts";
import { studyRun } from "../../src/cli/threads/run-study.ts";
import { readScenario } from "../../src/scenario/index.ts";
import { blockCount, type GroupSums, sweepPlan, sweepStudy } from "../../src/studies/index.ts";
import { filesOf, here, lines, temporary, written } from "../cli/program.ts";
import { least } from "../scenario/sample.ts";
import { edited, editWith } from "./bend.ts";

/** Bent files that are tried: `LONG=1` tries fifty times as many. */
const count = process.env.LONG === undefined ? 400 : 20_000;

const folder = temporary();
const scenario = readScenario(`${least}horizon: 4 h\nreplications: 20\n`);
const study = sweepStudy(sweepPlan(scenario, { dressing: null, axes: { dwell: [3, 5], suction: [60, 90] } }));
const blocks = blockCount(scenario);
const elsewhere = sweepStudy(sweepPlan(scenario, { dressing: null, axes: { dwell: [4, 6], suction: [60, 90] } }));
const keep = (place: string, of = study) => new Unfinished(place, of, "1.2.3");

/** What a study comes to, number by number. */
const said = (groups: readonly GroupSums[]) =>
	JSON.stringify(
		groups.map(({ arms, pairs }) => [
			arms.map((moments) => moments.parts()),
			pairs.map(({ moments, higher, lower }) => [moments.parts(), [...higher], [...lower]]),
		]),
	);

/** Runs a study that may have been begun, as `sweep` does, and counts the parts that were run. */
async function run(place: string, of = study) {
	const unfinished = keep(place, of);
	let noted = 0;
	const groups = await studyRun(of, { workers: 1, quiet: true })(blocks, unfinished.parts, (part) => {
		noted++;
		unfinished.note(part);
	});
	return { answer: said(groups), noted };
}

const hidden = (place: string) => readdirSync(place).find((name) => name.startsWith(".unfinished-")) ?? "";

let answer = "";
/** Lines of the file of the study, and of another's. */
let own: string[] = [];
let other: string[] = [];
let file = "";
beforeAll(async () => {
	const linesOf = async (place: string, of: typeof study) => {
		const ran = await run(place, of);
		file = join(place, hidden(place));
		return { ...ran, lines: lines(readFileSync(file, "utf8")).filter(Boolean) };
	};
	other = (await linesOf(join(folder, "other"), elsewhere)).lines;
	const first = await linesOf(join(folder, "own"), study);
	own = first.lines;
	answer = first.answer;
	expect(first.noted).toBe(study.groups.length);
});

const edit = editWith(["{", "}", "[", "]", ",", ":", '"', "\n", "-", "9", "e9", "null", "\u0000"], 300_000);
const piece = fc.oneof(
	fc.record({ what: fc.constant("own" as const), line: fc.nat() }),
	fc.record({ what: fc.constant("own" as const), line: fc.nat() }),
	fc.record({ what: fc.constant("other" as const), line: fc.nat() }),
	fc.record({ what: fc.constant("raw" as const), text: fc.string({ maxLength: 30, unit: "binary" }) }),
	// What a line without its checksum, or with that of another line, would say.
	fc.record({ what: fc.constant("bare" as const), line: fc.nat() }),
	fc.record({ what: fc.constant("mixed" as const), line: fc.nat(), sum: fc.nat() }),
);
const text = fc
	.record({
		pieces: fc.array(piece, { maxLength: 10 }),
		edits: fc.oneof(fc.constant([]), fc.array(edit, { maxLength: 3 })),
		cut: fc.double({ min: 0, max: 1, noNaN: true }),
		whole: fc.boolean(),
	})
	.map(({ pieces, edits, cut, whole }) => {
		const at = (lines: readonly string[], i: number) => lines[i % lines.length];
		const bare = (line: string) => line.slice(line.indexOf(" ") + 1);
		const all = pieces.map((one) => {
			if (one.what === "raw") return one.text;
			if (one.what === "other") return at(other, one.line);
			if (one.what === "bare") return bare(at(own, one.line));
			if (one.what === "own") return at(own, one.line);
			return `${at(own, one.sum).split(" ")[0]} ${bare(at(own, one.line))}`;
		});
		const bent = edited(all.join("\n"), edits);
		return whole ? bent : bent.slice(0, Math.floor(cut * bent.length));
	});

describe("a file of what is finished, however it is bent", () => {
	test("as it was left it spares all the work", async () => {
		expect(await run(join(folder, "own"))).toEqual({ answer, noted: 0 });
	});

	test("changes no result: what is damaged or strange is worked out again", async () => {
		let spared = 0;
		await fc.assert(
			fc.asyncProperty(text, async (bent) => {
				writeFileSync(file, bent);
				const ran = await run(join(folder, "own"));
				expect(ran.answer === answer).toBe(true);
				spared += study.groups.length - ran.noted;
				// What was run is kept beside what was there, and stands for the next.
				expect((await run(join(folder, "own"))).noted).toBe(0);
			}),
			{ numRuns: count, seed: 128, endOnFailure: true },
		);
		expect(spared).toBeGreaterThan(count / 4);
	}, 7_200_000);

	test("by the command: the report is that of an undisturbed sweep", async () => {
		const least20 = written(folder, "least.yaml", `${least}replications: 20\n`);
		const sweep = (place: string) =>
			here(
				...["sweep", least20, "--dwell", "3 min, 5 min", "--quiet"],
				...["--suction", "1 h, 90 min", "--out", place],
			);
		const whole = join(folder, "whole");
		const cut = join(folder, "cut");
		// A sweep that comes to its end but for this leaves what one leaves that is killed.
		const removing = vi.spyOn(Unfinished.prototype, "remove").mockImplementation(() => {});
		await sweep(cut);
		removing.mockRestore();
		expect(await sweep(whole)).toMatchObject({ status: 0, err: "" });
		const name = hidden(cut);
		const kept = readFileSync(join(cut, name), "utf8");
		for (const bent of [kept.slice(0, -40), kept.replaceAll("1", "2")]) {
			writeFileSync(join(cut, name), bent);
			expect(await sweep(cut)).toMatchObject({ status: 0, err: "" });
			expect(Object.keys(filesOf(cut))).toEqual(Object.keys(filesOf(whole)));
			for (const [one, printed] of Object.entries(filesOf(whole)))
				expect(filesOf(cut)[one] === printed, one).toBe(true);
		}
		mkdirSync(join(cut, name));
		const { status, err } = await sweep(cut);
		expect(status).toBe(1);
		expect(err).toMatch(/^slackwater: what is finished could not be read in .*: it is a folder, not a file\n$/u);
	});
});
