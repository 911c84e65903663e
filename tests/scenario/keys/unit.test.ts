import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { checkWard, fullScenario, sentence } from "../../../src/scenario/index.ts";
import { armsOf } from "../../../src/studies/compare/arms.ts";
import { changedWard, wardFaults } from "../../ward/sample.ts";
import { changed, faultOf, readChanged } from "../sample.ts";

const unitOf = (unit: object) =>
	readChanged((raw) => {
		raw.dressings[0].unit = unit;
	}).dressings[0];
const fault = (unit: object, compare = {}) =>
	faultOf((raw) => {
		raw.dressings[0].unit = unit;
		raw.compare = compare;
	});

describe("content at the start", () => {
	test("is read from holds and left", () => {
		expect(unitOf({ canister: "1000 mL", holds: "120 mL", source: "1 L", left: "640 mL" })).toMatchObject({
			canisterHoldsMl: 120,
			sourceLeftMl: 640,
		});
	});

	test("left out it is an empty canister and a full source", () => {
		expect(unitOf({})).toMatchObject({ canisterHoldsMl: 0, sourceLeftMl: null });
		expect(unitOf({ source: "500 mL", left: "500 mL" })).toMatchObject({ sourceLeftMl: null });
	});

	test("stands among the defaults, the source with its own size", () => {
		const { unit } = parse(
			fullScenario(
				changed((raw) => {
					raw.dressings[0].unit = { source: "500 mL" };
				}),
			),
		).dressings[0];
		expect(unit).toEqual({ canister: "1000 mL", holds: "0 mL", source: "500 mL", left: "500 mL" });
	});

	test.each([
		[{ holds: "1000 mL" }, /unit\.holds .*less than the canister takes \(1000 mL\)/u],
		[{ canister: "300 mL", holds: "0.4 L" }, /less than the canister takes \(300 mL\)/u],
		[{ left: "1001 mL" }, /unit\.left .*at most what the source takes \(1000 mL\)/u],
		[{ source: "250 mL", left: "300 mL" }, /at most what the source takes \(250 mL\)/u],
		[{ holds: "-1 mL" }, /unit\.holds.*from 0 mL/u],
		[{ left: "-1 mL" }, /unit\.left.*from 0 mL/u],
	])("%j is refused", (unit, words) => {
		expect(fault(unit)).toMatch(words);
	});

	test("an empty source and a canister with room for a drop are taken", () => {
		expect(unitOf({ left: "0 mL", holds: "999 mL" })).toMatchObject({ canisterHoldsMl: 999, sourceLeftMl: 0 });
	});

	test("a regimen of compare may hang another canister with another content, and keeps what it does not name", () => {
		const scenario = readChanged((raw) => {
			raw.dressings[0].unit = { holds: "120 mL", left: "640 mL" };
			raw.compare = { as: {}, small: { canister: "500 mL" }, fresh: { holds: "0 mL", left: "1000 mL" } };
		});
		const content = armsOf(scenario).map(({ scenario: arm }) => {
			const { canisterMl, canisterHoldsMl, sourceLeftMl } = arm.dressings[0];
			return [canisterMl, canisterHoldsMl, sourceLeftMl];
		});
		expect(content).toEqual([
			[1000, 120, 640],
			[500, 120, 640],
			[1000, 0, 1000],
		]);
	});

	test("a regimen of compare whose canister could not hold it is refused", () => {
		expect(fault({ holds: "600 mL" }, { small: { canister: "500 mL" } })).toMatch(
			/^compare\.small\.holds.*less than the canister takes \(500 mL\)/u,
		);
		expect(fault({}, { a: { source: "100 mL", left: "200 mL" } })).toMatch(/^compare\.a\.left/u);
	});

	test("a ward's units begin with new ones, and check says so", () => {
		const text = changedWard((raw) => {
			raw.ward.kinds[0].unit = { holds: "120 mL", left: "640 mL" };
		});
		const { problems, ward, notes } = checkWard(text);
		expect(problems.map(sentence)).toEqual([]);
		expect(ward?.kinds[0].dressing).toMatchObject({ canisterHoldsMl: 0, sourceLeftMl: null });
		expect(notes.join(" ")).toMatch(/every therapy of the ward begins with a new canister and a new source/u);
		const faults = wardFaults((raw) => {
			raw.compare = { a: { holds: "1 mL" } };
		});
		expect(faults.join("\n")).toMatch(/^compare\.a\.holds .*received the key "holds"$/u);
	});
});
