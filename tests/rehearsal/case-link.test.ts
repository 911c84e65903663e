import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { caseLink, readCaseLink } from "../../src/rehearsal/case-link.ts";
import { readScenario } from "../../src/scenario/index.ts";
import { caseNames, caseText } from "./cases.ts";

const handed = (name: string) => ({ text: caseText(name), seed: "slackwater", drawn: false });

describe("a case handed out as a link", () => {
	test.each(caseNames)("%s comes out as the same case", (name) => {
		const link = caseLink(handed(name));
		const read = readCaseLink(link);
		expect(read).toMatchObject({ seed: "slackwater", drawn: false });
		expect(readScenario(read?.text ?? "")).toEqual(readScenario(caseText(name)));
	});

	test.each(caseNames)("%s does not show its answer at a glance", (name) => {
		const link = caseLink(handed(name));
		expect(link).toMatch(/^#case=[\w-]+\.[a-z0-9]+$/);
		const base64 = Buffer.from(link.slice(6), "base64url").toString("latin1");
		for (const text of [link, base64]) expect(text).not.toMatch(/hides|cause|kink|clog|breach|bleed|holds/i);
		// What the facilitator is told is not in it at all.
		expect(readCaseLink(link)?.text).not.toContain("# Why");
	});

	test("two cases that differ in one word differ all over", () => {
		const [a, b] = ["x", "y"].map((seed) => caseLink({ ...handed("rehearse-01.yaml"), seed }));
		const same = [...a].filter((sign, i) => sign === b[i]).length;
		expect(same).toBeLessThan(a.length / 10);
	});

	test("any text comes back as it was but for its remarks", () => {
		fc.assert(
			fc.property(fc.string({ unit: "grapheme" }), fc.string(), fc.boolean(), (text, seed, drawn) => {
				const read = readCaseLink(caseLink({ text, seed, drawn }));
				expect(read).toEqual({
					text: text
						.split("\n")
						.filter((line) => !/^\s*#/u.test(line))
						.join("\n"),
					seed,
					drawn,
				});
			}),
			{ numRuns: 300 },
		);
	});

	test("a link that was cut or altered on its way is none", () => {
		const link = caseLink(handed("rehearse-02.yaml"));
		expect(readCaseLink("")).toBeNull();
		expect(readCaseLink("#case=")).toBeNull();
		expect(readCaseLink(`${link}.x`)).toBeNull();
		fc.assert(
			fc.property(fc.integer({ min: 0, max: link.length - 1 }), fc.constantFrom(..."aZ9-.% "), (at, sign) => {
				expect(readCaseLink(link.slice(0, at))).toBeNull();
				const altered = link.slice(0, at) + sign + link.slice(at + 1);
				if (altered !== link) expect(readCaseLink(altered)).toBeNull();
			}),
			{ numRuns: 300 },
		);
	});
});
