import { describe, expect, test } from "vitest";
import { checkScenario, readScenario, UnusableInput } from "../../src/scenario/index.ts";
import { changed, faultOf, faults, least, type Raw } from "./sample.ts";

const regimen = (raw: Raw) => raw.dressings[0].regimen;
const wound = (raw: Raw) => raw.dressings[0].wound;

/** What is done to the least scenario, and the only sentence that may come of it. */
// biome-ignore format: a table
const refused: [string, (raw: Raw) => void, RegExp][] = [
	["no version", (raw) => delete raw.slackwater, /^slackwater .*received nothing$/u],
	["another version", (raw) => (raw.slackwater = 2), /^slackwater .*received 2$/u],
	["no title", (raw) => delete raw.title, /^title .*a title of 1 to 200 characters.*received nothing$/u],
	["a title of two lines", (raw) => (raw.title = "a\nb"), /^title .*control character$/u],
	["a title that turns the line of writing", (raw) => (raw.title = "a\u202Eb"), /^title .*control character$/u],
	["a title of 201 characters", (raw) => (raw.title = "a".repeat(201)), /^title .*received 201 characters$/u],
	["no dressings", (raw) => delete raw.dressings, /^dressings .*one or more dressings, received nothing$/u],
	["an empty list of dressings", (raw) => (raw.dressings = []), /^dressings .*one or more dressings, received an empty list$/u],
	["a map of dressings", (raw) => (raw.dressings = {}), /^dressings .*received a map$/u],
	["101 dressings", (raw) => (raw.dressings = Array.from({ length: 101 }, (_, i) => ({ ...raw.dressings[0], id: `d${i}` }))), /^dressings .*at most 100 dressings/u],
	["no tissue", (raw) => delete wound(raw).tissue, /^dressings\[0\]\.wound\.tissue .*soft-tissue, necrotic-soft-tissue.*received nothing$/u],
	["a tissue misspelt", (raw) => (wound(raw).tissue = "open-abdomn"), /did you mean open-abdomen\?$/u],
	["no exudate", (raw) => delete wound(raw).exudate, /wound\.exudate .*mL\/cm2\/d.*160 mL\/d.*received nothing$/u],
	["negative exudate", (raw) => (wound(raw).exudate = "-5 mL/d"), /wound\.exudate .*from 0 mL\/d/u],
	["exudate per area without an area", (raw) => (wound(raw).exudate = "0.9 mL/cm2/d"), /wound\.area .*since exudate is given per area/u],
	["an area of 0", (raw) => (wound(raw).area = "0 cm2"), /wound\.area .*above 0 cm2/u],
	["an outflow that is a word", (raw) => (wound(raw).outflow = "non"), /wound\.outflow .*did you mean none\?$/u],
	["an outflow without bursts", (raw) => (wound(raw).outflow = { total: "400 mL/d" }), /wound\.outflow\.bursts .*received nothing$/u],
	["no foam", (raw) => (raw.dressings[0].foam = []), /foam .*one or more pieces of foam/u],
	["foam of no thickness", (raw) => (raw.dressings[0].foam[0].thickness = "0 mm"), /foam\[0\]\.thickness .*above 0 cm/u],
	["a positive depth", (raw) => (regimen(raw).depth = "125 mmHg"), /regimen\.depth .*with a minus: write -125 mmHg, received "125 mmHg"$/u],
	["a positive depth in kPa", (raw) => (regimen(raw).depth = "+16 kPa"), /write -16 kPa/u],
	["a depth of 0", (raw) => (regimen(raw).depth = "0 mmHg"), /regimen\.depth .*-5 mmHg/u],
	["a depth as a bare number", (raw) => (regimen(raw).depth = -125), /regimen\.depth .*mmHg, kPa, cmH2O.*received -125$/u],
	["a depth that the pump does not reach", (raw) => (regimen(raw).depth = "-249 mmHg"), /regimen\.depth .*pump holds/u],
	["no fill", (raw) => delete regimen(raw).fill, /regimen\.fill .*suggested or none.*received nothing$/u],
	["a fill of 0", (raw) => (regimen(raw).fill = "0 mL"), /regimen\.fill .*from 0\.1 mL/u],
	["a bare dwell", (raw) => (regimen(raw).dwell = 5), /regimen\.dwell .*such as "5 min", in min, s, h, d, w, received 5$/u],
	["a dwell with a comma", (raw) => (regimen(raw).dwell = "1,5 min"), /no comma.*did you mean "1\.5 min"\?$/u],
	["a dwell in hours spelt out", (raw) => (regimen(raw).dwell = "2 hours"), /did you mean "2 h"\?$/u],
	["a dwell in mL", (raw) => (regimen(raw).dwell = "5 mL"), /regimen\.dwell .*in min, s, h/u],
	["a dwell of 0", (raw) => (regimen(raw).dwell = "0 min"), /regimen\.dwell .*from 0\.1 min/u],
	["a dwell of two days", (raw) => (regimen(raw).dwell = "2 d"), /regimen\.dwell .*to 24 h/u],
	["a fill without a dwell", (raw) => delete regimen(raw).dwell, /regimen\.dwell .*since there is a fill, received nothing$/u],
	["a fill without a suction period", (raw) => delete regimen(raw).suction, /regimen\.suction .*since there is a fill, received nothing$/u],
	["a suction period of 0", (raw) => (regimen(raw).suction = "0 h"), /regimen\.suction .*from 1 min/u],
	["a key misspelt", (raw) => (regimen(raw).dwel = "5 min"), /regimen\.dwel .*did you mean dwell\?$/u],
	["a key nobody knows", (raw) => (raw.colour = "red"), /^colour .*received the key "colour"$/u],
	["a list of regimens that begins late", (raw) => (raw.dressings[0].regimen = [{ from: "1 h", ...regimen(raw) }]), /regimen\[0\]\.from .*0 h for the first/u],
	["a list of regimens out of order", (raw) => (raw.dressings[0].regimen = [regimen(raw), { ...regimen(raw), from: "9 h" }, { ...regimen(raw), from: "8 h" }]), /regimen\[2\]\.from .*later time/u],
	["a second regimen without from", (raw) => (raw.dressings[0].regimen = [regimen(raw), regimen(raw)]), /regimen\[1\]\.from .*received nothing$/u],
	["an empty list of regimens", (raw) => (raw.dressings[0].regimen = []), /regimen .*one or more regimens/u],
	["two dressings of one id", (raw) => raw.dressings.push(structuredClone(raw.dressings[0])), /^dressings\[1\]\.id .*"thigh" again \(dressings\[0\] has it\)$/u],
	["a dressing among others that is called as all of them together", (raw) => raw.dressings.push({ ...structuredClone(raw.dressings[0]), id: "all" }), /^dressings\[1\]\.id .*all stands for the dressings together, received "all"$/u],
	["an id of 65 characters", (raw) => (raw.dressings[0].id = "x".repeat(65)), /dressings\[0\]\.id .*received 65 characters$/u],
	["an id with a space before it", (raw) => (raw.dressings[0].id = " thigh"), /without spaces around/u],
	["a date that does not exist", (raw) => (raw.start = "2026-02-30T07:00"), /^start .*a date that exists/u],
	["the 29th of February of a common year", (raw) => (raw.start = "2100-02-29T07:00"), /^start .*a date that exists/u],
	["a start with a zone", (raw) => (raw.start = "2026-03-02T07:00Z"), /^start .*without a zone/u],
	["an hour 24", (raw) => (raw.start = "2026-03-02T24:00"), /^start /u],
	["a horizon of 0", (raw) => (raw.horizon = "0 h"), /^horizon .*from 1 min to 28 d/u],
	["a horizon of 29 days", (raw) => (raw.horizon = "29 d"), /^horizon .*to 28 d/u],
	["no replications", (raw) => (raw.replications = 0), /^replications .*from 1 to 1000000, received 0$/u],
	["half a replication", (raw) => (raw.replications = 1.5), /^replications .*whole number/u],
	["chance: maybe", (raw) => (raw.chance = "maybe"), /^chance .*on or off/u],
	["a round at 25:00", (raw) => (raw.care = { rounds: ["25:00"] }), /^care\.rounds\[0\] .*clock time/u],
	["a round at 7:00", (raw) => (raw.care = { rounds: ["7:00"] }), /did you mean "07:00"\?$/u],
	["a round twice", (raw) => (raw.care = { rounds: ["07:00", "07:00"] }), /^care\.rounds\[1\] .*each time once/u],
	["rounds as an interval", (raw) => (raw.care = { rounds: "4 h" }), /^care\.rounds .*list of clock times/u],
	["turning every 0 h", (raw) => (raw.care = { turning: "0 h" }), /^care\.turning .*from 30 min/u],
	["turning: never", (raw) => (raw.care = { turning: "never" }), /^care\.turning .*or none/u],
	["no nurse", (raw) => (raw.care = { nurses: 0 }), /^care\.nurses .*from 1 to 1000, received 0$/u],
	["nurses: unlimitd", (raw) => (raw.care = { nurses: "unlimitd" }), /^care\.nurses .*did you mean unlimited\?$/u],
	["a dressing change every 0 h", (raw) => (raw.care = { dressingChange: "0 h" }), /^care\.dressingChange .*from 2 h/u],
	["care as a word", (raw) => (raw.care = "good"), /^care .*a map with the keys/u],
	["an empty care", (raw) => (raw.care = null), /^care .*received nothing$/u],
	["a happening of an unknown dressing", (raw) => (raw.happenings = [{ at: "1 h", dressing: "high", what: "turn" }]), /^happenings\[0\]\.dressing .*did you mean thigh\?$/u],
	["a happening of an unknown kind", (raw) => (raw.happenings = [{ at: "1 h", dressing: "thigh", what: "kink" }]), /^happenings\[0\]\.what .*kink-fill, kink-suction/u],
	["a happening before the start", (raw) => (raw.happenings = [{ at: "-1 h", dressing: "thigh", what: "turn" }]), /^happenings\[0\]\.at .*from 0 min/u],
	["a breach without a size", (raw) => (raw.happenings = [{ at: "1 h", dressing: "thigh", what: "breach" }]), /^happenings\[0\]\.size .*received nothing$/u],
	["a turn with a size", (raw) => (raw.happenings = [{ at: "1 h", dressing: "thigh", what: "turn", size: "0.1 L/min/mmHg" }]), /^happenings\[0\]\.size .*no size with turn/u],
	["a clog of more than all", (raw) => (raw.happenings = [{ at: "1 h", dressing: "thigh", what: "clog", share: 1.2 }]), /^happenings\[0\]\.share .*up to 1/u],
	["a bleed without a duration", (raw) => (raw.happenings = [{ at: "1 h", dressing: "thigh", what: "bleed", volume: "90 mL" }]), /^happenings\[0\]\.for .*received nothing$/u],
	["an assumption misspelt", (raw) => (raw.assumptions = { "breach.dri": "0.004 /h" }), /^assumptions\.breach\.dri .*did you mean breach\.dry\?$/u],
	["an assumption without its unit", (raw) => (raw.assumptions = { "breach.dry": 0.004 }), /^assumptions\.breach\.dry .*\/h.*received 0\.004$/u],
	["a probability above 1", (raw) => (raw.assumptions = { "turn.wet": 1.1 }), /^assumptions\.turn\.wet .*from 0 to 1/u],
	["a block of no length", (raw) => (raw.assumptions = { "exudate.block": "0 h" }), /^assumptions\.exudate\.block .*from 10 min/u],
	["a pump deeper than the air allows", (raw) => (raw.assumptions = { "pump.maxDepth": "690 mmHg", "air.ambient": "600 mmHg" }), /^assumptions\.pump\.maxDepth .*of at most air\.ambient/u],
	["a hang time given twice", (raw) => { raw.solution = { hang: "12 h" }; raw.assumptions = { "source.hang": "24 h" }; }, /^solution\.hang .*the same time as assumptions\.source\.hang/u],
	["prices without a date", (raw) => (raw.prices = { currency: "EUR", canister: 3 }), /^prices\.asOf .*received nothing$/u],
	["a currency in small letters", (raw) => (raw.prices = { currency: "eur", asOf: "2026" }), /^prices\.currency .*three capitals/u],
	["a negative price", (raw) => (raw.prices = { currency: "EUR", asOf: "2026", kit: -1 }), /^prices\.kit .*at least 0/u],
	["a pack of none", (raw) => (raw.packs = { canister: 0 }), /^packs\.canister .*from 1 to 10000/u],
	["a compare that is a list", (raw) => (raw.compare = [{ dwell: "5 min" }]), /^compare .*map of names/u],
	["a depth to compare that the pump does not reach", (raw) => (raw.compare = { deep: { depth: "-300 mmHg" } }), /^compare\.deep\.depth .*pump holds/u],
];

