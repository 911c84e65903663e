import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { constantFacts, convert, readQuantity } from "../../src/physics/index.ts";
import { defaults, readScenario } from "../../src/scenario/index.ts";
import { usualDepth, usualDwellMin, usualSuctionMin } from "../../src/scenario/meaning/practice.ts";
import { traceDay } from "../../src/studies/trace/trace-day.ts";
import { withDressing } from "../therapy/example.ts";

// Plausibility of defaults and examples against published clinical facts. None of them validates the model.

const folder = new URL("../../scenarios/", import.meta.url);
const examples = readdirSync(folder)
	.filter((name) => name.endsWith(".yaml"))
	.map((name) => ({ name, scenario: readScenario(readFileSync(new URL(name, folder), "utf8")) }));

/** Minutes of a default that is written with its unit. */
function minutes(written: unknown): number {
	const reading = readQuantity(String(written), "min");
	return reading.ok ? reading.value : Number.NaN;
}

describe("output of a fistula", () => {
	/** en.wikipedia.org/wiki/Enterocutaneous_fistula (read): the boundary values belong to moderate. mL a day. */
	const grade = (output: number) => (output < 200 ? "low" : output <= 500 ? "moderate" : "high");

	test.each([
		[199, "low"],
		[200, "moderate"],
		[500, "moderate"],
		[501, "high"],
	])("%d mL a day is %s", (output, name) => {
		const day = traceDay(withDressing({ exudateMlPerDay: 0, outflow: { totalMlPerDay: output, burstsPerDay: 12 } }))
			.dressings[0];
		expect(day.totals.exudateMl).toBeCloseTo(output, 6);
		expect(grade(Math.round(day.totals.exudateMl))).toBe(name);
	});

	test("the example with a fistula is of moderate output, as its comment says", () => {
		const outflows = examples.flatMap(({ scenario }) =>
			scenario.dressings.flatMap((dressing) => dressing.outflow ?? []),
		);
		expect(outflows.length).toBeGreaterThan(0);
		for (const { totalMlPerDay } of outflows) expect(grade(totalMlPerDay)).toBe("moderate");
	});
});

describe("regimens", () => {
	test("a dwell of 10 to 20 min, then 2 to 4 h at −125 mmHg, lies within the usual ranges", () => {
		// consensus of a panel of 11, July 2015, abstract, PubMed 26966814 (read)
		for (const dwell of [10, 20]) {
			expect(dwell).toBeGreaterThanOrEqual(usualDwellMin.least);
			expect(dwell).toBeLessThanOrEqual(usualDwellMin.most);
		}
		for (const suction of [120, 240]) {
			expect(suction).toBeGreaterThanOrEqual(usualSuctionMin.least);
			expect(suction).toBeLessThanOrEqual(usualSuctionMin.most);
		}
		for (const tissue of ["soft-tissue", "necrotic-soft-tissue"] as const) {
			expect(usualDepth[tissue].least).toBeLessThanOrEqual(125);
			expect(usualDepth[tissue].most).toBeGreaterThanOrEqual(125);
		}
	});

	test("of the examples the long dwell lies within the consensus, the short one is shorter in its dwell alone", () => {
		// the same abstract; that a short programme is in use is common practice, no source
		const regimenOf = (name: string) => {
			const example = examples.find((one) => one.name === `${name}.yaml`);
			const [regimen] = example?.scenario.dressings[0].regimens ?? [];
			if (regimen === undefined) throw new Error(`no example ${name}`);
			return regimen;
		};
		const long = regimenOf("thigh-long-dwell");
		const short = regimenOf("thigh-short-dwell");
		expect(long.dwellMin).toBeGreaterThanOrEqual(10);
		expect(long.dwellMin).toBeLessThanOrEqual(20);
		expect(long.suctionMin).toBeLessThanOrEqual(240);
		expect(short.dwellMin).toBeLessThan(10);
		for (const { suctionMin, depthMmHg } of [long, short]) {
			expect(suctionMin).toBeGreaterThanOrEqual(120);
			expect(depthMmHg).toBe(125);
		}
	});

	test.each([
		// greatest effect on the wound edge often at −80: review of 2005–2010, hmpgloballearningnetwork.com (read)
		80,
		// levels compared in reviews, −125 routine: review of 1989–2009, the same publisher (read)
		75, 100, 125,
		// the ends of a range given as −50 to −150, of which −150 may be used here (from memory)
		150,
	])("−%d mmHg is a usual depth in soft tissue", (depth) => {
		expect(depth).toBeGreaterThanOrEqual(usualDepth["soft-tissue"].least);
		expect(depth).toBeLessThanOrEqual(usualDepth["soft-tissue"].most);
	});
});

describe("time limits", () => {
	// a nursing manual, ch. 18, rmmonline.co.uk/manual/c18-sec-0081 (read): not off for over 2 h without a new dressing;
	// dressing changes every 48 to 72 h. (That the 2 h are counted within 24 h is common practice, no source.)
	test("the caution for time off suction comes at 2 h", () => {
		expect(constantFacts["off.caution"].value).toBe(120);
		expect(constantFacts["off.caution"].unit).toBe("min");
	});

	test("a dressing is changed by default after 48 to 72 h", () => {
		const every = minutes(defaults["care.dressingChange"].write);
		expect(every).toBeGreaterThanOrEqual(48 * 60);
		expect(every).toBeLessThanOrEqual(72 * 60);
	});

	test("an opened source hangs for 24 h by default", () => {
		// nursebase.blogspot.com, wound irrigation, November 2010 (read; a weak source). A single-dose container is discarded
		// at once whatever its age (common practice, no source), so the label comes first.
		expect(constantFacts["source.hang"].value).toBe(24);
		expect(constantFacts["source.hang"].source).toContain("label");
	});
});

describe("quantities", () => {
	test("exudate of every example lies between a weighed dressing's and suction's", () => {
		// Dealey, Cameron, Arrowsmith 2006, J Wound Care 15(4):149–153, abstract (read): 1.3 g/cm² in 24 h under suction on
		// average, 0.10 and 0.21 by weighed dressings; 1 g taken for 1 mL
		const rates = examples.flatMap(({ scenario }) =>
			scenario.dressings.flatMap(({ areaCm2, exudateMlPerDay }) =>
				areaCm2 === null ? [] : [exudateMlPerDay / areaCm2],
			),
		);
		expect(rates.length).toBeGreaterThan(4);
		for (const rate of rates) {
			expect(rate).toBeGreaterThanOrEqual(0.1);
			expect(rate).toBeLessThanOrEqual(1.3);
		}
	});

	test("evaporation from a wound, for scale: 214.1 and 178.1 g/m²/h are 0.514 and 0.427 g/cm² a day", () => {
		// Lamke, Nilsson, Reithner 1977, abstract (read), granulating wound and partial burn; the conversion derived
		expect(convert(214.1, "mL/m2/h", "mL/cm2/d")).toBeCloseTo(0.514, 3);
		expect(convert(178.1, "mL/m2/h", "mL/cm2/d")).toBeCloseTo(0.427, 3);
	});

	test("foam takes less liquid than it has void", () => {
		// up to 97 % void: Springer encyclopedia, reticulated polyurethane foam, 10.1007/978-1-4419-6247-8_9993 (read)
		expect(constantFacts["foam.capacity"].value).toBeLessThan(0.97);
		expect(constantFacts["foam.suggested"].value).toBeLessThan(constantFacts["foam.capacity"].value);
	});
});
