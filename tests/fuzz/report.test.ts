import { join } from "node:path";
import { pathToFileURL } from "node:url";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { launched } from "../browser/launch.ts";
import { here, temporary, written } from "../cli/program.ts";

const started = await launched();
afterAll(async () => {
	if ("browser" in started) await started.browser.close();
});
const folder = temporary();

/** Pieces that turn a text into something else where it is written without care. */
const hostile = fc
	.array(
		fc.constantFrom(
			...["<script>fetch('//a.test')</script>", "<img src=x onerror=alert(1)>"],
			...["<svg onload=alert(2)>", "</style>", "</script>", "</title>", "-->", "]]>"],
			...["<style>*{background:url(//a.test/b)}</style>", "url(//a.test)"],
			...["javascript:alert(3)", "<a href=javascript:alert(4)>x</a>"],
			...["<link rel=stylesheet href=//a.test/c>", "<iframe srcdoc=x>"],
			...["<meta http-equiv=refresh content=0;url=//a.test>", "<base href=//a.test>"],
			...['"', "'", "`", "&lt;", "&#60;", "\\", "{{1}}", "<!--", "\u200f"],
			...["<math><mi xlink:href=data:x>", "<object data=//a.test>", " "],
		),
		{ minLength: 1, maxLength: 4 },
	)
	.map((parts) => `x${parts.join("")}x`)
	.filter((text) => text.length <= 64);

const scenario = fc
	.record({
		title: hostile,
		seed: hostile,
		solution: hostile,
		ids: fc.uniqueArray(hostile, { minLength: 1, maxLength: 2 }),
		patient: hostile,
	})
	.map(({ title, seed, solution, ids, patient }) =>
		stringify({
			slackwater: 1,
			title,
			seed,
			replications: 3,
			horizon: "8 h",
			solution: { name: solution },
			dressings: ids.map((id) => ({
				id,
				patient,
				wound: { tissue: "open-abdomen", exudate: "400 mL/d" },
				foam: [{ area: "240 cm2", thickness: "1 cm" }],
				regimen: { depth: "-125 mmHg", fill: "50 mL", dwell: "5 min", suction: "1 h" },
			})),
			happenings: ids.map((dressing) => ({ at: "2 h", dressing, what: "kink-suction" })),
		}),
	);

describe.skipIf("missing" in started)("reports of hostile scenarios", () => {
	test("opened in a browser run no script and ask for nothing", async () => {
		if (!("browser" in started)) return;
		const context = await started.browser.newContext({ offline: true });
		const page = await context.newPage();
		const heard: string[] = [];
		page.on("request", (request) => heard.push(request.url()));
		page.on("console", (message) => heard.push(message.text()));
		page.on("pageerror", (error) => heard.push(error.message));
		page.on("dialog", (dialog) => {
			heard.push(dialog.message());
			void dialog.dismiss();
		});
		const out = join(folder, "report");
		const address = pathToFileURL(join(out, "report.html")).href;
		await fc.assert(
			fc.asyncProperty(scenario, async (text) => {
				const file = written(folder, "hostile.yaml", text);
				const ran = await here("day", file, "--out", out, "--force", "--quiet");
				expect(ran.status, ran.err).toBe(0);
				heard.length = 0;
				await page.goto(address);
				expect(heard).toEqual([address]);
				const found = await page.evaluate(
					() =>
						document.querySelectorAll(
							"script, img, iframe, object, embed, link[href], base, meta[http-equiv=refresh], [onload], [onerror], [href^='javascript' i]",
						).length,
				);
				expect(found).toBe(0);
			}),
			{ numRuns: process.env.LONG === undefined ? 25 : 1000, seed: 404 },
		);
	});
});
