import { describe, expect, test } from "vitest";
import { readScenario } from "../../../src/scenario/index.ts";
import { changed, faultOf, faults, type Raw } from "../sample.ts";

/** The least scenario with a rehearsal that hides this. */
const rehearse =
	(hides: readonly Raw[], rest: Raw = {}) =>
	(raw: Raw) => {
		raw.horizon = "8 h";
		raw.rehearsal = { brief: "Look after it.", hides, ...rest };
	};

const every: readonly Raw[] = [
	{ cause: "fill-line-kinked", at: "80 min", within: "30 min" },
	{ cause: "left-off", at: "2 h", lasts: "12 min" },
	{ cause: "port-clogged", at: "126 min", share: 0.9 },
	{ cause: "seal-breach", at: "1 h", size: "0.02 L/min/mmHg" },
];

describe("the rehearsal of a scenario", () => {
	test("is read with its units, what is left out standing for never, nothing or forever", () => {
		const { rehearsal } = readScenario(changed(rehearse(every)));
		expect(rehearsal).toEqual({
			dressing: 0,
			brief: "Look after it.",
			transferMin: null,
			told: [],
			pace: null,
			help: null,
			hides: [
				{ cause: "fill-line-kinked", atMin: 80, withinMin: 30, lastsMin: Number.POSITIVE_INFINITY },
				{ cause: "left-off", atMin: 120, withinMin: 0, lastsMin: 12 },
				{ cause: "port-clogged", atMin: 126, withinMin: 0, share: 0.9 },
				{ cause: "seal-breach", atMin: 60, withinMin: 0, size: 0.02 },
			],
		});
	});

	test("tells what the trainee hears in the order of time", () => {
		const told = [
			{ at: "3 h", says: "Later." },
			{ at: "60 min", says: "Sooner." },
		];
		const { rehearsal } = readScenario(changed(rehearse([], { told })));
		expect(rehearsal?.told).toEqual([
			{ atMin: 60, says: "Sooner." },
			{ atMin: 180, says: "Later." },
		]);
	});

	test("a scenario without one has none", () => {
		expect(readScenario(changed(() => {}))).not.toHaveProperty("rehearsal");
	});
});

// biome-ignore format: a table
const refused: [string, (raw: Raw) => void, RegExp][] = [
	["no brief", (raw) => (raw.rehearsal = { hides: [] }), /^rehearsal\.brief .*received nothing$/u],
	["nothing said of what is hidden", (raw) => (raw.rehearsal = { brief: "x" }), /^rehearsal\.hides .*\[\] for none, received nothing$/u],
	["a cause misspelt", rehearse([{ cause: "port-cloged", at: "1 h", share: 1 }]), /hides\[0\]\.cause .*did you mean port-clogged\?$/u],
	["a kink without a time", rehearse([{ cause: "fill-line-kinked" }]), /hides\[0\]\.at .*when it comes.*received nothing$/u],
	["a kink with a size", rehearse([{ cause: "fill-line-kinked", at: "1 h", size: "0.02 L/min/mmHg" }]), /hides\[0\]\.size .*no size with fill-line-kinked/u],
	["a bleed without a volume", rehearse([{ cause: "bleeding", at: "1 h", lasts: "1 h" }]), /hides\[0\]\.volume .*received nothing$/u],
	["a cause twice", rehearse([{ cause: "left-off", at: "1 h" }, { cause: "left-off", at: "2 h" }]), /hides\[1\]\.cause .*each cause once, received "left-off" again$/u],
	["five causes", rehearse([...every, { cause: "bleeding", at: "1 h", lasts: "1 h", volume: "9 mL" }]), /hides .*at most 4 hidden causes/u],
	["a cause after the shift", rehearse([{ cause: "left-off", at: "9 h" }]), /hides\[0\]\.at .*before the shift ends, received "9 h"$/u],
	["a dislodged dressing that nobody moves", rehearse([{ cause: "dressing-dislodged", size: "0.05 L/min/mmHg" }]), /^rehearsal\.transfer .*since a dressing is dislodged by it, received nothing$/u],
	["a canister that begins nearly full", rehearse([{ cause: "canister-full", holds: "950 mL" }]), /hides\[0\]\.holds .*at most 90 % of the canister/u],
	["a source that holds more than its size", rehearse([{ cause: "source-empty", holds: "1.2 L" }]), /hides\[0\]\.holds .*at most the size of the source/u],
	["a dressing that is not there", rehearse([], { dressing: "thumb" }), /^rehearsal\.dressing .*the id of a dressing: thigh/u],
	["a shift of two days", (raw) => { rehearse([])(raw); raw.horizon = "48 h"; }, /^horizon .*at most 24 h, since there is a rehearsal/u],
	["happenings beside it", (raw) => { rehearse([])(raw); raw.happenings = [{ at: "1 h", dressing: "thigh", what: "turn" }]; }, /^happenings .*none beside a rehearsal/u],
	["a pace beyond reason", rehearse([], { pace: 6000 }), /^rehearsal\.pace .*from 1 to 600/u],
];

describe("refused in a rehearsal", () => {
	test.each(refused)("%s", (_, change, expected) => {
		expect(faultOf(change)).toMatch(expected);
	});

	test("several faults are all named", () => {
		expect(faults(changed(rehearse([{ cause: "bleeding" }, { cause: "seal-breach", at: "1 h" }])))).toHaveLength(4);
	});
});
