import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { supplyAnswers } from "../../src/report/supply/answers.ts";
import { momentWords } from "../../src/report/supply/supply-words.ts";
import type { SupplyResult } from "../../src/results/index.ts";
import { checkWard, sentence } from "../../src/scenario/index.ts";
import { hostileTitle } from "../cli/hostile-scenario.ts";
import { here, scenario, scenarios, temporary, written } from "../cli/program.ts";
import { launched } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { dropped, droppedTogether, onBench, openedTab, saved, settled, type Tab, turned, widened } from "./page-tab.ts";
import { shutOut } from "./shut-out.ts";

const folder = temporary();
const started = await launched();

/** The demo ward, shorter, so that it takes seconds: two blocks of replications. */
const ward = readFileSync(join(scenarios, "ward", "hospital.yaml"), "utf8")
	.replace("horizon: 8 w", "horizon: 2 w")
	.replace("replications: 60", "replications: 10")
	.replace("warmUp: 21 d", "warmUp: 7 d");
const names = ["thigh-short-dwell", "foot-awkward-seal"] as const;
const beside = names.map((name) => [`${name}.yaml`, readFileSync(scenario(name), "utf8")] as const);
mkdirSync(join(folder, "ward"));
for (const [name, text] of beside) written(folder, name, text);

/** What `supply` prints for a ward of this text. */
async function printed(text: string): Promise<string> {
	const file = written(join(folder, "ward"), "printed.yaml", text);
	const { out, err, status } = await here("supply", file, "--json", "--quiet");
	expect([status, err]).toEqual([0, ""]);
	return out;
}