describe("refused, with one sentence that says where, what was expected and what came", () => {
	test.each(refused)("%s", (_, change, sentence) => {
		expect(faultOf((raw) => void change(raw))).toMatch(sentence);
	});
});

describe("all problems at once", () => {
	test("faults of form in one place hide no faults of sense in another", () => {
		const found = faults(
			changed((raw) => {
				raw.colour = "red";
				raw.start = "2026-13-01T07:00";
				raw.dressings[0].regimen = { depth: "125 mmHg", fill: 50, suction: "2 h" };
				raw.dressings.push({ id: "thigh", wound: { tissue: "bone" } });
				raw.happenings = [{ at: 5, dressing: "calf", what: "breach" }];
				raw.compare = { deep: { dressing: "knee" } };
				raw.assumptions = { "breach.dry": -1, "hands.port": "4 min" };
			}),
		);
		const told = (part: string) => found.some((line) => line.includes(part));
		for (const part of [
			"colour",
			"start",
			"regimen.depth",
			"regimen.fill",
			"regimen.dwell",
			"dressings[1].id",
			"dressings[1].wound.tissue",
			"dressings[1].wound.exudate",
			"dressings[1].foam",
			"dressings[1].regimen",
			"happenings[0].at",
			"happenings[0].dressing",
			"happenings[0].size",
			"compare.deep.dressing",
			"assumptions.breach.dry",
			"assumptions.hands.port",
		])
			expect([part, told(part)]).toEqual([part, true]);
	});

	test("they come in the order of the file, with line and column", () => {
		const text = least.replace("-125", "125").replace("1 cm }", "0 cm }");
		const { problems } = checkScenario(text);
		expect(problems.map(({ line, column }) => [line, column])).toEqual([
			[6, 29],
			[7, 16],
		]);
	});

	test("what is missing is placed at the map that misses it", () => {
		const [problem] = checkScenario(least.replace("dwell: 5 min, ", "")).problems;
		expect(problem).toMatchObject({ path: "dressings[0].regimen.dwell", line: 7 });
	});

	test("JSON has lines too", () => {
		const text = JSON.stringify({ slackwater: 1, title: 5.5 }, null, 2);
		expect(checkScenario(text).problems).toMatchObject([
			{ path: "dressings", line: 1 },
			{ path: "title", line: 3, column: 3 },
		]);
	});

	test("reading throws them together", () => {
		const text = least.replace("-125", "125").replace("1 cm }", "0 cm }");
		expect(() => readScenario(text)).toThrow(UnusableInput);
		expect(() => readScenario(text)).toThrow(/thickness.*\n.*write -125 mmHg/u);
	});

	test("nobody is told more than 200, and the rest is counted", () => {
		const text = `${least}happenings:\n${"  - { at: 5 }\n".repeat(900)}`;
		const { problems } = checkScenario(text);
		expect(problems).toHaveLength(201);
		expect(problems.at(-1)?.received).toMatch(/^\d+ more of them$/u);
	});
});
