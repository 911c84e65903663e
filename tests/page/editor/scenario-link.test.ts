import { readFileSync } from "node:fs";
import { deflateRawSync } from "node:zlib";
import fc from "fast-check";
import { expect, test } from "vitest";
import { isScenarioLink, readScenarioLink, scenarioLink } from "../../../src/page/editor/scenario-link.ts";
import { scenario } from "../../cli/program.ts";

test("a link brings back every text", async () => {
	await fc.assert(
		fc.asyncProperty(fc.string({ unit: "grapheme" }), async (text) => {
			const link = await scenarioLink(text);
			expect(isScenarioLink(link)).toBe(true);
			expect(link).toMatch(/^#scenario=[pz][\w-]*$/u);
			expect(await readScenarioLink(link)).toBe(text);
		}),
		{ numRuns: 60 },
	);
});

test("a link to the demo is short enough to be sent", async () => {
	const text = readFileSync(scenario("thigh-short-dwell"), "utf8");
	expect((await scenarioLink(text)).length).toBeLessThan(2000);
});

test("a link that was cut or altered is refused, not guessed at", async () => {
	const link = await scenarioLink("slackwater: 1\n".repeat(20));
	expect(await readScenarioLink(link.slice(0, -6))).toBe(null);
	expect(await readScenarioLink("#scenario=q00")).toBe(null);
	expect(await readScenarioLink("#scenario=z%%%")).toBe(null);
});

test("a link that would unfold to more than a scenario may hold is refused", async () => {
	const bomb = deflateRawSync(Buffer.alloc(50_000_000, "a")).toString("base64url");
	expect(await readScenarioLink(`#scenario=z${bomb}`)).toBe(null);
});
