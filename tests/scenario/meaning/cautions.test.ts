import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { checkScenario, readScenario } from "../../../src/scenario/index.ts";
import { blockCount, dayResult, ProjectionGathering, runBlocks } from "../../../src/studies/index.ts";
import { rawScenario } from "../arbitrary.ts";
import { keptFiles, keptText } from "../kept.ts";
import { changed, type Raw } from "../sample.ts";

const notesWith = (change: (raw: Raw) => void): string => checkScenario(changed(change)).notes.join("\n");

/** Cautions of a day that only its simulation, or the model itself, brings. */
const ofSimulation = [
	"planning-only",
	"call-a-clinician",
	"not-validated",
	"off-suction",
	"not-returned",
	"clogging-assumed",
	"solution-label",
];

/** The cautions of a day that follow from its scenario alone, as `check` writes them. */
function cautionsOfDay(text: string): string[] {
	const scenario = { ...readScenario(text), replications: 2 };
	const gathering = new ProjectionGathering(scenario);
	gathering.add(runBlocks(scenario, 0, blockCount(scenario)));
	const fistula = scenario.dressings.flatMap(({ id, outflow }) => (outflow === null ? [] : [id]));
	return dayResult(scenario, gathering, "1.2.3")
		.cautions.filter(
			({ code, dressing = "" }) =>
				!ofSimulation.includes(code) &&
				// Two replications are of this test, not of the file.
				code !== "few-replications" &&
				(code !== "large-output" || fistula.includes(dressing)),
		)
		.map(({ text, dressing }) => (dressing === undefined ? text : `${dressing}: ${text}`));
}

const notesOf = (text: string): string[] =>
	checkScenario(text).notes.filter((note) => /: An? (?:depth|dwell|suction period|fill|exudate|large)/u.test(note));

describe("check notes what a day would be cautioned of, before it is simulated", () => {
	test.each(keptFiles)("%s: in the same words", (name) => {
		const text = keptText(name);
		const notes = checkScenario(text).notes;
		for (const caution of cautionsOfDay(text)) expect(notes).toContain(caution);
	});

	test("scenarios at random: the same cautions in the same words", () => {
		fc.assert(
			fc.property(rawScenario, (raw) => {
				const text = stringify({ ...raw, horizon: "2 h" });
				fc.pre(checkScenario(text).scenario !== null);
				expect(new Set(notesOf(text))).toEqual(new Set(cautionsOfDay(text)));
			}),
			{ numRuns: 25 },
		);
	});

	test("a dwell of 5 h against 2 min of suction", () => {
		const notes = notesWith((raw) => {
			raw.dressings[0].regimen.dwell = "5 h";
			raw.dressings[0].regimen.suction = "2 min";
		});
		expect(notes).toContain(
			"thigh: A dwell of 300 min stands against 2 min of suction: the wound would lie wet and without suction for 99.3 % of the time or more. Suction for most of a cycle is common practice (no source). Check the prescription.",
		);
		expect(notes).toContain("outside the 1 to 30 min");
		expect(notes).toContain("outside the 60 to 480 min");
	});

	test("a depth of −7.5 mmHg", () => {
		expect(
			notesWith((raw) => {
				raw.dressings[0].regimen.depth = "-7.5 mmHg";
			}),
		).toContain(
			"thigh: A depth of −7.5 mmHg is outside the −75 to −150 mmHg that are common practice for soft tissue (no source; local practice varies). Check the prescription.",
		);
	});

	test("an exudate of 1.4 mL/cm2/h, and one of 5 L a day", () => {
		expect(
			notesWith((raw) => {
				raw.dressings[0].wound.area = "40 cm2";
				raw.dressings[0].wound.exudate = "1.4 mL/cm2/h";
			}),
		).toContain(
			"thigh: An exudate of 33.6 mL/cm² a day is beyond the 5 mL/cm² a day that are assumed as the most a wound gives (no source)",
		);
		expect(
			notesWith((raw) => {
				raw.dressings[0].wound.exudate = "5 L/d";
			}),
		).toContain("An exudate of 5000 mL a day is beyond the 3000 mL a day");
	});

	test("few replications, a fill that pools, and a fistula", () => {
		const notes = notesWith((raw) => {
			raw.replications = 20;
			raw.dressings[0].regimen.fill = "100 mL";
			raw.dressings[0].wound.outflow = { total: "400 mL/d", bursts: "12 /d" };
		});
		expect(notes).toContain("Only 20 replications");
		expect(notes).toContain("A fill of 100 mL is above the 81.6 mL");
		expect(notes).toContain("large or sudden output is not treated");
	});

	test("what two regimens of a list share is said once", () => {
		const notes = checkScenario(
			changed((raw) => {
				const own = { ...raw.dressings[0].regimen, depth: "-175 mmHg" };
				raw.dressings[0].regimen = [own, { ...own, from: "9 h", dwell: "6 min" }];
			}),
		).notes;
		expect(notes.filter((note) => note.includes("−175"))).toHaveLength(1);
	});
});
