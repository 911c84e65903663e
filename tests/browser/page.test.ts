import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkScenario, sentence } from "../../src/scenario/index.ts";
import { hostileScenario, hostileTitle } from "../cli/hostile-scenario.ts";
import { here, names, scenario, temporary, written } from "../cli/program.ts";
import { launched } from "./launch.ts";
import { layoutFaults } from "./layout.ts";
import { dropped, openedTab, saved, settled, type Tab, turned, typed } from "./page-tab.ts";
import { shutOut } from "./shut-out.ts";

const folder = temporary();
const started = await launched();
const bench = "The scenario as text, YAML or JSON";

describe.skipIf("missing" in started)("the workbench in a real browser", () => {
	const browser = ("browser" in started ? started.browser : null) as Browser; // skipped without one
	let tab: Tab;
	beforeAll(async () => {
		tab = await openedTab(browser, folder);
	});
	afterAll(async () => {
		await browser.close();
	});
	const page = () => tab.page;

	const onBench = (text: string) => typed(page(), text);

	test("opens with the demo, from a disk, without a network and without a word of complaint", async () => {
		expect(await page().title()).toContain("Thigh wound after debridement");
		expect(tab.heard).toEqual([]);
		const about = await page().evaluate(() => ({
			images: document.images.length,
			frames: frames.length,
			cookies: document.cookie,
		}));
		expect(about).toEqual({ images: 0, frames: 0, cookies: "" });
	});

	test("is one file of less than 1 MB", () => {
		const html = readFileSync(`${folder}/workbench.html`);
		expect(html.length).toBeLessThan(1_000_000);
		expect(html.toString()).toContain("default-src 'none'");
	});

	test.each(names.map((name) => basename(name, ".yaml")))(
		"gives the numbers of `day --json` to the last bit: %s",
		async (name) => {
			await page().getByRole("button", { name: "Day", exact: true }).click();
			await onBench(readFileSync(scenario(name), "utf8"));
			const { out, err } = await here("day", scenario(name), "--json", "--quiet");
			expect(err).toBe("");
			expect(await saved(page(), "Save these numbers (day.json)")).toBe(out);
			expect(tab.heard).toEqual([]);
		},
	);

	const compared = names.filter((name) => /^compare:/mu.test(readFileSync(scenario(basename(name, ".yaml")), "utf8")));
	test.each(compared.map((name) => basename(name, ".yaml")))(
		"gives the numbers of `compare --json` to the last bit: %s",
		async (name) => {
			await onBench(readFileSync(scenario(name), "utf8"));
			await turned(page(), "Compare");
			const { out, err } = await here("compare", scenario(name), "--rests-on", "off", "--json", "--quiet");
			expect(err).toBe("");
			expect(await saved(page(), "Save these numbers (compare.json)")).toBe(out);
			// What is read on the page is one of these numbers too.
			const { regimens, differences } = JSON.parse(out);
			const washes = differences.find(
				({ a, b, measure }: { a: string; b: string; measure: string }) =>
					a === regimens[0].name && b === regimens[1].name && measure === "washes",
			);
			await page().locator(".differences .scroll table").getByText("Washes", { exact: true }).waitFor();
			expect(washes.replications).toBe(JSON.parse(out).replications);
		},
	);

	test("a pair chosen the other way round is told in that order: compare-thigh", async () => {
		await onBench(readFileSync(scenario("compare-thigh"), "utf8"));
		await turned(page(), "Compare");
		for (const [id, name] of [
			["#regimen-b", "suction-alone"],
			["#regimen-a", "long"],
			["#regimen-b", "short"],
		] as const) {
			await page().locator(id).selectOption(name);
			await settled(page());
		}
		await expect
			.poll(() => page().locator("#compare-heading").textContent())
			.toMatch(/what does a 10.min dwell .* cost against 5.min/u);
		expect(await page().locator(".differences .scroll table thead th").allTextContents()).toEqual([
			...["Measure", "Unit", "long", "short", "Difference", "95 % from", "to"],
			...["long more", "short more", "long better"],
		]);
		const washes = page().locator(".differences .scroll table tr", {
			has: page().getByText("Washes", { exact: true }),
		});
		expect(await washes.locator("td").nth(3).textContent()).toMatch(/^−/u);
		expect(await page().locator(".lines h4").allTextContents()).toEqual(["long", "short"]);
		// As in the command's report, it is said what no number here can tell.
		const silence = page().getByRole("region", { name: "What this does not tell" });
		expect(await silence.textContent()).toContain("there is no overall score");
		expect(await page().evaluate(layoutFaults)).toEqual([]);
		expect(tab.heard).toEqual([]);
	});

	test("tries what a comparison rests on, and says of it what the command's report says", async () => {
		const few = readFileSync(scenario("compare-thigh"), "utf8").replace(/^replications:.*$/mu, "replications: 50");
		expect(few).toContain("replications: 50");
		await onBench(few);
		await turned(page(), "Compare");
		await page().getByRole("button", { name: "Try what this rests on" }).click();
		const part = page().locator("#rests-on");
		await part.waitFor();
		await settled(page());
		const names = await page()
			.locator("#regimen-a, #regimen-b")
			.evaluateAll((selects) => selects.map((select) => (select as HTMLSelectElement).value));
		const file = written(folder, "few.yaml", few);
		const out = `${folder}/few`;
		const { err } = await here(...["compare", file, "--between", names.join(","), "--out", out], "--quiet");
		expect(err).toBe("");
		const report = await tab.context.newPage();
		await report.goto(pathToFileURL(`${out}/report.html`).href);
		const words = await report.locator("#rests-on").textContent();
		await report.close();
		expect(words).toContain("over 50 replications");
		expect(await part.textContent()).toBe(words);
		expect(await shutOut(page())).toEqual([]);
		expect(await page().evaluate(layoutFaults)).toEqual([]);
		// Another pair, or another value, and it is gone.
		await page().locator("#regimen-b-dwell").fill("15");
		await settled(page());
		expect(await part.count()).toBe(0);
		expect(tab.heard).toEqual([]);
	});

	test("there are scenarios to compare", () => {
		expect(compared.length).toBeGreaterThan(0);
	});

	test("a broken file that is dropped shows every problem in the words of `check`, and nothing of what was there before stands beside it", async () => {
		await page().getByRole("button", { name: "Day", exact: true }).click();
		const good = readFileSync(scenario("thigh-long-dwell"), "utf8");
		await onBench(good);
		const before = await saved(page(), "Save these numbers (day.json)");
		const broken = good
			.replace("dwell: 10 min", "dwell: 10")
			.replace(/depth: .*/u, "depth: 125 mmHg")
			.replace("tissue:", "tisue:");
		const { problems } = checkScenario(broken);
		expect(problems.length).toBeGreaterThan(2);
		await dropped(page(), "broken.yaml", broken);
		await settled(page());
		const said = await page().locator("#problems li").allTextContents();
		expect(said).toEqual(problems.map(sentence));
		expect(await page().locator(".view").textContent()).toMatch(/^Nothing is shown of this scenario/u);
		for (const part of [".sentences li", ".view svg", ".view table", ".head p"])
			expect(await page().locator(part).count(), part).toBe(0);
		expect(await page().locator("h1").textContent()).toBe("A scenario with problems");
		expect(await page().title()).not.toContain("Thigh");
		expect(await page().getByRole("button", { name: "Save these numbers", exact: false }).count()).toBe(0);
		for (const view of ["Compare", "Sources", "Day"]) {
			await turned(page(), view);
			expect(await page().locator(".view svg, .view td").count(), view).toBe(0);
		}
		// The same words stand beside the fields.
		await page().getByRole("button", { name: "As a form" }).click();
		const beside = await page().locator(".field .wrong:not(:empty)").allTextContents();
		for (const text of beside) expect(said.join("\n")).toContain(text);
		expect(beside.length).toBeGreaterThan(1);
		await page().getByRole("button", { name: "Undo" }).click();
		await settled(page());
		await page().getByRole("button", { name: "As text" }).click();
		expect(await page().getByLabel(bench).inputValue()).toBe(good);
		expect(await page().locator("#problems li").count()).toBe(0);
		// Undo brings back all of it.
		expect(await saved(page(), "Save these numbers (day.json)")).toBe(before);
	});

	test("a fault that is typed leaves the picture of the same scenario, and says that it is of before", async () => {
		const good = readFileSync(scenario("thigh-long-dwell"), "utf8");
		await onBench(good);
		const answers = await page().locator(".sentences").textContent();
		await onBench(good.replace("dwell: 10 min", "dwell: 10"));
		expect(await page().locator("#problems li").count()).toBe(1);
		expect(await page().locator(".sentences").textContent()).toBe(answers);
		expect(await page().locator(".sign-of-change").textContent()).toBe(
			"What stands here is of the last scenario without problems.",
		);
		expect(await shutOut(page())).toEqual([]);
		await onBench(good);
		expect(await page().locator(".sign-of-change").textContent()).toBe("");
	});

	test("in the frame after a move the answers are marked as those of before, and until the drag is over", async () => {
		await onBench(readFileSync(scenario("thigh-short-dwell"), "utf8"));
		const moved = await page()
			.locator("#turn-fill")
			.evaluate(async (input: HTMLInputElement) => {
				const look = () => ({
					busy: document.querySelector(".view")?.getAttribute("aria-busy"),
					sign: document.querySelector(".sign-of-change")?.textContent,
					edge: getComputedStyle(document.querySelector(".sentences") ?? document.body).borderLeftStyle,
					answers: document.querySelector(".sentences")?.textContent,
				});
				const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
				const before = look();
				input.value = "80";
				input.dispatchEvent(new Event("input"));
				const at = look();
				await frame();
				const after = look();
				// Not for a frame does it go while the drag lasts.
				let always = true;
				for (let count = 0; count < 60; count++) {
					await frame();
					always &&= look().busy === "true";
				}
				input.dispatchEvent(new Event("change"));
				return { before, at, after, always };
			});
		expect(moved.before).toMatchObject({ busy: "false", sign: "" });
		for (const seen of [moved.at, moved.after])
			expect(seen).toEqual({
				busy: "true",
				sign: "Being worked out: what stands here is of before the change.",
				edge: "dotted",
				answers: moved.before.answers,
			});
		expect(moved.always).toBe(true);
		await settled(page());
		expect(await page().locator(".view").getAttribute("aria-busy")).toBe("false");
		expect(await page().locator(".sentences").textContent()).not.toBe(moved.before.answers);
	});

	test("sliders go in steps that a person sets, and the fill as far as the foam pools", async () => {
		await onBench(readFileSync(scenario("thigh-short-dwell"), "utf8").replace(/fill: 50 mL/u, "fill: suggested"));
		await page().getByRole("button", { name: "As text" }).click();
		const slider = (name: string) => page().locator(`#turn-${name}`);
		const written = async (name: string) => {
			await slider(name).press("ArrowRight");
			await settled(page());
			const text = await page().getByLabel(bench).inputValue();
			return text.match(new RegExp(`^\\s+${name}: (.*?)(\\s*#.*)?$`, "mu"))?.[1];
		};
		// Foam of 240 mL takes 82 mL before it pools.
		expect(await slider("fill").getAttribute("max")).toBe("125");
		expect(await slider("fill").getAttribute("aria-valuetext")).toBe("62 mL");
		expect(await written("fill")).toBe("65 mL");
		expect(await written("dwell")).toBe("6 min");
		expect(await written("suction")).toBe("135 min");
		expect(await written("depth")).toBe("-130 mmHg");
	});

	test("what is not readable at all shows its problem, and undo brings the work back", async () => {
		const text = await page().getByLabel(bench).inputValue();
		await dropped(page(), "nonsense.yaml", "a: [1,\n  b: }");
		await settled(page());
		expect(await page().locator("#problems li").count()).toBeGreaterThan(0);
		await page().getByRole("button", { name: "Undo" }).click();
		await settled(page());
		expect(await page().getByLabel(bench).inputValue()).toBe(text);
	});

	test("after a reload as after a crash the work is there, and so is what can be undone", async () => {
		await page().getByRole("button", { name: "Day", exact: true }).click();
		await onBench(readFileSync(scenario("thigh-short-dwell"), "utf8"));
		const before = await page().getByLabel(bench).inputValue();
		await page().locator("#turn-dwell").fill("9");
		await settled(page());
		const turned = await page().getByLabel(bench).inputValue();
		expect(turned).toContain("dwell: 9 min");
		// Remarks of the file stay where they were.
		expect(turned).toContain("# 162 mL a day from this area");
		await page().reload();
		await settled(page());
		await page().getByRole("button", { name: "As text" }).click();
		expect(await page().getByLabel(bench).inputValue()).toBe(turned);
		await page().getByRole("button", { name: "Undo" }).click();
		await settled(page());
		expect(await page().getByLabel(bench).inputValue()).toBe(before);
		await page().getByRole("button", { name: "Redo" }).click();
		await settled(page());
		expect(await page().getByLabel(bench).inputValue()).toBe(turned);
		expect(tab.heard).toEqual([]);
	});

	test("while a slider is dragged the picture moves, and nothing is a step to undo until it is let go", async () => {
		const answers = () => page().locator(".sentences").textContent();
		const before = await answers();
		await page()
			.locator("#turn-fill")
			.evaluate((input: HTMLInputElement) => {
				for (const value of ["60", "80", "100"]) {
					input.value = value;
					input.dispatchEvent(new Event("input"));
				}
			});
		await expect.poll(answers).not.toBe(before);
		const kept = () => page().evaluate(() => Object.values(localStorage).some((text) => text.includes("fill: 100 mL")));
		expect(await kept()).toBe(false);
		await page().locator("#turn-fill").dispatchEvent("change");
		await settled(page());
		expect(await kept()).toBe(true);
	});

	test("the form writes into the file what is typed in it, and says beside the field what is wrong", async () => {
		await page().getByRole("button", { name: "As a form" }).click();
		const field = page().locator('[data-path="dressings[0].regimen.suction"] input');
		await field.fill("3");
		await field.dispatchEvent("change");
		await settled(page());
		const wrong = page().locator('[data-path="dressings[0].regimen.suction"] .wrong');
		await expect.poll(() => wrong.textContent()).toContain('such as "2 h"');
		await field.fill("3 h");
		await field.dispatchEvent("change");
		await settled(page());
		await expect.poll(() => wrong.textContent()).toBe("");
		await page().getByRole("button", { name: "As text" }).click();
		expect(await page().getByLabel(bench).inputValue()).toContain("suction: 3 h");
	});

	test("the cursor reads all lanes at a minute, by mouse, by touch and by keyboard, alike", async () => {
		const readings = () => page().locator(".day .readings").textContent();
		const slider = page().locator("#day-cursor");
		await slider.fill("600");
		const byKeys = await readings();
		for (const lane of ["time", "phase", "depth", "canister", "source", "alarms"]) expect(byKeys).toContain(lane);
		expect(byKeys).toContain("17:00");
		await slider.press("ArrowRight");
		expect(await readings()).toContain("17:01");
		const chart = page().locator(".line .chart svg");
		// A cursor that has moved has the chart drawn anew in the next frames.
		const drawn = () =>
			page().evaluate(
				() =>
					new Promise((resolve) =>
						requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(resolve))),
					),
			);
		await drawn();
		await chart.scrollIntoViewIfNeeded();
		const box = await chart.boundingBox();
		if (box === null) throw new Error("no chart");
		const at = { x: Math.round(box.x + 400), y: Math.round(box.y + 60) };
		await page().mouse.move(at.x, at.y);
		const byMouse = await readings();
		const minute = await slider.inputValue();
		expect(byMouse).not.toBe(byKeys);
		await page().mouse.move(at.x + 50, at.y);
		expect(await readings()).not.toBe(byMouse);
		await drawn();
		await chart.dispatchEvent("pointerdown", { pointerType: "touch", clientX: at.x, clientY: at.y });
		expect(await readings()).toBe(byMouse);
		await slider.fill("0");
		await slider.fill(minute);
		expect(await readings()).toBe(byMouse);
	});

	test("a link to a scenario opens it elsewhere; one that was cut says so", async () => {
		await page().getByRole("button", { name: "As text" }).click();
		const text = await page().getByLabel(bench).inputValue();
		await page().getByRole("button", { name: "Make a link" }).click();
		const made = page().getByLabel("Link to this scenario");
		await expect.poll(() => made.inputValue()).toContain(`${tab.address}#scenario=z`);
		const link = await made.inputValue();
		// Something else lies on the bench when the link is followed.
		await dropped(page(), "other.yaml", readFileSync(scenario("step-down-home"), "utf8"));
		await settled(page());
		const other = await tab.context.newPage();
		await other.goto(link);
		await expect.poll(() => other.locator(".says").textContent()).toContain("of the link lies on the bench");
		await settled(other);
		await other.getByRole("button", { name: "As text" }).click();
		expect(await other.getByLabel(bench).inputValue()).toBe(text);
		await other.goto("about:blank");
		await other.goto(link.slice(0, -20));
		await expect.poll(() => other.locator(".says").textContent()).toContain("cut or altered");
		await other.close();
	});

	test("two regimens can be made where the file has none, and each is turned by its own sliders", async () => {
		await onBench(readFileSync(scenario("thigh-short-dwell"), "utf8"));
		await page().getByRole("button", { name: "Compare", exact: true }).click();
		await page().getByRole("button", { name: "Set it against" }).click();
		await settled(page());
		await page().locator("#regimen-b-dwell").fill("20");
		await settled(page());
		await expect
			.poll(() => page().locator("#compare-heading").textContent())
			.toMatch(/5.min dwell every 2.h buy and cost against 20.min/u);
		expect(await page().locator(".lines svg.sw-chart").count()).toBe(2);
		await page().locator("#compare-cursor").fill("605");
		const read = await page().locator(".compare .readings").textContent();
		expect(read?.match(/canister/gu)).toHaveLength(2);
		expect(tab.heard).toEqual([]);
	});

	test("a hostile title is text, in the file, on the page and in its title", async () => {
		const other = await openedTab(browser, temporary(), [written(folder, "hostile.yaml", hostileScenario)]);
		expect(await other.page.title()).toContain(hostileTitle.slice(0, 40));
		expect(await other.page.locator("h1").textContent()).toBe(hostileTitle);
		for (const view of ["Compare", "Rehearse", "Sources", "Day"]) {
			await turned(other.page, view);
		}
		const about = await other.page.evaluate(() => ({
			images: document.images.length,
			scripts: document.scripts.length,
		}));
		expect(about).toEqual({ images: 0, scripts: 1 });
		expect(other.heard).toEqual([]);
		await other.page.close();
	});
});
