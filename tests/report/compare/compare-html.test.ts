import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { pairBetween } from "../../../src/report/compare/pairs/pairs.ts";
import { compareHtml, compareSvg, compareTables } from "../../../src/report/index.ts";
import { type CompareResult, compareJson, compareJsonSchema } from "../../../src/results/index.ts";
import { cautionSentences, type MeasureName } from "../../../src/vocabulary/index.ts";
import { hostileText, readableText } from "../hostile.ts";
import { expectOneFile, expectSoundIds, expectSoundSvg, expectSoundTables, recordsOfCsv } from "../sound-report.ts";
import { type ComparePlan, comparison } from "./compare-fixture.ts";

// ajv's build of draft 2020-12 is CommonJS; its class is the default of the module.
const { Ajv2020 } = await import("ajv/dist/2020.js");
const { document, DOMParser } = new JSDOM("").window;

const two = [{ id: "thigh" }, { id: "abdomen", fillMl: 100 }];
const hostile: ComparePlan = {
	names: [hostileText, "=1+2", "@SUM(A1)"],
	dressings: [{ id: hostileText }, { id: "-2+3" }],
	scenario: { title: hostileText, seed: "+seed", solution: "=saline" },
};
const plans: readonly (readonly [string, ComparePlan])[] = [
	["four regimens", {}],
	["two dressings", { dressings: two, firstHours: true }],
	["one measure", { measures: ["washes"], restsOn: false }],
	["one regimen", { names: ["short"] }],
	["hostile names", hostile],
];

const pageOf = (plan: ComparePlan): Document => {
	const { result, drawings } = comparison(plan);
	return new JSDOM(compareHtml(result, drawings, document)).window.document;
};
const textOf = (element: Element | null | undefined): string => (element?.textContent ?? "").replaceAll("\u00A0", " ");
/** The labels down the left side of a chart of difference rows. */
const rowsOf = (page: Document): string => textOf(page.querySelector(".brief .difference-rows tbody"));

