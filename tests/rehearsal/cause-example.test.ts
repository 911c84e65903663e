import { afterAll, beforeAll, expect, test, vi } from "vitest";
import type { Cause, Hidden } from "../../src/rehearsal/causes/cause.ts";
import type { HiddenCause } from "../../src/scenario/index.ts";
import { hiding } from "./cases.ts";

/**
 * How to add a cause: its name in the vocabulary, what a scenario says of it beside `hides`, a file of its own in
 * `src/rehearsal/causes`, and a line in `causes.ts`. This one is there in the tests alone; the next lines are its file.
 */
const name = "clamp-closed" as "left-off"; // the vocabulary does not know it
const clampClosed: Cause<Hidden<typeof name>> = {
	name,
	words: "the clamp at the canister was closed",
	sights: [{ place: "canister", seen: (bed) => bed.present(name), words: "The clamp on its inlet is closed." }],
	mendedBy: ["free-suction-line"],
	raises: ["suction-path-obstructed", "suction-absent"],
	begin: (_, { process }) => process.kinks.kink("suction"),
	hazard: ({ hours, horizonMin }) => ({
		weight: 0.1 * hours,
		draw(uniform) {
			const onsetMin = horizonMin * uniform();
			return { cause: name, atMin: onsetMin, withinMin: 0, onsetMin, lastsMin: Number.POSITIVE_INFINITY };
		},
	}),
};

/** And this is its line, in a list that is read anew for it. */
beforeAll(async () => {
	vi.resetModules();
	const { causes } = await import("../../src/rehearsal/causes/causes.ts");
	(causes as Cause[]).push(clampClosed); // written to here alone
});
afterAll(() => vi.resetModules());

const rehearsals = () => import("../../src/rehearsal/index.ts");
const hazards = () => import("../../src/rehearsal/shift/draw-case.ts");

const closed: HiddenCause = { cause: name, atMin: 200, withinMin: 0, lastsMin: Number.POSITIVE_INFINITY };
const bank = { perCause: 40, pairs: 40 };

test("a cause that is added shows where it says, is believed in, mended and told in the debrief", async () => {
	const { Rehearsal } = await rehearsals();
	const rehearsal = new Rehearsal(hiding([closed]), "clamp", bank);
	expect(rehearsal.look("canister").words).not.toContain("clamp");
	while (rehearsal.view().alarms.length === 0) rehearsal.next();
	expect(rehearsal.view().alarms.map(({ condition }) => condition)).toEqual(["suction-path-obstructed"]);
	expect(rehearsal.look("canister").words).toMatch(
		/^It holds about \d+ of 1000 mL\. The clamp on its inlet is closed\.$/,
	);
	rehearsal.act("free-suction-line");
	expect(rehearsal.view().alarms).toEqual([]);

	const { causes: found, facts, log, search } = rehearsal.debrief();
	expect(found).toMatchObject([{ cause: name, onsetMin: 200, foundAt: "canister", endedBy: "mended" }]);
	expect(facts.join(" ")).toContain("From 10:20 on the clamp at the canister was closed: the first alarm came");
	const [, look] = log;
	expect(look?.belief?.causes[0]).toMatchObject({ cause: name, probability: 1 });
	expect(look?.needless).toBe("");
	expect(search.stages[0]?.deeds.at(-1)?.act).toBe("free-suction-line");
	expect(search.sentences.join(" ")).toContain("the clamp at the canister was closed");
});

test("it is drawn by its weight like any other", async () => {
	const [{ drawCase }, { hazardsOf }] = await Promise.all([rehearsals(), hazards()]);
	const of = hiding([]);
	expect(hazardsOf(of).find(({ cause }) => cause === name)?.weight).toBeCloseTo(0.8);
	const drawn = Array.from({ length: 60 }, (_, i) => drawCase(of, `case ${i}`).rehearsal.hides).flat();
	expect(drawn.map(({ cause }) => cause)).toContain(name);
});
