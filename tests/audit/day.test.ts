import { afterAll, expect, test } from "vitest";
import { checkScenario } from "../../src/scenario/index.ts";
import { auditDay } from "./audit.ts";
import { dayCatalogue } from "./catalogue/day.ts";
import { expectTrue, samples, tellUnused } from "./many.ts";

const days = samples("day", 190, 3300);

afterAll(() => tellUnused("day", dayCatalogue));

test("the scenarios are sound, and of every kind that is looked at", () => {
	const scenarios = days.map(({ text }) => checkScenario(text).scenario);
	expect(scenarios).not.toContain(null);
	const has = (holds: (scenario: (typeof scenarios)[number]) => boolean) =>
		expect(scenarios.filter(holds).length).toBeGreaterThan(4);
	has((one) => one?.chance === false);
	has((one) => (one?.dressings.length ?? 0) > 1);
	has((one) => (one?.horizonMin ?? 0) > 36 * 60);
	has((one) => one?.home !== null);
	has((one) => one?.startClockMin === 810);
	has((one) => one?.dressings.some(({ regimens }) => regimens.length > 1) === true);
	for (const what of ["transfer", "off", "canister-change", "breach"])
		has((one) => one?.happenings.some((listed) => listed.what === what) === true);
	has((one) => one?.dressings.some(({ canisterHoldsMl }) => canisterHoldsMl > 0) === true);
});

test("every number, time and name on the papers of a day is true", () => {
	expectTrue(days, ({ text }) => auditDay(text));
});