describe("the report of a comparison", () => {
	const page = pageOf({});

	test("begins with the question, in the settings that differ", () => {
		expect(textOf(page.querySelector("h1"))).toBe(
			"For this wound, what does a 5 min dwell every 2 h buy and cost against 10 min every 3.5 h?",
		);
		expect(textOf(pageOf({ names: ["short", "suction-alone"] }).querySelector("h1"))).toContain("10 min every 3.5 h");
	});

	test("gives each regimen its line, and says once what they share", () => {
		const regimens = page.querySelector(".brief .regimens");
		expect([...(regimens?.querySelectorAll("dt") ?? [])].map(textOf)).toEqual([
			"short",
			"long",
			"suction-alone",
			"again",
		]);
		expect([...(regimens?.querySelectorAll("dd") ?? [])].map(textOf)).toEqual([
			"50 mL for 5 min, then 2 h of suction at −125 mmHg.",
			"50 mL for 10 min, then 3 h 30 min of suction at −125 mmHg.",
			"Continuous suction at −125 mmHg, no fill.",
			"50 mL for 5 min, then 2 h of suction at −125 mmHg.",
		]);
		expect(textOf(regimens)).toContain("drawdown 15 % (about 43 s to the set depth) under every regimen");
	});

	test("gives each dressing a line of its own where a regimen sets them differently", () => {
		const lines = [...pageOf({ dressings: two }).querySelectorAll(".brief .regimens dd")].map(textOf);
		expect(lines[0]).toMatch(/^thigh: 50 mL for 5 min/);
		expect(lines[1]).toMatch(/^abdomen: 100 mL for 5 min/);
	});

	test("shows five differences: of each matter the one largest in proportion, and says why these", () => {
		const caption = textOf(page.querySelector(".brief .main-differences caption"));
		expect(caption).toContain("Of 18 measures, 12 differ");
		expect(caption).toContain("The order is not a ranking of worth.");
		const rows = rowsOf(page);
		// 0.94 against 0.31 canisters is the largest share; drained volume is of the same matter, washes and wet time too.
		expect(rows).toContain("Canisters changed");
		expect(rows).not.toContain("Drained to the canister");
		expect(rows.indexOf("Canisters changed")).toBeLessThan(rows.indexOf("Washes"));
		expect(rows).not.toContain("Wet time");
	});

	test("says beside a verdict that an assumed number would turn it, where that was looked into", () => {
		const { result, drawings } = comparison();
		const provenance = (word: string) => ({
			...result,
			restsOn: result.restsOn && {
				...result.restsOn,
				rows: result.restsOn.rows.map((row) => ({ ...row, provenance: word })),
			},
		});
		const brief = (one: CompareResult): string =>
			textOf(new JSDOM(compareHtml(one, drawings, document)).window.document.querySelector(".brief .main-differences"));
		const mark = "rests on assumed numbers";
		const said = brief(result);
		// In the fixture breach.dry turns the alarms; nothing moves the washes.
		expect(said).toContain(`more: 0.08 a day (0.06 to 0.1); ${mark}`);
		expect(said).toContain("more: 4.48 a day (4.46 to 4.5)");
		expect(said).not.toContain(`more: 4.48 a day (4.46 to 4.5); ${mark}`);
		expect(said).toContain("see What the answer rests on");
		for (const one of [provenance("published"), { ...result, restsOn: null }]) expect(brief(one)).not.toContain(mark);
	});

	test("keeps to the reader's own order where few measures were asked for", () => {
		const asked = pageOf({ measures: ["nightCalls", "washes"] });
		const rows = rowsOf(asked);
		expect(rows.indexOf("Calls at night")).toBeGreaterThan(-1);
		expect(rows.indexOf("Calls at night")).toBeLessThan(rows.indexOf("Washes"));
		expect(textOf(asked.querySelector(".brief .main-differences caption"))).toContain("in that order");
	});

	test("says what it does not tell: no healing, no score, no verdict on clogging", () => {
		const silence = textOf(page.querySelector(".brief .silence"));
		for (const words of [
			"nothing here is about healing",
			"there is no overall score",
			"for the clinician to weigh",
			"no verdict on clogging",
		])
			expect(silence).toContain(words);
		expect(textOf(pageOf({ measures: ["washes"], names: ["short"] }).querySelector(".brief .silence"))).not.toContain(
			"clogging",
		);
		expect(textOf(page.querySelector("main"))).not.toMatch(/overall winner|best regimen|total score/i);
	});

	test("shows every pair, the reader's own first and open", () => {
		const open = page.querySelectorAll("#differences > section .difference-rows");
		const folded = page.querySelectorAll("#differences > details");
		expect(open.length).toBe(1);
		expect([...folded].map((one) => textOf(one.querySelector("summary")))).toEqual([
			"short against suction-alone",
			"short against again",
			"long against suction-alone",
			"long against again",
			"suction-alone against again",
		]);
	});

	test("leaves empty who does better where that is for the clinician to weigh", () => {
		const better = (label: string): string => {
			const row = [...page.querySelectorAll("#differences > section .scroll tbody tr")].find(
				(one) => textOf(one.querySelector("th")) === label,
			);
			return textOf(row?.lastElementChild);
		};
		expect(better("Breaches of the seal")).toBe("82 %");
		expect(better("Washes")).toBe("");
		expect(better("Undiluted exudate at the bed, mean share")).toBe("");
	});

	test("writes a verdict in the words of its measure", () => {
		const verdicts = [...page.querySelectorAll("#differences > section .difference-rows tbody tr")]
			.map((row) => [...row.querySelectorAll("th,td:not(.bar)")].map(textOf).join(" | "))
			.join("\n");
		for (const words of [
			"Breaches of the seal | 0.112 a day | 0.151 a day | fewer: 0.039 a day (0.028 to 0.05)",
			"shorter: 7.2 min a day (6.5 to 7.9)",
			"lower: 0.077 (0.073 to 0.081)",
			"no difference found at 0.05",
		])
			expect(verdicts).toContain(words);
	});

	test("says so where the middle of the days is one value and the mean lies elsewhere", () => {
		const { result, drawings } = comparison({ names: ["short"], measures: ["wetMin", "cost", "fills"] });
		const spread = (mean: number, low: number, high: number) => ({
			...{ mean, halfWidth95: null, p10: low, p50: low, p90: high },
			quantiles95: [],
		});
		const regimens = result.regimens.map((regimen) => ({
			...regimen,
			dressings: regimen.dressings.map((dressing) => ({
				...dressing,
				measures: { wetMin: spread(64.5, 64.2, 64.2), cost: spread(92.65, 90, 92.5), fills: spread(11, 11, 11) },
			})),
		}));
		const html = compareHtml({ ...result, regimens }, drawings, document);
		const quantities = new JSDOM(html).window.document.querySelector("#quantities");
		expect([...(quantities?.querySelectorAll("td.number") ?? [])].map(textOf)).toEqual([
			"64.5 (mostly 64.2)",
			"92.65 (90 to 92.5)",
			"11",
		]);
		expect(textOf(quantities?.querySelector("caption"))).toContain(
			"or what all of these come to; a few others can draw the mean beyond it",
		);
	});

	test("draws the same day under each regimen on the same heights, and the first hours where they part", () => {
		expect(page.querySelectorAll("#water-lines > figure svg").length).toBe(2);
		expect(page.querySelector("#first-hours")).toBeNull();
		const first = pageOf({ names: ["begin-suction", "begin-fill"], firstHours: true }).querySelector("#first-hours");
		expect(first?.querySelectorAll("figure svg").length).toBe(2);
		expect(textOf(first)).toContain(
			"A leak comes before 09:00 on 2 % of the days under begin-suction and 6 % of the days under begin-fill.",
		);
		expect(textOf(first)).toContain("seal leak");
	});

	test("lists the assumptions that turn a verdict, those under which a found difference is lost apart from the others", () => {
		const turning = page.querySelector("#rests-on .turning");
		const lists = turning?.querySelectorAll(".turning-list") ?? [];
		expect(textOf(lists[0])).toContain("breaches of the seal under suction (breach.dry, 0.002 /h, assumed)");
		expect(textOf(lists[0])).toContain("alarms for seal leak");
		expect(textOf(lists[0])).not.toContain("calls at night");
		expect(lists[2]?.closest("details")).not.toBeNull();
		expect(textOf(lists[2])).toContain("calls at night");
	});

	test("names the one assumed cause that carries a difference, and marks the verdict wherever it stands", () => {
		const turning = page.querySelector("#rests-on .turning");
		const carried = turning?.querySelectorAll(".turning-list")[1];
		expect(textOf(carried)).toBe(
			"kinks of the fill line (kink.fill, 0.004 /h, assumed)alarms for fill path obstructed: 0.08 a day as it stands, 0 without it",
		);
		expect(textOf(turning)).toContain(
			"One assumed cause carries a difference that stands at half and at twice its value",
		);
		const marked = "more: 0.08 a day (0.06 to 0.1); rests on assumed numbers";
		const rows = page.querySelector("#differences > section .difference-rows");
		const row = [...(rows?.querySelectorAll("tbody tr") ?? [])].find(
			(one) => textOf(one.querySelector("th")) === "Alarms: fill path obstructed",
		);
		expect(textOf(row?.querySelector(".verdict"))).toBe(marked);
		expect(textOf(rows?.querySelector("caption"))).toContain("without one assumed cause");
		const { result } = comparison();
		expect(compareSvg(result, document)).toContain("rests on assumed numbers");
	});

	test("says what became of a difference that an assumption turns, and at which end; what is reversed comes first", () => {
		const { result, drawings } = comparison();
		const turn = (measure: string, half: number | null, twice: number | null) => ({
			...{ dressing: "thigh", measure: measure as MeasureName, turns: true },
			appears: true,
			...{ base: -0.039, half, twice, without: null, hangs: false },
		});
		const effects = [
			[turn("breaches", -0.03, -0.035)],
			[turn("breaches", -0.039, -0.001)],
			[turn("nurseMin", null, -0.02), turn("alarms.seal-leak", -0.1, 0.02)],
			[turn("breaches", 0.01, 0.02)],
		];
		const rows = (result.restsOn?.rows ?? []).map((row, index) => ({ ...row, effects: effects[index] ?? [] }));
		const html = compareHtml({ ...result, restsOn: result.restsOn && { ...result.restsOn, rows } }, drawings, document);
		const [list] = new JSDOM(html).window.document.querySelectorAll(".turning-list");
		expect([...(list?.querySelectorAll("li li") ?? [])].map((item) => textOf(item).split(": ").at(-1))).toEqual([
			"changes sign at twice",
			"no longer found at twice",
			"changes sign at half and at twice",
			"no longer found, nearest to nought at half",
			"no longer found at twice",
		]);
		expect(textOf(list?.querySelector("li"))).toMatch(/^chance that a turn/);
	});

	test("says so where nobody looked into what the answer rests on", () => {
		expect(textOf(pageOf({ restsOn: false }).querySelector("#rests-on"))).toContain("Not looked into");
	});

	test("says how much pairing saved, and what precision was not reached", () => {
		const precise = textOf(page.querySelector("#how-precise"));
		expect(precise).toContain("8.3 ×");
		expect(precise).toMatch(/0\.02\s*0\.022.*no/);
	});

	test("leaves room on paper for what was decided, names and dates by hand", () => {
		expect([...page.querySelectorAll(".brief .sign span")].map(textOf)).toEqual([
			"What we decided, and why",
			"Names",
			"Date",
			"To be looked at again on",
		]);
	});

	test("carries the caution at its top, in its list and at its foot", () => {
		for (const place of ["header", "section.cautions", "footer"])
			expect(textOf(page.querySelector(place))).toContain(cautionSentences[0]);
	});

	test("a pair asked for the other way round is told from its own first regimen", () => {
		const { result } = comparison();
		const held = pairBetween(result, "short", "long");
		const turned = pairBetween(result, "long", "short");
		const leaks = turned?.of("thigh", "breaches");
		expect([turned?.a, turned?.b]).toEqual(["long", "short"]);
		expect(leaks).toMatchObject({
			a: "long",
			b: "short",
			meanA: 0.151,
			meanB: 0.112,
			shareAHigher: 0.82,
			shareBHigher: 0.11,
			// Fewer breaches are better, and long has fewer in 11 of 100.
			shareABetter: 0.11,
			verdict: "more: 0.039 a day (0.028 to 0.05)",
		});
		expect(leaks?.low95).toBeCloseTo(0.028, 9);
		expect(leaks?.high95).toBeCloseTo(0.05, 9);
		expect(turned?.of("thigh", "solutionWastedMl")).toMatchObject({
			low95: null,
			high95: null,
			verdict: held?.of("thigh", "solutionWastedMl")?.verdict,
		});
		expect(turned?.of("thigh", "washes")?.mean).toBeLessThan(0);
		expect(turned?.of("thigh", "underSuctionMin")?.shareABetter).toBe(0.11);
		expect(pairBetween(result, "short", "nobody")).toBeUndefined();
	});

	test("is the same bytes for the same result", () => {
		const { result, drawings } = comparison();
		const again = new JSDOM("").window.document;
		expect(compareHtml(result, drawings, again)).toBe(compareHtml(result, drawings, document));
	});
});

