import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import fc from "fast-check";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { checkScenario } from "../../src/scenario/index.ts";
import { here, root, scenario, temporary, written } from "../cli/program.ts";
import { launched } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { layoutScenario } from "./layout-scenarios.ts";
import { widened as drawnAt, openedTab, settled } from "./page-tab.ts";
import { paperFaults, printed } from "./paper.ts";
import { type Day, sheetFaults } from "./sheet-pages.ts";
import { widened } from "./wider.ts";

const isLong = process.env.LONG === "1";
const widthsPx = [320, 390, 768, 1200, 1440, 1920];
const folder = temporary();

/** A paper to look at: the words that make it, and what is known of it. */
interface Paper {
	readonly name: string;
	readonly command: readonly string[];
	/** Of a day alone: what its sheets are of. */
	readonly day?: Day;
}

const few = ["--replications", "60", "--quiet"];

/** What a day's sheets are of, as the program itself understands the file. */
function dayOf(text: string): Day {
	const { scenario: sound, problems } = checkScenario(text);
	if (sound === null) throw new Error(JSON.stringify(problems));
	const { start, horizonMin, dressings } = sound;
	return { start, horizonMin, dressings };
}

const kept: readonly Paper[] = [
	...["thigh-short-dwell", "two-dressings", "step-down-home"].map((name) => ({
		name,
		command: ["day", scenario(name), ...few],
		day: dayOf(readFileSync(scenario(name), "utf8")),
	})),
	{ name: "compare-thigh", command: ["compare", scenario("compare-thigh"), ...few] },
	{ name: "sweep-thigh", command: ["sweep", scenario("sweep-thigh"), ...few] },
	{ name: "debrief", command: ["drill", scenario("rehearse-12"), "--script", "acts.txt"] },
];

/** The day that was found printed over itself: two days from half past one, a small canister, a while off. */
const fromHalfPastOne = {
	slackwater: 1,
	title: "Thigh wound, two days from half past one",
	seed: 7,
	start: "2026-03-02T13:30",
	horizon: "48 h",
	replications: 60,
	dressings: [
		{
			id: "thigh",
			wound: { tissue: "soft-tissue", area: "180 cm2", exudate: "0.9 mL/cm2/d" },
			foam: [{ area: "180 cm2", thickness: "2 cm" }],
			regimen: { depth: "-125 mmHg", fill: "suggested", dwell: "5 min", suction: "2 h" },
			unit: { canister: "500 mL", source: "1000 mL" },
		},
	],
	happenings: [{ at: "20 h", dressing: "thigh", what: "off", for: "45 min" }],
};

const drawn = [fromHalfPastOne, ...fc.sample(layoutScenario, { seed: 12, numRuns: isLong ? 60 : 4 })].map(
	(raw, index) => ({ name: `drawn-${index}`, text: stringify(raw) }),
);

const papers: readonly Paper[] = [
	...kept,
	...drawn.flatMap(({ name, text }, index) => {
		const file = written(folder, `${name}.yaml`, text);
		const day = { name, command: ["day", file, "--quiet"], day: dayOf(text) };
		// Every other one is compared, too.
		return index % 3 === 1
			? [day, { name: `${name}-compared`, command: ["compare", file, "--rests-on", "off", "--quiet"] }]
			: [day];
	}),
	{
		name: "hospital-stores",
		command: [...["supply", join(root, "scenarios", "ward", "hospital.yaml")], ...["--replications", "5"]],
	},
];

const started = await launched();
// That Chromium starts where it can is held in report.test.ts.
describe.skipIf("missing" in started)("how papers are laid out", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	let page: Page;
	const addressOf = ({ name }: Paper): string => pathToFileURL(join(folder, name, "report.html")).href;

	beforeAll(async () => {
		const acts = written(
			folder,
			"acts.txt",
			"next\nlook port\nlook suction-line\nact free-suction-line\nwait 8\nact new-port\nlook edge\nact patch-edge\nnext\n",
		);
		for (const { name, command } of papers) {
			const words = command.map((word) => (word === "acts.txt" ? acts : word));
			const { status, err } = await here(
				...words,
				"--out",
				join(folder, name),
				...(words.includes("--quiet") ? [] : ["--quiet"]),
			);
			expect(status, err).toBe(0);
		}
		page = await (await browser.newContext({ offline: true })).newPage();
	});
	afterAll(async () => {
		await browser.close();
	});

	describe.each(papers)("$name", (paper) => {
		test.each(["own", "wider"])(
			"in the machine's %s letters no text is cut, small, outside its box or on another, at any width",
			async (letters) => {
				await page.emulateMedia({ media: "screen", colorScheme: "light" });
				await page.goto(addressOf(paper));
				if (letters === "wider") await widened(page);
				const faults: string[] = [];
				for (const width of widthsPx) {
					await page.setViewportSize({ width, height: 900 });
					for (const fault of await page.evaluate(layoutFaults)) faults.push(`${width} px: ${fault}`);
				}
				expect(faults).toEqual([]);
			},
		);

		test.each([
			["A4", "own"],
			["Letter", "own"],
			["A4", "wider"],
			["Letter", "wider"],
		] as const)(
			"on %s in the machine's %s letters nothing lies on another, and every sheet is a page with its chart",
			async (format, letters) => {
				await page.emulateMedia({ media: "print", colorScheme: "light" });
				await page.goto(addressOf(paper));
				if (letters === "wider") await widened(page);
				const pages = await printed(page, format);
				const faults = paperFaults(pages);
				if (paper.day !== undefined) faults.push(...sheetFaults(pages, paper.day));
				expect(faults).toEqual([]);
			},
		);
	});

	describe("the workbench", () => {
		test.each([
			["Day", "own"],
			["Day", "wider"],
			["Compare", "own"],
			["Compare", "wider"],
		])(
			"shows its view %s in the machine's %s letters with no text cut, small, outside its box or on another, at any width",
			async (view, letters) => {
				const file = written(folder, "bench.yaml", readFileSync(scenario("compare-thigh"), "utf8"));
				const tab = await openedTab(browser, temporary(), [file]);
				const bench = tab.page;
				await bench.getByRole("button", { name: view, exact: true }).click();
				await settled(bench);
				if (letters === "wider") await widened(bench);
				const faults: string[] = [];
				for (const width of widthsPx) {
					await drawnAt(bench, width);
					for (const fault of await bench.evaluate(layoutFaults)) faults.push(`${width} px: ${fault}`);
				}
				expect(faults).toEqual([]);
				await bench.close();
			},
		);
	});
});