describe.skipIf("missing" in started)("the stores on the workbench", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	let tab: Tab;
	let page: Page;
	let out: string;
	beforeAll(async () => {
		out = await printed(ward);
		tab = await openedTab(browser, folder, [written(join(folder, "ward"), "ward.yaml", ward)]);
		({ page } = tab);
	});
	afterAll(async () => {
		await browser.close();
	});
	const numbers = () => saved(page, "Save these numbers (supply.json)");
	const button = (name: string) => page.getByRole("button", { name, exact: true });
	const problems = () => page.locator("#problems li").allTextContents();

	test("a page that was written with a ward opens with its stores, and gives the numbers of `supply --json` to the last bit", async () => {
		expect(await page.locator("h1").textContent()).toBe("Stores of an invented hospital, spring");
		expect(await page.getByRole("status").allTextContents()).toContain("All 10 replications are in.");
		expect(await numbers()).toBe(out);
		expect(tab.heard).toEqual([]);
	});

	test("demand, stock and order list that are read on the page are those numbers", async () => {
		const result = JSON.parse(out) as SupplyResult; // printed above
		const plain = (text: string) => text.replaceAll("\u00a0", " ");
		expect((await page.locator(".stores .answers li").allTextContents()).map(plain)).toEqual(
			supplyAnswers(result).map((pieces) =>
				plain(pieces.map((piece) => (typeof piece === "string" ? piece : piece.strong)).join("")),
			),
		);
		expect(result.orders.length).toBeGreaterThan(0);
		const rows = await page
			.locator(".stores .orders tbody tr")
			.evaluateAll((rows) => rows.map((row) => [...row.children].slice(0, 4).map((cell) => cell.textContent)));
		expect(rows).toEqual(
			result.orders.map((order) => [
				order.atMin === 0 ? "now" : momentWords(order.atMin, result.scenario),
				order.item,
				`${order.packs} × ${order.packSize}`,
				String(order.pieces),
			]),
		);
		expect(await page.locator(".stores .bands svg").count()).toBe(
			result.items.filter(({ store }) => store !== null).length,
		);
		const all = page.locator(".stores .demand tbody tr", { hasText: "all causes" });
		expect(await all.locator("td:nth-child(5)").allTextContents()).toEqual(
			result.items.map(({ demand }) => String(demand.total.p50)),
		);
	});

	test("order list and order days are handed out as the files that `supply` writes", async () => {
		const report = join(folder, "report");
		const { status } = await here("supply", join(folder, "ward", "ward.yaml"), "--quiet", "--out", report);
		expect(status).toBe(0);
		for (const name of ["orders.csv", "orders.ics"])
			expect(
				await saved(
					page,
					name === "orders.csv" ? "Save the order list (orders.csv)" : "Save its days for a calendar (orders.ics)",
				),
			).toBe(readFileSync(join(report, name), "utf8"));
	});

	test("a broken file that is dropped shows every problem in the words of `check`, and loses nothing that was there; undo and redo go back and forth", async () => {
		const broken = ward
			.replace("horizon: 2 w", "horizon: 2")
			.replace("item: kit", "item: kitt")
			.replace("arrivals: { rate: 1.1 /d", "arrivals: { rate: 1.1");
		const said = checkWard(broken, (name) => ({
			text: new Map<string, string>(beside).get(name.slice(3)) ?? "",
		})).problems.map(sentence);
		expect(said.length).toBeGreaterThan(2);
		await dropped(page, "broken.yaml", broken);
		await settled(page);
		expect(await problems()).toEqual(said);
		// The numbers of before can be read, but not taken for those of this file.
		expect(await page.locator(".stores [role=status]").textContent()).toContain(
			"What is shown is what was there before",
		);
		expect(
			await page
				.getByRole("button", { name: /^Save (?:these|the|its)/u })
				.evaluateAll((all) => all.map((one) => (one as HTMLButtonElement).disabled)),
		).toEqual([true, true, true]);
		await button("Undo").click();
		await onBenchAsText(ward);
		await settled(page);
		expect(await problems()).toEqual([]);
		await button("Redo").click();
		await settled(page);
		expect(await problems()).toEqual(said);
		await button("Undo").click();
		await settled(page);
		expect(await numbers()).toBe(out);
	});

	async function onBenchAsText(text: string): Promise<void> {
		await button("As text").click();
		await onBench(page, text);
	}

	test("what is typed in the form stands in the file, and is simulated", async () => {
		await button("As a form").click();
		const field = page.locator('[data-path="replications"] input');
		await field.fill("5");
		await field.dispatchEvent("change");
		await settled(page);
		const service = page.locator('[data-path="stores[4].service"] input');
		await page.locator('[data-path="stores[4]"] > summary').click();
		await service.fill("90 %");
		await service.dispatchEvent("change");
		await settled(page);
		const text = ward.replace("replications: 10", "replications: 5").replace("service: 98 %", "service: 90 %");
		expect(await numbers()).toBe(await printed(text));
		await button("As text").click();
		// Remarks of the file stay where they were.
		expect(await page.locator("#scenario-text").inputValue()).toContain("# Who: a supply planner");
	});

	test("of two changes in haste the newer one is what is shown in the end", async () => {
		const field = page.locator("#scenario-text");
		for (const replications of ["400", "10"]) {
			await field.fill(ward.replace("replications: 10", `replications: ${replications}`));
			await field.dispatchEvent("change");
		}
		await settled(page);
		expect(await numbers()).toBe(out);
		expect(tab.heard).toEqual([]);
	});

	test("while it runs the first block is shown as preliminary, and is not handed out", async () => {
		const field = page.locator("#scenario-text");
		await field.fill(ward.replace("replications: 10", "replications: 100000"));
		await field.dispatchEvent("change");
		await page.getByText("Preliminary: the first 5 of 100000 replications.").waitFor();
		const save = button("Save these numbers (supply.json)");
		expect(await save.isDisabled()).toBe(true);
		const bar = page.getByRole("progressbar");
		expect(await bar.getAttribute("max")).toBe("100000");
		// The view may be left meanwhile, and the day is there at once.
		await turned(page, "Day");
		expect(await page.locator("h1").textContent()).toContain("Thigh wound");
		await button("Stores").click();
		await button("Undo").click();
		await settled(page);
		expect(await numbers()).toBe(out);
	});

	test("a ward that is dropped on the day turns to the stores, with the files of its dressings; one that is missing is named", async () => {
		await turned(page, "Day");
		const other = ward.replaceAll("../", "beds/").replace("thigh-short", "own-thigh-short");
		const [thigh, foot] = beside;
		await droppedTogether(page, [
			[foot[0], foot[1]],
			["other.yaml", other],
		]);
		await onBench(page, other);
		await settled(page);
		expect(await problems()).toEqual([
			expect.stringMatching(
				/^ward\.kinds\[0\]\.file \(line \d+\): expected own-thigh-short-dwell\.yaml beside the ward's file/u,
			),
		]);
		// Numbers and picture are those of before, and are not handed out as those of this ward.
		expect(await button("Save these numbers (supply.json)").isDisabled()).toBe(true);
		expect(await page.locator(".stores .orders").count()).toBe(1);
		await droppedTogether(page, [["own-thigh-short-dwell.yaml", thigh[1]]]);
		await expect.poll(problems).toEqual([]);
		await settled(page);
		expect(await numbers()).toBe(out);
		// The file beside it is a step too.
		await button("Undo").click();
		await settled(page);
		expect(await problems()).toHaveLength(1);
		await button("Redo").click();
		await settled(page);
		expect(await problems()).toEqual([]);
		expect(tab.heard).toEqual([]);
	});

	test("after a reload the ward and the files beside it are there", async () => {
		await page.reload();
		await settled(page);
		await button("As text").click();
		expect(await page.locator("#scenario-text").inputValue()).toContain("beds/own-thigh-short-dwell.yaml");
		expect(await problems()).toEqual([]);
		expect(await numbers()).toBe(out);
	});

	test("a link to a ward carries its dressings along", async () => {
		await button("Make a link").click();
		const made = page.getByLabel("Link to this scenario");
		await expect.poll(() => made.inputValue()).toContain("#scenario=z");
		const fragment = (await made.inputValue()).replace(/^[^#]*/u, "");
		// Another page, which carries none of these files.
		const other = await openedTab(browser, temporary());
		await other.page.goto(`${other.address}${fragment}`);
		await expect.poll(() => other.page.locator(".says").textContent()).toContain("of the link lies on the bench");
		await settled(other.page);
		expect(await other.page.locator("#problems li").count()).toBe(0);
		expect(await saved(other.page, "Save these numbers (supply.json)")).toBe(out);
		expect(other.heard).toEqual([]);
		await other.page.close();
	});

	test("a day that is dropped on the stores turns to the day, and leaves the ward as it was", async () => {
		await droppedTogether(page, [["slough.yaml", readFileSync(scenario("heavy-slough"), "utf8")]]);
		await expect.poll(() => page.locator("[aria-current=page]").textContent()).toBe("Day");
		await settled(page);
		await turned(page, "Stores");
		expect(await numbers()).toBe(out);
	});

	test("hostile names are text, and a file that would unfold without end is refused like any other", async () => {
		const before = await page.evaluate(() => document.images.length);
		await dropped(
			page,
			"hostile.yaml",
			ward
				.replace(/title: .*/u, `title: ${JSON.stringify(hostileTitle)}`)
				.replace("name: saline", `name: ${JSON.stringify(hostileTitle)}`)
				.replace("replications: 10", "replications: 2"),
		);
		await settled(page);
		expect(await problems()).toEqual([]);
		expect(await page.locator("h1").textContent()).toBe(hostileTitle);
		expect(await page.locator(".stores .orders").textContent()).toContain(hostileTitle);
		expect(await page.evaluate(() => document.images.length)).toBe(before);
		const nested = Array.from({ length: 12 }, (_, i) => `a${i + 1}: &a${i + 1} [${`*a${i}, `.repeat(9)}*a${i}]`);
		await dropped(page, "bomb.yaml", ["ward: 1", "a0: &a0 [x]", ...nested].join("\n"));
		await settled(page);
		expect((await problems()).length).toBeGreaterThan(0);
		for (const _ of ["bomb", "hostile"]) {
			await button("Undo").click();
			await settled(page);
		}
		expect(await numbers()).toBe(out);
		expect(tab.heard).toEqual([]);
	});

	describe.each([320, 768, 1440])("at %i px", (width) => {
		beforeAll(async () => {
			await widened(page, width);
			await page.evaluate(() => {
				for (const one of document.querySelectorAll<HTMLDetailsElement>(".stores details, .form details"))
					one.open = true;
			});
		});

		test("the stores do not scroll sideways, and no text is cut or lies on another", async () => {
			expect(await page.locator(".stores svg").count()).toBeGreaterThan(5);
			expect(await page.evaluate(layoutFaults)).toEqual([]);
		});

		test("they shut nobody out, as form and as text, light and dark", async () => {
			for (const how of ["As text", "As a form"]) {
				await button(how).click();
				for (const colorScheme of ["light", "dark"] as const) {
					await page.emulateMedia({ colorScheme });
					expect(await shutOut(page), `${how} ${colorScheme}`).toEqual([]);
				}
			}
			await page.emulateMedia({ colorScheme: "light" });
		});
	});

	test("on paper the order list begins a page of its own, and bars and form are left out", async () => {
		await page.emulateMedia({ media: "print" });
		const paper = await page.evaluate(() => ({
			orders: getComputedStyle(document.querySelector(".stores .orders") ?? document.body).breakBefore,
			bars: [...document.querySelectorAll(".bar, .scenario, progress")].filter((one) => one.checkVisibility()).length,
		}));
		expect(paper).toEqual({ orders: "page", bars: 0 });
		await page.emulateMedia({ media: "screen" });
	});
});