describe.each(plans)("the report of %s", (_, plan) => {
	const page = pageOf(plan);

	test("is one file without scripts or outside requests, and says so in its policy", () => expectOneFile(page));

	test("has unique ids, and references lead somewhere", () => expectSoundIds(page));
});

test("hostile names of regimens, dressings and titles stay text", () => {
	const page = pageOf(hostile);
	expect(page.querySelectorAll("script, img, [onerror]").length).toBe(0);
	expect(page.querySelector(".brief dt")?.textContent).toBe(readableText);
	expect(textOf(page.querySelector("header .facts"))).toContain("onerror");
});

describe("the tables of a comparison", () => {
	test.each(plans)("%s: RFC 4180, one width, nothing a spreadsheet would run", (_, plan) =>
		expectSoundTables(compareTables(comparison(plan).result)),
	);

	test("hold every difference at full precision, null as an empty cell", () => {
		const { result } = comparison();
		const rows = recordsOfCsv(compareTables(result)["differences.csv"]);
		expect(rows.length).toBe(result.differences.length);
		result.differences.forEach((difference, index) => {
			const row = rows[index];
			expect(row?.measure).toBe(difference.measure);
			expect(Number(row?.mean)).toBe(difference.mean);
			expect(row?.low95).toBe(difference.low95 === null ? "" : String(difference.low95));
			expect(Number(row?.variancePaired)).toBe(difference.variance.paired);
			expect(row?.verdict).toBe(difference.verdict);
		});
	});

	test("hold every effect of every assumption, and no such table where it was not asked for", () => {
		const { result } = comparison();
		const rows = recordsOfCsv(compareTables(result)["rests-on.csv"]);
		expect(rows.length).toBe(result.restsOn?.rows.reduce((sum, row) => sum + row.effects.length, 0));
		expect(Object.keys(compareTables(comparison({ restsOn: false }).result))).toEqual([
			"differences.csv",
			"regimens.csv",
			"assumptions.csv",
		]);
	});

	test("hold what a day comes to under each regimen", () => {
		const { result } = comparison({ dressings: two });
		const rows = recordsOfCsv(compareTables(result)["regimens.csv"]);
		const row = rows.find((one) => one.regimen === "long" && one.dressing === "abdomen" && one.measure === "washes");
		expect(row).toMatchObject({ dwellMin: "10", mean: "6.54", drawdown: "0.15" });
	});
});

