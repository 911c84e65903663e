import { describe, expect, test } from "vitest";
import { checkScenario, readScenario } from "../../../src/scenario/index.ts";
import { sentence } from "../../../src/scenario/reading/problem.ts";
import { changed } from "../sample.ts";

const withDrawdown = (drawdown: unknown, assumptions = {}) =>
	changed((raw) => {
		raw.dressings[0].regimen.drawdown = drawdown;
		raw.assumptions = assumptions;
	});
const shareOf = (text: string) => {
	const { drawdown, drawdownGiven } = readScenario(text).dressings[0].regimens[0];
	return [drawdown, drawdownGiven];
};
const refusal = (text: string) => checkScenario(text).problems.map(sentence).join("\n");

describe("drawdown is the share of the pump's flow that is let work", () => {
	test.each([
		["15 %", 0.15],
		["15%", 0.15],
		["0.1 %", 0.001],
		["100 %", 1],
		[0.5, 0.5],
		["0.05", 0.05],
	])("%s is %d", (written, share) => {
		expect(shareOf(withDrawdown(written))).toEqual([share, true]);
	});

	test("left out it is the constant pump.drawdown, 15 % unless the file says otherwise", () => {
		expect(shareOf(withDrawdown(undefined))).toEqual([0.15, false]);
		expect(shareOf(withDrawdown(undefined, { "pump.drawdown": "8 %" }))).toEqual([0.08, false]);
		expect(shareOf(withDrawdown("30 %", { "pump.drawdown": 0.08 }))).toEqual([0.3, true]);
	});

	test.each([
		["gentle", "5 %"],
		["standard", "15 %"],
		["brisk", "50 %"],
		["Standard", "15 %"],
	])("%s is refused with the value to write, %s", (name, share) => {
		const said = refusal(withDrawdown(name));
		expect(said).toContain(`write ${share}`);
		expect(refusal(withDrawdown(share))).toBe("");
	});

	test.each([0, "0 %", "101 %", -0.1, "0.05 %", "soft", "3 min", true])("%s is refused", (written) => {
		expect(refusal(withDrawdown(written))).toMatch(/drawdown.*expected the share of the pump's flow/u);
	});

	test("15 alone was meant as a percentage", () => {
		expect(refusal(withDrawdown(15))).toMatch(/did you mean 15 %\?$/u);
	});

	test.each([
		["pump.gentle", "5 %"],
		["pump.standard", "15 %"],
		["pump.brisk", "50 %"],
	])("the constant %s is refused with what to write instead", (name, share) => {
		const said = refusal(withDrawdown("15 %", { [name]: 0.1 }));
		expect(said).toContain(`drawdown: ${share} in the regimen`);
		expect(said).toContain("pump.drawdown");
	});

	test.each([0, 1.2])("pump.drawdown may not be %d", (value) => {
		expect(refusal(withDrawdown(undefined, { "pump.drawdown": value }))).toMatch(/0\.1 % to 100 %/u);
	});

	test("what is said of the default follows the constant", () => {
		const said = (assumptions: object) =>
			readScenario(withDrawdown(undefined, assumptions)).defaulted.find(({ path }) => path.endsWith("drawdown"));
		expect(said({})?.value).toBe("15 %");
		expect(said({ "pump.drawdown": "7 %" })).toMatchObject({ value: "7 %", provenance: "assumed" });
	});
});
