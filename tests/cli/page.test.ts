import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { pageDataIn } from "../../src/cli/files/page-file.ts";
import { isSentence, lines, scenario, scenarios, spawned, temporary, written } from "./program.ts";

const run = (words: readonly string[], cwd = temporary()) => spawned(["page", ...words], { cwd });

describe("page", () => {
	test("writes out/workbench.html with the demo, where nothing is said", async () => {
		const cwd = temporary();
		const { status, out, err } = await run([], cwd);
		expect([status, err]).toEqual([0, ""]);
		expect(out).toContain("out/workbench.html");
		const html = readFileSync(join(cwd, "out", "workbench.html"), "utf8");
		expect(html).toContain("Thigh wound after debridement, second day");
	});

	test("writes to a file or into a folder, whichever is named, and the same bytes each time", async () => {
		const cwd = temporary();
		for (const out of ["a.html", "folder"])
			expect((await run([scenario("heavy-slough"), "--out", out, "--quiet"], cwd)).status).toBe(0);
		const one = readFileSync(join(cwd, "a.html"), "utf8");
		expect(readFileSync(join(cwd, "folder", "workbench.html"), "utf8")).toBe(one);
		expect((await run([scenario("heavy-slough"), "--out", "a.html"], cwd)).status).toBe(0);
		expect(readFileSync(join(cwd, "a.html"), "utf8")).toBe(one);
		expect(readdirSync(cwd).sort()).toEqual(["a.html", "folder"]);
	});

	test("names no place and no address in the file but those of its own making", async () => {
		const cwd = temporary();
		await run([], cwd);
		const html = readFileSync(join(cwd, "out", "workbench.html"), "utf8");
		expect(html).not.toContain(cwd);
		// Licences of the parts are named in one remark, before anything that could be asked for.
		const around = html
			.replace(/<!-- Bundled license information:[\s\S]*?-->/u, "")
			.replace(/<script>[\s\S]*<\/script>/u, "");
		expect(around).not.toContain("<!--");
		expect(around.length).toBeLessThan(html.length / 5);
		expect(around).not.toMatch(/https?:|\b(?:src|href)=|url\(|@import/u);
	});

	test("its script asks the host for nothing that leaves the page", async () => {
		const cwd = temporary();
		await run([], cwd);
		const html = readFileSync(join(cwd, "out", "workbench.html"), "utf8");
		expect(html).not.toMatch(
			/\b(?:fetch|importScripts|sendBeacon|eval)\(|\bXMLHttpRequest\b|\bWebSocket\b|\bEventSource\b|\bimport\(/u,
		);
	});

	test("another scenario's workbench and a foreign file are not overwritten without --force", async () => {
		const cwd = temporary();
		await run(["--out", "a.html"], cwd);
		written(cwd, "b.html", "<p>mine</p>");
		mkdirSync(join(cwd, "c", "workbench.html"), { recursive: true });
		for (const out of ["a.html", "b.html", "c"]) {
			const { status, err } = await run([scenario("heavy-slough"), "--out", out], cwd);
			expect(status, out).toBe(2);
			expect(lines(err).every(isSentence), err).toBe(true);
		}
		expect(readFileSync(join(cwd, "b.html"), "utf8")).toBe("<p>mine</p>");
		expect((await run([scenario("heavy-slough"), "--out", "b.html", "--force"], cwd)).status).toBe(0);
		expect(readFileSync(join(cwd, "b.html"), "utf8")).toContain("Content-Security-Policy");
	});

	test("a scenario with problems, two files and an unknown option are refused with every problem, and nothing is written", async () => {
		const cwd = temporary();
		const broken = written(
			cwd,
			"broken.yaml",
			readFileSync(scenario("heavy-slough"), "utf8")
				.replace(/dwell: .*/u, "dwell: 5")
				.replace("tissue:", "tisue:"),
		);
		const { status, err } = await run([broken, scenario("heavy-slough"), "--frce"], cwd);
		expect(status).toBe(2);
		expect(lines(err).length).toBeGreaterThan(3);
		expect(lines(err).every(isSentence), err).toBe(true);
		expect(existsSync(join(cwd, "out"))).toBe(false);
	});

	test("carries a day and a ward with the files that it names, those of the demo where none is named; a ward alone is what it opens with", async () => {
		const cwd = temporary();
		const ward = join(scenarios, "ward", "hospital.yaml");
		const text = readFileSync(ward, "utf8");
		const mine = written(
			cwd,
			"mine.yaml",
			text
				.replace(/title: .*/u, "title: Stores of another ward")
				.replace("../thigh-short-dwell.yaml", "own/thigh.yaml")
				.replace("../foot-awkward-seal.yaml", "foot.yaml"),
		);
		mkdirSync(join(cwd, "own"));
		const thigh = readFileSync(scenario("heavy-slough"), "utf8");
		written(join(cwd, "own"), "thigh.yaml", thigh);
		const foot = readFileSync(scenario("foot-awkward-seal"), "utf8");
		written(cwd, "foot.yaml", foot);
		const carried = async (...words: string[]) => {
			const { status, err } = await run([...words, "--out", "a.html", "--force"], cwd);
			expect([status, err]).toEqual([0, ""]);
			const html = readFileSync(join(cwd, "a.html"), "utf8");
			const [, data = ""] = /id="workbench-data">([^<]*)</u.exec(html) ?? [];
			expect(html.length).toBeLessThan(1_000_000);
			return { ...JSON.parse(data), mark: pageDataIn(html) };
		};
		const demo = await carried();
		expect(demo.opens).toBe("Day");
		expect(demo.ward).toBe(text);
		expect(Object.keys(demo.beside)).toEqual(["../thigh-short-dwell.yaml", "../foot-awkward-seal.yaml"]);
		const own = await carried(mine);
		expect(own.opens).toBe("Stores");
		expect(own.scenario).toBe(demo.scenario);
		expect(own.ward).toBe(readFileSync(mine, "utf8"));
		expect(own.beside).toEqual({ "own/thigh.yaml": thigh, "foot.yaml": foot });
		expect(own.mark.title).toBe("Stores of another ward");
		const both = await carried(mine, scenario("step-down-home"));
		expect(both.opens).toBe("Day");
		expect(both.ward).toBe(own.ward);
		expect(both.scenario).toBe(readFileSync(scenario("step-down-home"), "utf8"));
		expect(await carried(scenario("step-down-home"), mine)).toMatchObject({
			opens: "Day",
			ward: both.ward,
			scenario: both.scenario,
		});
	});

	test("two wards, and a ward whose dressings are not to be had, are refused with what is missing", async () => {
		const cwd = temporary();
		const ward = join(scenarios, "ward", "hospital.yaml");
		const lonely = written(cwd, "lonely.yaml", readFileSync(ward, "utf8"));
		const { status, err } = await run([ward, lonely], cwd);
		expect(status).toBe(2);
		expect(lines(err).every(isSentence), err).toBe(true);
		expect(lines(err).filter((line) => line.includes(".file"))).toHaveLength(2);
		expect(err).toContain("lonely.yaml: ward.kinds[0].file");
		expect(err).toContain("one scenario file of a ward at the most");
		expect(existsSync(join(cwd, "out"))).toBe(false);
	});
});