describe("compare.json", () => {
	const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(compareJsonSchema);

	test.each(plans)("%s: reads back as it was, and obeys its schema", (_, plan) => {
		const { result } = comparison(plan);
		const text = compareJson(result);
		expect(text.startsWith('{\n  "format": "slackwater/compare@1",')).toBe(true);
		expect(text.endsWith("}\n")).toBe(true);
		expect(JSON.parse(text)).toEqual(result);
		expect(validate(JSON.parse(text)) ? [] : validate.errors).toEqual([]);
	});

	test("its schema refuses a wrong format, an unknown measure, kind or key, and a missing interval", () => {
		const { result } = comparison({ names: ["short", "long"] });
		const [first, ...others] = result.differences;
		if (first === undefined) throw new Error("no differences");
		const spoilt = (change: object): boolean =>
			validate({ ...result, differences: [{ ...first, ...change }, ...others] });
		expect(spoilt({})).toBe(true);
		expect(spoilt({ measure: "score" })).toBe(false);
		expect(spoilt({ kind: "better" })).toBe(false);
		expect(spoilt({ score: 1 })).toBe(false);
		expect(spoilt({ low95: undefined })).toBe(false);
		expect(spoilt({ shareAHigher: 1.2 })).toBe(false);
		expect(validate({ ...result, format: "slackwater/compare@2" })).toBe(false);
		expect(validate({ ...result, winner: "short" })).toBe(false);
	});

	test("is the same text however the keys were ordered", () => {
		const { result } = comparison();
		const shuffled = Object.fromEntries(Object.entries(result).toReversed()) as unknown as CompareResult; // the same keys, by construction
		expect(compareJson(shuffled)).toBe(compareJson(result));
	});
});

describe("differences.svg", () => {
	test.each(plans)("%s: well-formed XML with its own colours and no scripts", (_, plan) => {
		expectSoundSvg(compareSvg(comparison(plan).result, document), new DOMParser());
	});

	test("draws the first pair in every measure asked for", () => {
		const text = compareSvg(comparison().result, document);
		expect(text).toContain("prefers-color-scheme:dark");
		for (const words of ["Washes", "Calls at night", "Cost", "short", "long"]) expect(text).toContain(words);
	});
});
