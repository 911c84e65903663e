import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { caseLink, Rehearsal } from "../../src/rehearsal/index.ts";
import { readScenario } from "../../src/scenario/index.ts";
import { here, scenario, temporary, written } from "../cli/program.ts";
import { launched } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { dropped, droppedTogether, openedTab, saved, settled, type Tab, ticked, turned, widened } from "./page-tab.ts";
import { shutOut } from "./shut-out.ts";

const folder = temporary();
const started = await launched();
const views = ["Day", "Compare", "Rehearse", "Sources"];

describe.skipIf("missing" in started)("the views of the workbench", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	let tab: Tab;
	let page: Page;
	beforeAll(async () => {
		tab = await openedTab(browser, folder, [scenario("compare-thigh")]);
		({ page } = tab);
	});
	afterAll(async () => {
		await browser.close();
	});

	describe.each([320, 768, 1440])("at %i px", (width) => {
		beforeAll(async () => {
			await widened(page, width);
		});

		test.each(views)("%s does not scroll sideways, and no text is cut or lies on another", async (view) => {
			await turned(page, view);
			expect(await page.evaluate(layoutFaults)).toEqual([]);
		});

		test.each(views)("%s shuts nobody out, light and dark", async (view) => {
			await turned(page, view);
			for (const colorScheme of ["light", "dark"] as const) {
				await page.emulateMedia({ colorScheme });
				expect(await shutOut(page), colorScheme).toEqual([]);
			}
			await page.emulateMedia({ colorScheme: "light" });
		});

		test("a file with problems shuts nobody out and keeps its layout", async () => {
			await turned(page, "Day");
			const good = readFileSync(scenario("two-dressings"), "utf8");
			await dropped(page, "broken.yaml", good.replaceAll(/area: .*/gu, "area: 5"));
			await settled(page);
			expect(await page.locator("#problems li").count()).toBeGreaterThan(0);
			expect(await page.evaluate(layoutFaults)).toEqual([]);
			expect(await shutOut(page)).toEqual([]);
			await page.getByRole("button", { name: "Undo" }).click();
			await settled(page);
		});
	});

	test("a regimen that waits for the running cycle is told with the time at which it takes over, as in the answers", async () => {
		await turned(page, "Day");
		await dropped(
			page,
			"waits.yaml",
			`slackwater: 1
title: A step-down that waits
start: 2026-05-05T07:00
horizon: 30 h
replications: 20
dressings:
  - id: calf
    wound: { tissue: soft-tissue, area: 100 cm2, exudate: 0.9 mL/cm2/d }
    foam: [{ area: 150 cm2, thickness: 1.6 cm }]
    regimen:
      - { from: 0 h, depth: -125 mmHg, fill: 40 mL, dwell: 5 min, suction: 3.5 h }
      - { from: 26 h, depth: -125 mmHg, fill: none }
`,
		);
		await settled(page);
		await expect
			.poll(() => page.locator(".head p").first().textContent())
			.toMatch(/; from Wed 11:45 \(set for Wed 09:00\) continuous suction/u);
	});

	test("several dressings are chosen from a list, each with its day", async () => {
		await turned(page, "Day");
		await dropped(page, "two.yaml", readFileSync(scenario("two-dressings"), "utf8"));
		await settled(page);
		const ids = readScenario(readFileSync(scenario("two-dressings"), "utf8")).dressings.map(({ id }) => id);
		for (const id of ids) {
			await page.locator(".dressings button", { hasText: id }).click();
			await expect.poll(() => page.locator(".head h2").textContent()).toBe(`Dressing ${id}`);
		}
		expect(await shutOut(page)).toEqual([]);
		expect(await page.evaluate(layoutFaults)).toEqual([]);
	});

	describe("a rehearsal", () => {
		const name = "rehearse-12";
		const text = readFileSync(scenario(name), "utf8");

		/** Goes on with the tab key until a button of that name has the focus, then presses it. */
		async function byKeyboard(words: RegExp): Promise<void> {
			for (let i = 0; i < 80; i++) {
				await page.keyboard.press("Tab");
				const focused = await page.evaluate(() => document.activeElement?.textContent ?? "");
				if (!words.test(focused)) continue;
				await page.keyboard.press("Enter");
				return;
			}
			throw new Error(`no button ${words} was reached with the keyboard`);
		}
		const told = () => page.locator(".told li").allTextContents();

		test("can be played from a link to its debrief by keyboard alone, as `drill` would play it", async () => {
			await page.setViewportSize({ width: 1280, height: 900 });
			await page.goto("about:blank");
			const link = caseLink({ text, seed: "keys", drawn: false });
			await page.goto(`${tab.address}${link}`);
			await page.locator(".rehearsal h2").waitFor();
			// Nothing of the answer is on the page, before or during the shift.
			const shown = await page.evaluate(() => document.body.outerHTML);
			expect(shown).not.toContain("hides:");
			await byKeyboard(/^On to the next thing/u);
			await expect.poll(async () => (await told()).length).toBeGreaterThan(0);
			const steps: [RegExp, string][] = [
				[/^look closely at the port/u, "look port"],
				[/^follow the suction line/u, "look suction-line"],
				[/^straighten the suction line/u, "act free-suction-line"],
				[/^Let 10 min pass/u, "wait 10"],
				[/^listen and feel/u, "look edge"],
				[/^dry the edge/u, "act patch-edge"],
			];
			for (const [words] of steps) {
				const before = await page.locator(".facts-now dd").first().textContent();
				await byKeyboard(words);
				await expect.poll(() => page.locator(".facts-now dd").first().textContent()).not.toBe(before);
			}
			expect(await shutOut(page)).toEqual([]);
			expect(await page.evaluate(layoutFaults)).toEqual([]);
			await byKeyboard(/^End the shift/u);
			await page.locator("#debrief-heading").waitFor();
			expect(await shutOut(page)).toEqual([]);
			expect(await page.evaluate(layoutFaults)).toEqual([]);
			const script = written(folder, "acts.txt", ["next", ...steps.map(([, line]) => line), "end"].join("\n"));
			const { out, err } = await here("drill", scenario(name), "--seed", "keys", "--script", script, "--json");
			expect(err).toBe("");
			expect(await saved(page, "Save the debrief (debrief.json)")).toBe(out);
			await byKeyboard(/^Run the same case again/u);
			await expect.poll(() => page.locator(".told li").count()).toBe(0);
			expect(tab.heard).toEqual([]);
		});

		test("a drawn case is that of its seed, and can be handed out as a link", async () => {
			await page.goto("about:blank");
			await page.goto(tab.address);
			await settled(page);
			await turned(page, "Rehearse");
			await page.locator("#case-seed").fill("wednesday");
			await page.getByRole("button", { name: "Draw it and begin" }).click();
			await page.locator(".rehearsal h2").waitFor();
			await page.getByRole("button", { name: "End the shift" }).click();
			await page.locator("#debrief-heading").waitFor();
			const debrief = JSON.parse(await saved(page, "Save the debrief (debrief.json)"));
			expect(debrief.case.seed).toBe("wednesday");
			await page.getByRole("button", { name: "Choose another case" }).click();
			await page.getByRole("button", { name: "Make a link to it" }).last().click();
			const link = await page.getByLabel("Link to the case").inputValue();
			expect(link).toContain(`${tab.address}#case=`);
			expect(tab.heard).toEqual([]);
		});

		test("time passes at the chosen pace, and stands still in a pause", async () => {
			await page.getByRole("button", { name: "Draw it and begin" }).click();
			const clock = () => page.locator(".facts-now dd").first().textContent();
			await page.locator(".facts-now dd").first().waitFor();
			const before = await clock();
			await page.getByRole("button", { name: "×600" }).click();
			await expect.poll(clock).not.toBe(before);
			await page.getByRole("button", { name: "Pause" }).click();
			// What was under way when it was pressed may still come; at this pace a clock that goes on is never twice the same.
			const standing = async () => {
				const before = await clock();
				await ticked(page, 4);
				return (await clock()) === before;
			};
			await expect.poll(standing).toBe(true);
			expect(await standing()).toBe(true);
		});

		test("a file that is no case is refused in words, and the shift that is under way goes on", async () => {
			const clock = () => page.locator(".facts-now dd").first().textContent();
			const first = await clock();
			await page.getByRole("button", { name: "Let 10 min pass" }).click();
			await expect.poll(clock).not.toBe(first);
			// A screen reader is told of the new time and depth.
			await expect
				.poll(() => page.locator(".rehearsal [role=status]").textContent())
				.toMatch(/^Now \d\d:\d\d: .* mmHg\.$/u);
			const before = await clock();
			const happened = await told();
			const plain = readFileSync(scenario("two-dressings"), "utf8");
			for (const [file, words] of [
				[plain, "has no rehearsal: part"],
				[text.replaceAll(/area: .*/gu, "area: 5"), "problems"],
			] as const) {
				await droppedTogether(page, [["other.yaml", file]]);
				await expect
					.poll(() => page.locator(".says").textContent())
					.toMatch(new RegExp(`${words}.*The shift goes on\\.`, "u"));
				expect(await clock()).toBe(before);
				expect(await told()).toEqual(happened);
			}
			await page.getByRole("button", { name: "Let 10 min pass" }).click();
			await expect.poll(clock).not.toBe(before);
			expect(tab.heard).toEqual([]);
		});

		test("the page bears the name of the case while it is rehearsed, and enter in the seed begins one", async () => {
			const name = () => page.locator("h1").textContent();
			await page.goto("about:blank");
			await page.goto(`${tab.address}${caseLink({ text, seed: "keys", drawn: false })}`);
			await page.locator(".rehearsal h2").waitFor();
			const { title } = readScenario(text);
			await expect.poll(name).toBe(title);
			await turned(page, "Day");
			await expect.poll(name).not.toBe(title);
			const bench = await name();
			await turned(page, "Rehearse");
			await expect.poll(name).toBe(title);
			await page.getByRole("button", { name: "End the shift" }).click();
			await page.locator("#debrief-heading").waitFor();
			await page.getByRole("button", { name: "Choose another case" }).click();
			await expect.poll(name).toBe(bench);
			await page.locator("#case-seed").fill("enter");
			await page.locator("#case-seed").press("Enter");
			await page.locator(".rehearsal .facts-now").waitFor();
		});

		test("alarms are announced as they come", async () => {
			const live = page.locator(".alarm-line");
			expect(await live.getAttribute("role")).toBe("alert");
			await page.goto("about:blank");
			await page.goto(
				`${tab.address}${caseLink({ text: readFileSync(scenario("rehearse-02"), "utf8"), seed: "keys", drawn: false })}`,
			);
			await page.locator(".rehearsal h2").waitFor();
			const rehearsal = new Rehearsal(readScenario(readFileSync(scenario("rehearse-02"), "utf8")), "keys");
			const alarms = () => rehearsal.view().alarms.length;
			for (let i = 0; i < 60 && alarms() === 0; i++) {
				rehearsal.next();
				const { clock } = rehearsal.view();
				await page.getByRole("button", { name: "On to the next thing" }).click();
				await expect.poll(() => page.locator(".facts-now dd").first().textContent()).toContain(clock);
			}
			expect(alarms()).toBeGreaterThan(0);
			await expect.poll(() => live.textContent()).toMatch(/^Alarm: /u);
		});
	});
});
